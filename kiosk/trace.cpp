#include "kiosk/trace.h"

#include "ui/screens/screens.h"

#include <algorithm>
#include <stdexcept>

namespace kiosk {
namespace {

std::string_view name_of(ui::ScreenId screen)
{
    const auto all = ui::screens();
    const auto found = std::ranges::find(all, screen, &ui::ScreenInfo::id);
    return found == all.end() ? std::string_view("?") : found->name;
}

std::string digits_of(const std::optional<ui::Held>& side)
{
    return side ? side->product.gtin.digits() : "-";
}

std::string on_one_line(std::string words)
{
    const auto breaks = [](char c) { return c == '\t' || c == '\n' || c == '\r'; };
    std::ranges::replace_if(words, breaks, ' ');
    return words;
}

} // namespace

Trace::Trace(const std::string& path) : file_(path)
{
    if (!file_)
        throw std::runtime_error("the trace " + path + " cannot be written");
}

void Trace::answered(const Scan& scan, const ui::State& state)
{
    line("answer", ++answers_, state, scan.when, scan.text + " | " + state.notice.words);
}

void Trace::drawn(const ui::State& state, const ui::Notes& notes, TimePoint when)
{
    std::string words;
    for (const ui::Note& note : notes)
        words += (words.empty() ? "" : " | ") + note.words;
    line("frame", ++frames_, state, when, words);
}

void Trace::spoken(const Utterance& utterance, const ui::State& state, TimePoint when)
{
    line("spoken", ++spoken_, state, when, utterance.words);
}

void Trace::line(const char* kind, std::size_t number, const ui::State& state, TimePoint when, const std::string& words)
{
    const auto micro = std::chrono::duration_cast<std::chrono::microseconds>(when.time_since_epoch()).count();
    file_ << kind << '\t' << number << '\t' << micro << '\t' << name_of(state.screen) << '\t'
          << digits_of(state.sides[0]) << '\t' << digits_of(state.sides[1]) << '\t' << state.notice.number << '\t'
          << on_one_line(words) << std::endl; // at once: whoever reads it waits for it
}

} // namespace kiosk
