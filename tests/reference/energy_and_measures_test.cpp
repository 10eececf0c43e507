// The rows of energy_and_measures.csv that core counts with; each other one is skipped for a reason that it names.
#include "core/figure/trade_unit.h"
#include "core/figure/wide.h"
#include "core/label/household.h"
#include "core/label/teaspoons.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <map>
#include <string>

namespace test {
namespace {

using U = core::TradeUnit;

/// The value times 10^13 as an integer: the most places that a row of the table has.
core::Wide exact(const std::string& decimal)
{
    core::Wide value = 0;
    int places = -1;
    for (const char c : decimal) {
        if (c == '.') {
            places = 0;
            continue;
        }
        REQUIRE((c >= '0' && c <= '9'));
        value = value * 10 + (c - '0');
        places += places >= 0 ? 1 : 0;
    }
    for (int place = places < 0 ? 0 : places; place < 13; ++place)
        value *= 10;
    return value;
}

/// In ten thousand millionths of the smallest unit of its kind, as TradeUnitInfo::size.
core::Wide size_in(const std::string& value, const std::string& unit)
{
    static const std::map<std::string, U> units{
        {"mL", U::Millilitre}, {"L", U::Litre}, {"g", U::Gram}, {"cm2", U::SquareCentimetre}, {"m2", U::SquareMetre}};
    const core::Wide size = exact(value) * (core::info(units.at(unit)).size / 10'000'000'000);
    REQUIRE(size % 1000 == 0);
    return size / 1000;
}

const std::map<std::string, U> sizes{
    {"us_fluid_ounce", U::FluidOunce}, {"us_liquid_pint", U::Pint},     {"us_liquid_quart", U::Quart},
    {"us_gallon", U::Gallon},          {"us_dry_pint", U::DryPint},     {"us_dry_quart", U::DryQuart},
    {"avoirdupois_pound", U::Pound},   {"avoirdupois_ounce", U::Ounce}, {"square_inch", U::SquareInch},
    {"square_foot", U::SquareFoot},    {"square_yard", U::SquareYard}};

const std::map<std::string, std::pair<U, U>> ratios{{"gallon_in_quarts", {U::Gallon, U::Quart}},
                                                    {"quart_in_pints", {U::Quart, U::Pint}},
                                                    {"pound_in_ounces", {U::Pound, U::Ounce}},
                                                    {"gallon_in_fluid_ounces", {U::Gallon, U::FluidOunce}},
                                                    {"quart_in_fluid_ounces", {U::Quart, U::FluidOunce}},
                                                    {"pint_in_fluid_ounces", {U::Pint, U::FluidOunce}}};

using Kitchen = core::Household::Unit;

/// The measures of a label, 21 CFR 101.9(b)(5)(viii).
const std::map<std::string, Kitchen> label_measures{{"label_cup", Kitchen::Cup},
                                                    {"label_tablespoon", Kitchen::Tablespoon},
                                                    {"label_teaspoon", Kitchen::Teaspoon},
                                                    {"label_fluid_ounce", Kitchen::FluidOunce}};

/// They stand to each other as the exact ones do.
const std::map<std::string, std::pair<Kitchen, Kitchen>> kitchen_ratios{
    {"cup_in_fluid_ounces", {Kitchen::Cup, Kitchen::FluidOunce}},
    {"cup_in_tablespoons", {Kitchen::Cup, Kitchen::Tablespoon}},
    {"tablespoon_in_teaspoons", {Kitchen::Tablespoon, Kitchen::Teaspoon}},
    {"fluid_ounce_in_tablespoons", {Kitchen::FluidOunce, Kitchen::Tablespoon}}};

/// Why nothing in core counts with a row.
std::string not_counted_with(const std::string& fact)
{
    if (fact.starts_with("eu_") || fact.starts_with("salt_per_sodium") || fact.starts_with("imperial_"))
        return "not a rule of the United States";
    if (fact.starts_with("energy_") || fact.starts_with("kilojoule") || fact.find("_energy_") != std::string::npos)
        return "calories are taken as printed";
    if (fact == "label_ounce")
        return "a weight of a rule, tested with the rules that name ounces (tests/core/rules)";
    if (fact.starts_with("salt") || fact.starts_with("sodium") || fact == "sugar_per_cup" ||
        fact == "sugar_per_teaspoon_weighed")
        return "only the teaspoon of sugar that classes count is shown";
    if (fact.starts_with("percent_difference"))
        return "told in words only";
    if (fact.starts_with("vitamin") || fact.starts_with("fol") || fact.starts_with("tryptophan") ||
        fact.starts_with("beta_carotene"))
        return "vitamins are compared in the unit of the panel";
    static const char* const units[] = {"us_",  "grain", "troy", "short_ton", "long_ton", "inch",
                                        "foot", "yard",  "mile", "cubic",     "pint_in",  "pound_in"};
    for (const auto* unit : units)
        if (fact.starts_with(unit))
            return "no food is priced by this unit";
    return "";
}

} // namespace

TEST_CASE("energy_and_measures.csv: units of trade, measures of a label and the teaspoon of sugar")
{
    TableRun run("energy_and_measures.csv");
    const auto rows = reference_rows("energy_and_measures.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        const auto& fact = row["fact"];
        CAPTURE(fact);
        if (const auto size = sizes.find(fact); size != sizes.end()) {
            CHECK(core::info(size->second).size == size_in(row["value"], row["unit"]));
            run.used();
        } else if (const auto ratio = ratios.find(fact); ratio != ratios.end()) {
            const auto& [large, small] = ratio->second;
            CHECK(core::info(large).size == core::info(small).size * std::stoll(row["value"]));
            run.used();
        } else if (const auto measure = label_measures.find(fact); measure != label_measures.end()) {
            CHECK(row["unit"] == "mL");
            CHECK(core::label_millilitres(measure->second) == std::stoll(row["value"]));
            run.used();
        } else if (const auto kitchen = kitchen_ratios.find(fact); kitchen != kitchen_ratios.end()) {
            const auto& [large, small] = kitchen->second;
            CHECK(core::label_millilitres(large) == core::label_millilitres(small) * std::stoll(row["value"]));
            run.used();
        } else if (fact == "sugar_per_teaspoon_taught") {
            CHECK(core::grams_in_teaspoon == std::stoll(row["value"]));
            run.used();
        } else {
            run.skipped(not_counted_with(fact));
        }
    }
    run.done(rows.size());
}

} // namespace test
