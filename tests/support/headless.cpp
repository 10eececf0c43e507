#include "tests/support/headless.h"

#include "kiosk/files/data_folder.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "tests/support/mouse_compat.h"
#include "ui/screens/screens.h"

#include <algorithm>
#include <cfloat>
#include <stdexcept>

namespace test {
namespace {

ui::FontFiles fonts()
{
    static const kiosk::FontBytes bytes = kiosk::read_fonts();
    return bytes.files();
}

/// A context whose letters are ready; NewFrame insists on it.
ImGuiContext* make_context(ImVec2 size)
{
    ImGuiContext* context = ImGui::CreateContext();
    ImGui::SetCurrentContext(context);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr; // a test leaves no file behind
    io.DisplaySize = size;
    io.DeltaTime = 1.0F / 60.0F; // its own tick: no clock is read
    return context;
}

ui::Look make_look(const ui::Glass& glass, int text_percent)
{
    const ui::Sizes sizes = ui::sizes_for(glass, text_percent);
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    ui::Look look{ui::paper(), sizes, ui::build_fonts(atlas, fonts(), sizes)};
    unsigned char* pixels = nullptr;
    int width = 0;
    int height = 0;
    atlas.GetTexDataAsAlpha8(&pixels, &width, &height);
    return look;
}

} // namespace

const ui::Language& language(std::string_view code)
{
    static const auto languages = kiosk::read_languages(kiosk::data_folder());
    const auto found = std::ranges::find(languages, code, &ui::Language::code);
    if (found == languages.end())
        throw std::out_of_range("no language file for " + std::string(code));
    return *found;
}

Headless::Headless(ImVec2 size, int text_percent, std::string_view language_code)
    : Headless(On(ui::Glass{size.x, size.y}), text_percent, language_code)
{
}

Headless::Headless(const On& on, int text_percent, std::string_view language_code)
    : context_(make_context({on.glass.width, on.glass.height})), language_(language(language_code)),
      look_(make_look(on.glass, text_percent))
{
}

Headless::~Headless()
{
    ImGui::DestroyContext(context_);
}

ui::Actions Headless::frame(const ui::State& state)
{
    return frame([&state](const ui::Ui& ui, ui::Actions& asked) { ui::draw(ui, state, asked); });
}

ui::Actions Headless::frame(const Drawing& drawing)
{
    ImGui::SetCurrentContext(context_);
    notes_.clear();
    ui::Actions asked;
    ImGui::NewFrame();
    drawing({language_, look_, notes_}, asked);
    ImGui::Render();
    return asked;
}

std::string Headless::words() const
{
    std::string all;
    for (const auto& note : notes_)
        all.append(note.words).append("\n");
    return all;
}

bool Headless::says(std::string_view words) const
{
    return std::ranges::any_of(notes_, [words](const auto& note) { return note.words.find(words) != note.words.npos; });
}

ui::Actions Headless::tap(const ui::State& state, ui::TextId id, std::size_t nth)
{
    return tap(
        state, [id](const ui::Note& note) { return note.id == id; }, nth);
}

ui::Actions Headless::tap(const ui::State& state, std::string_view words, std::size_t nth)
{
    return tap(
        state, [words](const ui::Note& note) { return note.words == words; }, nth);
}

ui::Actions Headless::tap(const ui::State& state, const std::function<bool(const ui::Note&)>& is_it, std::size_t nth)
{
    frame(state); // twice: sizes settle, then it is known where things stand
    frame(state);
    const ui::Note* target = nullptr;
    for (const auto& note : notes_)
        if (note.touchable && is_it(note) && nth-- == 0) {
            target = &note;
            break;
        }
    if (!target)
        throw std::out_of_range("nothing to tap with that text");
    const ImVec2 at{(target->low.x + target->high.x) / 2, (target->low.y + target->high.y) / 2};
    ui::Actions all;
    const auto step = [&](bool down) {
        put_finger(at, down);
        for (const auto& action : frame(state))
            all.push_back(action);
    };
    step(false); // the finger arrives, so that the thing is hovered
    step(true);
    step(false);
    put_finger({-FLT_MAX, -FLT_MAX}, false);
    frame(state);
    return all;
}

} // namespace test
