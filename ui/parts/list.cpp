#include "ui/parts/list.h"

#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

float inner_width(const Ui& ui, float width)
{
    return width - 4 * ui.look.sizes.unit;
}

float choice_height(const Ui& ui, const Choice& choice, float width)
{
    const float inner = inner_width(ui, width);
    float height = text_height(ui, choice.name, Style::Text, inner) + 2 * ui.look.sizes.unit;
    if (!choice.detail.empty())
        height += text_height(ui, choice.detail, Style::QuietNote, inner);
    return std::max(height, ui.look.sizes.target);
}

void draw_choice(const Ui& ui, const Choice& choice, const Area& area)
{
    canvas().AddRect(area.low, area.high, ui.look.theme.hairline, ui.look.sizes.corner, 0, ui.look.sizes.line);
    const bool chosen = button(ui, choice.name, std::nullopt, area, {Style::Text, false, true, Align::Left});
    if (ImGui::IsItemActive() && ImGui::IsItemHovered())
        canvas().AddRect(area.low, area.high, ui.look.theme.ink, ui.look.sizes.corner, 0, 3 * ui.look.sizes.line);
    Area words = area.inset(2 * ui.look.sizes.unit, ui.look.sizes.unit);
    words.cut_top(text(ui, choice.name, Style::Text, words));
    if (!choice.detail.empty())
        text(ui, choice.detail, Style::QuietNote, words);
    if (chosen)
        choice.chosen();
}

/// As many columns as leave every word whole and a name mostly on one line.
std::size_t columns_for(const Ui& ui, const std::vector<Choice>& choices, float width)
{
    float widest = 0;
    for (const auto& choice : choices)
        widest = std::max({widest, widest_word(ui, choice.name, Style::Text),
                           std::min(text_width(ui, choice.name, Style::Text), 45 * ui.look.sizes.unit),
                           widest_word(ui, choice.detail, Style::QuietNote)});
    const float column = widest + 6 * ui.look.sizes.unit;
    return static_cast<std::size_t>(std::clamp(std::floor(width / column), 1.0F, 3.0F));
}

} // namespace

std::vector<Block> list_blocks(const Ui& ui, const std::vector<Choice>& choices, float width)
{
    const std::size_t columns = columns_for(ui, choices, width);
    const float gap = 1.5F * ui.look.sizes.unit;
    const float one = std::floor((width + gap) / static_cast<float>(columns) - gap);
    std::vector<Block> blocks;
    for (std::size_t first = 0; first < choices.size(); first += columns) {
        const std::size_t stop = std::min(first + columns, choices.size());
        float height = 0;
        for (std::size_t i = first; i < stop; ++i)
            height = std::max(height, choice_height(ui, choices[i], one));
        blocks.push_back({height,
                          [&ui, &choices, first, stop, one, gap](Area area) {
                              for (std::size_t i = first; i < stop; ++i) {
                                  ImGui::PushID(static_cast<int>(i));
                                  draw_choice(ui, choices[i], area.cut_left(one));
                                  area.cut_left(gap);
                                  ImGui::PopID();
                              }
                          },
                          false, gap});
    }
    return blocks;
}

} // namespace ui
