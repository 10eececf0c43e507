#include "catalog/load/load.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

using catalog::Store;
using Kind = core::Error::Kind;

namespace {

/// A catalog file with this many products.
std::string catalog_with(const test::TempFolder& folder, std::size_t count)
{
    const auto path = folder.file("shop.pairstand");
    Store(path).put(test::products(count));
    return path;
}

Store open(const std::string& path)
{
    return Store::open(path, Store::Mode::ReadOnly).value();
}

const std::string twenty_faults = std::string(PAIRSTAND_SOURCE) + "/tests/data/sheets/twenty_faults.csv";

} // namespace

TEST_CASE("load: a good sheet makes a catalog")
{
    const test::TempFolder folder;
    const auto sheet = folder.write("cereals.csv", test::good_sheet(5));
    const auto report = catalog::load({sheet}, folder.file("shop.pairstand")).value();
    CHECK(report.taken == 5);
    CHECK(report.replaced == 0);
    CHECK(report.refused_rows == 0);
    CHECK(report.faults.empty());
    const auto store = open(folder.file("shop.pairstand"));
    CHECK(store.count() == 5);
    CHECK(store.find(test::gtin(3))->origin.row == 4);
}

TEST_CASE("load: other products stay, the same number is replaced and counted")
{
    const test::TempFolder folder;
    const auto shop = catalog_with(folder, 10);
    const auto serving = open(shop);
    const auto report =
        catalog::load({folder.write("a.csv", test::good_sheet(3, 9)), folder.write("b.csv", test::good_sheet(2, 100))},
                      shop)
            .value();
    CHECK(report.taken == 5);
    CHECK(report.replaced == 2);
    CHECK(serving.changed_on_disk());
    CHECK(serving.count() == 10); // who is serving goes on
    const auto store = open(shop);
    CHECK(store.count() == 13);
    CHECK(store.find(test::gtin(1)) == test::products(1)[0]);
    CHECK(store.find(test::gtin(9))->origin.source == "a.csv");
}

TEST_CASE("load: twenty different faults are twenty named faults, and the catalog is unchanged")
{
    const test::TempFolder folder;
    const auto shop = catalog_with(folder, 10);
    const auto before = test::bytes_of(shop);
    const auto report = catalog::load({twenty_faults}, shop).value();
    struct Expected {
        std::size_t row;
        const char* column;
        Kind kind;
        const char* found;
    };
    const Expected expected[] = {
        {1, "potasium_mg", Kind::UnknownColumn, "potasium_mg"},
        {3, "gtin", Kind::NotDigits, "95212345X3213"},
        {4, "gtin", Kind::WrongLength, "12345000065"},
        {5, "gtin", Kind::BadValue, "9.52E+12"},
        {6, "gtin", Kind::WrongCheckDigit, "9520000007776"},
        {7, "gtin", Kind::NotAProductCode, "200123456788"},
        {8, "gtin", Kind::NotAProductCode, "9901234567899"},
        {9, "gtin", Kind::NotAProductCode, "19520000000056"},
        {10, "gtin", Kind::DoubledValue, "9520000001001"},
        {11, "name", Kind::MissingValue, ""},
        {12, "entered_on", Kind::BadValue, "3/2/2026"},
        {13, "panel", Kind::BadValue, "new"},
        {14, "serving_size", Kind::BadValue, "39 oz"},
        {15, "servings_per_container", Kind::BadValue, "some"},
        {16, "calories", Kind::BadValue, "a lot"},
        {17, "sodium_mg", Kind::BadValue, "1,500"},
        {18, "sodium_percent_dv", Kind::BadValue, "8.5%"},
        {19, "not_significant", Kind::BadValue, "trans_fatt"},
        {20, "second_column", Kind::MissingValue, ""},
        {21, "", Kind::BadRow, "13 cells"},
    };
    const auto& faults = report.faults.kept();
    REQUIRE(report.faults.count() == 20);
    for (std::size_t i = 0; i < 20; ++i) {
        CAPTURE(expected[i].row);
        CHECK(faults[i].place.source == twenty_faults);
        CHECK(faults[i].place.row == expected[i].row);
        CHECK(faults[i].place.column == expected[i].column);
        CHECK(faults[i].kind == expected[i].kind);
        CHECK(faults[i].place.found == expected[i].found);
        CHECK_FALSE(faults[i].place.expected.empty());
    }
    CHECK(report.taken == 0);
    CHECK(report.refused_rows == 20);
    CHECK(test::bytes_of(shop) == before);
}

