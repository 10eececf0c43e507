#include "catalog/read/recover.h"

#include <doctest/doctest.h>

#include <map>

using catalog::Derivation;
using catalog::recover;
using catalog::ReleaseAmount;
using core::Nutrient;

namespace {

std::string line(int id, ReleaseAmount amount, std::int64_t serving_milli,
                 Derivation derivation = Derivation::PerServing, core::Panel panel = core::Panel::Of2016,
                 int digits = 0)
{
    const auto& nutrient = catalog::release_nutrients[static_cast<std::size_t>(catalog::release_nutrient_at(id))];
    const auto found = recover(nutrient, amount, derivation, {serving_milli * 1'000, panel, digits});
    std::string text = found.amount ? core::as_printed(*found.amount, nutrient.nutrient)
                                    : std::to_string(found.percent.value().percent) + "%";
    return text + (found.worked_back ? " worked back" : "");
}

} // namespace

// Source: pairs of printed figure and amount per 100 worked out from FoodData Central, Branded Foods, October 2023.
TEST_CASE("recover: amounts per 100 come back to the figures that the packages print")
{
    CHECK(line(1004, {714, 2}, 28'000) == "2 g");
    CHECK(line(1005, {5357, 2}, 28'000) == "15 g");
    CHECK(line(1093, {1179, 0}, 28'000) == "330 mg");
    CHECK(line(1005, {1045, 2}, 354'000) == "37 g");
    CHECK(line(1003, {1562, 2}, 32'000) == "5 g"); // a tie, rounded to the even digit
    CHECK(line(1093, {312, 0}, 32'000) == "100 mg");
    CHECK(line(1008, {357, 0}, 28'000) == "100");
    CHECK(line(1258, {179, 2}, 28'000) == "0.5 g");
    CHECK(line(1008, {0, 0}, 28'000) == "0");
}

TEST_CASE("recover: what the derivation says")
{
    CHECK(line(1079, {36, 1}, 28'000, Derivation::LessThan) == "less than 1 g"); // 1 g x 100 / 28
    CHECK(line(1253, {18, 0}, 28'000, Derivation::LessThan) == "less than 5 mg");
    CHECK(line(1079, {0, 0}, 28'000, Derivation::LessThan) == "0 g");
    // A release of the maker's own amounts per 100: the label rounds them.
    CHECK(line(1008, {2611, 1}, 28'000, Derivation::PerHundred) == "70");
    CHECK(line(1005, {94, 1}, 85'000, Derivation::PerHundred) == "8 g");
    CHECK(line(1004, {714, 2}, 28'000, Derivation::None) == "2 g worked back");
}

// 18 mg of iron and 1,000 mg of calcium: 21 CFR 101.9(c)(8)(iv) before 27 July 2016; 1,300 mg since.
TEST_CASE("recover: percents of the label's own time")
{
    CHECK(line(1089, {257, 2}, 28'000, Derivation::PercentOnly, core::Panel::Older) == "4%");
    CHECK(line(1087, {71, 0}, 28'000, Derivation::PercentOnly, core::Panel::Older) == "2%");
    CHECK(line(1087, {93, 0}, 28'000, Derivation::PercentOnly, core::Panel::Of2016) == "2%");
    CHECK(line(1104, {1786, 0}, 28'000, Derivation::PercentOnly, core::Panel::Older) == "10%"); // of 5,000 IU
    CHECK(line(1104, {1786, 0}, 28'000, Derivation::PerServing, core::Panel::Older) == "10%");
}

TEST_CASE("recover: too coarse an amount is said to be worked back")
{
    CHECK(line(1114, {1, 0}, 240'000) == "2.4 mcg worked back");  // 2 mcg is stored as 1 per 100 mL
    CHECK(line(1110, {33, 0}, 240'000) == "2 mcg");               // 80 IU
    CHECK(line(1093, {3, 0}, 360'000) == "10 mg");                // 9 to 12.6: of the printable ones only 10
    CHECK(line(1092, {171, 0}, 140'000) == "239 mg worked back"); // 240 as well
}

TEST_CASE("recover: a figure that the rule never prints keeps its simplest form, and is worked back")
{
    CHECK(line(1004, {1964, 2}, 28'000) == "5.5 g worked back");
    CHECK(line(1005, {179, 2}, 28'000) == "0.5 g worked back");
}

// JSON downloads of 2021 keep three digits: 5,357 mg of sodium stands as 5360.
TEST_CASE("recover: three digits are coarser")
{
    CHECK(line(1093, {5360, 0}, 28'000, Derivation::PerServing, core::Panel::Of2016, 3) == "1500 mg");
    CHECK(line(1008, {1230, 0}, 240'000, Derivation::PerServing, core::Panel::Of2016, 3).ends_with("worked back"));
}

TEST_CASE("recover: no amount, however wild, is too much")
{
    for (const std::uint32_t mantissa : {0U, 1U, 4'294'967'295U})
        for (const int decimals : {0, 5, 9})
            for (const std::int64_t serving : {1, 1'000, 1'000'000'000})
                for (const auto& nutrient : catalog::release_nutrients) {
                    const auto found = recover(nutrient, {mantissa, static_cast<std::int8_t>(decimals)},
                                               Derivation::PerServing, {serving, core::Panel::Of2016, 0});
                    CHECK((found.amount || found.percent));
                    if (found.amount)
                        CHECK(found.amount->amount.nano() >= 0);
                }
}

// Source of numbers and units: nutrient.csv of the releases; 2000 and 1063 are two names of one line.
TEST_CASE("recover: every nutrient of the table has a number of its own, and all of the panel's lines are there")
{
    std::map<int, int> numbers;
    std::set<Nutrient> lines;
    for (const auto& nutrient : catalog::release_nutrients) {
        CHECK(++numbers[nutrient.id] == 1);
        lines.insert(nutrient.nutrient);
    }
    for (const auto& nutrient : core::nutrients())
        if (nutrient.on_the_panel) {
            CAPTURE(nutrient.key);
            CHECK(lines.count(nutrient.nutrient) == 1);
        }
}
