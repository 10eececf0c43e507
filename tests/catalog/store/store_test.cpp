#include "catalog/read/sheet.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <SQLiteCpp/Database.h>
#include <doctest/doctest.h>

#include <csignal>
#include <fstream>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

using catalog::Store;
using Kind = core::Error::Kind;
using Mode = Store::Mode;

namespace {

/// A catalog file with this many products.
std::string catalog_with(const test::TempFolder& folder, std::size_t count)
{
    const auto path = folder.file("shop.pairstand");
    auto store = Store::open(path, Mode::Write).value();
    store.put(test::products(count));
    return path;
}

void run_sql(const std::string& path, const std::string& sql)
{
    SQLite::Database(path, SQLite::OPEN_READWRITE).exec(sql);
}

} // namespace

TEST_CASE("store: finds what was put, and nothing else")
{
    Store store(":memory:");
    CHECK(store.count() == 0);
    CHECK(!store.has_more_than(0));
    CHECK_FALSE(store.find(test::gtin(1)));
    store.put(test::product(1));
    store.put(test::full_product());
    CHECK(store.count() == 2);
    CHECK(store.has_more_than(0));
    CHECK(store.has_more_than(1));
    CHECK(!store.has_more_than(2));
    CHECK(store.find(test::gtin(1)) == test::product(1));
    CHECK(store.holds(test::gtin(1)));
    CHECK_FALSE(store.holds(test::gtin(2)));
}

TEST_CASE("store: the same number again stands in place of the old entry, and is counted")
{
    Store store(":memory:");
    CHECK(store.put(test::products(3)) == 0);
    const auto again = test::product(2, "Oat rounds, new recipe");
    CHECK(store.put(std::vector{again, test::product(9), again}) == 2);
    CHECK(store.count() == 4);
    CHECK(store.find(again.gtin) == again);
}

TEST_CASE("store: pages of products come by aisle, then name, then number")
{
    Store store(":memory:");
    struct Entry {
        std::uint64_t number;
        const char* name;
        const char* aisle;
    };
    const Entry entries[] = {{5, "rye crisps", "Crackers"},
                             {4, "Rye crisps", "crackers"},
                             {3, "Corn puffs", "Cereal"},
                             {2, "apple rings", "Cereal"},
                             {1, "Water", ""}};
    for (const auto& entry : entries) {
        auto product = test::product(entry.number, entry.name);
        product.aisle = entry.aisle;
        store.put(product);
    }
    std::vector<std::string> names;
    for (const auto& listed : store.products_in_order(10))
        names.push_back(listed.name);
    CHECK(names == std::vector<std::string>{"Water", "apple rings", "Corn puffs", "Rye crisps", "rye crisps"});
    const auto page = store.products_in_order(2, 1);
    REQUIRE(page.size() == 2);
    CHECK(page[0] == catalog::ListedProduct{test::gtin(2), "apple rings", "Millbrook", "Cereal"});
    CHECK(store.products_in_order(10, 5).empty());
}

TEST_CASE("store: a catalog outlives its program")
{
    const test::TempFolder folder;
    const auto path = catalog_with(folder, 20);
    const auto store = Store::open(path, Mode::ReadOnly).value();
    CHECK(store.count() == 20);
    CHECK(store.find(test::gtin(20)) == test::products(20).back());
}

TEST_CASE("store: who serves writes nothing, not even beside the file")
{
    const test::TempFolder folder;
    const auto path = catalog_with(folder, 3);
    const auto before = test::bytes_of(path);
    {
        auto store = Store::open(path, Mode::ReadOnly).value();
        CHECK(store.find(test::gtin(1)));
        CHECK_THROWS_AS(store.put(test::product(9)), std::runtime_error);
        CHECK(store.count() == 3);
        const auto files = std::filesystem::directory_iterator(std::filesystem::path(path).parent_path());
        CHECK(std::distance(begin(files), end(files)) == 1);
    }
    CHECK(test::bytes_of(path) == before);
}

