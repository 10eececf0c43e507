#include "core/label/sugars.h"

#include <doctest/doctest.h>

#include <string>

namespace {

std::string told(std::string_view printed)
{
    std::string all;
    for (const auto& sugar : core::sugars_in(core::take_apart(printed))) {
        all += (all.empty() ? "" : "|") + sugar.printed + (sugar.kind == core::SugarRow::Kind::Juice ? " (juice)" : "");
        CHECK_FALSE(sugar.source.empty());
        CHECK(sugar.kind != core::SugarRow::Kind::None);
    }
    return all;
}

} // namespace

// Source: 21 CFR 101.9(c)(6)(iii) and (iv); USDA, MyPlate, What Are Added Sugars? (names); else common practice.
TEST_CASE("sugars: every name once, in the order of the list")
{
    struct Case {
        std::string printed, told;
    };
    const Case cases[] = {
        {"Oats, sugar, honey, salt, SUGAR", "sugar|honey"},
        {"organic cane sugar, brown rice syrup, high-fructose corn syrup",
         "organic cane sugar|brown rice syrup|high-fructose corn syrup"},
        {"Confectioners' powdered sugar, anhydrous dextrose, evaporated cane juice",
         "Confectioners' powdered sugar|anhydrous dextrose|evaporated cane juice"},
        {"pear nectar, malt syrup, invert sugar, turbinado, molasses, lactose (milk)",
         "pear nectar|malt syrup|invert sugar|turbinado|molasses|lactose"},
        {"a long name of an ingredient with sugar in it", "sugar"},
        {"chocolate (sugar, cocoa butter), dates", "sugar"},
        {"water, apple juice concentrate", "apple juice concentrate (juice)"},
        {"apple juice from concentrate (water, apple juice concentrate)", ""},
        {"sugar snap peas, sugar pumpkin, sugar beet fiber, honeydew melon, nectarines", ""},
        {"no sugar added tomatoes, unsweetened cocoa, sugar free syrup", ""},
        {"maltitol syrup, erythritol, xylitol, sugar alcohols, stevia, sucralose, allulose", ""},
        {"caramel color, natural maple flavor, galactooligosaccharides, sucrose esters, maltodextrin", ""},
        {"INGREDIENTS: SUGAR. INGREDIENTES: AZ\u00daCAR", "SUGAR"},
        {"INGREDIENTES: AZ\u00daCAR, JARABE DE MA\u00cdZ, MIEL", "AZ\u00daCAR|JARABE DE MA\u00cdZ|MIEL"},
        {"", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        CHECK(told(c.printed) == c.told);
    }
}

TEST_CASE("sugars: every row of the table is found as what it is")
{
    for (const auto& row : core::sugar_rows()) {
        CAPTURE(std::string(row.words));
        const auto found = core::sugars_in(core::take_apart(row.words));
        CHECK_FALSE(row.source.empty());
        REQUIRE(found.size() == (row.kind == core::SugarRow::Kind::None ? 0 : 1));
        if (!found.empty())
            CHECK(found[0].kind == row.kind);
    }
}
