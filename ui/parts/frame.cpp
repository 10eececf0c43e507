#include "ui/parts/frame.h"

#include "ui/parts/voice_strip.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"
#include "ui/words/numbers.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace ui {
namespace {

/// One thing in the bar: a button that asks for something, or a word.
struct Item {
    std::string words;
    std::optional<TextId> id;
    std::optional<Action> action; ///< nothing: only words
    bool there = true;            ///< its place is kept when it is not there, so that the others stay where they are
    float width = 0;
    bool chosen = false; ///< where it leads to is what is shown
    Sign sign = Sign::Words;
    float x = 0;
    int row = 0; ///< from the bottom: what comes first keeps its place however many rows there are
};

/// What is always there comes first; the page buttons come behind it.
constexpr std::size_t own = 6;

float bar_button_width(const Ui& ui, const std::string& words)
{
    return std::max(ui.look.sizes.target, text_width(ui, words, Style::Bar) + 2.5F * ui.look.sizes.unit);
}

Item button_item(const Ui& ui, TextId id, Action action, bool there)
{
    const auto& words = ui.language.text(id);
    return {words, id, std::move(action), there, bar_button_width(ui, words)};
}

/// The size that is on stands on the button. It is the first of the bar, so that a finger that taps on one place goes
/// round all sizes.
Item text_size_item(const Ui& ui, int percent)
{
    const auto words = [&ui](int value) {
        return ui.language.fill(TextId::button_text_size, {{"percent", percent_words(value, false, ui.language)}});
    };
    return {words(percent), TextId::button_text_size, NextTextSize{}, true, bar_button_width(ui, words(100))};
}

Item page_item(const Ui& ui, TextId id, int by, bool there)
{
    Item item = button_item(ui, id, TurnPage{by}, there);
    if (ui.look.sizes.crowded_bar()) {
        item.sign = by < 0 ? Sign::Backward : Sign::Forward;
        item.width = ui.look.sizes.target;
    }
    return item;
}

std::vector<Item> items_of(const Ui& ui, const State& state, const Paging& paging)
{
    const bool home = state.screen == ScreenId::Welcome;
    const bool held = state.sides[0] || state.sides[1];
    std::vector<Item> items;
    items.push_back(text_size_item(ui, state.text_percent));
    items.push_back({state.other_language, TextId::language_name, NextLanguage{}, true,
                     bar_button_width(ui, state.other_language)});
    items.push_back(button_item(ui, TextId::button_read_aloud, AskAccess{ReadAloud{}}, state.voice.there));
    items.push_back(button_item(ui, TextId::button_by_name, FindByName{}, true));
    items.back().chosen = state.screen == ScreenId::FindByName;
    Item take_back = button_item(ui, TextId::button_take_back, TakeBack{}, true);
    Item start_over = button_item(ui, TextId::button_start_over, StartOver{}, held || !home);
    take_back.width = start_over.width = std::max(take_back.width, start_over.width); // they stand in one place
    items.push_back(state.can_take_back && !held ? take_back : start_over);
    items.push_back(button_item(ui, TextId::button_back, GoBack{}, !home));
    const bool several = paging.pages > 1;
    items.push_back(page_item(ui, TextId::button_page_before, -1, several && paging.page > 0));
    // Figures are equally wide: the room for two and two of them holds every count of pages; of a hundred and more
    // (all published rules in the largest letters) the page is told alone.
    constexpr int most_told = 99;
    const std::string number = std::to_string(paging.page + 1);
    const std::string page =
        paging.pages > most_told
            ? number
            : ui.language.fill(TextId::page_of, {{"n", number}, {"all", std::to_string(paging.pages)}});
    const std::string widest = ui.language.fill(TextId::page_of, {{"n", "00"}, {"all", "00"}});
    items.push_back({page, std::nullopt, std::nullopt, several, text_width(ui, widest, Style::Bar)});
    items.push_back(page_item(ui, TextId::button_page_next, 1, several && paging.page + 1 < paging.pages));
    return items;
}

/// The rows of the bar, and what the page buttons leave free beside them.
struct Rows {
    int count = 1;
    float free = 0; ///< left of the page buttons where they have a row of their own; 0 where they share one
};

/// Puts the items into rows from the bottom up; the page buttons stay together at the right end of the topmost.
Rows lay_out(const Ui& ui, std::vector<Item>& items, float width)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    float x = 0;
    int row = 0;
    for (std::size_t i = 0; i < items.size() && i < own; ++i) {
        if (x > 0 && x + items[i].width > width) {
            x = 0;
            ++row;
        }
        items[i].x = x;
        items[i].row = row;
        x += items[i].width + gap;
    }
    float group = -gap;
    for (std::size_t i = own; i < items.size(); ++i)
        group += items[i].width + gap;
    const bool own_row = x + group > width;
    if (own_row)
        ++row;
    x = width - group;
    for (std::size_t i = own; i < items.size(); ++i) {
        items[i].x = x;
        items[i].row = row;
        x += items[i].width + gap;
    }
    return {row + 1, own_row ? width - group - 2 * gap : 0};
}