TEST_CASE("store: what is no catalog is refused with a reason")
{
    const test::TempFolder folder;
    const auto good = catalog_with(folder, 1);
    const auto newer = folder.write("newer", test::bytes_of(good));
    run_sql(newer, "PRAGMA user_version = 99");
    const auto other = folder.write("other", "");
    run_sql(other, "CREATE TABLE recipe (name TEXT)");
    struct Case {
        const char* why;
        std::string path;
        Kind kind;
    };
    const Case cases[] = {
        {"missing", folder.file("missing"), Kind::NoSuchFile},
        {"in a missing folder", folder.file("missing/shop"), Kind::NoSuchFile},
        {"a folder", folder.file(""), Kind::IsFolder},
        {"a device", "/dev/null", Kind::NoCatalog},
        {"empty", folder.write("empty", ""), Kind::NoCatalog},
        {"a sheet", folder.write("sheet.csv", test::good_sheet(100)), Kind::NoCatalog},
        {"another program's database", other, Kind::NoCatalog},
        {"made by a newer version", newer, Kind::NewerCatalog},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto store = Store::open(c.path, Mode::ReadOnly);
        REQUIRE_FALSE(store);
        CHECK(store.error().kind == c.kind);
        CHECK(store.error().place.source == c.path);
    }
    CHECK_FALSE(Store::open(newer, Mode::Write));
    CHECK_THROWS_AS(Store{newer}, std::runtime_error);
}

// A catalog of version 2 as it lay on the disk; version 1 did not have the column for the reference food.
TEST_CASE("store: a catalog of an older version is served as it is, and brought up by who writes")
{
    const std::string data = std::string(PAIRSTAND_SOURCE) + "/tests/data/";
    const auto sheet = catalog::read_sheet_file(data + "sheets/older_catalog.csv");
    REQUIRE(sheet.products.size() == 13);
    for (const int version : {1, 2}) {
        CAPTURE(version);
        const test::TempFolder folder;
        const auto path = folder.write("shop", "");
        run_sql(path, test::bytes_of(data + "catalog_version_2.sql"));
        auto products = sheet.products;
        if (version == 1) {
            run_sql(path, "ALTER TABLE product DROP COLUMN reference_food; PRAGMA user_version = 1");
            for (auto& product : products)
                product.reference_food = nullptr;
        }
        const auto before = test::bytes_of(path);
        {
            const auto serving = Store::open(path, Mode::ReadOnly).value();
            CHECK(serving.count() == 13);
            CHECK(serving.products_in_order(20).size() == 13);
            for (const auto& product : products)
                CHECK(serving.find(product.gtin) == product);
            serving.copy_to(folder.file("copy"));
        }
        CHECK(test::bytes_of(path) == before); // serving changes nothing
        for (const auto& file : {path, folder.file("copy")}) {
            CAPTURE(file);
            Store(file).put(test::full_product());
            const auto store = Store::open(file, Mode::ReadOnly).value();
            CHECK(store.count() == 14);
            CHECK(store.products_in_order(20).size() == 14);
            CHECK(store.find(test::full_product().gtin) == test::full_product());
            for (const auto& product : products)
                CHECK(store.find(product.gtin) == product);
        }
        run_sql(path, "PRAGMA user_version = 0");
        CHECK(Store::open(path, Mode::ReadOnly).error().kind == Kind::NoCatalog);
    }
}

TEST_CASE("store: a large catalog is opened without reading it through, and a cut off one is told all the same")
{
    const test::TempFolder folder;
    const auto path = catalog_with(folder, 20);
    run_sql(path, "CREATE TABLE filler AS SELECT zeroblob(70000000)");
    CHECK(Store::open(path, Mode::ReadOnly).value().find(test::gtin(20)) == test::products(20).back());
    std::filesystem::resize_file(path, std::filesystem::file_size(path) - 4096);
    CHECK(Store::open(path, Mode::ReadOnly).error().kind == Kind::TornCatalog);
}

TEST_CASE("store: a torn file is told at opening, wherever it is torn")
{
    const test::TempFolder folder;
    const auto whole = test::bytes_of(catalog_with(folder, 300));
    const std::size_t page = 4096;
    REQUIRE(whole.size() > 10 * page);
    for (std::size_t pages = 1; pages * page < whole.size(); ++pages) {
        CAPTURE(pages);
        const auto cut = folder.write("cut", std::string_view(whole).substr(0, pages * page));
        CHECK_FALSE(Store::open(cut, Mode::ReadOnly));
        const auto half_a_page = folder.write("half", std::string_view(whole).substr(0, pages * page - page / 2));
        CHECK_FALSE(Store::open(half_a_page, Mode::ReadOnly));
        auto holed = whole;
        holed.replace(pages * page, page, page, '\0');
        const auto store = Store::open(folder.write("holed", holed), Mode::ReadOnly);
        REQUIRE_FALSE(store);
        CHECK(store.error().kind == Kind::TornCatalog);
    }
}

