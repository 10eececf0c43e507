#include "kiosk/desk/difference_words.h"

#include "ui/words/pair_words.h"

namespace kiosk {
namespace {

using ui::TextId;

constexpr std::size_t most_told = 3;

std::string what_words(const std::string& what, const ui::Language& language)
{
    const auto nutrient = core::nutrient_by_key(what);
    return nutrient ? ui::nutrient_name(*nutrient, language) : language.text(TextId::differs_serving_size);
}

} // namespace

std::string difference_words(const catalog::EntryDifference& difference, Standing standing,
                             const ui::Language& language)
{
    std::string words = difference.gtin.digits() + " " + difference.name + ":";
    for (std::size_t i = 0; i < difference.found.size() && i < most_told; ++i) {
        const auto& [what, first, second] = difference.found[i];
        const bool loaded = standing == Standing::Loaded; // what stood in the catalog is first
        words += (i > 0 ? "; " : " ") + language.fill(loaded ? TextId::differs_before : TextId::differs_release,
                                                      {{"what", what_words(what, language)},
                                                       {"now", loaded ? second : first},
                                                       {"other", loaded ? first : second}});
    }
    if (difference.found.size() > most_told)
        words +=
            "; " + language.fill(TextId::differs_more, {{"n", std::to_string(difference.found.size() - most_told)}});
    return words + ".";
}

} // namespace kiosk
