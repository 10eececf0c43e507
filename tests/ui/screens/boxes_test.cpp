// Nothing is cut, covered, too small or outside, on any screen and page, in every window, text size and language.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/screens/screens.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <span>
#include <string>
#include <vector>

namespace {

using ui::Note;

constexpr float rounding = 1; // places are rounded to whole pixels

bool apart(const Note& a, const Note& b)
{
    const float wide = std::min(a.high.x, b.high.x) - std::max(a.low.x, b.low.x);
    const float high = std::min(a.high.y, b.high.y) - std::max(a.low.y, b.low.y);
    return wide <= rounding || high <= rounding;
}

bool inside(const Note& inner, ImVec2 low, ImVec2 high)
{
    return inner.low.x >= low.x - rounding && inner.low.y >= low.y - rounding && inner.high.x <= high.x + rounding &&
           inner.high.y <= high.y + rounding;
}

/// A touchable area with words of their own in it, such as a row of a list, or of a table that opens where it comes
/// from.
bool holds_words(const Note& note)
{
    return note.touchable && (note.letter_px == 0 || note.id == ui::TextId::why_hint);
}

bool may_share_a_place(const Note& a, const Note& b)
{
    if (holds_words(a) && !b.touchable)
        return inside(b, a.low, a.high);
    if (holds_words(b) && !a.touchable)
        return inside(a, b.low, b.high);
    return false;
}

std::string told(const Note& note)
{
    const auto px = [](float at) { return std::to_string(std::lround(at)); };
    return "\"" + note.words + "\" at " + px(note.low.x) + "," + px(note.low.y) + " to " + px(note.high.x) + "," +
           px(note.high.y);
}

std::string fault_of(const Note& note, const ui::Sizes& sizes)
{
    if (!inside(note, {0, 0}, {sizes.width, sizes.height}))
        return "outside: ";
    if (note.cut)
        return "cut: ";
    if (note.touchable && std::min(note.high.x - note.low.x, note.high.y - note.low.y) < sizes.target - rounding)
        return "too small to touch: ";
    if (note.letter_px != 0 && note.letter_px < 24)
        return "letters too small: ";
    return "";
}

std::string faults_of(const ui::Notes& notes, const ui::Sizes& sizes)
{
    std::string faults;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        if (const auto fault = fault_of(notes[i], sizes); !fault.empty())
            faults += fault + told(notes[i]) + "\n";
        for (std::size_t j = i + 1; j < notes.size(); ++j)
            if (!apart(notes[i], notes[j]) && !may_share_a_place(notes[i], notes[j]))
                faults += "over each other: " + told(notes[i]) + " and " + told(notes[j]) + "\n";
    }
    return faults;
}

bool has_next_page(const ui::Notes& notes)
{
    return std::ranges::any_of(notes, [](const Note& note) { return note.id == ui::TextId::button_page_next; });
}

struct Sweep {
    int pages = 0;
    int faulty = 0;
};

void check_all_pages(test::Headless& screen, const ui::Language& language, test::NamedState named, Sweep& sweep)
{
    constexpr int most_pages = 250;
    for (named.state.page = 0; named.state.page < most_pages; ++named.state.page) {
        screen.frame([&](const ui::Ui& ui, ui::Actions& asked) {
            ui::draw({language, ui.look, ui.notes}, named.state, asked);
        });
        ++sweep.pages;
        const auto faults = faults_of(screen.notes(), screen.look().sizes);
        if (!faults.empty() && ++sweep.faulty <= 20) // enough to begin with
            FAIL_CHECK(named.name, " page ", named.state.page + 1, " in ", language.code(), ":\n", faults);
        if (!has_next_page(screen.notes()))
            return;
    }
    FAIL_CHECK(named.name, " has no last page");
}

using States = std::vector<test::NamedState> (*)(const ui::Language&);

