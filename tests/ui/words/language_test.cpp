#include "core/label/nutrient.h"
#include "tests/support/temp_folder.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

namespace {

using core::Error;
using ui::Language;
using ui::TextId;

const std::string folder = PAIRSTAND_SOURCE "/config/languages";

std::vector<std::string> codes()
{
    std::vector<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".po")
            found.push_back(entry.path().stem().string());
    std::ranges::sort(found);
    return found;
}

std::string po_of(const std::string& code)
{
    return test::bytes_of(folder + "/" + code + ".po");
}

Language read(const std::string& code)
{
    auto language = Language::parse(po_of(code), code, code + ".po");
    if (!language)
        FAIL(language.error().place.source, " row ", language.error().place.row, " ", language.error().place.found);
    return *language;
}

std::string replaced(std::string text, const std::string& what, const std::string& with)
{
    const auto at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), with);
}

std::vector<std::string> sorted_placeholders(const std::string& text)
{
    auto names = ui::placeholders(text);
    std::ranges::sort(names);
    return names;
}

} // namespace

TEST_CASE("language: every language has every text, with the placeholders of the English one")
{
    const Language english = read("en");
    CHECK(codes().size() >= 2);
    for (const auto& code : codes()) {
        const Language language = read(code);
        for (std::size_t i = 0; i < ui::text_names().size(); ++i) {
            const auto id = static_cast<TextId>(i);
            const std::string name(ui::text_names()[i]);
            CAPTURE(code);
            CAPTURE(name);
            const std::string& text = language.text(id);
            CHECK(!text.empty());
            CHECK(sorted_placeholders(text) == sorted_placeholders(english.text(id)));
            // Braces stand around placeholders only, and no blank waits at an end or doubles.
            CHECK(std::ranges::count(text, '{') == std::ranges::count(text, '}'));
            CHECK(!text.starts_with(' '));
            CHECK(!text.ends_with(' '));
            CHECK(text.find("  ") == std::string::npos);
        }
    }
}

TEST_CASE("language: a language other than English is translated, not copied")
{
    // Equal on purpose: words and signs that are the same in both languages, and patterns that hold no word.
    const std::vector<std::string> may_be_equal{
        "n_zinc",           "audit_rule", "rule_cited", "rule_cited_days", "rule_line", "rule_side", "rule_line_one",
        "rule_named_limit", "term_wic",   "term_cacfp", "term_cfr",        "term_fda",  "term_usda", "term_g",
        "term_mg",          "term_mcg",   "term_kg",    "term_oz",         "term_lb",   "term_ml",   "term_l",
        "term_fl_oz",       "term_tbsp",  "term_tsp",   "term_pt",         "term_qt",   "term_gal"};
    const Language english = read("en");
    for (const auto& code : codes()) {
        if (code == "en")
            continue;
        const Language language = read(code);
        for (std::size_t i = 0; i < ui::text_names().size(); ++i) {
            const std::string name(ui::text_names()[i]);
            if (std::ranges::find(may_be_equal, name) != may_be_equal.end())
                continue;
            CAPTURE(code);
            CAPTURE(name);
            CHECK(language.text(static_cast<TextId>(i)) != english.text(static_cast<TextId>(i)));
        }
    }
}

TEST_CASE("language: what is not a whole language is refused, and its place is told")
{
    const std::string good = po_of("en");
    struct Case {
        std::string why;
        std::string po;
        Error::Kind kind;
        std::string found;
    };
    const Case cases[] = {
        {"a text is missing", replaced(good, "msgid \"left\"\nmsgstr \"Left\"\n", ""), Error::Kind::MissingValue, ""},
        {"a text is empty", replaced(good, "msgstr \"Left\"", "msgstr \"\""), Error::Kind::MissingValue, ""},
        {"a text is marked as doubtful", replaced(good, "msgid \"left\"", "#, fuzzy\nmsgid \"left\""),
         Error::Kind::MissingValue, ""},
        {"a name nobody knows", good + "\nmsgid \"lefft\"\nmsgstr \"Left\"\n", Error::Kind::BadValue, "lefft"},
        {"a text twice", good + "\nmsgid \"left\"\nmsgstr \"Left\"\n", Error::Kind::BadValue, "left"},
        {"not a language file", "Left = Left\n", Error::Kind::BadValue, "Left = Left"},
        {"nothing at all", "", Error::Kind::MissingValue, ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto language = Language::parse(c.po, "en", "en.po");
        REQUIRE(!language);
        CHECK(language.error().kind == c.kind);
        CHECK(language.error().place.source == "en.po");
        CHECK(language.error().place.found == c.found);
    }
    CHECK(
        Language::parse(replaced(good, "msgid \"left\"\nmsgstr \"Left\"\n", ""), "en", "en.po").error().place.column ==
        "left");
}

TEST_CASE("language: placeholders are filled by name, once each, and what is filled in is never read again")
{
    const Language english = read("en");
    CHECK(english.fill(TextId::page_of, {{"n", "2"}, {"all", "3"}}) == "2 of 3");
    CHECK(english.fill(TextId::page_of, {{"all", "3"}, {"n", "2"}}) == "2 of 3");
    CHECK(english.fill(TextId::page_of, {{"n", "2"}}) == "2 of ");
    CHECK(english.fill(TextId::page_of, {{"n", "{all}"}, {"all", "{n}"}}) == "{all} of {n}");
    CHECK(english.fill(TextId::page_of, {{"n", "2"}, {"all", "3"}, {"other", "9"}}) == "2 of 3");
    CHECK(english.fill(TextId::button_back, {{"n", "2"}}) == "Back");
    CHECK(read("es").fill(TextId::notice_found, {{"name", "Bean & rice"}, {"side", "izquierda"}}) ==
          "Bean & rice está ahora a la izquierda.");
}

TEST_CASE("language: the names between braces are read in order")
{
    using Names = std::vector<std::string>;
    CHECK(ui::placeholders("{n} of {all}") == Names{"n", "all"});
    CHECK(ui::placeholders("none") == Names{});
    CHECK(ui::placeholders("open {n") == Names{});
}

// Source of the order: core::Nutrient, which stands in the order of the panel, 21 CFR 101.9(d)(12).
TEST_CASE("language: the names of nutrients stand in the order of core::Nutrient")
{
    const auto first = static_cast<std::size_t>(TextId::n_calories);
    for (const auto& known : core::nutrients()) {
        const auto at = first + static_cast<std::size_t>(known.nutrient);
        CHECK(ui::text_names()[at] == "n_" + std::string(known.key));
    }
    CHECK(static_cast<std::size_t>(TextId::n_fluoride) - first + 1 == core::nutrients().size());
    CHECK(ui::nutrient_name(core::Nutrient::Fluoride, read("en")) == "Fluoride");
    CHECK(ui::nutrient_name(core::Nutrient::SaturatedFat, read("es")) == "Grasa saturada");
}
