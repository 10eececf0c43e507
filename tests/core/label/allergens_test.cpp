#include "core/label/allergens.h"
#include "core/label/allergens_table.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

using core::Allergen;
using core::AllergenPlace;

namespace {

core::AllergenReading read(std::optional<std::string> ingredients, std::optional<std::string> contains = std::nullopt,
                           const char* day = "2026-01-19")
{
    core::Label label;
    label.ingredients = std::move(ingredients);
    label.contains = std::move(contains);
    return core::allergens_of(label, core::Date::parse(day).value());
}

std::string told(const core::AllergenReading& reading)
{
    constexpr const char* names[] = {"milk",    "egg",   "fish",     "crustaceans", "tree nuts",
                                     "peanuts", "wheat", "soybeans", "sesame"};
    constexpr const char* places[] = {"stated", "stated in text", "named", "in doubt", "may contain"};
    std::string all;
    for (const auto& naming : reading.named)
        all += (all.empty() ? "" : "; ") + std::string(names[static_cast<int>(naming.allergen)]) + " " +
               places[static_cast<int>(naming.place)] + ": " + naming.printed;
    return all;
}

} // namespace

// Sources: FD&C Act 201(qq); FDA, Questions and Answers Regarding Food Allergens, Edition 5 (January 2025); published
// lists of ingredient names; 21 CFR 137.105 (flour is wheat flour). Row by row: core/label/allergens_table.cpp.
TEST_CASE("allergens: whole words, the longest phrase first")
{
    struct Case {
        std::string printed, told;
    };
    const Case cases[] = {
        {"buttermilk", "milk named: buttermilk"},
        {"butternut squash, eggplant, buckwheat, nutmeg, water chestnuts, cream of tartar, cocoa butter", ""},
        {"coconut milk, oat milk, coconut", ""},
        {"peanut butter", "peanuts named: peanut butter"},
        {"almond milk", "tree nuts named: almond milk"},
        {"Soy Lecithin", "soybeans named: Soy Lecithin"},
        {"sunflower lecithin", ""},
        {"rice flour, corn flour, masa harina", ""},
        {"Flour", "wheat named: Flour"},
        {"teff and cane flour", "wheat in doubt: flour"},
        {"enriched unbleached flour", "wheat named: enriched unbleached flour"},
        {"FAT FREE MILK, lactose-free milk", "milk named: MILK; milk in doubt: lactose-free"},
        {"Anchovies, Alaska pollock, shrimps",
         "fish named: Anchovies; fish named: Alaska pollock; crustaceans named: shrimps"},
        {"chocolate", "milk in doubt: chocolate"},
        {"chocolate (sugar, cocoa butter)", ""}, // what it is made of stands there: 21 CFR 101.4(b)(2)
        {"milk chocolate (sugar, cocoa butter)", "milk named: milk chocolate"},
        {"soybean oil", "soybeans in doubt: soybean oil"},
        {"expeller pressed soybean oil", "soybeans named: expeller pressed soybean oil"},
        {"vegetable oil (soybean, canola)", "soybeans in doubt: soybean"},
        {"soybean and/or canola oil", "soybeans in doubt: soybean"},
        {"peanuts and sunflower oil", "peanuts named: peanuts"},
        {"vegetable oil (peanuts)", "peanuts named: peanuts"},
        {"vegan cream, plant-based cheese", "milk in doubt: vegan cream; milk in doubt: plant-based cheese"},
        {"dairy free butter", "milk in doubt: dairy free; milk in doubt: dairy free butter"},
        {"natural flavor (contains: milk)", "milk named: milk"},
        {"seasoning (may contain milk)", "milk in doubt: milk"},
        {"milkpowders, wheatlets, soycrisp, kukuinut", "milk in doubt: milkpowders; tree nuts in doubt: kukuinut; "
                                                       "wheat in doubt: wheatlets; soybeans in doubt: soycrisp"},
        {"leche, harina de trigo, cacahuates, ajonjol\u00ed",
         "milk named: leche; peanuts named: cacahuates; wheat named: harina de trigo; sesame named: ajonjol\u00ed"},
        {"cr\u00e8me fra\u00eeche", "milk named: cr\u00e8me fra\u00eeche"},
        {"soy sauce", "wheat in doubt: soy sauce; soybeans named: soy sauce"},
        {"", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        CHECK(told(read(c.printed)) == c.told);
    }
}

TEST_CASE("allergens: where each was read is told apart")
{
    const auto reading =
        read("Oats, whey, chocolate. CONTAINS: MILK, SOY. May contain almonds.", "Milk, Sesame. May contain eggs.");
    CHECK(told(reading) == "milk stated: Milk; milk stated in text: MILK; milk named: whey; milk in doubt: chocolate; "
                           "egg may contain: eggs; "
                           "tree nuts may contain: almonds; soybeans stated in text: SOY; sesame stated: Sesame");
    CHECK(reading.statement == "Milk, Sesame. May contain eggs.");
    CHECK(reading.statement_in_text == "MILK, SOY");
    CHECK(reading.may_contain == "May contain almonds");
    CHECK(reading.names(Allergen::Milk, AllergenPlace::Ingredients));
    CHECK_FALSE(reading.names(Allergen::Egg, AllergenPlace::Statement));
}

TEST_CASE("allergens: what a statement says, in its forms")
{
    struct Case {
        std::string statement, told;
    };
    const Case cases[] = {
        {"Wheat, Soy", "wheat stated: Wheat; soybeans stated: Soy"},
        {"CONTAINS: WHEAT, SOY.", "wheat stated: WHEAT; soybeans stated: SOY"},
        {"Crustacean shellfish (shrimp), fish (cod)",
         "fish stated: fish; fish stated: cod; crustaceans stated: Crustacean shellfish; crustaceans stated: shrimp"},
        {"Tree nuts (coconut, almonds)", "tree nuts stated: Tree nuts; tree nuts stated: almonds"},
        {"Eggs. Milk. Peanut", "milk stated: Milk; egg stated: Eggs; peanuts stated: Peanut"},
        {"Coconut, milk", "milk stated: milk"},
        {"Coconut/Milk; Oat + Milk", "milk stated: Milk"},
        {"Coconut milk", ""},
        {"Trigo y leche", "milk stated: leche; wheat stated: Trigo"},
        {"May contain milk", "milk may contain: milk"},
        {"", ""},
        {"sulfites", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.statement);
        CHECK(told(read(std::nullopt, c.statement)) == c.told);
    }
}

TEST_CASE("allergens: none, empty and not recorded are told apart")
{
    CHECK_FALSE(read("oats").statement_recorded);
    CHECK(read("oats", "").statement_recorded);
    CHECK(read("oats", "").ingredients_recorded);
    CHECK_FALSE(read(std::nullopt, "Milk").ingredients_recorded);
    CHECK(read(std::nullopt).named.empty());
}

// Source: FASTER Act of 2021, Public Law 117-11, section 2(b): foods introduced on or after 1 January 2023.
TEST_CASE("allergens: before 2023 sesame need not have been named")
{
    CHECK(read("oats", "", "2022-12-31").sesame_need_not_be_named);
    CHECK_FALSE(read("oats", "", "2023-01-01").sesame_need_not_be_named);
    CHECK(core::sesame_named_from().text() == "2023-01-01");
}

TEST_CASE("allergens: every row of the table is found as what it is, also in capitals")
{
    for (const auto& row : core::allergen_rows()) {
        CAPTURE(std::string(row.words));
        CHECK_FALSE(row.source.empty());
        std::string capitals(row.words);
        for (char& c : capitals)
            c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        for (const std::string& text : {std::string(row.words), "salt, " + capitals + ", water"}) {
            const auto reading = read(text);
            const bool named = reading.names(row.allergen, AllergenPlace::Ingredients);
            const bool doubted = reading.names(row.allergen, AllergenPlace::InDoubt);
            CHECK(named == (row.kind == core::AllergenRow::Kind::Names || row.words == "flour"));
            CHECK((named || doubted) == (row.kind != core::AllergenRow::Kind::NotThis));
        }
    }
}
