#include "tests/demo/true_food.h"

#include "core/figure/wide.h"
#include "tests/support/reference_table.h"

#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>

namespace test::demo {
namespace {

[[noreturn]] void wrong(const ReferenceRow& row, const std::string& column)
{
    throw std::runtime_error(row.place() + ": " + row["name"] + ": cannot read " + column + " '" + row[column] + "'");
}

core::Measure measure(const ReferenceRow& row, const std::string& column)
{
    const auto read = core::parse_measure(row[column]);
    if (!read)
        wrong(row, column);
    return *read;
}

std::optional<std::int64_t> decimal(const ReferenceRow& row, const std::string& column)
{
    if (row[column].empty())
        return std::nullopt;
    const auto read = core::parse_decimal(row[column]);
    if (!read)
        wrong(row, column);
    return read->nano;
}

template<class Value>
Value word(const ReferenceRow& row, const std::string& column, const std::map<std::string, Value>& words)
{
    const auto found = words.find(row[column]);
    if (found == words.end())
        wrong(row, column);
    return found->second;
}

std::set<core::Nutrient> nutrient_list(const ReferenceRow& row, const std::string& column)
{
    std::set<core::Nutrient> found;
    std::istringstream keys(row[column]);
    for (std::string key; std::getline(keys, key, ';');) {
        const auto nutrient = core::nutrient_by_key(key);
        if (!nutrient)
            wrong(row, column);
        found.insert(*nutrient);
    }
    return found;
}

std::optional<PreparedWith> prepared_with(const ReferenceRow& row)
{
    const std::string& text = row["prepared_with"];
    if (text.empty())
        return std::nullopt;
    const auto colon = text.find(": ");
    const auto amount = core::parse_measure(text.substr(colon == std::string::npos ? text.size() : colon + 2));
    if (!amount)
        wrong(row, "prepared_with");
    return PreparedWith{text.substr(0, colon), *amount};
}

/// The nutrients that true_foods.csv has a column for: the whole panel, and those that one of the foods prints besides.
bool has_column(core::Nutrient nutrient)
{
    using N = core::Nutrient;
    static const std::set<N> besides{N::PolyunsaturatedFat,
                                     N::MonounsaturatedFat,
                                     N::SolubleFiber,
                                     N::InsolubleFiber,
                                     N::SugarAlcohol,
                                     N::VitaminA,
                                     N::VitaminC,
                                     N::VitaminE,
                                     N::Thiamin,
                                     N::Riboflavin,
                                     N::Niacin,
                                     N::VitaminB6,
                                     N::Folate,
                                     N::VitaminB12,
                                     N::Zinc};
    return core::info(nutrient).on_the_panel || besides.contains(nutrient);
}

std::map<core::Nutrient, core::Content> contents(const ReferenceRow& row)
{
    std::map<core::Nutrient, core::Content> found;
    for (const auto& known : core::nutrients()) {
        if (!has_column(known.nutrient))
            continue;
        std::string column(known.key);
        if (known.unit != core::Unit::Kilocalorie)
            column.append("_").append(core::unit_name(known.unit));
        const auto units = decimal(row, column);
        if (units)
            found[known.nutrient] = core::Content::from_nano(
                static_cast<std::int64_t>(core::Wide{*units} * core::nano_of(known.unit) / core::Wide{1'000'000'000}));
        else if (known.on_the_panel)
            wrong(row, column); // a true food knows all that the panel asks for
    }
    return found;
}

std::optional<core::Mass> weight_per_cup(const ReferenceRow& row)
{
    const auto grams = decimal(row, "grams_per_cup");
    return grams ? std::optional(core::Mass::from_nano(*grams)) : std::nullopt;
}

std::optional<core::SecondColumn::Kind> second_column(const ReferenceRow& row)
{
    using Kind = core::SecondColumn::Kind;
    if (row["second_column"].empty())
        return std::nullopt;
    return word<Kind>(row, "second_column", {{"as_prepared", Kind::AsPrepared}, {"per_container", Kind::PerContainer}});
}

TrueFood read_food(const ReferenceRow& row)
{
    const auto entered = core::Date::parse(row["entered_on"]);
    if (!entered)
        wrong(row, "entered_on");
    const core::Measure serving = measure(row, "true_serving");
    const bool in_grams = word<bool>(row, "per", {{"100 g", true}, {"100 mL", false}});
    if (in_grams != std::holds_alternative<core::Mass>(serving))
        wrong(row, "per");
    return {
        .gtin = row["gtin"],
        .name = row["name"],
        .brand = row["brand"],
        .aisle = row["aisle"],
        .note = row["note"],
        .entered_on = *entered,
        .panel = word<core::Panel>(row, "panel", {{"2016", core::Panel::Of2016}, {"older", core::Panel::Older}}),
        .audience = word<core::Audience>(row, "audience",
                                         {{"adult", core::Audience::Adult}, {"ages_1_3", core::Audience::Ages1To3}}),
        .simplified = word<bool>(row, "format", {{"standard", false}, {"simplified", true}}),
        .leaves_out = nutrient_list(row, "leaves_out"),
        .household = row["serving_household"],
        .serving = serving,
        .package =
            row["true_package"].empty() ? std::nullopt : std::optional<core::Measure>(measure(row, "true_package")),
        .servings = row["servings"],
        .net_quantity = row["net_quantity"],
        .weight_per_cup = weight_per_cup(row),
        .reference_category = row["reference_category"],
        .reference_amount = measure(row, "reference_amount"),
        .second = second_column(row),
        .prepared = prepared_with(row),
        .protein_quality = decimal(row, "protein_quality"),
        .per_hundred = contents(row),
        .vitamin_a_iu = decimal(row, "vitamin_a_iu"),
        .ingredients = row["ingredients"],
        .contains = row["contains"],
    };
}

} // namespace

std::vector<TrueFood> read_true_foods(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error("cannot read " + path);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    std::vector<TrueFood> foods;
    for (const auto& row : parse_reference(text, "true_foods.csv"))
        foods.push_back(read_food(row));
    return foods;
}

const TrueFood& food_named(const std::vector<TrueFood>& foods, const std::string& name)
{
    for (const auto& food : foods)
        if (food.name == name)
            return food;
    throw std::runtime_error("no true food named " + name);
}

std::int64_t nano_of(const core::Measure& measure)
{
    return std::visit([](const auto& amount) { return amount.nano(); }, measure);
}

core::Content content_in(core::Content per_hundred, std::int64_t measure_nano)
{
    return core::Content::from_nano(static_cast<std::int64_t>(core::Wide{per_hundred.nano()} * measure_nano /
                                                              (core::Wide{100} * core::Wide{1'000'000'000})));
}

std::int64_t package_nano(const TrueFood& food)
{
    if (const auto counted = core::parse_decimal(food.servings))
        return static_cast<std::int64_t>(core::Wide{counted->nano} * nano_of(food.serving) / core::Wide{1'000'000'000});
    if (!food.package)
        throw std::runtime_error(food.name + " has no package of its own");
    return nano_of(*food.package);
}

} // namespace test::demo