void check_glass(const ui::Glass& glass, int percent, States states, int least_pages)
{
    test::Headless screen(test::Headless::On(glass), percent);
    CAPTURE(glass.width);
    CAPTURE(percent);
    Sweep sweep;
    std::size_t at = 0;
    for (const std::string code : {"en", "es"}) {
        const auto& language = test::language(code);
        for (auto& named : states(language)) {
            if (at++ % PAIRSTAND_ONE_IN != 0)
                continue;
            named.state.text_percent = percent;
            check_all_pages(screen, language, std::move(named), sweep);
        }
    }
    CHECK(sweep.faulty == 0);
    CHECK(sweep.pages > least_pages / PAIRSTAND_ONE_IN);
}

void check_window(ImVec2 size)
{
    for (const int percent : ui::text_percents) {
        if (PAIRSTAND_ONE_IN > 1 && percent != 300)
            continue; // letters of every size take their time to make
        check_glass({size.x, size.y}, percent, test::hard_states, 200);
        check_glass({size.x, size.y}, percent, test::access_states, 20);
    }
}

/// Panels as they are sold: the letters of 100 % are as large there as the distance asks for.
constexpr ui::Glass measured[] = {
    {1280, 800, 5.93F, 500},  // 10.1 inches, 216 mm wide
    {1920, 1080, 4.03F, 500}, // 21.5 inches, 476 mm wide
    {800, 1280, 5.93F, 500},  // 10.1 inches, upright
    {1920, 1080, 5.58F, 500}, // 15.6 inches, 344 mm wide
};

} // namespace

TEST_CASE("boxes: every screen at 1280x800")
{
    check_window({1280, 800});
}

TEST_CASE("boxes: every screen at 1920x1080")
{
    check_window({1920, 1080});
}

TEST_CASE("boxes: every screen at 800x1280")
{
    check_window({800, 1280});
}

TEST_CASE("boxes: every screen on glass that was measured")
{
    for (const auto& glass : std::span(measured).first(PAIRSTAND_ONE_IN > 1 ? 1 : std::size(measured)))
        for (const int percent : {100, 300}) {
            check_glass(glass, percent, test::hard_states, 200);
            check_glass(glass, percent, test::access_states, 20);
        }
}

TEST_CASE("boxes: the view for a group, from two to three metres")
{
    for (ui::Glass glass : std::span(measured).first(PAIRSTAND_ONE_IN > 1 ? 1 : std::size(measured)))
        for (const int distance : {2000, 2500, 3000})
            for (const float px_per_mm : {glass.px_per_mm, 0.0F}) {
                glass.px_per_mm = px_per_mm;
                glass.group_distance_mm = distance;
                check_glass(glass, 100, test::group_states, 40);
            }
}

TEST_CASE("boxes: the checks see what is wrong")
{
    const auto sizes = ui::sizes_for(1280, 800, 100);
    const Note good{"good", ui::Role::Text, std::nullopt, {10, 10}, {100, 40}, false, 24, false};
    const auto with = [&good](auto change) {
        Note note = good;
        change(note);
        return note;
    };
    CHECK(faults_of({good}, sizes) == "");
    CHECK(faults_of({good, with([](Note& n) { n.low.y = 40, n.high.y = 70; })}, sizes) == "");
    CHECK(faults_of({good, with([](Note& n) { n.low.y = 35, n.high.y = 65; })}, sizes).starts_with("over each other"));
    CHECK(faults_of({with([](Note& n) { n.high.x = 1290; })}, sizes).starts_with("outside"));
    CHECK(faults_of({with([](Note& n) { n.low.y = -5; })}, sizes).starts_with("outside"));
    CHECK(faults_of({with([](Note& n) { n.cut = true; })}, sizes).starts_with("cut"));
    CHECK(faults_of({with([](Note& n) { n.letter_px = 23; })}, sizes).starts_with("letters"));
    CHECK(faults_of({with([](Note& n) { n.touchable = true; })}, sizes).starts_with("too small to touch"));
    const Note row{"row", ui::Role::Button, std::nullopt, {0, 0}, {200, 80}, true, 0, false};
    CHECK(faults_of({row, good}, sizes) == "");
    CHECK(faults_of({row, with([](Note& n) { n.high.x = 300; })}, sizes).starts_with("over each other"));
    CHECK(faults_of({row, row}, sizes).starts_with("over each other"));
}
