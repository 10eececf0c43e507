#include "tests/demo/allergens.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <sstream>
#include <vector>

namespace test::demo {
namespace {

struct Word {
    std::string_view word;
    std::string_view source;
};

/// Words that hold another one and are not of its source; and the highly refined oils that FD&C Act 201(qq)(2) exempts.
constexpr std::array not_these{"coconut cream", "almond milk", "soy milk",   "peanut butter",
                               "cocoa butter",  "soybean oil", "peanut oil", "butter flavor"};

constexpr std::array in_ingredients{
    Word{"milk", "milk"},         Word{"cream", "milk"},     Word{"butter", "milk"},
    Word{"cheese", "milk"},       Word{"whey", "milk"},      Word{"lactose", "milk"},
    Word{"egg", "egg"},           Word{"wheat", "wheat"},    Word{"semolina", "wheat"},
    Word{"soy", "soy"},           Word{"edamame", "soy"},    Word{"sesame", "sesame"},
    Word{"peanut", "peanuts"},    Word{"almond", "almonds"}, Word{"hazelnut", "hazelnuts"},
    Word{"cashew", "cashews"},    Word{"anchov", "fish"},    Word{"pollock", "fish"},
    Word{"shrimp", "crustacean"},
};

constexpr std::array in_statements{
    Word{"milk", "milk"},
    Word{"egg", "egg"},
    Word{"wheat", "wheat"},
    Word{"soy", "soy"},
    Word{"sesame", "sesame"},
    Word{"peanuts", "peanuts"},
    Word{"almonds", "almonds"},
    Word{"hazelnuts", "hazelnuts"},
    Word{"cashews", "cashews"},
    Word{"fish (anchovies)", "fish"},
    Word{"fish (alaska pollock)", "fish"},
    Word{"crustacean shellfish (shrimp)", "crustacean"},
};

std::string small(std::string_view text)
{
    std::string letters(text);
    std::ranges::transform(letters, letters.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return letters;
}

/// "Almond milk" and "peanut butter" name their nut all the same.
std::string without_others(std::string text)
{
    for (const std::string_view other : not_these)
        for (auto at = text.find(other); at != std::string::npos; at = text.find(other, at + 1)) {
            const auto blank = other.find(' ');
            const bool an_oil = other.ends_with("oil");
            const auto from = at + (an_oil ? 0 : blank);
            std::fill_n(text.begin() + static_cast<std::ptrdiff_t>(from), at + other.size() - from, '-');
        }
    return text;
}

} // namespace

std::set<std::string> allergens_of_ingredients(std::string_view ingredients)
{
    const std::string text = without_others(small(ingredients));
    std::set<std::string> found;
    for (const auto& [word, source] : in_ingredients)
        if (text.find(word) != std::string::npos)
            found.emplace(source);
    return found;
}

std::set<std::string> allergens_of_statement(std::string_view statement)
{
    std::set<std::string> found;
    std::istringstream parts{small(statement)};
    for (std::string part; std::getline(parts, part, ',');) {
        part.erase(0, part.find_first_not_of(' '));
        const auto known = std::ranges::find(in_statements, std::string_view(part), &Word::word);
        found.emplace(known == in_statements.end() ? part : std::string(known->source));
    }
    return found;
}

} // namespace test::demo
