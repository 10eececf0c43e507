// Every word of the trade on a shopper's screen has one plain sentence, and a way to it from where the word stands.
#include "core/label/nutrient.h"
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/screens/shown.h"
#include "ui/words/plain.h"
#include "ui/words/what_is.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace {

using ui::Meaning;
using ui::ScreenId;
using ui::TextId;

constexpr auto codes = {"en", "es"};

bool is_one_sentence(const std::string& words, const std::string& code)
{
    return words.ends_with('.') && ui::plain_count(words, code).sentences == 1;
}

bool explains(const std::vector<Meaning>& meanings, const std::string& word)
{
    return std::ranges::any_of(meanings, [&](const Meaning& meaning) { return meaning.word == word; });
}

/// A word that only those know who know labels: how it stands on screens, and the word under which it is explained.
struct Jargon {
    std::regex stands;
    std::string word;
};

std::regex whole_word(const std::string& pattern)
{
    return std::regex("(^|[^A-Za-z0-9])(" + pattern + ")($|[^A-Za-z0-9])", std::regex::icase | std::regex::optimize);
}

// The list is a label class's: what people ask about (common practice), and what 21 CFR 101.9, 101.22, 21 U.S.C.
// 343(w), NIST Handbook 130, 7 CFR 226 and 246 call things by.
std::vector<Jargon> jargon_of(const std::string& code)
{
    using Row = std::array<const char*, 4>; // English: as it stands, its word; Spanish the same
    constexpr Row rows[] = {
        {"% Daily Values?|Daily Values?", "% Daily Value", "Valor(es)? Diarios?", "% del Valor Diario"},
        {"serving size", "Serving size", "tama.+o de la porci.+n", "Tamaño de la porción"},
        {"servings per container", "Servings per container", "porciones por envase", "Porciones por envase"},
        {"5% or less|20% or more", "5 and 20", "5% o menos|20% o m.+s", "5 y 20"},
        {"same amount|equal amounts", "Same amount", "igual cantidad|cantidades iguales", "Igual cantidad"},
        {"household measures?", "Household measure", "medidas? caseras?", "Medida casera"},
        {"net quantity", "Net quantity", "contenido neto", "Contenido neto"},
        {"as prepared", "As prepared", "ya preparado", "Ya preparado"},
        {"as packaged", "As packaged", "lo envasado", "Lo envasado"},
        {"significant source of", "Not a significant source", "fuente significativa", "No es una fuente significativa"},
        {"rule of 2016", "Rule of 2016", "regla de 2016", "Regla de 2016"},
        {"first grain", "First grain", "primer grano", "Primer grano"},
        {"whole grains?", "Whole grain", "granos? enteros?", "Grano entero"},
        {"major allergens?", "Major allergen", "al.+rgenos? principal(es)?", "Alérgenos principales"},
        {"contains statement", "Contains statement", "l.+nea de .+contiene", "Línea de “Contiene”"},
        {"crustacean shellfish", "Crustacean shellfish", "mariscos crust.+ceos", "Mariscos crustáceos"},
        {"tree nuts", "Tree nuts", "nueces de .+rbol", "Nueces de árbol"},
        {"partially hydrogenated", "Partially hydrogenated oil", "parcialmente hidrogenado",
         "Aceite parcialmente hidrogenado"},
        {"concentrated juice", "Concentrated juice", "jugo concentrado", "Jugo concentrado"},
        {"registered dietitian", "Registered dietitian", "dietista registrado", "Dietista registrado"},
        {"unit price|unit pricing|price per unit", "Unit price", "precio por unidad", "Precio por unidad"},
        {"NIST", "NIST Handbook 130", "NIST", "Manual 130 del NIST"},
        {"reference amount", "Reference amount", "cantidad de referencia", "Cantidad de referencia"},
        {"claims?", "Claim", "declaraci.+n|declaraciones", "Declaración"},
        {"WIC", "WIC", "WIC", "WIC"},
        {"CACFP", "CACFP", "CACFP", "CACFP"},
        {"child nutrition programs", "Child nutrition programs", "programas de nutrici.+n infantil",
         "Programas de nutrición infantil"},
        {"CFR", "CFR", "CFR", "CFR"},
        {"FDA", "FDA", "FDA", "FDA"},
        {"USDA", "USDA", "USDA", "USDA"},
        {"g", "g", "g", "g"},
        {"mg", "mg", "mg", "mg"},
        {"mcg", "mcg", "mcg", "mcg"},
        {"mL", "mL", "mL", "mL"},
        {"oz", "oz", "oz", "oz"},
        {"fl oz", "fl oz", "fl oz", "fl oz"},
        {"lb", "lb", "lb", "lb"},
        {"tbsp", "tbsp", "tbsp", "tbsp"},
        {"tsp", "tsp", "tsp", "tsp"},
        {"qt", "qt", "qt", "qt"},
        {"pt", "pt", "pt", "pt"},
        {"gal", "gal", "gal", "gal"},
    };
    std::vector<Jargon> found;
    for (const auto& row : rows)
        found.push_back(code == "en" ? Jargon{whole_word(row[0]), row[1]} : Jargon{whole_word(row[2]), row[3]});
    for (const auto& nutrient : core::nutrients()) { // a name on the panel is a word of the trade, too
        const auto at = static_cast<std::size_t>(TextId::n_calories) + static_cast<std::size_t>(nutrient.nutrient);
        const auto& name = test::language(code).text(static_cast<TextId>(at));
        found.push_back({whole_word(name), name});
    }
    return found;
}

