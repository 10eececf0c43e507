#include "tests/support/pictures.h"

#include "kiosk/command/picture.h"
#include "tests/support/process.h"
#include "tests/support/temp_folder.h"
#include "tests/support/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <sstream>
#include <stdexcept>

namespace test {
namespace {

using kiosk::Picture;

/// Whole pixels: low <= x < high.
struct Box {
    int left, top, right, bottom;
    [[nodiscard]] int width() const { return right - left; }
    [[nodiscard]] int height() const { return bottom - top; }
};

/// Where a note's words are looked for: inside of a button's frame, and a little around bare words.
Box box_of(const ui::Note& note, const Picture& picture)
{
    const int inside = note.touchable ? 5 : -3;
    return {std::clamp(static_cast<int>(note.low.x) + inside, 0, picture.width),
            std::clamp(static_cast<int>(note.low.y) + inside, 0, picture.height),
            std::clamp(static_cast<int>(std::ceil(note.high.x)) - inside, 0, picture.width),
            std::clamp(static_cast<int>(std::ceil(note.high.y)) - inside, 0, picture.height)};
}

bool is_read(const ui::Note& note)
{
    const bool over_other_words = note.touchable && note.letter_px == 0; // which are noted by themselves
    return note.role != ui::Role::Picture && !over_other_words && !plain_words(note.words).empty();
}

int grey_at(const Picture& picture, int x, int y)
{
    const auto at =
        (static_cast<std::size_t>(y) * static_cast<std::size_t>(picture.width) + static_cast<std::size_t>(x)) * 4;
    return (picture.rgba[at] * 3 + picture.rgba[at + 1] * 6 + picture.rgba[at + 2]) / 10;
}

/// Ground and ink of a cutting: what most of it is, and what is furthest from that.
struct Greys {
    int ground = 255;
    int ink = 0;
};

Greys greys_of(const Picture& picture, const Box& box)
{
    std::array<int, 256> counts{};
    for (int y = box.top; y < box.bottom; ++y)
        for (int x = box.left; x < box.right; ++x)
            ++counts[static_cast<std::size_t>(grey_at(picture, x, y))];
    Greys greys;
    greys.ground = static_cast<int>(std::ranges::max_element(counts) - counts.begin());
    greys.ink = greys.ground;
    for (int grey = 0; grey < 256; ++grey)
        if (counts[static_cast<std::size_t>(grey)] > 0 &&
            std::abs(grey - greys.ground) > std::abs(greys.ink - greys.ground))
            greys.ink = grey;
    return greys;
}

/// White paper onto which cuttings are laid, one below the other.
struct Sheet {
    Picture paper;
    std::vector<int> tops; ///< of the cuttings, and behind the last one
};

constexpr int room = 24; // around a cutting

void lay(Sheet& sheet, const Picture& from, const Box& box, int top)
{
    const Greys greys = greys_of(from, box);
    if (greys.ground == greys.ink)
        return; // nothing is drawn there
    for (int y = 0; y < box.height(); ++y)
        for (int x = 0; x < box.width(); ++x) {
            const int grey = grey_at(from, box.left + x, box.top + y);
            const int light = (grey - greys.ink) * 255 / (greys.ground - greys.ink);
            const auto at = (static_cast<std::size_t>(top + y) * static_cast<std::size_t>(sheet.paper.width) +
                             static_cast<std::size_t>(room + x)) *
                            4;
            for (std::size_t i = 0; i < 3; ++i)
                sheet.paper.rgba[at + i] = static_cast<std::uint8_t>(std::clamp(light, 0, 255));
        }
}

Sheet cut_out(const Picture& picture, const std::vector<Box>& boxes)
{
    Sheet sheet;
    int height = room;
    int width = 0;
    for (const Box& box : boxes) {
        sheet.tops.push_back(height);
        height += box.height() + room;
        width = std::max(width, box.width());
    }
    sheet.tops.push_back(height);
    sheet.paper = {width + 2 * room, height, {}};
    sheet.paper.rgba.assign(static_cast<std::size_t>(sheet.paper.width) * static_cast<std::size_t>(height) * 4, 255);
    for (std::size_t i = 0; i < boxes.size(); ++i)
        lay(sheet, picture, boxes[i], sheet.tops[i]);
    return sheet;
}

/// What was read at each cutting.
std::vector<std::string> read_sheet(const Sheet& sheet, std::string_view language)
{
    const TempFolder folder;
    const auto file = folder.file("sheet.png");
    kiosk::write_png(sheet.paper, file);
    // One thread: several of these run beside one another. Mode 11: find as much text as there is, in any order.
    const auto ended =
        run({"tesseract", file, "stdout", "-l", std::string(language), "--dpi", "100", "--psm", "11", "tsv"},
            {{"OMP_THREAD_LIMIT", "1"}});
    if (ended.status != 0)
        throw std::runtime_error("tesseract does not run: " + ended.err);
    std::vector<std::string> read(sheet.tops.size() - 1);
    std::istringstream lines(ended.out);
    std::string line;
    std::getline(lines, line); // the header
    while (std::getline(lines, line)) {
        std::istringstream cells(line);
        std::array<std::string, 12> cell;
        for (auto& one : cell)
            std::getline(cells, one, '\t');
        if (plain_words(cell[11]).empty())
            continue;
        const int middle = std::stoi(cell[7]) + std::stoi(cell[9]) / 2;
        const auto below = std::ranges::upper_bound(sheet.tops, middle);
        if (below != sheet.tops.begin() && below != sheet.tops.end())
            read[static_cast<std::size_t>(below - sheet.tops.begin()) - 1] += cell[11] + " ";
    }
    return read;
}

bool has_digit(const std::string& word)
{
    return std::ranges::any_of(word, [](unsigned char c) { return std::isdigit(c) != 0; });
}

/// Letters and digits that OCR cannot tell apart outside a word ("0 g" is read as "Og"), as one of each pair.
std::string without_twins(std::string text)
{
    for (char& c : text)
        c = c == 'o' ? '0' : c == 'l' || c == 'i' ? '1' : c;
    return text;
}

/// Words that an eye runs together ("1 of3") or takes apart count as well: all that was read, without blanks.
bool is_in(const std::string& word, const std::vector<std::string>& read, const std::string& all)
{
    if (without_twins(all).find(without_twins(word)) != std::string::npos)
        return true;
    if (has_digit(word))
        return false;
    const std::size_t most = word.size() >= 8 ? 2 : 1;
    return std::ranges::any_of(read, [&](const std::string& other) { return letters_apart(word, other) <= most; });
}

void compare(const ui::Note& note, const std::string& seen, ReadBack& into)
{
    const auto read = plain_words(seen);
    std::string all;
    for (const auto& word : read)
        all += word;
    for (const auto& word : plain_words(note.words)) {
        const bool figure = has_digit(word);
        if (!figure && word.size() < 2)
            continue;
        ++(figure ? into.figures : into.words);
        if (!is_in(word, read, all))
            (figure ? into.missing_figures : into.missing_words).push_back({word, note.words, seen});
    }
}

} // namespace

ReadBack read_back(const Picture& picture, const ui::Notes& notes, std::string_view language)
{
    std::vector<Box> boxes;
    std::vector<const ui::Note*> said;
    for (const auto& note : notes) {
        const Box box = box_of(note, picture);
        if (!is_read(note) || box.width() <= 0 || box.height() <= 0)
            continue;
        boxes.push_back(box);
        said.push_back(&note);
    }
    const auto read = read_sheet(cut_out(picture, boxes), language);
    ReadBack result;
    for (std::size_t i = 0; i < said.size(); ++i)
        compare(*said[i], read[i], result);
    return result;
}

} // namespace test
