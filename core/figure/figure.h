// One amount or percent exactly as a label prints it: "0.5 g", "less than 1 g", "8%".
#pragma once

#include "core/error.h"
#include "core/figure/amount.h"
#include "core/label/nutrient.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// A printed amount of a nutrient. `amount` is the number that stands there, in grams (or kilocalories).
struct Figure {
    Content amount;
    bool less_than = false; ///< "less than 1 g": the true value is below `amount`
    int decimals = 0;       ///< digits printed behind the point, so that it prints again as it stood
    bool operator==(const Figure&) const = default;
};

/// A printed percent Daily Value, a whole number.
struct PrintedPercent {
    int percent = 0;
    bool less_than = false; ///< "less than 2%"
    bool operator==(const PrintedPercent&) const = default;
};

/// Reads a figure as a sheet or a person writes it: "3", "0.5 g", "less than 1 g", "<1g". The unit may be left out; if
/// it is there it must be the nutrient's own. Errors: BadValue, with what was expected in `place.expected`.
[[nodiscard]] Result<Figure> parse_figure(Nutrient nutrient, std::string_view text);

/// Reads "8", "8%", "<1%", "less than 2 %". Errors: BadValue.
[[nodiscard]] Result<PrintedPercent> parse_percent(std::string_view text);

/// The number alone, as printed: "0.5", "1230"; no unit, no "less than".
[[nodiscard]] std::string number_of(const Figure& figure, Unit unit);

/// The plain English form that parse_figure reads back: "less than 1 g", "0.5 g", "140".
[[nodiscard]] std::string as_printed(const Figure& figure, Nutrient nutrient);

/// An exact decimal of at most nine places and nine whole digits: "1.25". A comma is not a point. For readers of
/// figures.
struct Decimal {
    std::int64_t nano = 0;
    int decimals = 0;
    bool operator==(const Decimal&) const = default;
};

/// Reads a plain decimal number (digits, at most one point); nothing for anything else, also for more places than fit.
[[nodiscard]] std::optional<Decimal> parse_decimal(std::string_view text);

/// `nano` billionths with that many digits behind the point, rounded half up: (1250000000, 1) is "1.3".
[[nodiscard]] std::string decimal_text(std::int64_t nano, int decimals);

} // namespace core
