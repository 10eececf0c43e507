// What pairstand compare tells of ingredients and allergens, as text and as JSON.
#include "tests/kiosk/command/shop.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>
#include <utility>

namespace test {
namespace {

using Json = nlohmann::ordered_json;

std::size_t times(const std::string& text, const std::string& words)
{
    std::size_t count = 0;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        ++count;
    return count;
}

Json told(Shop& shop)
{
    shop.json = true;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.bulk.gtin.digits()) == 0);
    return Json::parse(shop.out.str());
}

} // namespace

// Sources: 21 CFR 137.165 (enriched flour is no whole grain); 21 CFR 101.9(c)(6)(iii); FD&C Act 403(w).
TEST_CASE("compare command: JSON tells the list, the first grain, sugars, oils and allergens with their places")
{
    Shop shop;
    const auto left = told(shop)["left"];
    const auto& list = left["ingredients"];
    CHECK(list["printed"] == *shop.rich.label.ingredients);
    CHECK(list["read_in_part"] == false);
    CHECK(list["first_grain"]["kind"] == "not_whole");
    CHECK_FALSE(list["first_grain"]["published"].get<std::string>().empty());
    REQUIRE(list["sugars"].size() == 2);
    CHECK(list["sugars"][0]["printed"] == "sugar");
    CHECK(list["sugars"][0]["kind"] == "sugar");
    CHECK(list["sugars"][1]["kind"] == "concentrated_juice");
    CHECK(list["partially_hydrogenated"] == Json::array({"partially hydrogenated soybean oil"}));
    const auto& allergens = left["allergens"];
    CHECK(allergens["statement_recorded"] == true);
    CHECK(allergens["statement"] == "Milk");
    CHECK(allergens["statement_in_text"] == "milk");
    CHECK(allergens["may_contain"] == "May contain almonds");
    CHECK(allergens["entered_on"] == left["entered_on"]);
    const auto named = [&](const char* allergen, const char* place, const char* printed) {
        const Json wanted{{"allergen", allergen}, {"place", place}, {"printed", printed}};
        return std::ranges::find(allergens["named"], wanted) != allergens["named"].end();
    };
    CHECK(named("milk", "statement", "Milk"));
    CHECK(named("milk", "statement_in_text", "milk"));
    CHECK(named("milk", "ingredients", "whey"));
    CHECK(named("tree_nuts", "may_contain", "almonds"));
}

TEST_CASE("compare command: JSON tells not recorded, entered as absent, and the days before sesame apart")
{
    Shop shop;
    const auto right = told(shop)["right"]; // neither was entered
    CHECK(right["ingredients"].is_null());
    CHECK(right["allergens"]["statement_recorded"] == false);
    CHECK(right["allergens"]["statement"].is_null());
    CHECK(right["allergens"]["ingredients_recorded"] == false);
    CHECK(right["allergens"]["named"] == Json::array());

    auto older = shop.bulk;
    older.label.contains = "";
    for (const auto& [day, before] : {std::pair("2022-12-31", true), std::pair("2023-01-01", false)}) {
        older.origin.entered_on = core::Date::parse(day).value();
        catalog::Store(shop.path).put(older);
        const auto again = told(shop)["right"];
        CHECK(again["allergens"]["statement"] == ""); // entered as not on the label
        CHECK(again["allergens"]["sesame_need_not_be_named"] == before);
    }
}

TEST_CASE("compare command: the text tells both sides once, whatever the number of bases, with the caution")
{
    Shop shop;
    shop.json = false;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.bulk.gtin.digits()) == 0);
    const auto text = shop.out.str();
    CHECK(times(text,
                "\nLeft: allergens, first grain, sugars\n  Contains statement: “Milk”. Recognized in it: milk.\n") ==
          1);
    CHECK(times(text, "\nRight: allergens, first grain, sugars\n  Contains statement: not recorded here.\n  "
                      "The ingredients were not entered here.\n") == 1);
    CHECK(times(text, "read the package in your hand, and ask a doctor or a registered dietitian.") == 1);
    shop.language = "es";
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.bulk.gtin.digits()) == 0);
    CHECK(times(shop.out.str(), "\nDerecha: alérgenos, primer grano, azúcares\n  Línea de “Contiene”: no se anotó "
                                "aquí.\n  Aquí no se anotaron los ingredientes.\n") == 1);
}

} // namespace test
