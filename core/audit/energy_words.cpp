#include "core/audit/energy_words.h"

#include <algorithm>
#include <span>
#include <string_view>

namespace core::audited {
namespace {

/// Names of drinks and flavors with alcohol: common practice.
constexpr std::string_view alcohol_words[] = {
    "alcohol",  "wine",    "beer",    "ale",      "lager",  "stout",    "cider",  "mead",    "sake",     "liqueur",
    "rum",      "vodka",   "gin",     "whiskey",  "whisky", "bourbon",  "brandy", "tequila", "cocktail", "margarita",
    "spritzer", "sangria", "extract", "vermouth", "sherry", "kombucha", "hard",   "spirits", "alcoholic"};

/// Sources: 21 CFR 101.9(c)(1)(i)(F) (sugar alcohols); FDA guidance on allulose (October 2020); 21 CFR 101.9(c)(6)(i)
/// and FDA guidance of June 2018 (fibers).
constexpr std::string_view few_calorie_words[] = {
    "erythritol",          "xylitol",      "maltitol",           "sorbitol", "isomalt",      "lactitol", "mannitol",
    "hydrogenated starch", "polyglycitol", "allulose",           "psyllium", "polydextrose", "inulin",   "chicory",
    "resistant",           "cellulose",    "soluble corn fiber", "glycerin", "fiber",        "bran"};

char small(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool is_letter(char c)
{
    return small(c) >= 'a' && small(c) <= 'z';
}

/// Whether a word stands in the text, from the beginning of a word on; whole: to the end of one, a plural s allowed.
bool stands_in(std::string_view text, std::string_view word, bool whole)
{
    auto at = text.begin();
    while (true) {
        at = std::search(at, text.end(), word.begin(), word.end(), [](char a, char b) { return small(a) == b; });
        if (at == text.end())
            return false;
        auto behind = at + static_cast<std::ptrdiff_t>(word.size());
        if (behind != text.end() && small(*behind) == 's')
            ++behind;
        const bool begins = at == text.begin() || !is_letter(*(at - 1));
        if (begins && (!whole || behind == text.end() || !is_letter(*behind)))
            return true;
        ++at;
    }
}

bool any_in(std::string_view text, std::span<const std::string_view> words, bool whole)
{
    return std::ranges::any_of(words, [&](std::string_view word) { return stands_in(text, word, whole); });
}

} // namespace

bool names_alcohol(const Product& product)
{
    return any_in(product.name, alcohol_words, true) || any_in(product.category, alcohol_words, true) ||
           (product.label.ingredients && stands_in(*product.label.ingredients, "alcohol", true));
}

bool names_few_calories(const Product& product)
{
    return product.label.ingredients && any_in(*product.label.ingredients, few_calorie_words, false);
}

} // namespace core::audited
