#include "core/figure/percent.h"

#include "core/figure/daily_values.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"

#include <algorithm>

namespace core {

PercentRounding percent_rounding(Nutrient nutrient, Panel panel)
{
    if (nutrient == Nutrient::Potassium && panel == Panel::Older)
        return PercentRounding::Whole;
    return info(nutrient).percent;
}

std::optional<int> percent_daily_value(Nutrient nutrient, Content amount, Panel panel, Audience audience)
{
    const auto value = daily_value(nutrient, panel, audience);
    const auto rounding = percent_rounding(nutrient, panel);
    if (!value || rounding == PercentRounding::None)
        return std::nullopt;
    // Cut, not rounded, to billionths of a percent: no half step is ever reached from below.
    const Wide most = Wide{Percent::whole(1'000'000).nano()}; // a hostile figure must not overflow
    const Wide percent = std::min(most, Wide{amount.nano()} * 100 * Percent::whole(1).nano() / value->nano());
    return printed_percent(rounding, Percent::from_nano(static_cast<std::int64_t>(percent)));
}

Reading reading_of(Percent percent)
{
    if (percent <= Percent::whole(5))
        return Reading::Low;
    return percent < Percent::whole(20) ? Reading::Between : Reading::High;
}

std::optional<Reading> reading_of(Range<Percent> range)
{
    const Reading low = reading_of(range.low);
    const Reading high = reading_of(range.high - Percent::from_nano(1)); // the high edge is never reached
    if (low != high)
        return std::nullopt;
    return low;
}

} // namespace core
