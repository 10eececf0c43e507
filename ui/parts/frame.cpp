#include "ui/parts/frame.h"

#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

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
    float x = 0;
    int row = 0;
};

Item button_item(const Ui& ui, TextId id, Action action, bool there)
{
    const auto& words = ui.language.text(id);
    return {words, id, std::move(action), there, button_width(ui, words, Style::Bar), 0, 0};
}

std::vector<Item> items_of(const Ui& ui, const State& state, const Paging& paging)
{
    const bool home = state.screen == ScreenId::Welcome;
    const bool held = state.sides[0] || state.sides[1];
    std::vector<Item> items;
    // What is always there comes first, so that nothing moves when the rest comes and goes.
    items.push_back({state.other_language, TextId::language_name, NextLanguage{}, true,
                     button_width(ui, state.other_language, Style::Bar), 0, 0});
    items.push_back(button_item(ui, TextId::button_text_size, NextTextSize{}, true));
    items.push_back(button_item(ui, TextId::button_by_name, ChooseByName{}, state.screen != ScreenId::PickAisle));
    Item take_back = button_item(ui, TextId::button_take_back, TakeBack{}, true);
    Item start_over = button_item(ui, TextId::button_start_over, StartOver{}, held || !home);
    take_back.width = start_over.width = std::max(take_back.width, start_over.width); // they stand in one place
    items.push_back(state.can_take_back && !held ? take_back : start_over);
    items.push_back(button_item(ui, TextId::button_back, GoBack{}, !home));
    const bool several = paging.pages > 1;
    items.push_back(button_item(ui, TextId::button_page_before, TurnPage{-1}, several && paging.page > 0));
    const std::string page = ui.language.fill(
        TextId::page_of, {{"n", std::to_string(paging.page + 1)}, {"all", std::to_string(paging.pages)}});
    // Figures are equally wide: the room for two and two of them holds every count of pages.
    const std::string widest = ui.language.fill(TextId::page_of, {{"n", "00"}, {"all", "00"}});
    items.push_back({page, std::nullopt, std::nullopt, several, text_width(ui, widest, Style::Bar), 0, 0});
    items.push_back(button_item(ui, TextId::button_page_next, TurnPage{1}, several && paging.page + 1 < paging.pages));
    return items;
}

/// Puts the items into rows; the page buttons stay together and stand at the right end.
int lay_out(const Ui& ui, std::vector<Item>& items, float width)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    constexpr std::size_t own = 5; // behind them come the page buttons
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
    if (x + group > width)
        ++row;
    x = width - group;
    for (std::size_t i = own; i < items.size(); ++i) {
        items[i].x = x;
        items[i].row = row;
        x += items[i].width + gap;
    }
    return row + 1;
}

float bar_height(const Ui& ui)
{
    return std::max(ui.look.sizes.target, line_height(ui, Style::Bar) + 2 * ui.look.sizes.unit);
}

} // namespace

Frame frame_of(const Ui& ui, const State& state)
{
    const auto& sizes = ui.look.sizes;
    Area rest{{0, 0}, {sizes.width, sizes.height}};
    rest = rest.inset(sizes.margin, sizes.margin * 0.75F);
    auto items = items_of(ui, state, Paging{}); // room is kept for all of them, so that none pushes others about
    const int rows = lay_out(ui, items, rest.width());
    const float height = bar_height(ui);
    Frame frame;
    frame.bar = rest.cut_bottom(static_cast<float>(rows) * (height + sizes.unit) - sizes.unit);
    rest.cut_bottom(1.5F * sizes.unit);
    const float notice =
        std::max(line_height(ui, Style::Bar), text_height(ui, state.notice.words, Style::Bar, rest.width()));
    frame.notice = rest.cut_bottom(notice);
    rest.cut_bottom(sizes.unit);
    frame.body = rest;
    return frame;
}

void close_frame(const Ui& ui, const State& state, const Frame& frame, const Paging& paging, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    text(ui, state.notice.words, Style::Bar, frame.notice);
    const float y = frame.bar.low.y - 0.75F * sizes.unit;
    canvas().AddLine({frame.bar.low.x, y}, {frame.bar.high.x, y}, ui.look.theme.hairline, sizes.line);
    auto items = items_of(ui, state, paging);
    lay_out(ui, items, frame.bar.width());
    const float height = bar_height(ui);
    for (const auto& item : items) {
        if (!item.there)
            continue;
        Area area;
        area.low = {frame.bar.low.x + item.x, frame.bar.low.y + static_cast<float>(item.row) * (height + sizes.unit)};
        area.high = {area.low.x + item.width, area.low.y + height};
        if (!item.action) {
            area.low.y += (height - line_height(ui, Style::Bar)) / 2;
            text(ui, item.words, Style::Bar, area, Align::Centre);
        } else if (button(ui, item.words, item.id, area, {Style::Bar, false, false, Align::Centre}))
            asked.push_back(*item.action);
    }
}

} // namespace ui
