#include "catalog/store/store.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/export.h"
#include "kiosk/command/load.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <sstream>

namespace {

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run run_export(const kiosk::ExportArguments& asked)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::export_sheets(asked, out, err);
    return {status, out.str(), err.str()};
}

Run load(const std::string& sheet, const std::string& into)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::load({.sources = {sheet}, .into = into, .keep_good_rows = false}, out, err);
    return {status, out.str(), err.str()};
}

} // namespace

TEST_CASE("export command: a catalog goes into a sheet, and the sheet loads into the same catalog")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    REQUIRE(load(folder.write("a.csv", test::good_sheet(3)), shop).status == 0);
    const auto sheet = folder.file("out.csv");
    const auto written = run_export({.catalog = shop, .out = sheet});
    CHECK(written.status == 0);
    CHECK(written.out == "3 products written to " + sheet + ".\n");
    CHECK(written.err.empty());
    const auto again = folder.file("again.db");
    CHECK(load(sheet, again).status == 0);
    const auto before = catalog::Store::open(shop, catalog::Store::Mode::ReadOnly);
    const auto after = catalog::Store::open(again, catalog::Store::Mode::ReadOnly);
    for (std::uint64_t number = 1; number <= 3; ++number)
        CHECK(before->find(test::gtin(number)) == after->find(test::gtin(number)));
}

TEST_CASE("export command: a product that no sheet can say is named, and the others are written")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    {
        catalog::Store store(shop);
        auto product = test::product(1);
        product.name = "two  blanks";
        store.put(product);
        product = test::product(2);
        product.label.per_serving.lines[core::Nutrient::Sodium].amount =
            core::Figure{core::Content::whole(5'000), false, 0};
        store.put(product);
        store.put(test::product(3));
    }
    const auto written = run_export({.catalog = shop, .out = folder.file("out.csv")});
    CHECK(written.status == 1);
    CHECK(written.out == "1 product written to " + folder.file("out.csv") + ".\n");
    CHECK(written.err == test::gtin(1).digits() + " is in no sheet: it would not load again as it is.\n" +
                             test::gtin(2).digits() +
                             " is in no sheet: the column sodium_mg takes nothing like what it has there.\n");
}

TEST_CASE("export command: the name of a workbook is refused, since the file would hold CSV")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    REQUIRE(load(folder.write("a.csv", test::good_sheet(3)), shop).status == 0);
    for (const char* name : {"back.xlsx", "back.ODS", "back.xls"})
        for (const bool blank : {false, true}) {
            CAPTURE(name);
            const auto out = folder.file(name);
            const auto refused = run_export({.catalog = blank ? "" : shop, .out = out, .blank = blank});
            CHECK(refused.status == 2);
            CHECK(refused.out.empty());
            CHECK(refused.err ==
                  "pairstand export: " + out + ": this command writes CSV; give a name that ends in .csv.\n");
            CHECK_FALSE(std::filesystem::exists(out));
        }
    const auto spanish = run_export({.catalog = shop, .out = folder.file("a.ods"), .language = "es"});
    CHECK(spanish.err == "pairstand export: " + folder.file("a.ods") +
                             ": este comando escribe CSV; d\xC3\xA9 un nombre que termine en .csv.\n");
}

TEST_CASE("export command: a template, and what cannot be done, are one sentence")
{
    const test::TempFolder folder;
    const auto path = folder.file("template.csv");
    const auto blank = run_export({.catalog = "", .out = path, .blank = true});
    CHECK(blank.status == 0);
    CHECK(blank.out == "An empty sheet written to " + path + ".\n");
    CHECK(test::bytes_of(path).find("this_place_only") != std::string::npos);
    const auto nowhere = run_export({.catalog = "", .out = folder.file("no/t.csv"), .blank = true});
    CHECK(nowhere.status == 2);
    CHECK(nowhere.err.starts_with("pairstand export: " + folder.file("no/t.csv") + ": cannot be written"));
    const auto none = run_export({.catalog = folder.file("none.db"), .out = path});
    CHECK(none.status == 2);
    CHECK(none.err.starts_with("pairstand export: " + folder.file("none.db")));
}
