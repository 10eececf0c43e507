// Words on the screen: measured, broken into lines, drawn and noted.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ui {

/// The looks that letters can have.
enum class Style { Bar, Note, QuietNote, Text, Quiet, Strong, Name, Figure, Headline };

/// Where lines stand in their area.
enum class Align { Left, Centre, Right };

/// The font of a style in this look.
[[nodiscard]] ImFont* font_of(const Ui& ui, Style style);

/// The width of the words in one line.
[[nodiscard]] float text_width(const Ui& ui, std::string_view words, Style style);

/// The width of the widest single word: no column may be narrower.
[[nodiscard]] float widest_word(const Ui& ui, std::string_view words, Style style);

/// The height of the words broken into lines of that width.
[[nodiscard]] float text_height(const Ui& ui, std::string_view words, Style style, float width);

/// One line's height.
[[nodiscard]] float line_height(const Ui& ui, Style style);

/// The words in pieces of at most that many lines, for what may be longer than a page. They point into `words`.
[[nodiscard]] std::vector<std::string_view> pieces_of_lines(const Ui& ui, std::string_view words, Style style,
                                                            float width, std::size_t most_lines);

/// The words, or as much of their beginning as fits so many lines of that width with dots and `behind` after it, in
/// whole letters.
[[nodiscard]] std::string cut_to_lines(const Ui& ui, const std::string& words, Style style, float width,
                                       float most_lines, const std::string& behind = {});

/// Draws words from the top of the area and notes them. Returns the height used.
float text(const Ui& ui, std::string_view words, Style style, const Area& area, Align align = Align::Left,
           Role role = Role::Text);

/// The same in a colour of its own.
float text_in(const Ui& ui, std::string_view words, Style style, const Area& area, Align align, Role role,
              ImU32 colour);

/// The list that everything is drawn on.
[[nodiscard]] ImDrawList& canvas();

} // namespace ui
