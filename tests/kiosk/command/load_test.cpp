#include "catalog/store/store.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/load.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"
#include "tests/support/workbook_maker.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

namespace {

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run load(const std::vector<std::string>& sources, const std::string& into, bool keep_good_rows = false)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::load({.sources = sources, .into = into, .keep_good_rows = keep_good_rows}, out, err);
    return {status, out.str(), err.str()};
}

} // namespace

TEST_CASE("load command: a good sheet is loaded and counted")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop");
    const auto first = load({folder.write("a.csv", test::good_sheet(3))}, shop);
    CHECK(first.status == 0);
    CHECK(first.out == "3 products loaded into " + shop + ".\n");
    CHECK(first.err.empty());
    const auto again = load({folder.write("b.csv", test::good_sheet(1))}, shop);
    CHECK(again.out == "1 product loaded into " + shop + ", 1 in place of an older entry.\n");
}

TEST_CASE("load command: of a workbook it is said which sheet was read, and which other may have been meant")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop");
    const test::TextRows rows{{"gtin", "name", "entered_on", "serving_size", "calories"},
                              {"9521234543213", "Oat rounds", "2026-11-25", "39 g", "140"}};
    const std::string read = ": the sheet \"Labels\" was read";
    for (const bool xlsx : {true, false}) {
        const auto tab = xlsx ? test::xlsx_rows(rows) : test::ods_rows(rows);
        const std::vector<test::Tab> tabs{{"Notes", ""}, {"Labels", tab}, {"Old", tab}, {"Older", tab}};
        const auto one = folder.write("one", xlsx ? test::xlsx_of({tabs[1]}) : test::ods_of({tabs[1]}));
        CHECK(load({one}, shop).out.starts_with(one + read + ".\n1 product loaded into "));
        const auto many = folder.write("many", xlsx ? test::xlsx_of(tabs) : test::ods_of(tabs));
        CHECK(load({many}, shop)
                  .out.starts_with(
                      many + read +
                      "; not read, although it has a column gtin: \"Old\", \"Older\".\n1 product loaded into "));
        CHECK(catalog::Store::open(shop, catalog::Store::Mode::ReadOnly)->count() == 1);
    }
}

TEST_CASE("load command: every fault is one line with its place, and nothing is loaded")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop");
    const auto sheet = folder.write("a.csv", test::good_sheet(2) + "9520000009991,Oats,2026-03-02,39 g,140,12x\n");
    const auto refused = load({sheet}, shop);
    CHECK(refused.status == 2);
    CHECK(refused.out.empty());
    CHECK(refused.err ==
          sheet +
              ", row 4, column sodium_mg: found \"12x\", expected a number of mg, such as 3 or \"less than "
              "1\".\nNothing was loaded: 1 fault. " +
              shop + " was not written. Put right what is named, and load again.\n");
    CHECK_FALSE(std::filesystem::exists(shop));
    const auto kept = load({sheet}, shop, true);
    CHECK(kept.status == 1);
    CHECK(kept.out == "2 products loaded into " + shop + "; 1 row not taken.\n");
    CHECK(kept.err.find("row 4, column sodium_mg") != std::string::npos);
}

TEST_CASE("load command: a fault leaves a catalog as it is, and says so")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop");
    REQUIRE(load({folder.write("a.csv", test::good_sheet(3))}, shop).status == 0);
    const auto before = test::bytes_of(shop);
    const auto refused = load({folder.write("b.csv", "gtin\n")}, shop);
    CHECK(refused.status == 2);
    CHECK(refused.err.find(shop + " is as it was.") != std::string::npos);
    CHECK(test::bytes_of(shop) == before);
}

TEST_CASE("load command: a folder that is not there yet is made, as the user's own is on a new machine")
{
    const test::TempFolder folder;
    const auto shop = folder.file("share/pairstand/catalog.db");
    CHECK(load({folder.write("a.csv", test::good_sheet(3))}, shop).status == 0);
    CHECK(catalog::Store::open(shop, catalog::Store::Mode::ReadOnly));
}

TEST_CASE("load command: twenty faults are twenty sentences")
{
    const test::TempFolder folder;
    const auto run =
        load({std::string(PAIRSTAND_SOURCE) + "/tests/data/sheets/twenty_faults.csv"}, folder.file("shop"));
    CHECK(run.status == 2);
    CHECK(std::count(run.err.begin(), run.err.end(), '\n') == 21);
    CHECK(run.err.find("Nothing was loaded: 20 faults.") != std::string::npos);
}

TEST_CASE("load command: what is beyond telling is counted")
{
    const test::TempFolder folder;
    std::string sheet = test::good_sheet(0);
    for (int row = 0; row < 1500; ++row)
        sheet += "1,Oats,2026-03-02,39 g,140,190\n";
    const auto run = load({folder.write("a.csv", sheet)}, folder.file("shop"));
    CHECK(run.status == 2);
    CHECK(run.err.find("... and 500 more faults.\nNothing was loaded: 1500 faults.") != std::string::npos);
}

TEST_CASE("load command: what cannot be read or written is one sentence")
{
    const test::TempFolder folder;
    const auto sheet = folder.write("a.csv", test::good_sheet(1));
    const auto missing = load({folder.file("none.csv")}, folder.file("shop"));
    CHECK(missing.status == 2);
    CHECK(missing.err.starts_with(folder.file("none.csv") + ": there is no such file; check its name.\n"));
    const auto into_text = load({sheet}, sheet);
    CHECK(into_text.status == 2);
    CHECK(into_text.err.starts_with("pairstand load: nothing was loaded. " + sheet +
                                    ": this file is no Pairstand catalog; give another name, or move this file away"));
    CHECK(std::ranges::count(into_text.err, '\n') == 1);
}
