#include "ui/words/contradiction_words.h"

#include "core/label/sharpen.h"
#include "ui/words/numbers.h"
#include "ui/words/pair_words.h"

#include <algorithm>

namespace ui {
namespace {

/// Whether `nutrient` is the part and `other` the whole.
bool is_part(core::Nutrient nutrient, core::Nutrient other)
{
    const auto relations = core::parts_of_wholes();
    return std::ranges::any_of(relations, [&](const auto& row) { return row.part == nutrient && row.whole == other; });
}

std::string printed_words(const core::Shown& shown, core::Nutrient nutrient, const Language& language)
{
    std::string words =
        shown.printed && shown.printed->amount ? amount_words(*shown.printed->amount, nutrient, language) : "";
    if (shown.printed && shown.printed->percent)
        words += (words.empty() ? "" : ", ") +
                 percent_words(shown.printed->percent->percent, shown.printed->percent->less_than, language);
    return words;
}

} // namespace

std::string contradiction_sentence(const core::Shown& shown, core::Nutrient nutrient, const std::string& place,
                                   const Language& language)
{
    switch (*shown.contradiction) {
    case core::Contradiction::OffTheRule:
        return language.fill(TextId::contradicts_rule,
                             {{"side", place}, {"figure", printed_words(shown, nutrient, language)}});
    case core::Contradiction::AmountAgainstPercent:
        return language.fill(
            TextId::contradicts_percent,
            {{"side", place},
             {"amount", amount_words(*shown.printed->amount, nutrient, language)},
             {"percent", percent_words(shown.printed->percent->percent, shown.printed->percent->less_than, language)}});
    case core::Contradiction::WorkedBack:
        return language.fill(TextId::contradicts_nothing_sure,
                             {{"side", place}, {"figure", printed_words(shown, nutrient, language)}});
    case core::Contradiction::PartAgainstWhole:
        break;
    }
    const core::Nutrient other = shown.against.value_or(nutrient);
    const bool part_first = is_part(nutrient, other);
    const auto& part = nutrient_name(part_first ? nutrient : other, language);
    const auto& whole = nutrient_name(part_first ? other : nutrient, language);
    return language.fill(TextId::contradicts_whole,
                         {{"side", place}, {"part", in_sentence(part)}, {"whole", in_sentence(whole)}});
}

} // namespace ui
