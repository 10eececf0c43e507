#include "core/rules/reference_amounts.h"
#include "tests/demo/label_printer.h"

#include <functional>
#include <stdexcept>

// The sheet's form: RFC 4180, with "\n" at the line ends.
namespace test::demo {
namespace {

struct Entry {
    const TrueFood& food;
    core::Label label;
};

struct SheetColumn {
    std::string name;
    std::function<std::string(const Entry&)> cell;
};

std::string amount_text(const core::Line* line, core::Unit unit)
{
    if (!line || !line->amount)
        return {};
    return (line->amount->less_than ? "less than " : "") + core::number_of(*line->amount, unit);
}

std::string percent_text(const core::Line* line)
{
    return line && line->percent ? std::to_string(line->percent->percent) : std::string{};
}

std::string audience_text(core::Audience audience)
{
    switch (audience) {
    case core::Audience::Ages1To3:
        return "ages_1_3";
    case core::Audience::Infant:
        return "infant";
    case core::Audience::Adult:
        break;
    }
    return "adult";
}

std::string second_text(const core::Label& label)
{
    if (!label.second)
        return {};
    return label.second->kind == core::SecondColumn::Kind::AsPrepared ? "as_prepared" : "per_container";
}

std::string not_significant_text(const core::Label& label)
{
    std::string text;
    for (const auto nutrient : label.per_serving.not_significant)
        text.append(text.empty() ? "" : ";").append(core::info(nutrient).key);
    return text;
}

/// The key of the category that the food says it is in.
std::string reference_key(const TrueFood& food)
{
    for (const auto& row : core::reference_amounts())
        if (row.category == food.reference_category)
            return std::string(row.key);
    throw std::runtime_error(food.name + ": no such reference category: " + food.reference_category);
}

/// The first column of a label, or its second one; nothing where it has none.
const core::Column* column_of(const Entry& entry, bool second)
{
    if (!second)
        return &entry.label.per_serving;
    return entry.label.second ? &entry.label.second->column : nullptr;
}

const core::Line* line_of(const Entry& entry, bool second, core::Nutrient nutrient)
{
    const core::Column* column = column_of(entry, second);
    return column ? column->find(nutrient) : nullptr;
}

/// Two columns a nutrient, amount and percent, each only where a label of the sheet fills it.
void add_figures(std::vector<SheetColumn>& columns, const std::vector<Entry>& entries, bool second)
{
    const auto add_if_used = [&](SheetColumn column) {
        for (const auto& entry : entries)
            if (!column.cell(entry).empty())
                return columns.push_back(std::move(column));
    };
    for (const auto& known : core::nutrients()) {
        const std::string name = (second ? "second_" : "") + std::string(known.key);
        const std::string unit = known.unit == core::Unit::Kilocalorie ? "" : "_" + std::string(unit_name(known.unit));
        add_if_used({name + unit, [&known, second](const Entry& entry) {
                         return amount_text(line_of(entry, second, known.nutrient), known.unit);
                     }});
        add_if_used({name + "_percent_dv", [&known, second](const Entry& entry) {
                         return percent_text(line_of(entry, second, known.nutrient));
                     }});
    }
}

std::vector<SheetColumn> columns_for(const std::vector<Entry>& entries)
{
    std::vector<SheetColumn> columns{
        {"gtin", [](const Entry& e) { return e.food.gtin; }},
        {"name", [](const Entry& e) { return e.food.name; }},
        {"brand", [](const Entry& e) { return e.food.brand; }},
        {"aisle", [](const Entry& e) { return e.food.aisle; }},
        {"note", [](const Entry& e) { return e.food.note; }},
        {"entered_on", [](const Entry& e) { return e.food.entered_on.text(); }},
        {"panel", [](const Entry& e) { return e.label.panel == core::Panel::Older ? "older" : "2016"; }},
        {"audience", [](const Entry& e) { return audience_text(e.label.audience); }},
        {"serving_household", [](const Entry& e) { return e.label.serving.household; }},
        {"serving_size", [](const Entry& e) { return core::measure_text(e.label.serving.metric.value()); }},
        {"servings_per_container", [](const Entry& e) { return core::servings_text(e.label.servings); }},
        {"net_quantity",
         [](const Entry& e) { return e.label.net_quantity ? e.label.net_quantity->printed : std::string{}; }},
    };
    add_figures(columns, entries, false);
    columns.push_back({"not_significant", [](const Entry& e) { return not_significant_text(e.label); }});
    columns.push_back({"second_column", [](const Entry& e) { return second_text(e.label); }});
    add_figures(columns, entries, true);
    columns.push_back({"ingredients", [](const Entry& e) { return e.label.ingredients.value_or(""); }});
    columns.push_back({"contains", [](const Entry& e) { return e.food.contains; }});
    columns.push_back({"reference_food", [](const Entry& e) { return reference_key(e.food); }});
    return columns;
}

std::string quoted(const std::string& cell)
{
    if (cell.find_first_of(",\"\n") == std::string::npos)
        return cell;
    std::string text = "\"";
    for (const char c : cell)
        text.append(c == '"' ? 2 : 1, c);
    return text + '"';
}

} // namespace

std::string printed_sheet(const std::vector<TrueFood>& foods)
{
    std::vector<Entry> entries;
    for (const auto& food : foods)
        entries.push_back({food, printed_label(food, foods)});
    const auto columns = columns_for(entries);
    std::string sheet;
    for (const auto& column : columns)
        sheet.append(sheet.empty() ? "" : ",").append(column.name);
    for (const auto& entry : entries) {
        std::string row;
        for (const auto& column : columns)
            row.append(&column == &columns.front() ? "\n" : ",").append(quoted(column.cell(entry)));
        sheet += row;
    }
    return sheet + '\n';
}

} // namespace test::demo