float bar_height(const Ui& ui)
{
    return std::max(ui.look.sizes.target, line_height(ui, Style::Bar) + ui.look.sizes.unit);
}

float most_lines_of_name(const Ui& ui)
{
    return ui.look.sizes.upright() ? 2 : 1;
}

/// What is said, in the room that it has: under large letters a long name in front of it is shortened.
std::string notice_words(const Ui& ui, const State& state, float width)
{
    const auto& words = state.notice.words;
    const auto named = std::ranges::find_if(state.sides, [&words](const auto& held) {
        return held && !held->product.name.empty() && words.starts_with(held->product.name);
    });
    if (named == state.sides.end() || !ui.look.sizes.crowded_bar())
        return words;
    const auto& name = (*named)->product.name;
    return cut_to_lines(ui, name, Style::Bar, width, most_lines_of_name(ui), words.substr(name.size()));
}

/// The room for what is said of the two sides, kept also while nothing is said: rows must not come and go with it.
float notice_height(const Ui& ui, const State& state, float width)
{
    const float line = line_height(ui, Style::Bar);
    const float highest = ui.look.sizes.crowded_bar() ? most_lines_of_name(ui) * line : ui.look.sizes.height;
    const auto height = [&](const std::string& words) { return text_height(ui, words, Style::Bar, width); };
    float most = std::max(line, height(notice_words(ui, state, width)));
    for (const Side side : {Side::Left, Side::Right})
        if (const auto& held = state.sides[index_of(side)]) {
            const auto& place = ui.language.text(side == Side::Left ? TextId::side_left : TextId::side_right);
            const auto& name = held->product.name;
            for (const TextId said :
                 {TextId::notice_found, TextId::notice_already, TextId::notice_kept, TextId::notice_let_go})
                most = std::max(most,
                                std::min(highest, height(ui.language.fill(said, {{"name", name}, {"side", place}}))));
        }
    return most;
}

/// Cuts the place of the notice: beside the page buttons where those have a row of their own and it is no worse off
/// there, else a strip above the bar.
Area cut_notice(const Ui& ui, const State& state, const Rows& rows, Frame& frame)
{
    const float unit = ui.look.sizes.unit;
    const float above = notice_height(ui, state, frame.body.width());
    if (rows.free > widest_word(ui, state.notice.words, Style::Bar) && state.voice.mode == VoiceMode::Off) {
        const float row = bar_height(ui);
        const float beside = notice_height(ui, state, rows.free);
        const float more = std::max(0.0F, beside - row);
        if (more < above + unit) {
            frame.body.cut_bottom(more);
            Area place{{frame.bar.low.x, frame.bar.low.y - more}, {frame.bar.low.x + rows.free, frame.bar.low.y + row}};
            frame.body.cut_bottom(unit);
            return place;
        }
    }
    const Area place = frame.body.cut_bottom(above);
    frame.body.cut_bottom(unit);
    return place;
}

