#include "catalog/load/load.h"
#include "catalog/store/bulk_writer.h"
#include "catalog/store/doubts.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <SQLiteCpp/Database.h>
#include <doctest/doctest.h>

#include <fstream>
#include <functional>
#include <stdexcept>

using catalog::Store;

namespace {

core::Date day(const char* text)
{
    return core::Date::parse(text).value();
}

} // namespace

TEST_CASE("approvals: one product, one rule, with the day; the second word stands in place of the first")
{
    Store store(":memory:");
    store.put(test::products(2));
    CHECK(store.approve(test::gtin(1), "off_the_grid", day("2026-11-26")));
    CHECK(store.approvals().find(test::product(1), "off_the_grid") == day("2026-11-26"));
    CHECK_FALSE(store.approvals().find(test::product(1), "calories"));
    CHECK_FALSE(store.approvals().find(test::product(2), "off_the_grid"));
    CHECK(store.approve(test::gtin(1), "off_the_grid", day("2026-11-27")));
    CHECK(store.approvals().find(test::product(1), "off_the_grid") == day("2026-11-27"));
    CHECK(store.approvals().all().size() == 1);
    CHECK_FALSE(store.approve(test::gtin(3), "off_the_grid", day("2026-11-26"))); // not in the catalog
}

TEST_CASE("approvals: lapse when a figure, a percent, a size or the kind of the label changes, and for nothing else")
{
    struct Row {
        const char* why;
        std::function<void(core::Product&)> change;
        bool lapses;
    };
    using N = core::Nutrient;
    const Row rows[] = {
        {"name", [](core::Product& p) { p.name = "Other"; }, false},
        {"ingredients", [](core::Product& p) { p.label.ingredients = "OATS"; }, false},
        {"another day of entry", [](core::Product& p) { p.origin.entered_on = day("2020-01-02"); }, false},
        {"amount", [](core::Product& p) { p.label.per_serving.lines[N::Sodium].amount = core::Figure{}; }, true},
        {"less than", [](core::Product& p) { p.label.per_serving.lines.begin()->second.amount->less_than ^= true; },
         true},
        {"percent",
         [](core::Product& p) {
             p.label.per_serving.lines[N::Sodium].percent = {99, false};
         },
         true},
        {"a line more", [](core::Product& p) { p.label.per_serving.lines[N::Fluoride]; }, true},
        {"not significant", [](core::Product& p) { p.label.per_serving.not_significant.insert(N::Zinc); }, true},
        {"serving", [](core::Product& p) { p.label.serving.metric = core::Mass::whole(999); }, true},
        {"millilitres turned into grams",
         [](core::Product& p) {
             const auto nano = std::visit([](auto amount) { return amount.nano(); }, *p.label.serving.metric);
             p.label.serving.metric = core::Mass::from_nano(nano);
         },
         true},
        {"servings", [](core::Product& p) { p.label.servings.count = core::Count::whole(77); }, true},
        {"panel", [](core::Product& p) { p.label.panel = core::Panel::Of2016; }, true},
        {"audience", [](core::Product& p) { p.label.audience = core::Audience::Infant; }, true},
        {"net quantity", [](core::Product& p) { p.label.net_quantity = core::parse_net_quantity("1 g"); }, true},
        {"second column", [](core::Product& p) { p.label.second.reset(); }, true},
    };
    const auto approved = test::full_product();
    Store store(":memory:");
    store.put(approved);
    REQUIRE(store.approve(approved.gtin, "calories", day("2026-11-26")));
    for (const auto& row : rows) {
        CAPTURE(row.why);
        auto changed = approved;
        row.change(changed);
        REQUIRE(changed != approved);
        CHECK(store.approvals().find(changed, "calories").has_value() == !row.lapses);
    }
}

TEST_CASE("approvals: a fingerprint is the same on every machine and in every version")
{
    // Files hold it. FNV-1a of 64 bits (Fowler, Noll and Vo: offset CBF29CE484222325, prime 100000001B3), worked out
    // apart from this program over the numbers in their order, eight bytes each, lowest first.
    core::Label label;
    CHECK(catalog::label_fingerprint(label) == 0xA819CA8383D381B5U);
    label.serving = {"1 cup", core::Mass::whole(30)};
    label.servings = {core::ServingsPerContainer::Kind::Number, core::Count::whole(7)};
    label.per_serving.lines[core::Nutrient::Calories].amount = core::Figure{core::Content::whole(140)};
    CHECK(catalog::label_fingerprint(label) == 0x42C43C78A487F4DBU);
}

TEST_CASE("approvals: stay when sheets and releases are loaded over the catalog, and in a copy")
{
    const test::TempFolder folder;
    const auto path = folder.file("shop.pairstand");
    {
        auto store = Store::open(path, Store::Mode::Write).value();
        store.put(test::products(2));
        REQUIRE(store.approve(test::gtin(1), "calories", day("2026-11-26")));
    }
    const auto sheet = folder.file("more.csv");
    std::ofstream(sheet) << test::good_sheet(2, 50);
    REQUIRE(catalog::load({sheet}, path).has_value());
    auto loaded = Store::open(path, Store::Mode::Write).value();
    CHECK(loaded.count() == 4);
    CHECK(loaded.approvals().find(test::product(1), "calories") == day("2026-11-26"));

    const auto written = folder.file("written.pairstand"); // as a release is
    catalog::BulkWriter writer(written);
    writer.add(test::product(1));
    writer.add(loaded.approvals());
    writer.finish();
    const auto release = Store::open(written, Store::Mode::ReadOnly).value();
    CHECK(release.approvals().all() == loaded.approvals().all());
}

TEST_CASE("approvals: of labels of this place only go with them")
{
    Store store(":memory:");
    auto own = test::product(1);
    own.this_place_only = true;
    store.put(own);
    store.put(test::product(2));
    REQUIRE(store.approve(own.gtin, "calories", day("2026-11-26")));
    REQUIRE(store.approve(test::gtin(2), "calories", day("2026-11-26")));
    CHECK(store.remove_this_place_only() == 1);
    REQUIRE(store.approvals().all().size() == 1);
    CHECK(store.approvals().all().front().gtin == test::gtin(2));
}

TEST_CASE("approvals: a catalog without their table has none, and takes the first; a torn row is told")
{
    const test::TempFolder folder;
    const auto path = folder.file("shop.pairstand");
    Store::open(path, Store::Mode::Write).value().put(test::products(1));
    SQLite::Database(path, SQLite::OPEN_READWRITE).exec("DROP TABLE approval");
    CHECK(Store::open(path, Store::Mode::ReadOnly).value().approvals().all().empty());
    CHECK(Store::open(path, Store::Mode::Write).value().approve(test::gtin(1), "calories", day("2026-11-26")));
    SQLite::Database(path, SQLite::OPEN_READWRITE).exec("UPDATE approval SET approved_on = 20261399");
    const auto store = Store::open(path, Store::Mode::ReadOnly).value();
    CHECK_THROWS_AS((void)store.approvals(), std::runtime_error);
}

TEST_CASE("store: shows every product once by number, and stops when told")
{
    Store store(":memory:");
    store.put(test::products(5));
    std::vector<core::Product> seen;
    store.for_each([&](const core::Product& product) {
        seen.push_back(product);
        return true;
    });
    CHECK(seen == test::products(5));
    int count = 0;
    store.for_each([&](const core::Product&) { return ++count < 3; });
    CHECK(count == 3);
}
