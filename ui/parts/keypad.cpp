#include "ui/parts/keypad.h"

#include "ui/widgets/button.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace ui {
namespace {

constexpr int rows = 4;
constexpr int columns = 3;

float gap_of(const Ui& ui)
{
    return 1.5F * ui.look.sizes.unit;
}

/// As on a telephone: 1 to 9 from the top, below them erase, 0, clear.
KeypadKey key_at(int row, int column)
{
    using Kind = KeypadKey::Kind;
    if (row < rows - 1)
        return {Kind::Digit, 1 + row * columns + column};
    if (column == 1)
        return {Kind::Digit, 0};
    return {column == 0 ? Kind::Erase : Kind::Clear, 0};
}

/// Large digits, but none so large that the keys would fill the page.
Style digit_style(const Ui& ui)
{
    const float high = rows * (line_height(ui, Style::Name) + 2 * ui.look.sizes.unit + gap_of(ui));
    return high > 0.6F * std::min(ui.look.sizes.height, ui.look.sizes.width) ? Style::Bar : Style::Name;
}

Style word_style(const Ui& ui)
{
    return digit_style(ui) == Style::Bar ? Style::Bar : Style::Note;
}

bool draw_key(const Ui& ui, KeypadKey key, const Area& area)
{
    if (key.kind == KeypadKey::Kind::Digit)
        return button(ui, std::to_string(key.digit), std::nullopt, area,
                      {digit_style(ui), false, false, Align::Centre});
    const auto id = key.kind == KeypadKey::Kind::Erase ? TextId::keypad_erase : TextId::keypad_clear;
    return button(ui, id, area, {word_style(ui), false, false, Align::Centre});
}

} // namespace

bool keypad_is_small(const Ui& ui)
{
    return digit_style(ui) == Style::Bar;
}

float keypad_height(const Ui& ui)
{
    const float one = std::max(ui.look.sizes.target, line_height(ui, digit_style(ui)) + 2 * ui.look.sizes.unit);
    return rows * one + (rows - 1) * gap_of(ui);
}

float keypad_width(const Ui& ui)
{
    float one = ui.look.sizes.target;
    for (const auto id : {TextId::keypad_erase, TextId::keypad_clear})
        one = std::max(one, button_width(ui, ui.language.text(id), word_style(ui)));
    return columns * one + (columns - 1) * gap_of(ui);
}

std::optional<KeypadKey> keypad(const Ui& ui, Area area)
{
    const float gap = gap_of(ui);
    const float high = std::floor((area.height() - (rows - 1) * gap) / rows);
    const float wide = std::floor((area.width() - (columns - 1) * gap) / columns);
    std::optional<KeypadKey> touched;
    for (int row = 0; row < rows; ++row) {
        Area line = area.cut_top(high);
        area.cut_top(gap);
        for (int column = 0; column < columns; ++column) {
            const auto key = key_at(row, column);
            if (draw_key(ui, key, line.cut_left(wide)))
                touched = key;
            line.cut_left(gap);
        }
    }
    return touched;
}

} // namespace ui
