#include "catalog/read/release_table.h"

#include <doctest/doctest.h>

using catalog::read_amount;
using catalog::read_day;
using catalog::read_whole;

TEST_CASE("release table: amounts in every form that releases write")
{
    struct Case {
        const char* text;
        std::uint32_t mantissa;
        int decimals;
    };
    const Case cases[] = {{"0", 0, 0},
                          {"0.0", 0, 0},
                          {"357.0", 357, 0},
                          {"7.14", 714, 2},
                          {"0.071", 71, 3},
                          {".5", 5, 1},
                          {"28.350000381469727", 2'835'000'038, 8},
                          {"0.3333333432674408", 333'333'343, 9},
                          {"0E-8", 0, 0},
                          {"1.5E2", 150, 0},
                          {"5e-3", 5, 3},
                          {"2200000", 2'200'000, 0}};
    for (const auto& c : cases) {
        CAPTURE(c.text);
        const auto amount = read_amount(c.text);
        REQUIRE(amount);
        CHECK(amount->mantissa == c.mantissa);
        CHECK(amount->decimals == c.decimals);
    }
    for (const char* text : {"", ".", "-1", "1,5", "1.2.3", "n/a", "1e", "1e99", "99999999999999", "0x10", " 1"}) {
        CAPTURE(text);
        CHECK_FALSE(read_amount(text));
    }
}

TEST_CASE("release table: numbers and days")
{
    CHECK(read_whole("2538073") == 2'538'073U);
    CHECK(read_whole("70.0") == 70U); // as data frame libraries write it
    for (const char* text : {"", "-1", "1.5", "4294967296", "x"})
        CHECK_FALSE(read_whole(text));
    CHECK(read_day("2023-10-26") == 20'231'026);
    CHECK(read_day("2023-10-26T00:00:00") == 20'231'026);
    CHECK(read_day("7/29/2021") == 20'210'729);
    for (const char* text : {"", "2023", "26.10.2023", "13/1/2020", "2023-13-01", "x/y/z"})
        CHECK(read_day(text) == 0);
}

TEST_CASE("release table: columns are found by name; missing ones are all named, unknown ones are no fault")
{
    const auto columns = catalog::amount_columns();
    const auto found =
        catalog::find_columns(columns, {"id", "NUTRIENT_ID", "new_in_2031", "amount", "fdc_id"}, "food_nutrient.csv");
    REQUIRE(found);
    CHECK(found->wanted == std::vector<std::size_t>{1, 3, 4});
    CHECK(found->field_of[0] == 2);
    CHECK(found->field_of[1] == 0);
    CHECK(found->field_of[2] == 1);
    CHECK(found->field_of[3] == catalog::ColumnPlaces::absent);
    const auto missing = catalog::find_columns(columns, {"id", "fdc_id"}, "food_nutrient.csv");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().kind == core::Error::Kind::MissingColumn);
    CHECK(missing.error().place.source == "food_nutrient.csv");
    CHECK(missing.error().place.expected == "nutrient_id, amount");
}
