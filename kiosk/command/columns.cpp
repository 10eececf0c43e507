#include "kiosk/command/columns.h"

#include <algorithm>
#include <ostream>

namespace kiosk {

std::size_t letters_in(std::string_view utf8)
{
    return static_cast<std::size_t>(std::count_if(
        utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

void Columns::row(std::vector<std::string> cells)
{
    lines_.push_back({std::move(cells), false});
}

void Columns::line(std::string words)
{
    lines_.push_back({{std::move(words)}, true});
}

void Columns::print(std::ostream& out) const
{
    std::vector<std::size_t> widths;
    for (const auto& line : lines_)
        for (std::size_t i = 0; !line.whole && i < line.cells.size(); ++i) {
            widths.resize(std::max(widths.size(), i + 1));
            widths[i] = std::max(widths[i], letters_in(line.cells[i]));
        }
    for (const auto& line : lines_) {
        std::string text;
        for (std::size_t i = 0; i < line.cells.size(); ++i) {
            const bool last = i + 1 == line.cells.size();
            const std::size_t width = line.whole ? 0 : widths[i];
            const std::size_t letters = letters_in(line.cells[i]);
            const std::string room(width > letters ? width - letters : 0, ' ');
            text += i == 0 || last ? line.cells[i] + (last ? "" : room) : room + line.cells[i];
            text += last ? "" : "  ";
        }
        text.erase(text.find_last_not_of(' ') + 1);
        out << text << "\n";
    }
}

} // namespace kiosk
