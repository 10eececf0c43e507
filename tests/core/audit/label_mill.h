// Makes sound labels of invented foods by the rounding rules, and spoils them on purpose: what the audit is measured
// by.
#pragma once

#include "core/product.h"
#include "tests/core/audit/invented_foods_table.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <random>

namespace test {

/// How a label is written.
enum class Written {
    AsPackage, ///< amounts and percents, as a person copies them
    AsRelease, ///< amounts without percents, as releases hold them
};

/// What a label is spoiled by.
enum class Spoiled {
    SlipOfTen,   ///< one amount ten times or a tenth
    LawfulSlip,  ///< the same, where it leaves a figure that a label can print
    UnitSwap,    ///< g for mg, mg for mcg, or the other way round; IU; kilojoules
    PerHundred,  ///< all amounts are those of 100 g or mL, in whole and tenths
    ServingSlip, ///< the serving size ten times or a tenth
};

/// A food as it truly is: billionths in one serving.
struct TrueFood {
    std::int64_t serving = 0;
    std::int64_t of[core::nutrient_count] = {};
    std::int64_t& operator[](core::Nutrient nutrient) { return of[static_cast<std::size_t>(nutrient)]; }
};

/// One made label.
struct MadeLabel {
    core::Product product;
    const char* kind; ///< "small serving", "sugar alcohol", ...
};

/// Draws labels, the same ones for the same seed on every machine.
class LabelMill {
public:
    explicit LabelMill(std::uint64_t seed) : dice_(seed) {}
    /// A sound label: cereals, drinks, small servings, sugar alcohols, fiber, alcohol; panels of 2016 and before; ages
    /// 1 to 3. Calories by 21 CFR 101.9(c)(1)(i)(A), (B), (C) or (F), percents from the true or the printed amount.
    [[nodiscard]] MadeLabel sound(Written written);
    /// The same label with one thing wrong; the line that was spoiled, where it is one. Nothing where this label has
    /// nothing to spoil so.
    [[nodiscard]] std::optional<core::Nutrient> spoil(core::Product& product, Spoiled how);

private:
    [[nodiscard]] std::int64_t between(std::int64_t low, std::int64_t high);
    [[nodiscard]] bool happens(int percent) { return between(1, 100) <= percent; }
    void swap_unit(core::Nutrient nutrient, core::Line& line);
    [[nodiscard]] TrueFood grow(const FoodKind& kind);
    void count_calories(const FoodKind& kind, TrueFood& food);
    [[nodiscard]] core::Label print(const FoodKind& kind, TrueFood& food, Written written);
    std::mt19937_64 dice_;
};

} // namespace test
