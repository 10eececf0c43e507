#include "core/label/sugars.h"

#include "core/label/folded_words.h"
#include "core/label/phrase_book.h"

#include <set>
#include <utility>

namespace core {
namespace {

using Kind = SugarRow::Kind;
using Words = std::vector<FoldedWord>;

const PhraseBook& book()
{
    static const PhraseBook known = [] {
        std::vector<std::string_view> phrases;
        for (const auto& row : sugar_rows())
            phrases.push_back(row.words);
        return PhraseBook(phrases);
    }();
    return known;
}

/// The phrase with the words around it where the ingredient is short, so that "organic cane sugar" is told whole.
std::string printed(const Ingredient& ingredient, const Words& words, const Phrase& phrase)
{
    constexpr std::size_t short_name = 5;
    if (words.size() <= short_name)
        return ingredient.printed;
    const auto begin = words[phrase.first].begin;
    return ingredient.printed.substr(begin, words[phrase.first + phrase.count - 1].end - begin);
}

std::string folded(std::string_view text)
{
    std::string all;
    for (const auto& word : folded_words(text))
        all += word.text + " ";
    return all;
}

/// "apple juice from concentrate (water, apple juice concentrate)": as strong as juice again.
bool is_made_juice_again(const IngredientList& list, const Ingredient& ingredient)
{
    if (!ingredient.within)
        return false;
    const auto owner = folded(list.all[*ingredient.within].printed);
    return owner.find("juice") != std::string::npos;
}

} // namespace

std::vector<NamedSugar> sugars_in(const IngredientList& list)
{
    std::vector<NamedSugar> sugars;
    std::set<std::string> said;
    for (const auto& ingredient : list.all) {
        if (ingredient.list > 0)
            continue;
        const Words words = folded_words(ingredient.printed);
        for (const auto& phrase : book().all_in(words)) {
            const auto& row = sugar_rows()[phrase.rows.front()];
            if (row.kind == Kind::None || (row.kind == Kind::Juice && is_made_juice_again(list, ingredient)))
                continue;
            auto name = printed(ingredient, words, phrase);
            if (said.insert(folded(name)).second)
                sugars.push_back({std::move(name), row.kind, row.source});
        }
    }
    return sugars;
}

} // namespace core
