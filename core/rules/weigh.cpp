#include "core/rules/weigh.h"

#include "core/figure/daily_values.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"
#include "core/label/content_behind.h"
#include "core/label/sharpen.h"
#include "core/rules/household_amount.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace core {
namespace {

constexpr std::int64_t one = 1'000'000'000;

/// More of anything than a reader lets through (figure.h, serving.h): beyond it products could overflow 128 bits.
constexpr std::int64_t most = 1'000'000 * one;

/// From `low` on up to `high`, which may itself be reached (one exact value) or not.
struct Stretch {
    std::int64_t low;
    std::int64_t high;
    bool open; ///< `high` is never reached
};

Stretch span_of(Range<Content> range)
{
    return {range.low.nano(), range.high.nano(), true};
}

/// How the amount of a limit stands to the serving: amount / serving, each from .. to.
struct Portion {
    Stretch amount;
    Stretch serving;
    bool scaled = true; ///< false: the serving is the amount
};

constexpr Portion the_serving_itself{{1, 1, false}, {1, 1, false}, false};

using Found = tl::expected<Stretch, Reason>;

/// What a label says of a nutrient, as the limit counts it; in the one place that asks for a range.
tl::expected<Range<Content>, Reason> true_content(const Label& label, Nutrient nutrient)
{
    const Line* line = label.per_serving.find(nutrient);
    const bool named = line || label.per_serving.not_significant.contains(nutrient);
    const bool in_units = line && !line->amount && line->percent && !daily_value_or(label, nutrient, std::nullopt);
    const auto nominal = in_units ? std::optional(Content::whole(1)) : std::nullopt;
    const Backwards back = sharpen(label, label.per_serving).of(nutrient);
    if (back.contradiction)
        return tl::make_unexpected(back.contradiction == Contradiction::WorkedBack ? Reason::FigureWorkedBack
                                                                                   : Reason::FigureOffTheRule);
    const auto behind = nominal ? content_behind(label, label.per_serving, nutrient, nominal) : back.content;
    if (behind && behind->high.nano() <= most)
        return *behind;
    const bool off = behind || (line && line->amount);
    return tl::make_unexpected(named && off ? Reason::FigureOffTheRule : Reason::FigureNotPrinted);
}

/// Percents of protein count its quality (21 CFR 101.9(c)(7)(ii)): only a printed percent tells them.
Found percent_of_protein(const Label& label)
{
    const Line* line = label.per_serving.find(Nutrient::Protein);
    if (!line || !line->percent)
        return tl::make_unexpected(Reason::FigureNotPrinted);
    const auto behind = range_behind(percent_rounding(Nutrient::Protein, label.panel), *line->percent);
    if (!behind)
        return tl::make_unexpected(Reason::FigureOffTheRule);
    return Stretch{behind->low.nano(), behind->high.nano(), true};
}

bool is_protein_percent(const Limit& limit)
{
    return limit.counted == Counted::PercentDailyValue && limit.nutrient == Nutrient::Protein;
}

Found content_of(const Limit& limit, const Label& label, JudgedBy judged_by)
{
    if (is_protein_percent(limit))
        return percent_of_protein(label);
    const auto behind = true_content(label, limit.nutrient);
    if (!behind)
        return tl::make_unexpected(behind.error());
    const Line* line = label.per_serving.find(limit.nutrient);
    if (judged_by == JudgedBy::PrintedFigure && line && line->amount && !line->amount->less_than)
        return Stretch{line->amount->amount.nano(), line->amount->amount.nano(), false};
    return span_of(*behind);
}

std::int64_t nano_of_measure(const Measure& measure)
{
    return std::visit([](auto size) { return size.nano(); }, measure);
}

/// The amount that a limit speaks of, where it is one measure.
tl::expected<std::optional<Measure>, Reason> amount_of_limit(const Limit& limit, const ReferenceAmount* food)
{
    if (limit.per == Per::Serving || limit.counted == Counted::PercentOfCalories)
        return std::nullopt;
    if (limit.per == Per::Portion)
        return Measure(limit.portion.least);
    if (!food)
        return tl::make_unexpected(Reason::NoReferenceAmount);
    const auto amount = amount_of(*food);
    if (!amount)
        return tl::make_unexpected(Reason::ReferenceAmountInWords);
    return amount;
}

Stretch span_of_serving(const Measure& serving, JudgedBy judged_by)
{
    const std::int64_t printed = nano_of_measure(serving);
    if (judged_by == JudgedBy::PrintedFigure)
        return {printed, printed, false};
    return std::visit(
        [](auto size) {
            const auto range = range_behind_serving_size(size);
            return Stretch{range.low.nano(), range.high.nano(), true};
        },
        serving);
}

/// A serving printed as 28 g or 170 g is what 1 or 6 ounces print as (28.35 g, 170.1 g).
bool is_portion(const Limit& limit, const Measure& serving)
{
    const auto* weight = std::get_if<Mass>(&serving);
    return limit.per == Per::Portion && weight && *weight == printed_serving_size(limit.portion.most);
}

tl::expected<Portion, Reason> ratio_of(const Limit& limit, const Label& label, const ReferenceAmount* food,
                                       const std::optional<Measure>& amount, JudgedBy judged_by)
{
    if (!amount)
        return the_serving_itself;
    const bool in_cups = limit.per == Per::ReferenceAmount && food->volume;
    if (in_cups && same_household(label.serving.household, food->household))
        return the_serving_itself;
    const auto& serving = label.serving.metric;
    if (!serving || nano_of_measure(*serving) <= 0 || nano_of_measure(*serving) > most)
        return tl::make_unexpected(Reason::NoServingSize);
    if (!same_dimension(*serving, *amount))
        return tl::make_unexpected(Reason::UnlikeMeasures);
    if (*serving == *amount || is_portion(limit, *serving))
        return the_serving_itself;
    const std::int64_t least = nano_of_measure(*amount);
    const std::int64_t largest = limit.per == Per::Portion ? limit.portion.most.nano() : least;
    return Portion{{least, largest, false}, span_of_serving(*serving, judged_by)};
}

/// What stands on the other side of content x amount: limit x serving, both counted in the same small unit.
struct Threshold {
    Wide content_times; ///< the content's factor
    Wide limit;         ///< the limit's
};

tl::expected<Threshold, Reason> threshold_of(const Limit& limit, const Label& label)
{
    if (limit.counted == Counted::Amount)
        return Threshold{1, limit.value};
    if (is_protein_percent(limit)) // its content is a percent already
        return Threshold{1, Wide{limit.value} * one};
    const auto daily = daily_value_or(label, limit.nutrient, std::nullopt);
    const Line* line = label.per_serving.find(limit.nutrient);
    if (!daily && line && line->amount) // an amount tells no percent of a Daily Value that is not there
        return tl::make_unexpected(Reason::FigureNotPrinted);
    return Threshold{100, Wide{limit.value} * (daily ? *daily : Content::whole(1)).nano()};
}

Verdict verdict_of(Bound bound, const Stretch& content, const Portion& ratio, const Threshold& threshold)
{
    const Wide largest = threshold.content_times * content.high * ratio.amount.high;
    const Wide least = threshold.content_times * content.low * ratio.amount.low;
    const Wide against_largest = threshold.limit * ratio.serving.low;
    const Wide against_least = threshold.limit * ratio.serving.high;
    // The least content per amount lies at the largest serving: never reached where that is open, unless it is 0.
    const bool never_least = ratio.serving.open && content.low > 0;
    const bool all_below = content.open ? largest <= against_largest : largest < against_largest;
    const bool all_above = never_least ? least >= against_least : least > against_least;
    const bool all_at_least = least >= against_least;
    switch (bound) {
    case Bound::Below:
        return all_below ? Verdict::Meets : all_at_least ? Verdict::DoesNotMeet : Verdict::CannotTell;
    case Bound::AtMost:
        if (largest <= against_largest)
            return Verdict::Meets;
        return all_above ? Verdict::DoesNotMeet : Verdict::CannotTell;
    case Bound::AtLeast:
        break;
    }
    return all_at_least ? Verdict::Meets : all_below ? Verdict::DoesNotMeet : Verdict::CannotTell;
}

/// Calories from this fat, 9 a gram (21 CFR 101.9(c)(1)(i)(B)), against all calories: no amount, no serving.
Verdict verdict_of_calories(const Limit& limit, const Stretch& fat, const Stretch& calories)
{
    constexpr std::int64_t a_gram = 9;
    const Portion ratio{{1, 1, false}, calories};
    return verdict_of(limit.bound, fat, ratio, {Wide{100} * a_gram, limit.value});
}

/// No more than whoever prints it can count in the nutrient's own unit; only a hostile label gets there.
std::int64_t showable(Nutrient nutrient, std::int64_t nano)
{
    return std::min(nano, std::numeric_limits<std::int64_t>::max() / (2 * one) * nano_of(info(nutrient).unit));
}

Range<Content> reached(Nutrient nutrient, const Stretch& content, const Portion& ratio)
{
    const auto low = showable(nutrient, rounded_down(Wide{content.low} * ratio.amount.low, ratio.serving.high));
    const auto high = showable(nutrient, rounded_up(Wide{content.high} * ratio.amount.high, ratio.serving.low));
    return {Content::from_nano(low), Content::from_nano(std::max(high, low + 1))}; // one exact value is no range
}

/// What a class would write: the printed figure x amount / printed serving size.
std::optional<Content> worked_out(const Decided& decided, const Portion& ratio)
{
    if (!decided.figure)
        return std::nullopt;
    if (!ratio.scaled)
        return decided.figure->amount;
    const auto times = Wide{decided.figure->amount.nano()} * nano_of_measure(*decided.amount);
    return Content::from_nano(
        showable(decided.limit.nutrient, rounded_nearest(times, nano_of_measure(*decided.serving))));
}

/// What can be told of the arithmetic whatever the answer is.
Decided told(const Limit& limit, const Label& label)
{
    Decided decided{limit, std::nullopt, std::nullopt, label.serving.metric, std::nullopt, std::nullopt, std::nullopt};
    if (const Line* line = label.per_serving.find(limit.nutrient))
        decided.figure = line->amount;
    if (const auto behind = true_content(label, limit.nutrient))
        decided.behind = *behind;
    return decided;
}

Weighed unknown(Reason reason, Decided decided)
{
    return {Verdict::CannotTell, reason, std::move(decided)};
}

Weighed weigh_calories(const Limit& limit, const Label& label, Decided decided)
{
    const auto fat = true_content(label, limit.nutrient);
    const auto calories = true_content(label, Nutrient::Calories);
    if (!fat || !calories)
        return unknown(fat ? calories.error() : fat.error(), std::move(decided));
    const Verdict verdict = verdict_of_calories(limit, span_of(*fat), span_of(*calories));
    return {verdict, verdict == Verdict::CannotTell ? Reason::RangeStraddles : Reason::Figures, std::move(decided)};
}

/// With ounces counted one way only.
Limit with_portion(Limit limit, Mass portion)
{
    limit.portion = {portion, portion};
    return limit;
}

/// Whether the two ways of counting an ounce lead to different answers, each certain.
bool ounce_decides(const Limit& limit, const Label& label, JudgedBy judged_by)
{
    if (limit.per != Per::Portion || limit.portion.least == limit.portion.most)
        return false;
    const auto least = weigh(with_portion(limit, limit.portion.least), label, nullptr, judged_by).verdict;
    const auto largest = weigh(with_portion(limit, limit.portion.most), label, nullptr, judged_by).verdict;
    return least != Verdict::CannotTell && largest != Verdict::CannotTell && least != largest;
}

} // namespace

