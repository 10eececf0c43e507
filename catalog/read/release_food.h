// One record of a release, taken apart into its texts and amounts, to a product with its label.
// Source: FoodData Central, Branded Foods (which cell holds what; field descriptions of April 2019).
#pragma once

#include "catalog/read/recover.h"
#include "core/product.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace catalog {

/// The cells of a record that a label is made from, in the order in which they are kept between two passes.
enum class ReleaseText : std::uint8_t {
    Name,
    BrandOwner,
    BrandName,
    Ingredients,
    NotSignificant,
    ServingSize,
    ServingUnit,
    Household,
    Category,
    NetQuantity,
    Preparation,
};
inline constexpr std::size_t release_text_count = static_cast<std::size_t>(ReleaseText::Preparation) + 1;

/// The texts of one record.
using ReleaseTexts = std::array<std::string_view, release_text_count>;

/// One amount of one record.
struct ReleaseRow {
    std::uint8_t nutrient; ///< its place in release_nutrients
    Derivation derivation;
    ReleaseAmount amount;
    std::uint16_t percent; ///< the printed % Daily Value per serving; no_percent where the release has none
};
inline constexpr std::uint16_t no_percent = 0xFFFF;

/// What else is known of a record.
struct ReleaseRecord {
    core::Gtin gtin;
    std::uint32_t fdc_id;
    std::int64_t published_on;  ///< 20231026
    int significant_digits = 0; ///< see ServingBehind
    std::string_view source;    ///< the name of the release, as people read it
};

/// What was noticed while a label was made; counted in the report.
enum class ReleaseNotice : std::uint8_t {
    NoDerivation,  ///< nothing says what an amount was made from
    WorkedBack,    ///< at least one figure is not certain
    UnitGuessed,   ///< the serving's unit was wrong or missing, and taken from the net quantity
    UnitUnknown,   ///< the serving's unit is missing: its size is not shown
    NutrientTwice, ///< two amounts for one nutrient: the first is taken
    TextCut,       ///< a text holds signs that are no letters; they are shown as such
};

/// Why no label could be made.
enum class ReleaseRefusal : std::uint8_t {
    NoServingSize, ///< without it no amount per 100 comes back to a figure
    NoName,
    NoNutrients,
};

/// A product, or why there is none, and what was noticed.
struct ReleaseProduct {
    std::optional<core::Product> product;
    std::optional<ReleaseRefusal> refusal;
    std::uint32_t notices = 0; ///< a bit for each ReleaseNotice
    [[nodiscard]] bool noticed(ReleaseNotice notice) const
    {
        return (notices >> static_cast<unsigned>(notice) & 1U) != 0;
    }
};

/// Makes the product of a record.
[[nodiscard]] ReleaseProduct product_of(const ReleaseRecord& record, const ReleaseTexts& texts,
                                        std::span<const ReleaseRow> rows);

/// The panel of a record, told from which amounts it has: added sugars, and amounts of vitamins and minerals, stand on
/// labels of 2016; percents alone, or IU of vitamin A, on older ones; vitamin D with potassium on those of 2016; else
/// the day tells (21 CFR 101.9(c)(6)(iii) and (c)(8), before and after 27 July 2016; compliance 1 January 2020 and
/// 2021).
[[nodiscard]] core::Panel panel_of(std::span<const ReleaseRow> rows, std::int64_t published_on);

} // namespace catalog