TEST_CASE("load: good rows are kept only when asked for")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.pairstand");
    const auto sheet = folder.write("mixed.csv", test::good_sheet(3) + "1,Oats,2026-03-02,39 g,140,190\n");
    const auto refused = catalog::load({sheet}, shop).value();
    CHECK(refused.taken == 0);
    CHECK(refused.refused_rows == 4);
    CHECK(refused.faults.count() == 1);
    CHECK_FALSE(std::filesystem::exists(shop));
    const auto kept = catalog::load({sheet}, shop, {.keep_good_rows = true}).value();
    CHECK(kept.taken == 3);
    CHECK(kept.refused_rows == 1);
    CHECK(kept.faults.count() == 1);
    CHECK(open(shop).count() == 3);
}

TEST_CASE("load: a sheet whose header has a fault has no good rows, another sheet has")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.pairstand");
    const auto good = folder.write("good.csv", test::good_sheet(2));
    const auto alone = catalog::load({twenty_faults}, shop, {.keep_good_rows = true}).value();
    CHECK(alone.taken == 0);
    CHECK_FALSE(std::filesystem::exists(shop));
    const auto both =
        catalog::load({twenty_faults, good, folder.file("none.csv")}, shop, {.keep_good_rows = true}).value();
    CHECK(both.taken == 2);
    CHECK(both.faults.count() == 21);
    CHECK(open(shop).count() == 2);
}

TEST_CASE("load: a number in two sheets is a fault that names the first")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.pairstand");
    const auto a = folder.write("a.csv", test::good_sheet(3, 1));
    const auto b = folder.write("b.csv", test::good_sheet(3, 3));
    const auto report = catalog::load({a, b}, shop).value();
    REQUIRE(report.faults.count() == 1);
    CHECK(report.faults.kept()[0].place.source == b);
    CHECK(report.faults.kept()[0].place.row == 2);
    CHECK(report.faults.kept()[0].place.expected == "each number once; it already stands in " + a + ", row 4");
    CHECK(report.refused_rows == 6);
    CHECK(catalog::load({a, b}, shop, {.keep_good_rows = true}).value().taken == 5);
}

TEST_CASE("load: what cannot be written into is told and stays as it is")
{
    const test::TempFolder folder;
    const auto sheet = folder.write("good.csv", test::good_sheet(2));
    const auto text = folder.write("notes.txt", "not a catalog");
    const auto into_text = catalog::load({sheet}, text);
    REQUIRE_FALSE(into_text);
    CHECK(into_text.error().kind == Kind::NoCatalog);
    CHECK(test::bytes_of(text) == "not a catalog");
    const auto nowhere = catalog::load({sheet}, text + "/shop"); // below a file
    REQUIRE_FALSE(nowhere);
    CHECK(nowhere.error().kind == Kind::CannotWrite);
    const auto shop = catalog_with(folder, 1);
    const auto writer = Store::open(shop, Store::Mode::Write).value();
    const auto busy = catalog::load({sheet}, shop);
    REQUIRE_FALSE(busy);
    CHECK(busy.error().kind == Kind::Busy);
    CHECK(busy.error().place.source == shop);
}

TEST_CASE("load: a sheet over a release tells what the release said differently")
{
    const test::TempFolder folder;
    auto of_release = test::product(1, "OAT ROUNDS");
    of_release.origin.kind = core::Origin::Kind::Release;
    auto same = test::product(2, "RYE");
    catalog::Store(folder.file("shop")).put(std::vector{of_release, same});
    const auto row = [](std::uint64_t number, const std::string& sodium) {
        return test::gtin(number).digits() + ",Oat rounds,2026-11-25,39 g,140,2.5," + sodium + "\n";
    };
    const auto sheet = folder.write("own.csv", "gtin,name,entered_on,serving_size,calories,total_fat_g,sodium_mg\n" +
                                                   row(1, "160") + row(2, "190") + row(3, "5"));
    const auto report = catalog::load({sheet}, folder.file("shop"));
    REQUIRE(report);
    CHECK(report->replaced == 2);
    CHECK(report->differing == 1);
    REQUIRE(report->differences.size() == 1);
    CHECK(report->differences[0] ==
          catalog::EntryDifference{test::gtin(1), "Oat rounds", {{"sodium", "190 mg", "160 mg"}}});
}
