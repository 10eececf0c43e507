#include "ui/parts/list.h"

#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace ui {
namespace {

float inner_width(const Ui& ui, float width)
{
    return width - 4 * ui.look.sizes.unit;
}

/// The letters of a list: smaller ones where a choice in large letters would be higher than a page.
struct ListStyle {
    Style name = Style::Text;
    Style detail = Style::QuietNote;
};

float choice_height(const Ui& ui, const Choice& choice, ListStyle style, float width)
{
    const float inner = inner_width(ui, width);
    float height = text_height(ui, choice.name, style.name, inner) + 2 * ui.look.sizes.unit;
    if (!choice.detail.empty())
        height += text_height(ui, choice.detail, style.detail, inner);
    return std::max(height, ui.look.sizes.target);
}

void draw_choice(const Ui& ui, const Choice& choice, ListStyle style, const Area& area)
{
    canvas().AddRect(area.low, area.high, ui.look.theme.hairline, ui.look.sizes.corner, 0, ui.look.sizes.line);
    const bool chosen = button(ui, choice.name, std::nullopt, area, {style.name, false, true, Align::Left});
    if (ImGui::IsItemActive() && ImGui::IsItemHovered())
        canvas().AddRect(area.low, area.high, ui.look.theme.ink, ui.look.sizes.corner, 0, 3 * ui.look.sizes.line);
    Area words = area.inset(2 * ui.look.sizes.unit, ui.look.sizes.unit);
    words.cut_top(text(ui, choice.name, style.name, words));
    if (!choice.detail.empty())
        text(ui, choice.detail, style.detail, words);
    if (chosen)
        choice.chosen();
}

/// As many columns as leave every word whole and a name mostly on one line.
std::size_t columns_for(const Ui& ui, const std::vector<Choice>& choices, float width, std::size_t most)
{
    float widest = 0;
    for (const auto& choice : choices)
        widest = std::max({widest, widest_word(ui, choice.name, Style::Text),
                           std::min(text_width(ui, choice.name, Style::Text), 45 * ui.look.sizes.unit),
                           widest_word(ui, choice.detail, Style::QuietNote)});
    const float column = widest + 6 * ui.look.sizes.unit;
    return static_cast<std::size_t>(std::clamp(std::floor(width / column), 1.0F, static_cast<float>(most)));
}

float column_of(float width, std::size_t columns, float gap)
{
    return std::floor((width + gap) / static_cast<float>(columns) - gap);
}

} // namespace

Choice choice_within(const Ui& ui, Choice choice, float width, float height)
{
    constexpr float most_lines = 3; // of each: enough to know a package by
    const float inner = inner_width(ui, width);
    const float name_line = line_height(ui, Style::Text);
    const float detail_line = line_height(ui, Style::QuietNote);
    const float room = height - 2 * ui.look.sizes.unit;
    const float for_detail = std::clamp(std::floor((room - name_line) / detail_line), 1.0F, most_lines);
    choice.detail = cut_to_lines(ui, choice.detail, Style::QuietNote, inner, for_detail);
    const float left = room - text_height(ui, choice.detail, Style::QuietNote, inner);
    choice.name =
        cut_to_lines(ui, choice.name, Style::Text, inner, std::clamp(std::floor(left / name_line), 1.0F, most_lines));
    return choice;
}

std::vector<Block> list_blocks(const Ui& ui, const std::vector<Choice>& choices, float width, std::size_t most_columns)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    std::size_t columns = columns_for(ui, choices, width, most_columns);
    float one = column_of(width, columns, gap);
    // Under large letters a long name in a narrow column would be higher than a page.
    ListStyle style;
    const auto too_high = [&](const Choice& choice) {
        return choice_height(ui, choice, style, one) > 0.45F * ui.look.sizes.height;
    };
    for (; columns > 1 && std::ranges::any_of(choices, too_high); one = column_of(width, columns, gap))
        --columns;
    if (std::ranges::any_of(choices, too_high))
        style = {Style::Bar, Style::Bar};
    std::vector<Block> blocks;
    for (std::size_t first = 0; first < choices.size(); first += columns) {
        const std::size_t stop = std::min(first + columns, choices.size());
        float height = 0;
        for (std::size_t i = first; i < stop; ++i)
            height = std::max(height, choice_height(ui, choices[i], style, one));
        blocks.push_back({height,
                          [&ui, &choices, style, first, stop, one, gap](Area area) {
                              for (std::size_t i = first; i < stop; ++i) {
                                  ImGui::PushID(static_cast<int>(i));
                                  draw_choice(ui, choices[i], style, area.cut_left(one));
                                  area.cut_left(gap);
                                  ImGui::PopID();
                              }
                          },
                          false, gap});
    }
    return blocks;
}

} // namespace ui
