#include "core/label/nutrient.h"
#include "tests/support/temp_folder.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"
#include "ui/words/po.h"

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

bool is_draft(const std::string& code)
{
    return ui::po_header_field(ui::parse_po_file(po_of(code), code).value().header, "X-Pairstand-State") == "draft";
}

/// The whole languages: with every text, for shoppers.
std::vector<std::string> whole_codes()
{
    auto all = codes();
    std::erase_if(all, is_draft);
    return all;
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
    CHECK(whole_codes().size() >= 2);
    for (const auto& code : whole_codes()) {
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
    for (const auto& code : whole_codes()) {
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

TEST_CASE("language: a translation is measured by the English one, and each fault is told with its row")
{
    const Language english = read("en");
    const std::string good = po_of("es");
    const auto row_of = [](const std::string& po, const std::string& id) {
        const auto at = po.find("msgid \"" + id + "\"");
        REQUIRE(at != std::string::npos);
        return 1 + static_cast<std::size_t>(std::count(po.begin(), po.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
    };
    const auto page_of = [&](const std::string& words) {
        return replaced(good, "msgstr \"{n} de {all}\"", "msgstr \"" + words + "\"");
    };
    struct Case {
        std::string why;
        std::string po;
        std::string id;
        std::string expected;
    };
    const std::string whole = "whole placeholders, such as {name}, with nothing changed between their braces";
    const std::string these = "the placeholders of en.po, {all} {n}";
    const Case cases[] = {
        {"a translated placeholder", page_of("{n} de {todas}"), "page_of", these},
        {"one left out", page_of("{n}"), "page_of", these},
        {"one too many", page_of("{n} de {all} {all}"), "page_of", these},
        {"one where English has none", replaced(good, "msgstr \"Atrás\"", "msgstr \"Atrás {n}\""), "button_back",
         "no placeholder, as in en.po"},
        {"a brace lost", page_of("{n} de {all"), "page_of", whole},
        {"the other brace lost", page_of("{n} de all}"), "page_of", whole},
        {"a blank inside", page_of("{n} de { all }"), "page_of", whole},
        {"a capital", page_of("{N} de {all}"), "page_of", whole},
        {"a name nobody knows", replaced(good, "msgid \"button_back\"", "msgid \"button_bakc\""), "button_bakc",
         "the name of a text of this program, as in en.po"},
        {"an accent beside its letter", replaced(good, "msgstr \"Atrás\"", "msgstr \"Atra\xCC\x81s\""), "button_back",
         "text in Unicode normalization form C, as most editors write it (uconv -x nfc makes it so)"},
    };
    CHECK(Language::parse(good, "es", "es.po", english).has_value());
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto language = Language::parse(c.po, "es", "es.po", english);
        REQUIRE(!language);
        CHECK(language.error() ==
              Error{Error::Kind::BadValue, "po", core::Place{"es.po", row_of(c.po, c.id), "", c.id, c.expected}});
    }
    const auto missing = replaced(good, "msgstr \"Atrás\"", "msgstr \"\"");
    CHECK(Language::parse(missing, "es", "es.po", english).error() ==
          Error{Error::Kind::MissingValue, "po",
                core::Place{"es.po", row_of(missing, "button_back"), "button_back", "", "a translation"}});
}

TEST_CASE("language: a draft may lack texts, for which English stands, and nothing else")
{
    const Language english = read("en");
    const std::string header = "msgid \"\"\nmsgstr \"\"\n\"Language: xx\\n\"\n\"X-Pairstand-State: draft\\n\"\n\n";
    const std::string back = "msgid \"button_back\"\nmsgstr \"Zurueck\"\n\nmsgid \"left\"\nmsgstr \"\"\n";
    const auto draft = Language::parse(header + back, "xx", "xx.po", english);
    REQUIRE(draft.has_value());
    CHECK(draft->is_draft());
    CHECK(draft->text(TextId::button_back) == "Zurueck");
    CHECK(draft->text(TextId::left) == "Left");
    CHECK(draft->text(TextId::page_of) == english.text(TextId::page_of));
    CHECK(Language::parse("#, fuzzy\n" + header + back, "xx", "xx.po", english).value().is_draft());
    const std::string broken[] = {
        "msgid \"page_of\"\nmsgstr \"{n}\"\n",
        "msgid \"nobody_knows_this\"\nmsgstr \"?\"\n",
        "msgid \"left\"\nmsgstr \"u\xCC\x88\"\n",
    };
    for (const auto& one : broken) {
        CAPTURE(one);
        CHECK(!Language::parse(header + one, "xx", "xx.po", english));
    }
    CHECK(!read("es").is_draft());
    CHECK(!Language::parse(header + back, "en", "en.po")); // English may not lack any, whatever it calls itself
    const auto other = Language::parse(replaced(header, "draft", "ready"), "xx", "xx.po", english);
    REQUIRE(!other);
    CHECK(other.error().place.found == "X-Pairstand-State: ready");
}

TEST_CASE("language: the drafts of this station are sound, and say in their first line that nobody has read them")
{
    const Language english = read("en");
    std::size_t drafts = 0;
    for (const auto& code : codes()) {
        if (!is_draft(code))
            continue;
        CAPTURE(code);
        ++drafts;
        const auto draft = Language::parse(po_of(code), code, code + ".po", english);
        REQUIRE(draft.has_value());
        CHECK(draft->text(TextId::language_name) != "English"); // the button that offers it
        CHECK(draft->text(TextId::desk_title) != english.text(TextId::desk_title));
        CHECK(po_of(code).substr(0, po_of(code).find('\n')).find("a draft that nobody who speaks it has read yet") !=
              std::string::npos);
    }
    CHECK(drafts >= 1);
}

TEST_CASE("language: every text is in Unicode normalization form C")
{
    CHECK(ui::is_composed("Atr\xC3\xA1s"));
    CHECK(!ui::is_composed("Atra\xCC\x81s"));
    CHECK(!ui::is_composed("\xE2\x84\xAA")); // the Kelvin sign is a K there
    for (const auto& code : codes())
        CHECK(ui::is_composed(po_of(code)));
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
