#include "catalog/read/sheet_columns.h"

#include <doctest/doctest.h>

#include <set>

using catalog::Field;

TEST_CASE("sheet columns: every name stands once and is found")
{
    std::set<std::string> names;
    for (const auto& column : catalog::sheet_columns()) {
        CAPTURE(column.name);
        CHECK(names.insert(column.name).second);
        CHECK(catalog::sheet_column(column.name) == &column);
        CHECK(column.name == catalog::in_small_letters(column.name));
        CHECK_FALSE(column.expected.empty());
        CHECK_FALSE(column.example.empty());
        CHECK(column.longest > 0);
    }
    CHECK(catalog::sheet_column("") == nullptr);
    CHECK(catalog::sheet_column("GTIN") == nullptr); // whoever asks writes it small first
}

TEST_CASE("sheet columns: every nutrient has its amount in its unit, and its percent where labels print one")
{
    using N = core::Nutrient;
    struct Case {
        const char* name;
        Field field;
        std::optional<N> nutrient;
        bool second;
    };
    const Case cases[] = {
        {"calories", Field::Amount, N::Calories, false},
        {"saturated_fat_g", Field::Amount, N::SaturatedFat, false},
        {"sodium_mg", Field::Amount, N::Sodium, false},
        {"vitamin_d_mcg", Field::Amount, N::VitaminD, false},
        {"vitamin_d_percent_dv", Field::Percent, N::VitaminD, false},
        {"second_calories", Field::Amount, N::Calories, true},
        {"second_sodium_percent_dv", Field::Percent, N::Sodium, true},
    };
    for (const auto& c : cases) {
        CAPTURE(c.name);
        const auto* column = catalog::sheet_column(c.name);
        REQUIRE(column != nullptr);
        CHECK(column->field == c.field);
        CHECK(column->nutrient == c.nutrient);
        CHECK(column->second == c.second);
    }
    // 21 CFR 101.9(c)(2)(ii) and (c)(6)(ii) establish no Daily Value for these.
    CHECK(catalog::sheet_column("trans_fat_percent_dv") == nullptr);
    CHECK(catalog::sheet_column("total_sugars_percent_dv") == nullptr);
}

TEST_CASE("sheet columns: four must be there")
{
    std::set<std::string> required;
    for (const auto& column : catalog::sheet_columns())
        if (column.required)
            required.insert(column.name);
    CHECK(required == std::set<std::string>{"gtin", "name", "entered_on", "calories"});
}

TEST_CASE("sheet columns: the name that was meant is offered, and none where nothing is near")
{
    struct Case {
        const char* why;
        std::string written;
        const char* nearest;
    };
    const Case cases[] = {
        {"a slip", "sodum_mg", "sodium_mg"},
        {"the unit left out", "sodium", "sodium_mg"},
        {"another unit", "sodium_g", "sodium_mg"},
        {"blanks for underscores", "Total Fat g", "total_fat_g"},
        {"percent cut short", "iron_percent", "iron_percent_dv"},
        {"a minus", "entered-on", "entered_on"},
        {"nothing like it", "price_in_dollars", ""},
        {"nothing", "", ""},
        {"far too long", std::string(100'000, 'x'), ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(catalog::nearest_column(c.written) == c.nearest);
    }
    CHECK(catalog::nearest_nutrient("trans_fatt") == "trans_fat");
    CHECK(catalog::nearest_nutrient("sugar") == "sugar_alcohol");
}
