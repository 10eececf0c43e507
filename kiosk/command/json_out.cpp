#include "kiosk/command/json_out.h"

#include "core/compare/why.h"
#include "core/figure/figure.h"
#include "kiosk/command/json_why.h"

#include <nlohmann/json.hpp>

namespace kiosk {

using Json = nlohmann::ordered_json;

const char* json_name(core::Basis basis)
{
    switch (basis) {
    case core::Basis::Serving:
        return "serving";
    case core::Basis::Package:
        return "package";
    case core::Basis::SameAmount:
        return "same";
    case core::Basis::SameMeasure:
        return "same_measure";
    case core::Basis::MyAmount:
        return "my_amount";
    case core::Basis::Prepared:
        break;
    }
    return "prepared";
}

const char* json_name(core::Finding finding)
{
    switch (finding) {
    case core::Finding::LeftLess:
        return "left_less";
    case core::Finding::LeftMore:
        return "left_more";
    case core::Finding::SameFigure:
        return "same_figure";
    case core::Finding::TooCloseToTell:
        return "too_close_to_tell";
    case core::Finding::NotPrinted:
        return "not_printed";
    case core::Finding::NotComparable:
        break;
    }
    return "not_comparable";
}

const char* json_name(core::Why why)
{
    switch (why) {
    case core::Why::Comparable:
        return "comparable";
    case core::Why::UnlikeAudience:
        return "unlike_audience";
    case core::Why::GramsAgainstMillilitres:
        return "grams_against_millilitres";
    case core::Why::NoMetricServing:
        return "no_metric_serving";
    case core::Why::NoHouseholdMeasure:
        return "no_household_measure";
    case core::Why::UnlikeMeasures:
        return "unlike_measures";
    case core::Why::NotPrepared:
        return "not_prepared";
    case core::Why::ServingsAgainstNet:
        return "servings_against_net";
    case core::Why::AmountAgainstPercent:
        return "amount_against_percent";
    case core::Why::PartAgainstWhole:
        return "part_against_whole";
    case core::Why::ServingsVaried:
        return "servings_varied";
    case core::Why::ServingsNotPrinted:
        return "servings_not_printed";
    case core::Why::ServingsOffTheRule:
        return "servings_off_the_rule";
    case core::Why::FigureOffTheRule:
        return "figure_off_the_rule";
    case core::Why::FigureWorkedBack:
        return "figure_worked_back";
    case core::Why::PercentsOfUnlikeLabels:
        break;
    }
    return "percents_of_unlike_labels";
}

const char* json_name(core::Origin::Kind kind)
{
    switch (kind) {
    case core::Origin::Kind::Release:
        return "release";
    case core::Origin::Kind::TypedHere:
        return "typed_here";
    case core::Origin::Kind::Sheet:
        break;
    }
    return "sheet";
}

const char* json_name(core::Source source)
{
    switch (source) {
    case core::Source::NotPrinted:
        return "not_printed";
    case core::Source::Printed:
        return "printed";
    case core::Source::WorkedOut:
        return "worked_out";
    case core::Source::NotSignificant:
        break;
    }
    return "not_significant";
}

const char* json_name(core::Reading reading)
{
    switch (reading) {
    case core::Reading::Low:
        return "low";
    case core::Reading::Between:
        return "between";
    case core::Reading::High:
        break;
    }
    return "high";
}

const char* json_name(core::Aim aim)
{
    switch (aim) {
    case core::Aim::Less:
        return "less";
    case core::Aim::More:
        return "more";
    case core::Aim::Neither:
        break;
    }
    return "neither";
}

const char* json_name(core::Audience audience)
{
    switch (audience) {
    case core::Audience::Adult:
        return "adult";
    case core::Audience::Ages1To3:
        return "ages_1_to_3";
    case core::Audience::Infant:
        break;
    }
    return "infant";
}

const char* json_name(core::SecondColumn::Kind kind)
{
    return kind == core::SecondColumn::Kind::AsPrepared ? "as_prepared" : "per_container";
}

namespace {

Json percent_json(const core::ShownPercent& percent)
{
    Json json{{"percent", percent.percent}, {"less_than", percent.less_than}, {"source", json_name(percent.source)}};
    json["reading"] = percent.reading ? Json(json_name(*percent.reading)) : Json(nullptr);
    if (percent.range)
        json["range"] = {{"low", exact_json(percent.range->low.nano(), 1'000'000'000)},
                         {"below", exact_json(percent.range->high.nano(), 1'000'000'000)}};
    if (percent.label_reading)
        json["reading_of_one_serving"] = json_name(*percent.label_reading);
    json["say_range"] = percent.say_range;
    return json;
}

/// What the rows of one side are worked out from.
struct JsonSide {
    const core::Label& label;
    const core::SharpLabel& sharp;
    core::Ground ground;
};

Json side_json(const core::Shown& shown, core::Nutrient nutrient, const JsonSide& side)
{
    const auto unit = core::info(nutrient).unit;
    Json json{{"source", json_name(shown.source)}};
    if (shown.figure) {
        json["amount"] = core::number_of(*shown.figure, unit);
        json["less_than"] = shown.figure->less_than;
        json["say_range"] = shown.say_range;
    }
    if (shown.range)
        json["range"] = {{"low", exact_json(shown.range->low.nano(), core::nano_of(unit))},
                         {"below", exact_json(shown.range->high.nano(), core::nano_of(unit))}};
    if (shown.percent)
        json["daily_value"] = percent_json(*shown.percent);
    if (shown.contradiction)
        json["contradiction"] = json_name(*shown.contradiction);
    if (shown.against)
        json["against"] = core::info(*shown.against).key;
    json["why"] = steps_json(core::steps_of({side.label, side.sharp}, nutrient, side.ground), nutrient);
    return json;
}

std::string unit_json(core::Unit unit)
{
    return unit == core::Unit::Kilocalorie ? std::string("kcal") : std::string(core::unit_name(unit));
}

Json row_json(const core::Row& row, const JsonSide& left, const JsonSide& right)
{
    const auto& known = core::info(row.nutrient);
    Json json{{"nutrient", known.key},
              {"unit", unit_json(known.unit)},
              {"aim", json_name(row.aim)},
              {"first", row.first},
              {"finding", json_name(row.finding)}};
    if (row.finding == core::Finding::NotComparable)
        json["why"] = json_name(row.why);
    json["left"] = side_json(row.left, row.nutrient, left);
    json["right"] = side_json(row.right, row.nutrient, right);
    return json;
}

/// One line of a label as it is printed there, without a range: these figures are shown and not compared.
Json printed_json(core::Nutrient nutrient, const core::Line& line)
{
    const auto& known = core::info(nutrient);
    Json json{{"nutrient", known.key}, {"unit", unit_json(known.unit)}};
    if (line.amount) {
        json["amount"] = core::number_of(*line.amount, known.unit);
        json["less_than"] = line.amount->less_than;
    }
    if (line.percent)
        json["daily_value"] = {{"percent", line.percent->percent}, {"less_than", line.percent->less_than}};
    return json;
}

Json second_json(const std::optional<core::SecondColumn>& second)
{
    if (!second)
        return nullptr;
    Json json{{"kind", json_name(second->kind)}, {"rows", Json::array()}};
    for (const auto& known : core::nutrients())
        if (const core::Line* line = second->column.find(known.nutrient))
            json["rows"].push_back(printed_json(known.nutrient, *line));
    return json;
}

Json product_json(const core::Product& product)
{
    const auto& label = product.label;
    return {{"gtin", product.gtin.digits()},
            {"name", product.name},
            {"brand", product.brand},
            {"this_place_only", product.this_place_only},
            {"serving",
             {{"household", label.serving.household},
              {"size", label.serving.metric ? Json(core::measure_text(*label.serving.metric)) : Json()}}},
            {"servings_per_container", core::servings_text(label.servings)},
            {"net_quantity", label.net_quantity ? Json(label.net_quantity->printed) : Json()},
            {"inconsistent", core::sharpen(label).inconsistent()},
            {"panel", label.panel == core::Panel::Of2016 ? "2016" : "older"},
            {"audience", json_name(label.audience)},
            {"second_column", second_json(label.second)},
            {"ingredients", ingredients_json(product)},
            {"allergens", allergens_json(product)},
            {"entered_on", product.origin.entered_on.text()},
            {"source", product.origin.source},
            {"source_kind", json_name(product.origin.kind)},
            {"source_row", product.origin.row}};
}

/// "100 g", "1 cup", "3/2 servings"; empty where the basis names its amount itself, or cannot be compared.
std::string amount_text(const core::Comparison& comparison)
{
    using Of = core::MyAmount::Of;
    using Kitchen = core::Household::Unit;
    if (comparison.why != core::Why::Comparable)
        return "";
    if (comparison.basis == core::Basis::SameAmount)
        return comparison.in_millilitres ? "100 mL" : "100 g";
    if (comparison.basis == core::Basis::SameMeasure) {
        if (comparison.measure->unit == Kitchen::Piece)
            return "1 " + comparison.measure->noun;
        const bool spoon = comparison.measure->unit != Kitchen::Cup;
        return !spoon ? "1 cup" : comparison.measure->unit == Kitchen::Tablespoon ? "1 tablespoon" : "1 teaspoon";
    }
    if (comparison.basis != core::Basis::MyAmount)
        return "";
    const auto [over, under] = comparison.amount.times;
    const std::string times = std::to_string(over) + (under == 1 ? "" : "/" + std::to_string(under));
    const std::pair<Of, const char*> units[] = {{Of::Servings, " servings"},
                                                {Of::Cups, " cups"},
                                                {Of::Tablespoons, " tablespoons"},
                                                {Of::Pieces, " pieces"},
                                                {Of::Package, " packages"}};
    for (const auto& [of, unit] : units)
        if (of == comparison.amount.of)
            return times + unit;
    return times;
}

} // namespace

Json comparison_json(const core::Product& left, const core::Product& right,
                     const std::vector<core::Comparison>& comparisons, const std::optional<core::PricePair>& prices,
                     std::span<const core::RuleSet> rules)
{
    Json json{{"form", "pairstand comparison"}, {"version", json_version}};
    json["left"] = product_json(left);
    json["right"] = product_json(right);
    json["bases"] = Json::array();
    const core::SharpLabel sharp_left = core::sharpen(left.label);
    const core::SharpLabel sharp_right = core::sharpen(right.label);
    for (const auto& comparison : comparisons) {
        Json basis{{"basis", json_name(comparison.basis)}, {"why", json_name(comparison.why)}};
        if (const auto amount = amount_text(comparison); !amount.empty())
            basis["amount"] = amount;
        const bool alone = comparison.why != core::Why::Comparable;
        const core::Ground ground{alone ? core::Basis::Serving : comparison.basis, comparison.amount,
                                  comparison.measure};
        basis["rows"] = Json::array();
        for (const auto& row : comparison.rows)
            basis["rows"].push_back(
                row_json(row, {left.label, sharp_left, ground}, {right.label, sharp_right, ground}));
        json["bases"].push_back(std::move(basis));
    }
    if (!rules.empty())
        json["rules"] = rules_json(left, right, rules);
    if (prices)
        json["prices"] = prices_json(*prices);
    return json;
}

} // namespace kiosk
