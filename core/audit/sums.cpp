#include "core/audit/families.h"
#include "core/label/sharpen.h"

#include <initializer_list>

namespace core::audited {
namespace {

using R = DoubtRule;
using N = Nutrient;

void doubt_parts(const Facts& facts, std::vector<Doubt>& doubts)
{
    for (const auto& [part, whole] : parts_of_wholes()) {
        if (!facts.knows(part) || !facts.knows(whole) || facts.of(part).low <= facts.of(whole).high)
            continue;
        Doubt doubt{.rule = R::PartOverWhole, .nutrient = part, .other = whole};
        doubt.found = facts.line_of(part).amount;
        if (facts.has(whole))
            doubt.likely = facts.line_of(whole).amount;
        doubts.push_back(doubt);
    }
}

/// Parts that share nothing with one another: together they cannot be more than the whole.
void doubt_sum(const Facts& facts, N whole, std::initializer_list<N> parts, std::vector<Doubt>& doubts)
{
    if (!facts.has(whole))
        return;
    std::int64_t least = 0;
    for (const N part : parts)
        least += facts.or_nothing(part).low;
    if (least <= facts.of(whole).high)
        return;
    for (const Doubt& doubt : doubts)
        if (doubt.rule == R::PartOverWhole && doubt.other == whole)
            return; // said already, and more plainly
    doubts.push_back({.rule = R::PartsOverWhole,
                      .nutrient = whole,
                      .found = facts.line_of(whole).amount,
                      .least = Content::from_nano(least)});
}

/// Grams that a millilitre holds at most: honey has about 1.42 (memory), so 1.5.
constexpr std::int64_t heaviest_tenths = 15;

void doubt_weight(const Facts& facts, std::vector<Doubt>& doubts)
{
    if (!facts.has_serving)
        return;
    const std::int64_t least = facts.or_nothing(N::TotalFat).low + facts.or_nothing(N::TotalCarbohydrate).low +
                               facts.or_nothing(N::Protein).low;
    const std::int64_t most = facts.volume ? facts.serving.high / 10 * heaviest_tenths : facts.serving.high;
    if (least <= most)
        return;
    constexpr std::int64_t hundred = 100'000'000'000;
    // Figures of 100 g come to at most 100 g, and no more calories than fat has; a slip seldom keeps to both.
    const bool fits_hundred = least <= hundred && facts.serving.high < hundred && facts.contradicted == 0 &&
                              facts.agreeing == 0 && facts.or_nothing(N::Calories).low <= 9 * hundred;
    doubts.push_back({.rule = fits_hundred ? R::PerHundred : R::HeavierThanServing,
                      .least = Content::from_nano(least),
                      .serving = facts.product.label.serving.metric});
}

} // namespace

void doubt_sums(const Facts& facts, std::vector<Doubt>& doubts)
{
    doubt_parts(facts, doubts);
    doubt_sum(facts, N::TotalFat, {N::SaturatedFat, N::TransFat, N::PolyunsaturatedFat, N::MonounsaturatedFat}, doubts);
    doubt_sum(facts, N::TotalCarbohydrate, {N::DietaryFiber, N::TotalSugars, N::SugarAlcohol}, doubts);
    doubt_sum(facts, N::DietaryFiber, {N::SolubleFiber, N::InsolubleFiber}, doubts);
    for (const Doubt& doubt : doubts)
        if (doubt.rule == R::PerHundred)
            return;
    doubt_weight(facts, doubts);
}

} // namespace core::audited