Weighed weigh(const Limit& limit, const Label& label, const ReferenceAmount* food, JudgedBy judged_by)
{
    Decided decided = told(limit, label);
    if (!limit.confirmed)
        return unknown(Reason::LimitNotConfirmed, std::move(decided));
    if (limit.counted == Counted::PercentOfCalories)
        return weigh_calories(limit, label, std::move(decided));
    const auto content = content_of(limit, label, judged_by);
    if (!content)
        return unknown(content.error(), std::move(decided));
    const auto amount = amount_of_limit(limit, food);
    if (!amount)
        return unknown(amount.error(), std::move(decided));
    decided.amount = *amount;
    const auto ratio = ratio_of(limit, label, food, *amount, judged_by);
    const auto threshold = threshold_of(limit, label);
    if (!ratio || !threshold)
        return unknown(ratio ? threshold.error() : ratio.error(), std::move(decided));
    if (!is_protein_percent(limit))
        decided.reaches = reached(limit.nutrient, *content, *ratio);
    decided.worked_out = worked_out(decided, *ratio);
    const Verdict verdict = verdict_of(limit.bound, *content, *ratio, *threshold);
    if (verdict == Verdict::CannotTell)
        return unknown(ounce_decides(limit, label, judged_by) ? Reason::OunceDecides : Reason::RangeStraddles,
                       std::move(decided));
    const bool agrees =
        judged_by == JudgedBy::TrueContent || weigh(limit, label, food, JudgedBy::TrueContent).verdict == verdict;
    return {verdict, Reason::Figures, std::move(decided), agrees};
}

Limit in_fifty_grams(const Limit& limit)
{
    constexpr Mass fifty = Mass::whole(50);
    Limit again = limit;
    again.per = Per::Portion;
    again.portion = {fifty, fifty};
    again.small_serving = false;
    return again;
}

} // namespace core
