// The reference amounts customarily consumed: the amount of a food that nutrient content claims are judged by.
// Source: 21 CFR 101.12(b), tables 1 and 2; rows: core/rules/reference_amounts_table.cpp.
#pragma once

#include "core/label/serving.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace core {

/// What a rule must know of a food beyond its reference amount. Which categories are which is our reading of their
/// names in the table.
enum class FoodKind {
    Other,
    DryCereal, ///< breakfast cereal as it stands in the box (21 CFR 170.3(n)(4): ready to eat, instant and hot)
    Yogurt,
    Seafood,   ///< fish, shellfish and game meat
    MixedDish, ///< may be a meal or main dish product, which has limits of its own (21 CFR 101.13(l), (m))
    Young,     ///< made for infants or for children of 1 to 3
};

/// One row of the table.
struct ReferenceAmount {
    std::string_view key;       ///< "yogurt": what people put in a sheet; stays the same for ever
    std::string_view category;  ///< the category in short words
    std::int64_t nano;          ///< billionths of a gram or millilitre; 0: the rule gives words, not a number
    bool volume;                ///< millilitres; cups and spoons count by 21 CFR 101.9(b)(5)(viii)
    std::string_view household; ///< how the rule puts it: "1 cup", "2 tbsp", "pieces"
    std::string_view source;
    FoodKind kind;
};

/// All rows, in the order of the rule.
[[nodiscard]] std::span<const ReferenceAmount> reference_amounts();

/// The row with this key; nullptr for an unknown one. The pointer stays good for ever.
[[nodiscard]] const ReferenceAmount* reference_amount(std::string_view key);

/// The amount in grams or millilitres; nothing where the rule gives words.
[[nodiscard]] std::optional<Measure> amount_of(const ReferenceAmount& food);

/// 30 g or less, or 2 tablespoons (30 mL) or less: then limits of "low" and some others hold for 50 g as well.
/// Nothing where the rule gives words. Source: 21 CFR 101.13(h)(1), 101.60(b)(2)(i)(B) and the like.
[[nodiscard]] std::optional<bool> is_small(const ReferenceAmount& food);

} // namespace core
