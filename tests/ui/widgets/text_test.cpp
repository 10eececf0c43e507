#include "tests/ui/in_window.h"
#include "ui/widgets/text.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <string>

namespace {

using ui::Style;

float lines_at(const ui::Ui& ui, const std::string& words, float width)
{
    return ui::text_height(ui, words, Style::Text, width) / ui::line_height(ui, Style::Text);
}

/// Random words of the letters a to z and n with a tilde, one blank between two.
std::string random_words(std::mt19937& random)
{
    std::string words;
    for (std::size_t i = 0; i < 1 + random() % 12; ++i) {
        words += words.empty() ? "" : " ";
        for (std::size_t letter = 0; letter < 1 + random() % 14; ++letter)
            words += random() % 20 == 0 ? "ñ" : std::string(1, static_cast<char>('a' + random() % 26));
    }
    return words;
}

std::size_t letters_of(const std::string& words)
{
    return static_cast<std::size_t>(std::ranges::count_if(
        words, [](char c) { return c != ' ' && c != '\n' && (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

} // namespace

TEST_CASE("text: breaks at blanks and at line ends, and nowhere else")
{
    test::Headless screen;
    test::in_window(screen, [](const ui::Ui& ui) {
        const float one = ui::text_width(ui, "aaa bbb", Style::Text);
        struct Case {
            std::string why;
            std::string words;
            float width;
            float lines;
        };
        const Case cases[] = {
            {"nothing", "", one, 0},
            {"all fits, to the pixel", "aaa bbb", one, 1},
            {"one pixel too few", "aaa bbb", one - 1, 2},
            {"three words", "aaa bbb ccc", one, 2},
            {"a word that does not fit stays whole", "aaaaaaaaaaaaaaaaaaaaaa", one, 1},
            {"a word that does not fit takes its own line", "a aaaaaaaaaaaaaaaaaaaaaa a", one, 3},
            {"a line end", "aaa\nbbb", one, 2},
            {"a line end behind a full line", "aaa bbb\nccc", one, 2},
            {"an empty line", "aaa\n\nbbb", one, 3},
            {"blanks at a break are not drawn", "aaa bbb   ccc ddd", one, 2},
        };
        for (const auto& c : cases) {
            CAPTURE(c.why);
            CHECK(lines_at(ui, c.words, c.width) == c.lines);
        }
    });
}

TEST_CASE("text: whatever the words, no line is wider than its area if each word fits, and no letter is lost")
{
    test::Headless screen;
    std::mt19937 random(20'261'125); // the same words on every run
    for (int run = 0; run < 200; ++run) {
        const std::string words = random_words(random);
        CAPTURE(words);
        float height = 0;
        float width = 0;
        test::in_window(screen, [&](const ui::Ui& ui) {
            width = ui::widest_word(ui, words, Style::Text) + static_cast<float>(random() % 300);
            height = ui::text_height(ui, words, Style::Text, width);
            CHECK(ui::text(ui, words, Style::Text, {{100, 50}, {100 + width, 50 + height}}) == height);
        });
        const auto& notes = screen.notes();
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].words == words);
        CHECK(notes[0].low.x >= 100);
        CHECK(notes[0].high.x <= 100 + width);
        CHECK(notes[0].high.y == 50 + height);
        CHECK(!notes[0].cut);
        const auto corners = test::corners_drawn();
        CHECK(corners.size() == 4 * letters_of(words));
        CHECK(std::ranges::max(corners, {}, &ImVec2::x).x <= 100 + width + 2); // light hinting may lean out a little
    }
}

TEST_CASE("text: says of itself when it is cut")
{
    test::Headless screen;
    test::in_window(screen, [](const ui::Ui& ui) {
        const float line = ui::line_height(ui, Style::Text);
        ui::text(ui, "incomprehensibilities", Style::Text, {{0, 0}, {100, line}});
        ui::text(ui, "three lines of words in one line's room", Style::Text, {{0, 100}, {200, 100 + line}});
        ui::text(ui, "fits", Style::Text, {{0, 300}, {200, 300 + line}});
    });
    REQUIRE(screen.notes().size() == 3);
    CHECK(screen.notes()[0].cut);
    CHECK(screen.notes()[1].cut);
    CHECK(!screen.notes()[2].cut);
}

TEST_CASE("text: stands left, in the middle or right in its area")
{
    test::Headless screen;
    const ui::Area area{{100, 0}, {500, 60}};
    float width = 0;
    test::in_window(screen, [&](const ui::Ui& ui) {
        width = ui::text_width(ui, "words", Style::Text);
        for (const auto align : {ui::Align::Left, ui::Align::Centre, ui::Align::Right})
            ui::text(ui, "words", Style::Text, area, align);
    });
    REQUIRE(screen.notes().size() == 3);
    CHECK(screen.notes()[0].low.x == area.low.x);
    CHECK(std::abs(screen.notes()[1].low.x - (300 - width / 2)) <= 1);
    CHECK(screen.notes()[2].high.x == area.high.x);
}

TEST_CASE("text: every style tells the size of its letters, none under 24 px")
{
    test::Headless screen;
    const Style styles[] = {Style::Bar,    Style::Note, Style::QuietNote, Style::Text,    Style::Quiet,
                            Style::Strong, Style::Name, Style::Figure,    Style::Headline};
    test::in_window(screen, [&styles](const ui::Ui& ui) {
        for (const Style style : styles)
            ui::text(ui, "words", style, {{0, 0}, {1000, 200}});
    });
    const float sizes[] = {24, 24, 24, 30, 30, 30, 38, 47, 59};
    REQUIRE(screen.notes().size() == std::size(styles));
    for (std::size_t i = 0; i < std::size(styles); ++i)
        CHECK(screen.notes()[i].letter_px == sizes[i]);
}

TEST_CASE("text: what is too long is shortened at its end, and what must stand behind it stays")
{
    test::Headless screen;
    test::in_window(screen, [](const ui::Ui& ui) {
        const std::string name = "Whole milk yogurt for toddlers, piña";
        const std::string behind = " is now on the left.";
        CHECK(ui::cut_to_lines(ui, name, Style::Text, 2000, 1, behind) == name + behind);
        for (float width = 500; width > 350; width -= 7) {
            const auto shown = ui::cut_to_lines(ui, name, Style::Text, width, 1, behind);
            CHECK(shown.ends_with("..." + behind));
            CHECK(name.starts_with(shown.substr(0, shown.find("..."))));
            CHECK(lines_at(ui, shown, width) == doctest::Approx(1));
        }
    });
}
