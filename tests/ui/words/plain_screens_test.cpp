// Shoppers' screens are worded plainly: each screen's sentences together stay below a school grade, in both languages.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/screens/screens.h"
#include "ui/words/plain.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iomanip>
#include <optional>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

using ui::Note;
using ui::TextId;

// The limits that the project sets itself; 65 is where INFLESZ begins to say "bastante fácil" (readability.csv).
constexpr double hardest_grade = 6.0;
constexpr double least_ease = 65.0;

/// Left out: the leader desk and the gallery, which shoppers do not open, and the published rules, whose words are
/// those of the regulation that they answer for and which a leader switches on for a class.
bool is_for_shoppers(const test::NamedState& named)
{
    return named.state.screen < ui::ScreenId::Gallery && named.name.find("with rules") == std::string::npos;
}

/// What is filled in counts as one word of one syllable.
std::string without_placeholders(const std::string& text)
{
    static const std::regex placeholder{R"(\{\w+\})"};
    return std::regex_replace(text, placeholder, "#1");
}

/// Notices stand on any screen for a moment: each is looked at on the first one.
constexpr TextId notices[] = {
    TextId::notice_found,          TextId::notice_already,
    TextId::notice_unknown,        TextId::notice_unreadable,
    TextId::notice_store_code,     TextId::notice_coupon,
    TextId::notice_case,           TextId::notice_book,
    TextId::notice_not_assigned,   TextId::notice_kept,
    TextId::notice_let_go,         TextId::notice_both_kept,
    TextId::notice_which,          TextId::notice_likely,
    TextId::notice_started_over,   TextId::notice_taken_back,
    TextId::notice_reloaded,       TextId::notice_demo,
    TextId::notice_settings,       TextId::notice_settings_lines,
    TextId::notice_settings_file,  TextId::notice_other_code,
    TextId::notice_likely_one,     TextId::notice_language,
    TextId::notice_catalog_broken, TextId::notice_scanner_refused,
    TextId::notice_scanner_busy,   TextId::notice_scanner_no_port,
    TextId::notice_scanner_absent, TextId::notice_scanner_pulled,
    TextId::notice_scanner_ready,
};

std::vector<test::NamedState> states_of(const ui::Language& language)
{
    auto states = test::hard_states(language);
    std::erase_if(states, [](const auto& named) { return !is_for_shoppers(named); });
    for (const auto id : notices) {
        auto state = test::state_of(ui::ScreenId::Welcome, language);
        state.notice.words = without_placeholders(language.text(id));
        states.push_back({"notice " + state.notice.words, state});
    }
    return states;
}

/// "Looking..." is no statement.
bool ends_like_a_sentence(std::string_view words)
{
    if (words.ends_with("..."))
        return false;
    return words.ends_with('.') || words.ends_with('?') || words.ends_with(".)") || words.ends_with(".”");
}

/// Whether one note goes on with the words of the one before: long sentences are drawn in pieces.
bool goes_on(const Note& before, const Note& note)
{
    return before.role == ui::Role::Text && note.role == ui::Role::Text && !ends_like_a_sentence(before.words) &&
           before.letter_px == note.letter_px && before.low.x == note.low.x && std::abs(before.high.y - note.low.y) < 2;
}

std::vector<std::string> paragraphs_of(const ui::Notes& notes)
{
    std::vector<std::string> paragraphs;
    const Note* before = nullptr;
    for (const auto& note : notes) {
        if (before && goes_on(*before, note))
            paragraphs.back() += " " + note.words;
        else
            paragraphs.push_back(note.words);
        before = &note;
    }
    return paragraphs;
}

void replace_all(std::string& text, std::string_view what, std::string_view with)
{
    if (!what.empty())
        for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
            text.replace(at, what.size(), with);
}

/// A product's name becomes "#", a word of one syllable: it belongs to the label.
void take_names_out(std::string& text, const ui::State& state)
{
    for (const auto& side : state.sides)
        if (side)
            replace_all(text, side->product.name, "#1");
}

/// Ingredients are the label's words, and the names in a bundle's line those of whoever made it.
bool is_of_others(const std::string& paragraph, const ui::State& state)
{
    constexpr std::size_t begins_alike = 30;
    const auto begin = paragraph.substr(0, begins_alike);
    const auto has_list = [&](const std::optional<ui::Held>& side) {
        return side && side->product.label.ingredients && side->product.label.ingredients->find(begin) != begin.npos;
    };
    return paragraph == state.bundle || std::ranges::any_of(state.sides, has_list);
}

