// Calories held against fat, carbohydrate and protein.
// Source: 21 CFR 101.9(c)(1)(i): 4, 4 and 9 calories a gram (B); fiber and other non-digestible carbohydrate 0 to 2
// (C); sugar alcohols 0 to 3 (F); factors of USDA Agriculture Handbook 74 (A). 21 CFR 101.9(g)(5): a fifth above is
// within what the law leaves to a label. Alcohol 7 calories a gram: common practice.
#include "core/audit/energy_words.h"
#include "core/audit/families.h"
#include "core/figure/rounding.h"

#include <algorithm>

namespace core::audited {
namespace {

using R = DoubtRule;
using N = Nutrient;

/// Fat, carbohydrate and protein with what takes from the carbohydrate's calories.
struct Sources {
    Reach fat;
    Reach carbohydrate;
    Reach protein;
    std::int64_t few_calories = 0; ///< fiber and sugar alcohol at most, which may count for nothing
};

Sources sources_of(const Facts& facts)
{
    return {facts.or_nothing(N::TotalFat), facts.or_nothing(N::TotalCarbohydrate), facts.or_nothing(N::Protein),
            facts.or_nothing(N::DietaryFiber).high + facts.or_nothing(N::SugarAlcohol).high};
}

/// The calories that the factors allow, from all fiber and sugar alcohol counted for nothing to all counted in full.
Reach calories_of(const Sources& from)
{
    const std::int64_t full = std::max<std::int64_t>(from.carbohydrate.low - from.few_calories, 0);
    return {9 * from.fat.low + 4 * from.protein.low + 4 * full,
            9 * from.fat.high + 4 * from.protein.high + 4 * from.carbohydrate.high};
}

/// Whether the printed calories are allowed, with some percent more or less.
bool allowed(Reach printed, Reach counted, std::int64_t percent)
{
    return printed.high * 100 >= counted.low * (100 - percent) && printed.low * 100 <= counted.high * (100 + percent);
}

constexpr std::int64_t near_percent = 8; ///< makers with factors of Handbook 74 stay mostly within it
constexpr std::int64_t far_percent = 20; ///< 21 CFR 101.9(g)(5)

std::optional<Figure> times(const Figure& found, std::int64_t up, std::int64_t down)
{
    const std::int64_t nano = found.amount.nano() * up / down;
    if (found.less_than || nano == 0)
        return std::nullopt;
    return Figure{Content::from_nano(nano)};
}

std::optional<Reach> reach_of(N nutrient, const Figure& figure, Panel panel)
{
    const auto range = range_behind(nutrient, figure, panel);
    if (!range)
        return std::nullopt;
    return Reach{range->low.nano(), range->high.nano()};
}

/// Calories ten times too many or too few, or kilojoules.
std::optional<Doubt> slipped_calories(const Facts& facts, Reach counted)
{
    const Figure& found = *facts.line_of(N::Calories).amount;
    for (const auto& [up, down] : {std::pair{10, 1}, std::pair{1, 10}})
        if (const auto figure = times(found, up, down))
            if (const auto reach = reach_of(N::Calories, *figure, facts.product.label.panel);
                reach && allowed(*reach, counted, near_percent))
                return Doubt{.rule = R::SlippedByTen, .nutrient = N::Calories, .found = found, .likely = figure};
    const std::int64_t kilocalories = found.amount.nano() / 4184 * 1000; // 4.184 kJ: NIST SP 811, Appendix B
    constexpr std::int64_t few = 20'000'000'000;                         // among a few calories anything fits
    if (kilocalories >= few && allowed({kilocalories, kilocalories}, counted, 2))
        return Doubt{.rule = R::Kilojoules,
                     .nutrient = N::Calories,
                     .found = found,
                     .likely = printed_figure(N::Calories, Content::from_nano(kilocalories))};
    return std::nullopt;
}

/// One of the three lines ten times too large or too small, where its percent does not vouch for it.
std::optional<Doubt> slipped_source(const Facts& facts, Reach printed)
{
    for (const N nutrient : {N::Protein, N::TotalFat, N::TotalCarbohydrate}) {
        if (!facts.has(nutrient) || (nutrient != N::Protein && facts.line_of(nutrient).percent))
            continue;
        const Figure& found = *facts.line_of(nutrient).amount;
        for (const auto& [up, down] : {std::pair{10, 1}, std::pair{1, 10}}) {
            const auto figure = times(found, up, down);
            const auto reach = figure ? reach_of(nutrient, *figure, facts.product.label.panel) : std::nullopt;
            if (!reach)
                continue;
            Sources otherwise = sources_of(facts);
            (nutrient == N::Protein    ? otherwise.protein
             : nutrient == N::TotalFat ? otherwise.fat
                                       : otherwise.carbohydrate) = *reach;
            if (allowed(printed, calories_of(otherwise), 0))
                return Doubt{.rule = R::SlippedByTen, .nutrient = nutrient, .found = found, .likely = figure};
        }
    }
    return std::nullopt;
}

/// What no line of the panel prints: alcohol may account for more calories, sweeteners for fewer.
bool explained_by_words(const Facts& facts, Reach printed, Reach counted)
{
    if (printed.low > counted.high) {
        constexpr std::int64_t of_alcohol = 7;
        return facts.has_serving && printed.low <= counted.high + of_alcohol * facts.serving.high &&
               names_alcohol(facts.product);
    }
    const Reach fat = facts.or_nothing(N::TotalFat);
    const Reach protein = facts.or_nothing(N::Protein);
    return printed.high * 100 >= (9 * fat.low + 4 * protein.low) * (100 - far_percent) &&
           names_few_calories(facts.product);
}

} // namespace

void doubt_energy(const Facts& facts, std::vector<Doubt>& doubts)
{
    if (!facts.has(N::Calories))
        return;
    const Reach printed = facts.of(N::Calories);
    Reach counted = calories_of(sources_of(facts));
    if (!facts.knows(N::TotalFat) || !facts.knows(N::TotalCarbohydrate) || !facts.knows(N::Protein))
        counted.high = std::max(counted.high, printed.high); // what is not printed may account for it
    if (allowed(printed, counted, near_percent) || explained_by_words(facts, printed, counted))
        return;
    const bool far = !allowed(printed, counted, far_percent);
    if (far)
        if (auto doubt = slipped_calories(facts, counted)) {
            doubts.push_back(*doubt);
            return;
        }
    if (auto doubt = slipped_source(facts, printed)) {
        doubts.push_back(*doubt);
        return;
    }
    if (far)
        doubts.push_back({.rule = R::Calories,
                          .nutrient = N::Calories,
                          .found = facts.line_of(N::Calories).amount,
                          .least = Content::from_nano(counted.low),
                          .most = Content::from_nano(counted.high)});
}

} // namespace core::audited