/// Screens of products' own words, of the leader, and the one that explains: nothing is looked up from there.
bool is_looked_at(ScreenId screen)
{
    return screen != ScreenId::Words && screen != ScreenId::FindByName && screen != ScreenId::PickAisle &&
           screen != ScreenId::PickProduct && screen != ScreenId::WhichProduct && screen != ScreenId::LikelyProduct &&
           screen < ScreenId::Gallery;
}

/// The words of all pages of a screen, and whether one of them has the way to what words mean.
struct Pages {
    std::vector<std::string> words;
    bool leads_to_words = false;
};

Pages all_pages(test::Headless& screen, ui::State state)
{
    Pages pages;
    for (bool more = true; more; ++state.page) {
        screen.frame(state);
        more = false;
        for (const auto& note : screen.notes()) {
            more = more || note.id == TextId::button_page_next;
            pages.leads_to_words = pages.leads_to_words || note.id == TextId::button_words;
            pages.words.push_back(note.words);
        }
    }
    return pages;
}

/// Which of the list stand in a text; most texts stand on many screens and are looked through once.
class Finder {
public:
    explicit Finder(std::vector<Jargon> list) : list_(std::move(list)) {}

    const std::set<std::string>& in(const std::string& words)
    {
        const auto [at, first] = known_.try_emplace(words);
        for (std::size_t i = 0; first && i < list_.size(); ++i)
            if (std::regex_search(words, list_[i].stands)) {
                at->second.insert(list_[i].word);
                seen.insert(list_[i].word);
            }
        return at->second;
    }

    std::set<std::string> seen; ///< of the list, so far

private:
    std::vector<Jargon> list_;
    std::map<std::string, std::set<std::string>> known_;
};

/// What is wrong with one screen, a line each.
std::string unexplained(const Pages& pages, const std::vector<Meaning>& meanings, Finder& finder)
{
    std::string wrong;
    for (const auto& words : pages.words)
        for (const auto& word : finder.in(words)) {
            if (!pages.leads_to_words)
                wrong += "no way to what words mean: " + words + "\n";
            if (!explains(meanings, word))
                wrong += "\"" + word + "\" is not explained: " + words + "\n";
        }
    return wrong;
}

} // namespace

TEST_CASE("what is: every nutrient has its own sentence, in the order of the panel")
{
    const auto first = static_cast<std::size_t>(TextId::what_calories);
    std::set<std::string> sentences;
    for (const auto& known : core::nutrients()) {
        const auto at = first + static_cast<std::size_t>(known.nutrient);
        CHECK(ui::text_names()[at] == "what_" + std::string(known.key));
        for (const std::string code : codes) {
            const auto& sentence = ui::what_is(known.nutrient, test::language(code));
            CAPTURE(sentence);
            CHECK(is_one_sentence(sentence, code));
            CHECK(sentences.insert(sentence).second);
        }
    }
    CHECK(sentences.size() == 2 * core::nutrient_count);
}

