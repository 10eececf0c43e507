// What the station reads out of the demo catalog's ingredients, held against its "Contains" statements: the invented
// labels must be such as the law allows.
#include "core/label/allergens.h"
#include "core/label/grains.h"
#include "core/label/sugars.h"
#include "tests/demo/demo_files.h"
#include "tests/demo/true_food.h"

#include <doctest/doctest.h>

#include <iostream>
#include <set>

namespace test::demo {
namespace {

using core::Allergen;
using core::AllergenPlace;

} // namespace

// Source: FD&C Act 403(w)(1)(A): a statement names the source of each major allergen that is in the food.
TEST_CASE("demo: the statements name what the ingredients name, and nothing else")
{
    int lists = 0;
    int allergens = 0;
    for (const auto& product : cedar_hollow().products) {
        CAPTURE(product.name);
        REQUIRE(product.label.ingredients.has_value());
        const auto reading = core::allergens_of(product.label, product.origin.entered_on);
        for (std::size_t i = 0; i < core::allergen_count; ++i) {
            const auto allergen = static_cast<Allergen>(i);
            CAPTURE(i);
            const bool named = reading.names(allergen, AllergenPlace::Ingredients);
            CHECK(reading.names(allergen, AllergenPlace::Statement) == named);
            allergens += named ? 1 : 0;
        }
        CHECK(reading.statement_in_text.empty());
        ++lists;
    }
    std::cout << "cedar_hollow.csv: " << lists << " ingredient lists checked, " << allergens
              << " allergens named in ingredients and statement alike\n";
    CHECK(lists == 110);
    CHECK(allergens > 100);
}

TEST_CASE("demo: every kind of first grain but one is on the shelves, and cereals have one")
{
    std::set<core::FirstGrain::Kind> kinds;
    for (const auto& product : cedar_hollow().products) {
        CAPTURE(product.name);
        const auto grain = core::first_grain(core::take_apart(*product.label.ingredients));
        kinds.insert(grain.kind);
        if (product.aisle == "Cereal" || product.aisle == "Bread")
            CHECK(grain.kind != core::FirstGrain::Kind::NoneNamed);
    }
    CHECK(kinds.size() == 4); // masa harina is on none
}

// A food that prints added sugars of 1 g and more must have one among its ingredients: 21 CFR 101.9(c)(6)(iii).
TEST_CASE("demo: where the label prints added sugars, the ingredients name one")
{
    int checked = 0;
    for (const auto& product : cedar_hollow().products) {
        const auto* line = product.label.per_serving.find(core::Nutrient::AddedSugars);
        if (!line || !line->amount || line->amount->less_than || line->amount->amount <= core::Content{})
            continue;
        if (product.name == "Oat drink")
            continue; // enzymes make its sugars out of the oats: no ingredient is one
        CAPTURE(product.name);
        CHECK_FALSE(core::sugars_in(core::take_apart(*product.label.ingredients)).empty());
        ++checked;
    }
    std::cout << "cedar_hollow.csv: " << checked << " labels with added sugars checked\n";
    CHECK(checked > 40);
}

} // namespace test::demo