TEST_CASE("store: one writer at a time")
{
    const test::TempFolder folder;
    const auto path = folder.file("shop.pairstand");
    {
        const auto first = Store::open(path, Mode::Write).value();
        const auto second = Store::open(path, Mode::Write);
        REQUIRE_FALSE(second);
        CHECK(second.error().kind == Kind::Busy);
        CHECK(Store::open(path, Mode::ReadOnly));
    }
    CHECK(Store::open(path, Mode::Write));
}

TEST_CASE("store: an open catalog serves on when another takes its place, and says so")
{
    const test::TempFolder folder;
    const auto path = catalog_with(folder, 2);
    const auto serving = Store::open(path, Mode::ReadOnly).value();
    CHECK_FALSE(serving.changed_on_disk());
    {
        Store next(folder.file("next"));
        next.put(test::products(5));
    }
    std::filesystem::rename(folder.file("next"), path);
    CHECK(serving.changed_on_disk());
    CHECK(serving.count() == 2);
    CHECK(serving.find(test::gtin(2)));
    const auto fresh = Store::open(path, Mode::ReadOnly).value();
    CHECK(fresh.count() == 5);
    CHECK_FALSE(fresh.changed_on_disk());
    std::filesystem::remove(path);
    CHECK_FALSE(fresh.changed_on_disk());
    CHECK(fresh.find(test::gtin(5)));
}

TEST_CASE("store: a copy holds the same, and its maker stays as it was")
{
    const test::TempFolder folder;
    const auto store = Store::open(catalog_with(folder, 30), Mode::ReadOnly).value();
    store.copy_to(folder.file("copy"));
    const auto copy = Store::open(folder.file("copy"), Mode::ReadOnly).value();
    CHECK(copy.products_in_order(100) == store.products_in_order(100));
    CHECK(copy.find(test::gtin(30)) == store.find(test::gtin(30)));
    CHECK_THROWS_AS(store.copy_to(folder.file("copy")), std::runtime_error);
}

// The writer is gone with half its pages in the file; what they were before stands in the journal beside it.
TEST_CASE("store: who serves after a writer was cut off sees the catalog as it was before")
{
    const test::TempFolder folder;
    const auto path = catalog_with(folder, 500);
    const auto whole = test::bytes_of(path);
    const auto child = ::fork();
    if (child == 0) {
        SQLite::Database database(path, SQLite::OPEN_READWRITE);
        database.exec("PRAGMA cache_size = 5"); // so that pages are written long before the end
        database.exec("BEGIN; UPDATE product SET note = hex(randomblob(500)), name = 'half written'");
        ::_exit(0);
    }
    ::waitpid(child, nullptr, 0);
    REQUIRE(std::filesystem::exists(path + "-journal"));
    REQUIRE(test::bytes_of(path) != whole);
    const auto store = Store::open(path, Mode::ReadOnly);
    REQUIRE(store);
    CHECK(store->find(test::gtin(500)) == test::products(500).back());
    CHECK(test::bytes_of(path) == whole);
}

// What put has returned for is told by a byte through a pipe; then the process is killed in the middle of its work.
TEST_CASE("store: killed at any time, it has all that was acknowledged")
{
    const test::TempFolder folder;
    for (const int milliseconds : {1, 5, 20, 60, 150}) {
        CAPTURE(milliseconds);
        const auto path = folder.file("shop" + std::to_string(milliseconds));
        {
            const auto made = Store::open(path, Mode::Write).value();
        }
        int ends[2];
        REQUIRE(::pipe(ends) == 0);
        const auto child = ::fork();
        if (child == 0) {
            auto store = Store::open(path, Mode::Write).value();
            for (std::uint64_t number = 1;; ++number) {
                store.put(test::product(number));
                (void)!::write(ends[1], "x", 1);
            }
        }
        ::close(ends[1]);
        ::usleep(static_cast<useconds_t>(milliseconds) * 1000);
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        std::size_t acknowledged = 0;
        char byte = 0;
        while (::read(ends[0], &byte, 1) == 1)
            ++acknowledged;
        ::close(ends[0]);
        const auto store = Store::open(path, Mode::ReadOnly);
        REQUIRE(store);
        CHECK(store->count() >= acknowledged);
        CHECK(store->count() <= acknowledged + 1);
        for (std::uint64_t number = 1; number <= acknowledged; ++number)
            CHECK(store->holds(test::gtin(number)));
    }
}
