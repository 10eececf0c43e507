#include "catalog/read/sheet_columns.h"

namespace catalog {
namespace {

// docs/sheet.md explains every row; a test keeps the two the same.
constexpr SheetColumnRow rows[] = {
    {Field::Gtin, "gtin", true, 40, "8, 12, 13 or 14 digits with their check digit", "9521234543213"},
    {Field::Name, "name", true, 120, "the product's name", "Oat rounds, honey"},
    {Field::Brand, "brand", false, 120, "the brand as text", "Millbrook"},
    {Field::Aisle, "aisle", false, 120, "the aisle as text", "Cereal"},
    {Field::Note, "note", false, 500, "a remark as text", "New recipe since spring"},
    {Field::EnteredOn, "entered_on", true, 40,
     "the day on which the label was read, such as 2026-11-25 (year-month-day)", "2026-11-25"},
    {Field::Panel, "panel", false, 40, "2016 or older", "2016"},
    {Field::Audience, "audience", false, 40, "adult, ages_1_3 or infant", "adult"},
    {Field::Household, "serving_household", false, 120, "the serving in household words, such as 2/3 cup", "2/3 cup"},
    {Field::ServingSize, "serving_size", false, 40, "grams or millilitres, such as 55 g or 240 mL", "55 g"},
    {Field::Servings, "servings_per_container", false, 40, "8, about 9, 2.5, varied or single", "about 8"},
    {Field::NetQuantity, "net_quantity", false, 120, "the net quantity as printed, such as 12 oz (340 g)",
     "15.9 oz (450 g)"},
    {Field::NotSignificant, "not_significant", false, 1000,
     "nutrients with \";\" between them, such as trans_fat;vitamin_d", "trans_fat;cholesterol"},
    {Field::SecondColumn, "second_column", false, 40, "as_prepared or per_container", "as_prepared"},
    {Field::Ingredients, "ingredients", false, 10'000,
     "the ingredients as printed, or none where the label prints none", "Whole grain oats, honey, salt"},
    {Field::Contains, "contains", false, 1000, "the Contains statement, or none where the label prints none", "Oats"},
    {Field::ReferenceFood, "reference_food", false, 60,
     "a key of the list of reference foods, such as cereal_20_to_43_g_per_cup", "cereal_20_to_43_g_per_cup"},
    {Field::ThisPlaceOnly, "this_place_only", false, 40, "yes or no; empty means no", "no"},
    {Field::Category, "category", false, 200, "what a release calls the food, as text", "Cereal"},
    {Field::SecondNotSignificant, "second_not_significant", false, 1000,
     "nutrients with \";\" between them, such as trans_fat;vitamin_d", "trans_fat"},
    {Field::WorkedBack, "worked_back", false, 1000,
     "nutrients with \";\" between them, of which the row has a figure, such as sodium;iron", "sodium"},
    {Field::SecondWorkedBack, "second_worked_back", false, 1000,
     "nutrients with \";\" between them, of which the row has a second figure, such as sodium;iron", "sodium"},
    {Field::SourceKind, "source_kind", false, 40, "sheet, release or typed_here", "sheet"},
    {Field::Source, "source", false, 200, "the name of a sheet or of a release, with its row in source_row",
     "cereals.csv"},
    {Field::SourceRow, "source_row", false, 40, "a row or the number of a record, with its source in source", "7"},
};

} // namespace

std::span<const SheetColumnRow> sheet_columns_table()
{
    return rows;
}

} // namespace catalog
