// No English word on a Spanish screen: every screen is drawn in Spanish, and its words are looked up in both languages.
#include "core/audit/doubt.h"
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

using Words = std::set<std::string>;

/// Words in small letters: runs of letters, of ASCII or beyond it.
std::vector<std::string> words_of(const std::string& text)
{
    std::vector<std::string> words;
    std::string word;
    for (const char letter : text + " ") {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isalpha(byte) != 0 || byte >= 0xC3)
            word += byte < 0x80 ? static_cast<char>(std::tolower(byte)) : letter;
        else if (byte >= 0x80 && !word.empty())
            word += letter;
        else if (!word.empty())
            words.push_back(std::exchange(word, {}));
    }
    return words;
}

std::string without_placeholders(const std::string& text)
{
    static const std::regex placeholder{R"(\{\w+\})"};
    return std::regex_replace(text, placeholder, " ");
}

Words words_in(const std::string& code)
{
    Words words;
    for (std::size_t i = 0; i < ui::text_names().size(); ++i)
        for (auto& word : words_of(without_placeholders(test::language(code).text(static_cast<ui::TextId>(i)))))
            words.insert(std::move(word));
    return words;
}

/// Words of the English texts that no Spanish text has, of two letters or more.
Words only_english()
{
    auto words = words_in("en");
    for (const auto& word : words_in("es"))
        words.erase(word);
    std::erase_if(words, [](const auto& word) { return word.size() < 2; });
    return words;
}

/// Parts of an ingredient list as a screen may name them one by one.
void add_parts(const std::string& list, std::set<std::string>& names)
{
    std::string part;
    for (const char letter : list + ",")
        if (std::string_view(",();:.[]").find(letter) == std::string_view::npos)
            part += letter;
        else {
            const auto first = part.find_first_not_of(' ');
            if (first != std::string::npos)
                names.insert(part.substr(first, part.find_last_not_of(' ') - first + 1));
            part.clear();
        }
}

/// What the packages say themselves, in their own language: names, brands, aisles, ingredients, household measures.
std::set<std::string> printed()
{
    std::set<std::string> names;
    auto products = test::demo_products();
    products.push_back(test::product_with_long_list());
    for (const auto& product : products) {
        for (const auto* text : {&product.name, &product.brand, &product.aisle, &product.note,
                                 &product.label.serving.household, &product.origin.source})
            names.insert(*text);
        for (const auto& text : {product.label.ingredients, product.label.contains}) {
            names.insert(text.value_or(""));
            add_parts(text.value_or(""), names);
        }
        if (product.label.net_quantity)
            names.insert(product.label.net_quantity->printed);
    }
    names.erase("");
    return names;
}

/// English on purpose, and why.
std::set<std::string> left_in_english()
{
    std::set<std::string> names{
        // Publications, by the names under which they are found; nobody printed them in Spanish.
        "USDA child nutrition and CACFP guidance on whole grain-rich foods",
        "USDA, MyPlate, What Are Added Sugars?",
        "Dietary Guidelines for Americans, 2020-2025",
        // Somebody's own words in the samples: names of a bundle and its maker, of files and sheets, a cell, a record.
        "Labels of the markets and pantries of Cedar Hollow, winter, second edition",
        "The nutrition educators of Cedar Hollow and of Saltwhistle",
        "/media/leader/CEDAR HOLLOW MARKET/labels for the pantry/own labels.csv",
        "CEDAR HOLLOW MARKET",
        "own labels of the pantry, winter.xlsx",
        "own labels.xlsx",
        "Labels of winter",
        "Labels of summer",
        "two and a half",
        "record 1234567, 00052800488262, Oat rounds, honey",
        "Whole grain rolled oats with honey, almonds and dried cranberries, family size",
        "WITH MANY MORE WORDS THAN ANYBODY READS ON A PACKAGE",
        "WITH MANY MORE WORDS THAN ANYBODY",
        "CEDAR HOLLOW MARKET/labels for the pantry",
        "\"Old\"",
    };
    for (const auto& rule : core::doubt_rules()) // as docs/audit.md and the commands call them
        names.insert(std::string(rule.name));
    return names;
}

/// Names of files, and keys that are typed as they stand (columns, settings), have no words.
std::string without_keys(const std::string& line)
{
    static const std::regex key{R"(\S*[_/]\S*|\S+\.(csv|xlsx|zip|db|bundle))"};
    return std::regex_replace(line, key, " ");
}

struct Found {
    std::string screen;
    std::string word;
    std::string line;
};

std::string small(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(c < 0x80 ? std::tolower(c) : c); });
    return text;
}

class Taker {
public:
    Taker()
    {
        for (const auto& own : {printed(), left_in_english()})
            for (const auto& name : own)
                names_.push_back(small(name));
        std::ranges::sort(names_, [](const auto& a, const auto& b) { return a.size() > b.size(); });
    }
    /// A line without what was printed on packages; all of it where it is itself a piece of that.
    [[nodiscard]] std::string rest_of(std::string line) const
    {
        line = small(std::move(line));
        for (const auto& name : names_)
            if (line.size() > 2 && name.find(line) != std::string::npos)
                return {};
        for (const auto& name : names_)
            for (auto at = line.find(name); at != std::string::npos; at = line.find(name, at))
                line.replace(at, name.size(), " ");
        return without_keys(line);
    }

private:
    std::vector<std::string> names_;
};

std::vector<Found> english_on(test::Headless& screen, const test::NamedState& named, const Words& english,
                              const Taker& taker)
{
    std::vector<Found> found;
    auto state = named.state;
    std::string before;
    for (state.page = 0; state.page < 40; ++state.page) {
        screen.frame(state);
        screen.frame(state);
        if (screen.words() == before)
            break;
        before = screen.words();
        for (const auto& note : screen.notes())
            if (note.words != state.other_language)
                for (const auto& text : {note.words, note.said})
                    for (const auto& word : words_of(taker.rest_of(text)))
                        if (english.contains(word))
                            found.push_back({named.name, word, text});
    }
    return found;
}

} // namespace

TEST_CASE("foreign words: no English word is left on a Spanish screen")
{
    const auto& spanish = test::language("es");
    const auto english = only_english();
    CHECK(english.size() > 500);
    const Taker taker;
    auto states = test::hard_states(spanish);
    for (auto& more : {test::access_states(spanish), test::group_states(spanish)})
        states.insert(states.end(), more.begin(), more.end());
    test::Headless screen({1920, 1080}, 100, "es");
    std::set<std::string> told;
    for (const auto& named : states)
        for (const auto& [name, word, line] : english_on(screen, named, english, taker)) {
            if (!told.insert(word + line).second)
                continue;
            FAIL_CHECK(word, " on \"", name, "\": ", line);
        }
}
