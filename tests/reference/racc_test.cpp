// Every row of racc.csv against the table of reference amounts, and the other way round.
#include "core/rules/reference_amounts.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>

namespace test {

TEST_CASE("racc.csv: every row, in its order")
{
    TableRun run("racc.csv");
    const auto rows = reference_rows("racc.csv");
    const auto held = core::reference_amounts();
    REQUIRE(held.size() == rows.size());
    std::set<std::string_view> keys;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& row = rows[i];
        const auto& food = held[i];
        CAPTURE(row.place());
        CAPTURE(std::string(food.key));
        CHECK(food.category == row["category"]);
        CHECK(food.source == row["source"]);
        CHECK(food.household == row["household"]);
        CHECK(food.nano == (row["metric_amount"].empty() ? 0 : nano_of_cell(row["metric_amount"])));
        CHECK(food.volume == (row["metric_unit"] == "mL"));
        CHECK(core::amount_of(food).has_value() == !row["metric_amount"].empty());
        CHECK((food.kind == core::FoodKind::Young) == (row["food_group"] == "infants_young_children"));
        CHECK((food.kind == core::FoodKind::MixedDish) ==
              (row["food_group"] == "mixed_dishes" && !row["category"].starts_with("Appetizers")));
        CHECK(keys.insert(food.key).second);
        CHECK(core::reference_amount(food.key) == &food);
        run.used();
    }
    run.done(170);
    CHECK(core::reference_amount("no_such_food") == nullptr);
    CHECK(core::reference_amount("") == nullptr);
}

// Source: 21 CFR 101.13(h)(1): 30 g or less, or 2 tablespoons or less; a tablespoon is 15 mL, 101.9(b)(5)(viii).
TEST_CASE("racc.csv: small reference amounts")
{
    struct Case {
        std::string why;
        std::string key;
        std::optional<bool> small;
    };
    const Case cases[] = {
        {"30 g exactly", "cookies", true},
        {"40 g", "cereal_20_to_43_g_per_cup", false},
        {"2 tbsp exactly", "nut_butters", true},
        {"1/4 cup", "minor_sauces", false},
        {"words, no number", "sugar_substitutes", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto* food = core::reference_amount(c.key);
        REQUIRE(food);
        CHECK(core::is_small(*food) == c.small);
    }
}

} // namespace test
