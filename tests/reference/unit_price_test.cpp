// Every row of unit_price.csv and unit_price_rules.csv.
#include "core/rules/unit_price.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>

namespace test {
namespace {

using core::Goods;

/// "100 g" as settings write it: "100_g".
std::string key_of(std::string words)
{
    std::ranges::replace(words, ' ', '_');
    return words;
}

const core::AllowedUnit& unit_named(const std::string& words)
{
    const auto all = core::allowed_units();
    const auto found = std::ranges::find(all, key_of(words), &core::AllowedUnit::key);
    REQUIRE(found != all.end());
    return *found;
}

/// As the table writes cents: "33.3" with a tenth, "250" without.
std::string text_of(const core::ShownPrice& shown)
{
    const auto whole = std::to_string(shown.tenths / 10);
    return shown.with_tenth ? whole + "." + std::to_string(shown.tenths % 10) : whole;
}

core::PriceRounding rounding_of(const std::string& word)
{
    REQUIRE((word == "tenth_cent" || word == "whole_cent"));
    return word == "tenth_cent" ? core::PriceRounding::TenthCent : core::PriceRounding::WholeCent;
}

std::set<std::string> keys_in(const std::string& list)
{
    std::set<std::string> keys;
    std::istringstream parts(list);
    for (std::string part; std::getline(parts, part, ';');)
        keys.insert(key_of(part.substr(std::min(part.find_first_not_of(' '), part.size()))));
    return keys;
}

std::set<std::string> allowed_keys(Goods goods)
{
    std::set<std::string> keys;
    for (const auto& unit : core::allowed_units())
        if (unit.goods == goods)
            keys.insert(std::string(unit.key));
    return keys;
}

void check_units(const ReferenceRow& row)
{
    static const std::map<std::string, Goods> kinds{{"sold by weight", Goods::Weight},
                                                    {"sold by dry measure or volume", Goods::DryMeasure},
                                                    {"sold by liquid volume", Goods::LiquidVolume},
                                                    {"sold by count", Goods::Pieces},
                                                    {"sold by area", Goods::Area}};
    const auto goods = kinds.at(row["goods"]);
    auto held = allowed_keys(goods);
    if (goods == Goods::Pieces) {
        CHECK(held == std::set<std::string>{"each", "dozen", "100_count"}); // "each; a multiple"
        return;
    }
    if (goods == Goods::Area) // several square feet are several of an allowed unit: the examples price by 50 and 100
        std::erase_if(held, [](const std::string& key) { return key == "50_sq_ft" || key == "100_sq_ft"; });
    CHECK(held == keys_in(row["unit"]));
}

/// The rounding rows in numbers: what is shown for exact prices around the place that they speak of.
void check_rounding(const ReferenceRow& row)
{
    using enum core::PriceRounding;
    const auto& about = row["goods"];
    if (about == "one dollar or more") {
        CHECK(text_of(core::shown_price(100'40, 100, TenthCent)) == "100");
        CHECK(text_of(core::shown_price(100'60, 100, WholeCent)) == "101");
    } else if (about == "under one dollar") {
        CHECK(text_of(core::shown_price(33'25, 100, TenthCent)) == "33.3");
        CHECK(text_of(core::shown_price(33'25, 100, WholeCent)) == "33");
    } else if (about == "direction") { // the same way throughout: each price shows at least what a lower one shows
        std::int64_t before = 0;
        for (int thousandths = 0; thousandths < 120'000; thousandths += 25) {
            const auto shown = core::shown_price(thousandths, 1000, TenthCent).tenths;
            CHECK(shown >= before);
            before = shown;
        }
    } else { // Connecticut, Rhode Island: 0.005 dollar and more goes up
        CHECK(text_of(core::shown_price(100'50, 100, TenthCent)) == "101");
        CHECK(text_of(core::shown_price(100'49, 100, TenthCent)) == "100");
        CHECK(text_of(core::shown_price(25'25, 100, TenthCent)) == "25.3");
    }
}

/// Why a row of the rules asks nothing of this program; empty for those that are run.
std::string not_asked(const std::string& topic, const std::string& goods)
{
    static const std::map<std::string, std::string> reasons{{"exempt", "what a store need not price"},
                                                            {"special", "what a store may price otherwise"},
                                                            {"rounding_abroad", "not a rule of the United States"},
                                                            {"legible", "how a shelf label is made"},
                                                            {"presentation", "how a shelf label is made"},
                                                            {"voluntary", "whom the regulation binds"}};
    if (goods == "metric beside customary")
        return "one unit at a time is picked";
    const auto reason = reasons.find(topic);
    return reason == reasons.end() ? "" : reason->second;
}

} // namespace

TEST_CASE("unit_price.csv: every row, through the reader of net quantities")
{
    TableRun run("unit_price.csv");
    const auto rows = reference_rows("unit_price.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        CAPTURE(row["net_quantity"] + " " + row["unit"] + " for " + row["price_cents"]);
        const auto contents = core::contents_of(row["net_quantity"] + " " + row["unit"]);
        REQUIRE(contents);
        const auto& unit = unit_named(row["per_unit"]);
        const auto price = core::unit_price(core::cents(std::stoll(row["price_cents"])), *contents, unit.goods,
                                            unit.unit, rounding_of(row["rounding"]));
        REQUIRE(price);
        CHECK(text_of(price->shown) == row["expected_unit_price"]);
        run.used();
    }
    run.done(rows.size());
}

TEST_CASE("unit_price_rules.csv: units, rounding and one unit for both; the rest is about signs and shops")
{
    TableRun run("unit_price_rules.csv");
    const auto rows = reference_rows("unit_price_rules.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        CAPTURE(row["checked"]); // section 6 is from memory
        const auto& topic = row["topic"];
        if (const auto reason = not_asked(topic, row["goods"]); !reason.empty()) {
            run.skipped(reason);
            continue;
        }
        run.used();
        if (topic == "unit") {
            check_units(row);
        } else if (topic == "rounding" || topic == "rounding_state") {
            check_rounding(row);
        } else {
            CHECK(topic == "uniformity"); // "2 L bottles and 12 fl oz cans alike"
            core::Label bottle;
            core::Label cans;
            bottle.net_quantity = core::parse_net_quantity("2 L");
            cans.net_quantity = core::parse_net_quantity("12 - 12 FL OZ CANS");
            const auto pair = core::price_pair(bottle, core::cents(199), cans, core::cents(599), {});
            REQUIRE(pair.why == core::PriceWhy::Comparable);
            CHECK(pair.sides[0].unit->unit == pair.sides[1].unit->unit);
        }
    }
    run.done(rows.size());
}

} // namespace test
