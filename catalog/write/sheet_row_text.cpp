#include "catalog/write/sheet_row_text.h"

#include "catalog/read/harmless.h"
#include "catalog/read/sheet_row.h"
#include "catalog/read/sheet_words.h"

namespace catalog {
namespace {

/// The number as it stands under bars: without the zeros that only the 14-digit form has.
std::string printed_number(const core::Gtin& gtin)
{
    const auto& digits = gtin.digits();
    const std::size_t zeros = digits.starts_with("000000") ? 6
                              : digits.starts_with("00")   ? 2
                              : digits[0] == '0'           ? 1
                                                           : 0;
    return digits.substr(zeros);
}

std::string keys_of(const std::set<core::Nutrient>& nutrients)
{
    std::string keys;
    for (const auto nutrient : nutrients)
        keys.append(keys.empty() ? "" : ";").append(core::info(nutrient).key);
    return keys;
}

std::string worked_back(const core::Column& column)
{
    std::set<core::Nutrient> nutrients;
    for (const auto& [nutrient, line] : column.lines)
        if (line.worked_back)
            nutrients.insert(nutrient);
    return keys_of(nutrients);
}

std::string second_kind(const core::Label& label)
{
    if (!label.second)
        return {};
    const auto& column = label.second->column;
    return std::string(column.lines.empty() && column.not_significant.empty()
                           ? written_word(sheet_empty_seconds, label.second->kind)
                           : written_word(sheet_seconds, label.second->kind));
}

/// A statement that a label may print none of: nothing for not recorded.
std::string statement(const std::optional<std::string>& text)
{
    return text && text->empty() ? "none" : text.value_or("");
}

std::string amount_text(const core::Line* line, core::Nutrient nutrient, bool required)
{
    if (line == nullptr)
        return required ? std::string(not_printed) : "";
    if (!line->amount)
        return line->percent && !required ? "" : std::string(no_figure);
    return (line->amount->less_than ? "<" : "") + core::number_of(*line->amount, core::info(nutrient).unit);
}

std::string percent_text(const core::Line* line)
{
    if (line == nullptr || !line->percent)
        return {};
    return (line->percent->less_than ? "<" : "") + std::to_string(line->percent->percent) + "%";
}

std::string figure_text(const core::Label& label, const SheetColumn& column)
{
    const auto* const figures = !column.second ? &label.per_serving : label.second ? &label.second->column : nullptr;
    const auto* const line = figures == nullptr ? nullptr : figures->find(*column.nutrient);
    return column.field == Field::Percent ? percent_text(line) : amount_text(line, *column.nutrient, column.required);
}

std::string serving_size(const core::Serving& serving)
{
    if (serving.metric)
        return core::measure_text(*serving.metric);
    return serving.household.empty() ? std::string(not_printed) : "";
}

/// A number that people reckon with stays one, unless a spreadsheet would take a printed 0 off its end ("0.50").
bool stays_number(const SheetColumn& column, const std::string& cell)
{
    const bool number = column.nutrient || column.field == Field::Servings || column.field == Field::Panel ||
                        column.field == Field::SourceRow;
    return number && (cell.find('.') == std::string::npos || !cell.ends_with('0'));
}

core::Error not_carried(const core::Product& product, std::string column)
{
    return {core::Error::Kind::BadValue, "export",
            core::Place{"", 0, std::move(column), product.gtin.digits(), "a product that a sheet can say"}};
}

} // namespace

std::string cell_of(const core::Product& product, const SheetColumn& column)
{
    const auto& label = product.label;
    switch (column.field) {
    case Field::Gtin:
        return printed_number(product.gtin);
    case Field::Name:
        return product.name;
    case Field::Brand:
        return product.brand;
    case Field::Aisle:
        return product.aisle;
    case Field::Note:
        return product.note;
    case Field::EnteredOn:
        return product.origin.entered_on.text();
    case Field::Panel:
        return std::string(written_word(sheet_panels, label.panel));
    case Field::Audience:
        return std::string(written_word(sheet_audiences, label.audience));
    case Field::Household:
        return label.serving.household;
    case Field::ServingSize:
        return serving_size(label.serving);
    case Field::Servings:
        return core::servings_text(label.servings);
    case Field::NetQuantity:
        return label.net_quantity ? label.net_quantity->printed : "";
    case Field::NotSignificant:
        return keys_of(label.per_serving.not_significant);
    case Field::SecondColumn:
        return second_kind(label);
    case Field::Ingredients:
        return statement(label.ingredients);
    case Field::Contains:
        return statement(label.contains);
    case Field::ReferenceFood:
        return product.reference_food == nullptr ? "" : std::string(product.reference_food->key);
    case Field::ThisPlaceOnly:
        return product.this_place_only ? "yes" : "";
    case Field::Category:
        return product.category;
    case Field::SecondNotSignificant:
        return label.second ? keys_of(label.second->column.not_significant) : "";
    case Field::WorkedBack:
        return worked_back(label.per_serving);
    case Field::SecondWorkedBack:
        return label.second ? worked_back(label.second->column) : "";
    case Field::SourceKind:
        return std::string(written_word(sheet_source_kinds, product.origin.kind));
    case Field::Source:
        return product.origin.source;
    case Field::SourceRow:
        return std::to_string(product.origin.row);
    case Field::Amount:
    case Field::Percent:
        return figure_text(label, column);
    }
    return {};
}

UsedColumns::UsedColumns() : used_(sheet_columns().size()) {}

void UsedColumns::add(const core::Product& product)
{
    for (std::size_t i = 0; i < used_.size(); ++i)
        used_[i] = used_[i] || !cell_of(product, sheet_columns()[i]).empty();
}

std::vector<const SheetColumn*> UsedColumns::all() const
{
    std::vector<const SheetColumn*> columns;
    for (std::size_t i = 0; i < used_.size(); ++i)
        if (const auto& column = sheet_columns()[i]; used_[i] || column.required || column.field == Field::ServingSize)
            columns.push_back(&column);
    return columns;
}

std::string quoted(const std::string& cell)
{
    if (cell.find_first_of(",;\t\"'\r\n") == std::string::npos)
        return cell;
    std::string text = "\"";
    for (const char c : cell) {
        if (c == '"')
            text += '"';
        text += c;
    }
    return text + '"';
}

std::string header_text(const std::vector<const SheetColumn*>& columns)
{
    std::string text;
    for (const auto* const column : columns)
        text.append(text.empty() ? "" : ",").append(column->name);
    return text;
}

core::Result<std::string> row_text(const core::Product& product, const std::vector<const SheetColumn*>& columns)
{
    SheetReading reading;
    CsvRow row;
    std::string text;
    for (const auto* const column : columns) {
        auto cell = cell_of(product, *column);
        row.cells.push_back(stays_number(*column, cell) ? cell : made_harmless(cell));
        reading.header.columns.push_back(column);
        text.append(text.empty() ? "" : ",").append(catalog::quoted(row.cells.back()));
    }
    row.cell_count = row.cells.size();
    Faults faults;
    auto read = read_row(row, reading, faults);
    if (!faults.empty())
        return tl::make_unexpected(not_carried(product, faults.kept().front().place.column));
    if (read.product != product)
        return tl::make_unexpected(not_carried(product, ""));
    return text;
}

} // namespace catalog
