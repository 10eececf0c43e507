// Serving size and servings per container, as a label prints them. Source: 21 CFR 101.9(b)(7) and (b)(8).
#pragma once

#include "core/error.h"
#include "core/figure/amount.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace core {

/// Grams or millilitres: unlike ones do not mix.
using Measure = std::variant<Mass, Volume>;

/// "2/3 cup (55 g)": the household words as printed, and the metric amount where there is one.
struct Serving {
    std::string household;         ///< "2/3 cup"; may be empty
    std::optional<Measure> metric; ///< a rounded figure with a range of its own
    bool operator==(const Serving&) const = default;
};

/// "8 servings per container", "about 9", "servings varied", or a package that is one serving.
struct ServingsPerContainer {
    enum class Kind {
        NotPrinted,
        Number, ///< exact: printed without "about"
        About,  ///< rounded, with a range
        Varied, ///< random weight: cannot be multiplied
        Single, ///< a single-serving container: the package is the serving (21 CFR 101.9(b)(6))
    };
    Kind kind = Kind::NotPrinted;
    Count count; ///< 1 for Single, 0 for NotPrinted and Varied
    bool operator==(const ServingsPerContainer&) const = default;
};

/// Reads "39 g", "240 mL", "1.5 g". Errors: BadValue (also for 0).
[[nodiscard]] Result<Measure> parse_measure(std::string_view text);

/// "39 g", "240 mL"; the form that parse_measure reads back.
[[nodiscard]] std::string measure_text(const Measure& measure);

/// Reads "8", "about 9", "varied", "single", "3.5". Errors: BadValue (also for 0 and for more than 1000).
[[nodiscard]] Result<ServingsPerContainer> parse_servings(std::string_view text);

/// "8", "about 9", "varied", "single"; empty for not printed. The form that parse_servings reads back.
[[nodiscard]] std::string servings_text(const ServingsPerContainer& servings);

/// Both in grams or both in millilitres.
[[nodiscard]] bool same_dimension(const Measure& a, const Measure& b);

} // namespace core
