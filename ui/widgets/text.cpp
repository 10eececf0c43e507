#include "ui/widgets/text.h"

#include <algorithm>
#include <cfloat>
#include <cmath>

namespace ui {
namespace {

const char* begin(std::string_view words)
{
    return words.data();
}
const char* end(std::string_view words)
{
    return words.data() + words.size();
}

float width_of(const ImFont& font, std::string_view words)
{
    return std::ceil(font.CalcTextSizeA(font.FontSize, FLT_MAX, 0.0F, begin(words), end(words)).x);
}

/// Whether a number ends here and a short unit follows ("39 g", "1/2 cup"): the two belong on one line.
bool is_number_before_unit(std::string_view words, std::size_t blank)
{
    constexpr std::size_t longest_unit = 3;
    if (blank == 0 || blank + 1 >= words.size() || words[blank - 1] < '0' || words[blank - 1] > '9')
        return false;
    const auto stop = words.find_first_of(" )\n", blank + 1);
    return (stop == std::string_view::npos ? words.size() : stop) - blank - 1 <= longest_unit;
}

/// Whether a word is the name of a file or folder, which people give as they like: no word of ours looks so.
bool is_file_name(std::string_view word)
{
    const auto dot = word.find('.');
    return word.find_first_of("/_") != std::string_view::npos ||
           (dot != std::string_view::npos && dot + 3 < word.size());
}

/// Where a file name that is wider than a line breaks: behind the last of its signs that fits, else behind a letter.
std::size_t break_in_name(const ImFont& font, std::string_view name, float width)
{
    std::size_t behind_sign = 0;
    std::size_t behind_letter = 0;
    for (std::size_t at = 1; at < name.size(); ++at) {
        if ((static_cast<unsigned char>(name[at]) & 0xC0U) == 0x80U) // inside a letter (RFC 3629)
            continue;
        if (width_of(font, name.substr(0, at)) > width && behind_letter > 0)
            break;
        behind_letter = at;
        if (std::string_view("/_-.").find(name[at - 1]) != std::string_view::npos)
            behind_sign = at;
    }
    return behind_sign > 0 ? behind_sign : behind_letter;
}

/// The words as they break into lines: at blanks, never inside a word that fits; names of files also inside.
std::vector<std::string_view> lines_of(const ImFont& font, std::string_view words, float width)
{
    std::vector<std::string_view> lines;
    std::size_t start = 0;
    std::size_t fits = 0; // the end of the last word that still fits
    std::size_t good = 0; // the same, but not between a number and its unit
    std::size_t at = 0;
    const auto push = [&](std::size_t stop) {
        lines.push_back(words.substr(start, stop - start));
        start = words.find_first_not_of(' ', stop);
        start = start == std::string_view::npos ? words.size() : start;
        if (start < words.size() && words[start] == '\n')
            ++start;
        fits = start;
        good = start;
        at = start;
    };
    while (at < words.size()) {
        const auto stop = words.find_first_of(" \n", at);
        const std::size_t word_end = stop == std::string_view::npos ? words.size() : stop;
        // Half a pixel more: widths are whole pixels, and an area's is the difference of two places that need not be.
        if (width_of(font, words.substr(start, word_end - start)) > width + 0.5F && fits > start) {
            push(good > start ? good : fits);
            continue;
        }
        const auto word = words.substr(start, word_end - start);
        if (fits == start && is_file_name(word) && width_of(font, word) > width + 0.5F) {
            push(start + break_in_name(font, word, width));
            continue;
        }
        fits = word_end;
        if (!is_number_before_unit(words, word_end))
            good = word_end;
        if (word_end < words.size() && words[word_end] == '\n') {
            push(word_end);
            continue;
        }
        at = word_end + 1;
    }
    if (start < words.size())
        lines.push_back(words.substr(start));
    return lines;
}

bool begins_letter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

/// Bytes from the front that are whole letters, at most so many.
std::string_view whole_front(std::string_view words, std::size_t most)
{
    while (most > 0 && most < words.size() && !begins_letter(words[most]))
        --most;
    return words.substr(0, most);
}

} // namespace

std::string cut_to_lines(const Ui& ui, const std::string& words, Style style, float width, float most_lines,
                         const std::string& behind)
{
    const auto fits = [&](const std::string& shown) {
        return widest_word(ui, shown, style) <= width &&
               text_height(ui, shown, style, width) < (most_lines + 0.5F) * line_height(ui, style);
    };
    if (fits(words + behind))
        return words + behind;
    const auto begun = [&](std::size_t bytes) { return std::string(whole_front(words, bytes)) + "..." + behind; };
    std::size_t short_enough = 0;
    std::size_t too_long = words.size();
    while (too_long - short_enough > 1) {
        const auto middle = (short_enough + too_long) / 2;
        (fits(begun(middle)) ? short_enough : too_long) = middle;
    }
    return begun(short_enough);
}

ImDrawList& canvas()
{
    return *ImGui::GetWindowDrawList();
}

ImFont* font_of(const Ui& ui, Style style)
{
    switch (style) {
    case Style::Bar:
        return ui.look.fonts.bar;
    case Style::Note:
    case Style::QuietNote:
        return ui.look.fonts.note;
    case Style::Strong:
        return ui.look.fonts.strong;
    case Style::Name:
        return ui.look.fonts.name;
    case Style::Figure:
        return ui.look.fonts.figure;
    case Style::Headline:
        return ui.look.fonts.headline;
    case Style::Text:
    case Style::Quiet:
        break;
    }
    return ui.look.fonts.text;
}

namespace {

float em_of(const Ui& ui, Style style)
{
    switch (style) {
    case Style::Bar:
        return ui.look.sizes.bar;
    case Style::Note:
    case Style::QuietNote:
        return ui.look.sizes.note;
    case Style::Name:
        return ui.look.sizes.name;
    case Style::Figure:
        return ui.look.sizes.figure;
    case Style::Headline:
        return ui.look.sizes.headline;
    case Style::Text:
    case Style::Quiet:
    case Style::Strong:
        break;
    }
    return ui.look.sizes.text;
}

} // namespace

float text_width(const Ui& ui, std::string_view words, Style style)
{
    return width_of(*font_of(ui, style), words);
}

float widest_word(const Ui& ui, std::string_view words, Style style)
{
    float widest = 0;
    while (!words.empty()) {
        const auto stop = words.find_first_of(" \n");
        widest = std::max(widest, text_width(ui, words.substr(0, stop), style));
        words = stop == std::string_view::npos ? std::string_view{} : words.substr(stop + 1);
    }
    return widest;
}

float line_height(const Ui& ui, Style style)
{
    return font_of(ui, style)->FontSize;
}

float text_height(const Ui& ui, std::string_view words, Style style, float width)
{
    const ImFont& font = *font_of(ui, style);
    return static_cast<float>(lines_of(font, words, width).size()) * font.FontSize;
}

std::vector<std::string_view> pieces_of_lines(const Ui& ui, std::string_view words, Style style, float width,
                                              std::size_t most_lines)
{
    const auto lines = lines_of(*font_of(ui, style), words, width);
    std::vector<std::string_view> pieces;
    for (std::size_t first = 0; first < lines.size(); first += most_lines) {
        const auto& last = lines[std::min(first + most_lines, lines.size()) - 1];
        const char* start = lines[first].data();
        pieces.emplace_back(start, static_cast<std::size_t>(last.data() + last.size() - start));
    }
    return pieces;
}

float text(const Ui& ui, std::string_view words, Style style, const Area& area, Align align, Role role)
{
    const bool quiet = style == Style::Quiet || style == Style::QuietNote;
    return text_in(ui, words, style, area, align, role, quiet ? ui.look.theme.quiet : ui.look.theme.ink);
}

float text_in(const Ui& ui, std::string_view words, Style style, const Area& area, Align align, Role role, ImU32 colour)
{
    ImFont& font = *font_of(ui, style);
    float y = area.low.y;
    float left = area.high.x;
    float right = area.low.x;
    constexpr float rounding = 1; // widths are rounded up, places to whole pixels
    bool cut = false;
    for (const auto line : lines_of(font, words, area.width())) {
        const float width = width_of(font, line);
        float x = area.low.x;
        if (align == Align::Centre)
            x += std::floor((area.width() - width) / 2);
        else if (align == Align::Right)
            x = area.high.x - width;
        canvas().AddText(&font, font.FontSize, {std::floor(x), std::floor(y)}, colour, begin(line), end(line));
        left = std::min(left, x);
        right = std::max(right, x + width);
        y += font.FontSize;
        cut = cut || width > area.width() + rounding;
    }
    cut = cut || y > area.high.y + rounding;
    if (!words.empty())
        ui.notes.push_back(
            {std::string(words), role, std::nullopt, {left, area.low.y}, {right, y}, false, em_of(ui, style), cut});
    return y - area.low.y;
}

} // namespace ui
