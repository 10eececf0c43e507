// Money, exact: whole billionths of a dollar, so that cents and their parts are integers and nothing is rounded away.
#pragma once

#include "core/error.h"
#include "core/figure/amount.h"

#include <cstdint>
#include <string_view>

namespace core {

/// An amount of US dollars.
using Money = Amount<struct MoneyTag>;

/// So many cents.
[[nodiscard]] constexpr Money cents(std::int64_t number)
{
    return Money::from_nano(number * 10'000'000);
}

/// The whole cents in it; what is below a cent is left out.
[[nodiscard]] constexpr std::int64_t whole_cents(Money money)
{
    return money.nano() / 10'000'000;
}

/// No package costs more than this here: $9,999.99.
inline constexpr Money dearest = cents(999'999);

/// Reads a shelf price: "3.99", "$3.99", "4". Errors: BadValue, also for 0, for more than two places behind the point
/// and for more than `dearest`.
[[nodiscard]] Result<Money> parse_price(std::string_view text);

} // namespace core
