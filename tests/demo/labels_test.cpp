// Nothing is wrong with a label of the demo catalog, and just what is told is wrong with a spoiled one.
#include "core/label/tell_panel.h"
#include "tests/demo/demo_files.h"
#include "tests/demo/label_checks.h"

#include <doctest/doctest.h>

#include <map>

namespace test::demo {

TEST_CASE("demo: nothing is wrong with any label")
{
    REQUIRE(cedar_hollow().products.size() == true_foods().size());
    for (const auto& good : cedar_hollow().products) {
        CAPTURE(good.name);
        const auto complaints = complaints_about(good);
        CAPTURE(words(complaints));
        CHECK(complaints.empty());
    }
}

TEST_CASE("demo: each spoiled row loads, says what is wrong with it, and nothing else is")
{
    const std::map<std::string, Doubt> spoiled{
        {"Butter rounds", Doubt::AmountOffTheRule},
        {"Minestrone, low in sodium", Doubt::AmountOffTheRule},
        {"Cinnamon wheat squares", Doubt::AmountOffTheRule},
        {"Cheese pizza", Doubt::PercentDoesNotFit},
        {"Lowfat yogurt, vanilla", Doubt::PercentDoesNotFit},
        {"White sandwich bread", Doubt::PercentOffTheRule},
        {"Oat rings, honey", Doubt::PartAboveWhole},
        {"Alfredo sauce", Doubt::PartAboveWhole},
        {"Soy drink, plain", Doubt::PartAboveWhole},
        {"Crunchy oat bars, honey", Doubt::EnergyDoesNotFit},
        {"Cocoa corn rounds", Doubt::PackageDoesNotFit},
        {"Salsa, medium", Doubt::ServingsOffTheRule},
        {"Lentil soup", Doubt::ColumnsDoNotFit},
        {"Three seed crackers", Doubt::ContainsDoesNotFit},
    };
    const auto sheet = catalog::read_sheet_file(demo_file("spoiled.csv"));
    CHECK(sheet.faults.empty());
    REQUIRE(sheet.products.size() == spoiled.size());
    for (const auto& bad : sheet.products) {
        CAPTURE(bad.name);
        CHECK(!bad.note.empty());
        const auto cut = bad.name.rfind(" (spoiled)");
        REQUIRE(cut != std::string::npos);
        const auto complaints = complaints_about(bad);
        CAPTURE(words(complaints));
        REQUIRE(complaints.size() == 1);
        CHECK(complaints[0].doubt == spoiled.at(bad.name.substr(0, cut)));
    }
}

TEST_CASE("demo: the panel of every label is told from what it prints")
{
    for (const auto& product : cedar_hollow().products) {
        CAPTURE(product.name);
        CHECK(core::tell_panel(product.label).panel == product.label.panel);
    }
}

} // namespace test::demo
