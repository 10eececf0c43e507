// The rows behind core/figure/rounding.h: how each family of figures is rounded, apart from the engine.
#pragma once

#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <cstdint>
#include <span>
#include <string_view>

namespace core {

/// "To the nearest `step`" from `from` on, up to the next band; billionths of the base unit.
struct Band {
    std::int64_t from;
    std::int64_t step;
};

/// How one family of figures is rounded; amounts in billionths of the base unit.
struct RoundingRule {
    std::string_view citation;
    std::int64_t zero_below;      ///< below this the label prints 0 (or may print it and may follow the first band)
    std::int64_t less_than;       ///< the amount of "less than ...", 0 if the rule knows none
    std::int64_t less_than_from;  ///< from here on "less than ..." may stand
    std::int64_t less_than_first; ///< from here on "less than ..." is what we print ourselves
    bool less_than_holds_its_end; ///< whether the amount itself may still print as "less than" it (cholesterol)
    std::int64_t may_be_left_out; ///< below this a label may leave it out with "not a significant source of"
    std::span<const Band> bands;  ///< rising; the first starts where 0 is no longer a must
};

/// The places of a vitamin or mineral; billionths of a gram.
struct VitaminPlace {
    Nutrient nutrient;
    std::int64_t code_step;     ///< the place of the adult RDI, 21 CFR 101.9(c)(8)(iv)
    std::int64_t guidance_step; ///< the place that FDA's draft guidance of January 2017 advises
};

/// The rule of a nutrient that rounds in bands; nullptr for vitamins and minerals, which have a place each.
[[nodiscard]] const RoundingRule* rounding_rule(Nutrient nutrient, Panel panel);

/// The places of a vitamin or mineral; nullptr for other nutrients.
[[nodiscard]] const VitaminPlace* vitamin_place(Nutrient nutrient);

/// The rule of percents: whole ones, or those of vitamins and minerals (billionths of a percent).
[[nodiscard]] const RoundingRule& percent_rule(PercentRounding rounding);

/// Steps of servings per container, 21 CFR 101.9(b)(8)(i) (billionths of a serving).
[[nodiscard]] std::span<const Band> serving_bands();

/// Steps of a metric serving size, 21 CFR 101.9(b)(7)(ii) (billionths of a gram or millilitre).
[[nodiscard]] std::span<const Band> serving_size_bands();

} // namespace core
