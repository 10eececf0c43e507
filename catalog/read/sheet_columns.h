// The columns that a sheet may have: what each is called, what it takes, and the name nearest to a misspelt one.
#pragma once

#include "core/label/nutrient.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// What a cell is about.
enum class Field {
    Gtin,
    Name,
    Brand,
    Aisle,
    Note,
    EnteredOn,
    Panel,
    Audience,
    Household,
    ServingSize,
    Servings,
    NetQuantity,
    NotSignificant,
    SecondColumn,
    Ingredients,
    Contains,
    ReferenceFood,
    ThisPlaceOnly,
    Category,
    SecondNotSignificant,
    WorkedBack,
    SecondWorkedBack,
    SourceKind,
    Source,
    SourceRow,
    Amount,  ///< of a nutrient
    Percent, ///< of a nutrient
};

/// Words that stand in a cell of an amount or of the serving size where a label prints none: as good as an empty cell,
/// and the only way to say so where a cell must not be empty.
inline constexpr std::string_view not_printed = "not printed";
/// In a cell of an amount: the label has a line for the nutrient, without an amount or a percent.
inline constexpr std::string_view no_figure = "no figure";

/// One row of the table of columns that are not about a nutrient.
struct SheetColumnRow {
    Field field;
    std::string_view name;
    bool required;             ///< the column must be there and its cells filled
    std::size_t longest;       ///< most letters in a cell
    std::string_view expected; ///< what a cell takes, as an object of "expected ..."
    std::string_view example;
};

/// The rows of that table, in the order in which the guide explains them.
[[nodiscard]] std::span<const SheetColumnRow> sheet_columns_table();

/// One column of a sheet.
struct SheetColumn {
    std::string name;
    Field field;
    std::optional<core::Nutrient> nutrient; ///< for Amount and Percent
    bool second = false;                    ///< a figure of the second column of the label
    bool required = false;
    std::size_t longest = 0;
    std::string expected;
    std::string example;
};

/// All columns: those of the table, then calories and every nutrient's amount and percent, then the same with
/// "second_".
[[nodiscard]] const std::vector<SheetColumn>& sheet_columns();

/// The column of this name, written small. Nothing for a name that no column has.
[[nodiscard]] const SheetColumn* sheet_column(std::string_view name);

/// The name of the column that was probably meant; empty when none is near.
[[nodiscard]] std::string nearest_column(std::string_view name);

/// The nutrient's key that was probably meant; empty when none is near.
[[nodiscard]] std::string nearest_nutrient(std::string_view key);

/// The key of a reference food that was probably meant; empty when none is near.
[[nodiscard]] std::string nearest_reference_food(std::string_view key);

/// A to Z written small; all other letters stay.
[[nodiscard]] std::string in_small_letters(std::string_view text);

/// How many letters have to be put in, taken out or changed to make one text the other; `enough` when it is as many or
/// more, which is found sooner.
[[nodiscard]] std::size_t edits_between(std::string_view a, std::string_view b, std::size_t enough);

} // namespace catalog