/// Cuts the place of the voice's buttons above the bar; with letters so large that this would leave half a page they
/// take the place of what is always there, which comes back when the voice stops.
void cut_voice(const Ui& ui, const State& state, Frame& frame)
{
    const auto& sizes = ui.look.sizes;
    const float strip = voice_strip_height(ui, state, frame.body.width());
    if (strip <= 0)
        return;
    frame.bar_gives_way = frame.body.height() - strip < 0.6F * sizes.height;
    if (!frame.bar_gives_way) {
        frame.voice = frame.body.cut_bottom(strip);
        frame.body.cut_bottom(sizes.unit);
        return;
    }
    const float needed = strip + sizes.unit + bar_height(ui); // the page buttons stand above
    const float more = needed - frame.bar.height();
    if (more > 0)
        frame.body.cut_bottom(more);
    frame.bar.low.y = std::min(frame.bar.low.y, frame.bar.high.y - needed);
    frame.voice = frame.bar;
    frame.voice.low.y = frame.bar.high.y - strip;
}

} // namespace

Frame frame_of(const Ui& ui, const State& state)
{
    const auto& sizes = ui.look.sizes;
    Frame frame;
    frame.body = Area{{0, 0}, {sizes.width, sizes.height}}.inset(sizes.margin, sizes.margin * 0.75F);
    auto items = items_of(ui, state, Paging{}); // room is kept for all of them, so that none pushes others about
    const Rows rows = lay_out(ui, items, frame.body.width());
    const float height = bar_height(ui);
    frame.bar = frame.body.cut_bottom(static_cast<float>(rows.count) * (height + sizes.unit) - sizes.unit);
    frame.body.cut_bottom(sizes.unit);
    cut_voice(ui, state, frame);
    frame.notice = cut_notice(ui, state, rows, frame);
    const bool beside = frame.notice.high.y > frame.bar.low.y;
    const float top = frame.voice.height() > 0 ? std::min(frame.voice.low.y, frame.bar.low.y) : frame.bar.low.y;
    frame.rule = (beside ? frame.notice.low.y : top) - 0.5F * sizes.unit;
    return frame;
}

void close_frame(const Ui& ui, const State& state, const Frame& frame, const Paging& paging, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    Area said = frame.notice;
    const auto words = notice_words(ui, state, said.width());
    const float spare = said.height() - text_height(ui, words, Style::Bar, said.width());
    said.low.y += std::max(0.0F, std::floor(spare / 2));
    text(ui, words, Style::Bar, said);
    if (words != state.notice.words)
        ui.notes.back().said = state.notice.words;
    canvas().AddLine({frame.bar.low.x, frame.rule}, {frame.bar.high.x, frame.rule}, ui.look.theme.hairline, sizes.line);
    voice_strip(ui, state, frame.voice, asked);
    auto items = items_of(ui, state, paging);
    lay_out(ui, items, frame.bar.width());
    const float height = bar_height(ui);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const Item& item = items[i];
        const bool gives_way = frame.bar_gives_way && i < own;
        if (!item.there || gives_way)
            continue;
        Area area;
        area.high.y = frame.bar.high.y - static_cast<float>(item.row) * (height + sizes.unit);
        if (frame.bar_gives_way)
            area.high.y = frame.bar.low.y + height;
        area.low = {frame.bar.low.x + item.x, area.high.y - height};
        area.high.x = area.low.x + item.width;
        if (!item.action) {
            area.low.y += (height - line_height(ui, Style::Bar)) / 2;
            text(ui, item.words, Style::Bar, area, Align::Centre);
        } else if (button(ui, item.words, item.id, area,
                          {Style::Bar, item.chosen, false, Align::Centre, true, item.sign}))
            asked.push_back(*item.action);
    }
}

} // namespace ui
