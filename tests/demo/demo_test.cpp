// The demo catalog as a whole: it is what its true foods print, it loads, and it is as large and as varied as promised.
#include "core/code/store_code.h"
#include "core/code/upc_e.h"
#include "tests/demo/demo_files.h"
#include "tests/demo/label_printer.h"

#include <doctest/doctest.h>

#include <map>
#include <set>

namespace test::demo {

TEST_CASE("demo: the committed sheet is what the true foods print, byte by byte")
{
    // After a change of true_foods.csv: print_demo config/demo/true_foods.csv config/demo/cedar_hollow.csv
    CHECK(printed_sheet(true_foods()) == bytes_of(demo_file("cedar_hollow.csv")));
}

TEST_CASE("demo: the sheet loads without a fault, and every label comes back as it was printed")
{
    const auto& sheet = cedar_hollow();
    for (const auto& fault : sheet.faults.kept()) {
        CAPTURE(fault.place.row);
        CAPTURE(fault.place.column);
        CAPTURE(fault.place.found);
        FAIL_CHECK("expected " << fault.place.expected);
    }
    REQUIRE(sheet.products.size() == true_foods().size());
    for (std::size_t i = 0; i < sheet.products.size(); ++i) {
        const auto& food = true_foods()[i];
        const auto& read = sheet.products[i];
        CAPTURE(food.name);
        CHECK(read.name == food.name);
        CHECK(read.brand == food.brand);
        CHECK(read.aisle == food.aisle);
        CHECK(read.note == food.note);
        CHECK(read.origin.entered_on == food.entered_on);
        CHECK(read.label == printed_label(food, true_foods()));
    }
}

TEST_CASE("demo: at least 84 products in 12 aisles, 16 of them cereals")
{
    std::map<std::string, int> aisles;
    for (const auto& food : true_foods())
        ++aisles[food.aisle];
    CHECK(true_foods().size() >= 84);
    CHECK(aisles.size() == 12);
    CHECK(aisles["Cereal"] == 16);
    for (const auto& aisle : aisles) {
        CAPTURE(aisle.first);
        CHECK(aisle.second >= 6);
    }
}

TEST_CASE("demo: no two products share a name, a number or an ingredient list")
{
    std::set<std::string> names;
    std::set<std::string> lists;
    std::set<std::string> numbers;
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        CHECK(names.insert(food.name).second);
        CHECK(lists.insert(food.ingredients).second);
        CHECK(!food.ingredients.empty());
        const auto gtin = core::Gtin::parse(food.gtin);
        REQUIRE(gtin.has_value());
        CHECK(numbers.insert(gtin->digits()).second);
        CHECK(food.entered_on.text().starts_with("2026-"));
    }
}

// Source: GS1 General Specifications, section 1.4 (GS1 prefixes): 952 is for examples, number system 5 (050-059) is
// reserved, and no GTIN-8 is given out in 140-199.
TEST_CASE("demo: the numbers are of kinds that no company holds")
{
    using Class = core::CodeClass;
    std::map<Class, int> classes;
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        CAPTURE(food.gtin);
        const auto gtin = core::Gtin::parse(food.gtin);
        REQUIRE(gtin.has_value());
        const auto code_class = core::class_of(*gtin, food.gtin.size());
        ++classes[code_class];
        const bool free = code_class == Class::Demo || code_class == Class::Reserved || code_class == Class::Unassigned;
        // One number of a range that is given out: the only kind whose short form can be that of an EAN-8 as well.
        CHECK((free || food.gtin == "163002000055"));
        CHECK(core::names_one_product(code_class));
        CHECK(!core::is_case(*gtin));
    }
    CHECK(classes[Class::Demo] > 80);
    CHECK(classes[Class::Reserved] >= 5);
    CHECK(classes[Class::Unassigned] == 1);
    CHECK(classes[Class::Product] == 1);
}

// Source: GS1 General Specifications, section 5.2.2.4.2 (zero suppression).
TEST_CASE("demo: eight digits that are an EAN-8 and a UPC-E, both on a shelf")
{
    const std::string eight = "16300255";
    CHECK(product(eight).name == "Cocoa almond bar");
    const auto expanded = core::expand_upc_e(eight);
    REQUIRE(expanded.has_value());
    CHECK(product(*expanded).name == "Apple juice, small can");
    CHECK(core::shorten_to_upc_e(*expanded).value() == eight.substr(1, 6));
}

// The guide promises numbers: each that it names is there.
TEST_CASE("demo: every number in docs/demo-catalog.md is a product's")
{
    const std::string guide = bytes_of(std::string(PAIRSTAND_SOURCE) + "/docs/demo-catalog.md");
    std::set<std::string> known;
    for (const auto& food : true_foods())
        known.insert(food.gtin);
    int found = 0;
    for (std::size_t at = guide.find('`'); at != std::string::npos; at = guide.find('`', at + 1)) {
        const auto end = guide.find_first_not_of("0123456789", at + 1);
        if (end == std::string::npos || guide[end] != '`' || end - at - 1 < 8)
            continue;
        const std::string number = guide.substr(at + 1, end - at - 1);
        CAPTURE(number);
        CHECK(known.contains(number));
        ++found;
        at = end;
    }
    CHECK(found >= 30);
}

} // namespace test::demo