TEST_CASE("what is: every word has exactly one sentence in each language, and a source")
{
    std::set<TextId> terms;
    std::set<TextId> sentences;
    for (const auto& row : ui::what_is_table()) {
        CHECK(terms.insert(row.term).second);
        CHECK(sentences.insert(row.sentence).second);
        CHECK_FALSE(row.source.empty());
    }
    for (const std::string code : codes)
        for (const auto& meaning : ui::all_meanings(test::language(code))) {
            CAPTURE(meaning.word);
            CAPTURE(meaning.sentence);
            CHECK_FALSE(meaning.word.empty());
            CHECK(meaning.word.find('|') == std::string::npos);
            CHECK(is_one_sentence(meaning.sentence, code));
        }
    for (std::size_t i = 0; i < ui::text_names().size(); ++i) { // none is written and then forgotten
        const auto name = ui::text_names()[i];
        const auto id = static_cast<TextId>(i);
        CAPTURE(std::string(name));
        if (name.starts_with("term_"))
            CHECK(terms.contains(id));
        if (name.starts_with("what_") && id != TextId::what_is_this)
            CHECK(sentences.contains(id));
    }
    CHECK_FALSE(is_one_sentence("Two are here. That is one too many.", "en"));
    CHECK_FALSE(is_one_sentence("A heading", "en"));
}

TEST_CASE("what is: words are found in any of their forms, whole, and not over the end of a text")
{
    const auto& en = test::language("en");
    const auto found = [&](const std::vector<std::string>& texts, const std::string& word) {
        return explains(ui::meanings_in(texts, en), word);
    };
    CHECK(found({"Its % Daily Values count from other amounts."}, "% Daily Value"));
    CHECK(found({"SODIUM, 190 mg"}, "Sodium"));
    CHECK(found({"SODIUM, 190 mg"}, "mg"));
    CHECK(found({"5 mcg"}, "mcg"));
    CHECK_FALSE(found({"5 mcg"}, "mg"));
    CHECK_FALSE(found({"ironing"}, "Iron"));
    CHECK_FALSE(found({"Serving", "size"}, "Trans fat"));
    CHECK_FALSE(found({"trans", "fat"}, "Trans fat"));
    CHECK(found({"trans fat"}, "Trans fat"));
    CHECK(ui::meanings_in({}, en).empty());
    CHECK(explains(ui::meanings_in({"ÁCIDO PANTOTÉNICO"}, test::language("es")), "Ácido pantoténico"));
}

TEST_CASE("what is: no word of the trade stands on a shopper's screen without a sentence and a way to it")
{
    for (const std::string code : codes) {
        const auto& language = test::language(code);
        test::Headless screen({1920, 1080}, 100, code);
        Finder finder(jargon_of(code));
        std::size_t at = 0;
        for (const auto& states :
             {test::hard_states(language), test::access_states(language), test::group_states(language)})
            for (const auto& [name, state] : states) {
                if (!is_looked_at(state.screen) || at++ % PAIRSTAND_ONE_IN != 0)
                    continue;
                const auto wrong =
                    unexplained(all_pages(screen, state), ui::meanings_for(state, state.screen, language), finder);
                if (!wrong.empty())
                    FAIL_CHECK(code, " ", name, ":\n", wrong);
            }
        CHECK(finder.seen.size() > 50 / PAIRSTAND_ONE_IN); // a slip in the list would find nothing
    }
}

TEST_CASE("what is: a screen that has none of these words leads to all of them")
{
    const auto& en = test::language("en");
    const auto all = ui::meanings_for(test::state_of(ScreenId::Welcome, en), ScreenId::Welcome, en);
    CHECK(all.size() == ui::what_is_table().size());
    const auto& product = test::demo_product("9520141001120");
    const auto of_label = ui::meanings_for(test::label_state(product, en), ScreenId::OneLabel, en);
    CHECK(of_label.size() < all.size());
    CHECK(explains(of_label, "Serving size"));
    const auto pair = test::pair_state(product, test::demo_product("9520208001131"), core::Basis::Serving, en);
    for (const std::string word : {"% Daily Value", "5 and 20", "Serving size"}) // a bare "8%" stands in each row
        CHECK(explains(ui::meanings_for(pair, ScreenId::Pair, en), word));
    CHECK_FALSE(explains(of_label, "Unit price"));
}

TEST_CASE("what is: the screen shows each word with its sentence below it, as the voice reads them")
{
    for (const std::string code : codes) {
        test::Headless screen({1280, 800}, 100, code);
        for (const auto& named : test::words_states(test::language(code))) {
            CAPTURE(named.name);
            std::string all;
            for (const auto& words : all_pages(screen, named.state).words)
                all += words + "\n";
            std::size_t at = 0;
            for (const auto& meaning : named.state.words) {
                CAPTURE(meaning.word);
                at = all.find("\n" + meaning.word + "\n", at);
                REQUIRE(at != std::string::npos);
                CHECK(all.compare(at + meaning.word.size() + 2, 10, meaning.sentence.substr(0, 10)) == 0);
            }
        }
    }
}
