#include "catalog/store/figures.h"

#include <doctest/doctest.h>

#include <stdexcept>

using core::Nutrient;

namespace {

core::Column back(const core::Column& column)
{
    core::Column read;
    catalog::read_figures_bytes(catalog::figures_bytes(column), read);
    return read;
}

} // namespace

TEST_CASE("figures: every nutrient, mark and number of decimals comes back")
{
    core::Column column;
    std::int64_t amount = 1;
    for (const auto& nutrient : core::nutrients()) {
        auto& line = column.lines[nutrient.nutrient];
        line.amount = core::Figure{core::Content::from_nano(++amount), amount % 2 == 0, static_cast<int>(amount % 10)};
        line.percent = core::PrintedPercent{static_cast<int>(amount), amount % 3 == 0};
        line.worked_back = amount % 5 == 0;
    }
    CHECK(back(column).lines == column.lines);
}

TEST_CASE("figures: the largest amounts, and lines with one part or none")
{
    core::Column column;
    column.lines[Nutrient::Protein].amount = core::Figure{core::Content::from_nano(INT64_MAX), true, 0};
    column.lines[Nutrient::Sodium].amount = core::Figure{core::Content::from_nano(INT64_MAX), false, 9};
    column.lines[Nutrient::Calories].amount = core::Figure{core::Content::whole(9'000'000'000), false, 0};
    column.lines[Nutrient::Iron].percent = core::PrintedPercent{INT32_MAX, false};
    column.lines[Nutrient::Zinc] = {};
    CHECK(back(column).lines == column.lines);
}

// A nation's labels have to fit on a stick: a line of the panel takes three to five bytes.
TEST_CASE("figures: a column has one documented form")
{
    core::Column column;
    column.lines[Nutrient::TotalFat] = {core::Figure{core::Content::milli(2'500), false, 1},
                                        core::PrintedPercent{3, false}};
    column.lines[Nutrient::Sodium] = {core::Figure{core::Content::milli(140), true, 0}, core::PrintedPercent{6, false}};
    column.lines[Nutrient::Iron] = {std::nullopt, core::PrintedPercent{10, true}, true};
    using namespace std::string_view_literals;
    CHECK(catalog::figures_bytes(column) == "\x01\x25\x19\x03"
                                            "\x07\x07\x8C\x01\x06"
                                            "\x12\x1C\x0A"sv);
}

TEST_CASE("figures: what was never written is a broken catalog, not a label")
{
    using namespace std::string_view_literals;
    for (const auto bytes : {
             "\x01"sv,                                                 // a nutrient without its marks
             "\xFF\x00"sv,                                             // a number that no nutrient has
             "\x01\x01"sv,                                             // the amount is missing
             "\x01\x01\x80"sv,                                         // it breaks off
             "\x01\x01\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF"sv, // it never ends
             "\x01\x01\xFF\xFF\xFF\xFF\xFF\xFF\xFF\xFF\x7F"sv,         // it is too large
             "\x01\xE1"sv,                                             // the decimals are missing
             "\x01\x04"sv,                                             // the percent is missing
         }) {
        CAPTURE(bytes.size());
        core::Column column;
        CHECK_THROWS_AS(catalog::read_figures_bytes(bytes, column), std::runtime_error);
    }
    CHECK_THROWS_AS((void)catalog::nutrients_of_bytes("\xFE"), std::runtime_error);
}

TEST_CASE("figures: older catalogs keep a column as text")
{
    core::Column column;
    catalog::read_figures_text("sodium=<140000000/0,6;iron=,<10", column);
    core::Column expected;
    expected.lines[Nutrient::Sodium] = {core::Figure{core::Content::milli(140), true, 0},
                                        core::PrintedPercent{6, false}};
    expected.lines[Nutrient::Iron] = {std::nullopt, core::PrintedPercent{10, true}};
    CHECK(column.lines == expected.lines);
    CHECK(catalog::nutrients_of_text("sodium;iron") == std::set{Nutrient::Sodium, Nutrient::Iron});
    for (const char* text : {"sodium", "sodium=1/0", "sodium=1,", "sodium=x/0,", "sodium=1/,", "sodium=1/0,x",
                             "salt=1/0,", "=1/0,", "sodium,1/0=", "sodium=99999999999999999999/0,", ";"}) {
        CAPTURE(text);
        CHECK_THROWS_AS(catalog::read_figures_text(text, column), std::runtime_error);
    }
}