/// The sentences of all pages of a screen, each once. Names of buttons, figures and headings are no sentences.
std::string sentences_of(test::Headless& screen, const ui::Language& language, test::NamedState named)
{
    std::set<std::string> seen;
    std::string sentences;
    for (bool more = true; more; ++named.state.page) {
        screen.frame([&](const ui::Ui& ui, ui::Actions& asked) {
            ui::draw({language, ui.look, ui.notes}, named.state, asked);
        });
        for (auto paragraph : paragraphs_of(screen.notes())) {
            if (!ends_like_a_sentence(paragraph) || is_of_others(paragraph, named.state))
                continue;
            take_names_out(paragraph, named.state);
            if (seen.insert(paragraph).second)
                sentences += paragraph + "\n";
        }
        more =
            std::ranges::any_of(screen.notes(), [](const Note& note) { return note.id == TextId::button_page_next; });
    }
    return sentences;
}

/// A screen's figures: with two syllables for the label's own words, which decides, and as counted.
struct Plainness {
    double taught = 0;
    double counted = 0;
};

Plainness plainness_of(const std::string& sentences, const std::string& code)
{
    const auto count = ui::plain_count(sentences, code);
    const auto score = [&](std::size_t syllables) {
        return code == "es" ? ui::inflesz(count.sentences, count.words, syllables)
                            : ui::flesch_kincaid_grade(count.sentences, count.words, syllables);
    };
    return {score(count.label_syllables), score(count.syllables)};
}

std::string told(const Plainness& found)
{
    std::ostringstream out;
    out << std::fixed << std::setprecision(1) << found.taught << " (" << found.counted
        << " with every syllable of the label's words)";
    return out.str();
}

bool is_plain(const Plainness& found, const std::string& code)
{
    return code == "es" ? found.taught >= least_ease : found.taught <= hardest_grade;
}

void check_language(const std::string& code)
{
    // PAIRSTAND_PLAIN_FIGURES=1 prints the figures of every screen, =2 its sentences too.
    const auto* wanted = std::getenv("PAIRSTAND_PLAIN_FIGURES");
    test::Headless screen({1920, 1080}, 100, code);
    const auto& language = test::language(code);
    std::size_t screens = 0;
    for (const auto& named : states_of(language)) {
        const auto sentences = sentences_of(screen, language, named);
        if (sentences.empty())
            continue;
        ++screens;
        const auto found = plainness_of(sentences, code);
        if (wanted)
            MESSAGE(code, " ", told(found), " ", named.name, *wanted == '2' ? "\n" + sentences : "");
        if (!is_plain(found, code))
            FAIL_CHECK(code, " ", named.name, " has ", told(found), ":\n", sentences);
    }
    CHECK(screens > 200); // a change of samples that leaves the screens out would check nothing
}

} // namespace

TEST_CASE("plain screens: English is at US grade 6 or below on every screen")
{
    check_language("en");
}

TEST_CASE("plain screens: Spanish is at INFLESZ 65 or above on every screen")
{
    check_language("es");
}

// No sample shows every text: those with enough words to be counted by themselves are. What stands behind these texts
// in the list is the published rules, the leader desk and the terminal.
TEST_CASE("plain screens: every long text of a shopper's screen is plain by itself")
{
    constexpr std::size_t enough_words = 12;
    for (const std::string code : {"en", "es"}) {
        std::size_t checked = 0;
        for (auto id = TextId::language_name; id < TextId::rules_claims_note;
             id = static_cast<TextId>(static_cast<int>(id) + 1)) {
            const auto words = without_placeholders(test::language(code).text(id));
            if (!ends_like_a_sentence(words) || ui::plain_count(words, code).words < enough_words)
                continue;
            ++checked;
            CAPTURE(words);
            const auto found = plainness_of(words, code);
            CAPTURE(told(found));
            CHECK(is_plain(found, code));
        }
        CHECK(checked > 80);
    }
}

TEST_CASE("plain screens: a hard sentence is seen")
{
    const std::string hard = "The characteristic composition of concentrated ingredients necessitates consultation.";
    const std::string difficult =
        "La composición característica de los ingredientes concentrados necesita consideración.";
    CHECK_FALSE(is_plain(plainness_of(hard, "en"), "en"));
    CHECK_FALSE(is_plain(plainness_of(difficult, "es"), "es"));
    CHECK(is_plain(plainness_of("Look at the label.", "en"), "en"));
    CHECK(is_plain(plainness_of("Lea la etiqueta. Vea el peso.", "es"), "es"));
}
