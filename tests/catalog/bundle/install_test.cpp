// Bundles from the leader's desk to a station: taken, refused, gone back from.
#include "catalog/bundle/bundle_file.h"
#include "tests/catalog/bundle/leader.h"

#include <filesystem>

using catalog::go_back;
using core::Error;
using Kind = core::Error::Kind;

namespace fs = std::filesystem;

TEST_CASE("install: the first key is accepted by its fingerprint, later bundles of that key by nobody")
{
    test::Leader leader;
    const test::Station station;
    const auto first = leader.seal("first", 3);
    const auto unknown = station.install(first);
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().kind == Kind::UnknownKey);
    CHECK(unknown.error().place.found == leader.fingerprint());
    const auto mistyped = station.install(first, "0000 0000 0000 0000 0000 0000");
    REQUIRE_FALSE(mistyped);
    CHECK(mistyped.error().kind == Kind::OtherKey);
    CHECK_FALSE(station.serves());
    const auto done = station.install(first, leader.fingerprint());
    REQUIRE(done);
    CHECK(done->manifest.name == "Winter first");
    CHECK(station.serves() == 3);
    CHECK(station.install(leader.seal("second", 4)));
    CHECK(station.serves() == 4);
}

TEST_CASE("install: any other key is foreign, also with its own fingerprint typed")
{
    test::Leader leader;
    test::Leader other;
    const test::Station station;
    REQUIRE(station.install(leader.seal("ours", 3), leader.fingerprint()));
    const auto theirs = other.seal("theirs", 5, 99);
    for (const auto& typed : {std::string(), other.fingerprint(), leader.fingerprint()}) {
        const auto refused = station.install(theirs, typed);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == Kind::ForeignKey);
        CHECK(refused.error().place.found == other.fingerprint());
        CHECK(refused.error().place.expected == leader.fingerprint());
    }
    CHECK(station.serves() == 3);
    REQUIRE(catalog::forget_key(station.data)); // the leader lost her key
    CHECK(station.serves() == 3);
    CHECK(station.install(theirs).error().kind == Kind::UnknownKey);
    CHECK(station.install(other.seal("new", 6), other.fingerprint()));
    CHECK(station.serves() == 6);
}

TEST_CASE("install: age is the counter; older only by going back")
{
    test::Leader leader;
    const test::Station station;
    const auto seven = leader.seal("seven", 7, 7);
    const auto eight = leader.seal("eight", 8, 8);
    const auto six = leader.seal("six", 6, 6);
    REQUIRE(station.install(seven, leader.fingerprint()));
    REQUIRE(station.install(eight));
    const auto older = station.install(six);
    REQUIRE_FALSE(older);
    CHECK(older.error().kind == Kind::OlderBundle);
    CHECK(older.error().place.found == "6");
    CHECK(older.error().place.expected == "8");
    CHECK(station.install(leader.seal("another eight", 9, 8)).error().kind == Kind::OlderBundle);
    CHECK(station.serves() == 8);
    REQUIRE(go_back(station.data));
    CHECK(station.serves() == 7);
    CHECK(station.install(six).error().kind == Kind::OlderBundle); // 8 was in place here
    REQUIRE(station.install(eight));                               // what was in place may come again
    CHECK(station.serves() == 8);
    REQUIRE(go_back(station.data));
    CHECK(station.serves() == 7);
    REQUIRE(go_back(station.data)); // a second time undoes the first
    CHECK(station.serves() == 8);
}

TEST_CASE("install: the same bundle again leaves the way back as it is")
{
    test::Leader leader;
    const test::Station station;
    REQUIRE(station.install(leader.seal("one", 1), leader.fingerprint()));
    const auto two = leader.seal("two", 2);
    REQUIRE(station.install(two));
    REQUIRE(station.install(two));
    CHECK(station.serves() == 2);
    REQUIRE(go_back(station.data));
    CHECK(station.serves() == 1);
}

TEST_CASE("install: before the first bundle is the place's own catalog, which no bundle touches")
{
    test::Leader leader;
    const test::Station station;
    CHECK(go_back(station.data).error().kind == Kind::NothingBefore);
    const auto own = catalog::own_catalog(station.data);
    catalog::Store(own.string()).put(test::products(5));
    const auto bytes = test::bytes_of(own);
    REQUIRE(station.install(leader.seal("first", 3), leader.fingerprint()));
    CHECK(test::bytes_of(own) == bytes);
    const auto back = go_back(station.data);
    REQUIRE(back);
    CHECK_FALSE(*back);
    CHECK_FALSE(station.serves());
    CHECK(test::bytes_of(own) == bytes);
    REQUIRE(go_back(station.data));
    CHECK(station.serves() == 3);
}

TEST_CASE("install: only the bundle in place and the one before lie on the disk")
{
    test::Leader leader;
    const test::Station station;
    for (std::size_t i = 1; i <= 4; ++i)
        REQUIRE(station.install(leader.seal("b" + std::to_string(i), i), leader.fingerprint()));
    fs::create_directory(catalog::bundles_folder(station.data) / "b99"); // of an install that was broken off
    REQUIRE(station.install(leader.seal("last", 5)));
    std::size_t folders = 0;
    for (const auto& entry : fs::directory_iterator(catalog::bundles_folder(station.data)))
        folders += entry.is_directory() ? 1 : 0;
    CHECK(folders == 2);
    CHECK(station.serves() == 5);
}

TEST_CASE("install: a good seal over a catalog that is none, of a later program, or with another count")
{
    test::Leader leader;
    const auto key = catalog::read_signing_key(leader.keys).value();
    const auto sealed = [&](const std::string& name, const std::string& catalog, std::uint64_t products) {
        const catalog::Manifest manifest{
            "Winter", "Cedar Hollow", "2026-11-25",
            9,        products,       {{"catalog.db", catalog.size(), catalog::digest_of(catalog::bytes_in(catalog))}}};
        return leader.folder.write(name, catalog::bundle_head(key, catalog::manifest_text(manifest)) + catalog +
                                             catalog::bundle_end());
    };
    const auto shop = leader.folder.file("shop.db");
    catalog::Store(shop).put(test::products(3));
    const auto good = test::bytes_of(shop);
    auto later = good;
    later[63] = 99; // user_version, the version of the tables: SQLite file format, section 1.3
    struct Case {
        const char* why;
        std::string bundle;
        Kind kind;
    };
    const Case cases[] = {
        {"no catalog", sealed("a", "Dear pantry", 3), Kind::DamagedBundle},
        {"half of one", sealed("b", good.substr(0, good.size() / 2), 3), Kind::DamagedBundle},
        {"none at all", sealed("c", "", 0), Kind::DamagedBundle},
        {"a later one", sealed("d", later, 3), Kind::NewerBundle},
        {"another count", sealed("e", good, 4), Kind::DamagedBundle},
    };
    const test::Station station;
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto refused = station.install(c.bundle, leader.fingerprint());
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == c.kind);
        CHECK(refused.error().place.source == c.bundle);
        CHECK_FALSE(station.serves());
    }
    CHECK(station.install(sealed("f", good, 3), leader.fingerprint()));
}

TEST_CASE("install: labels for this place only never leave, and stay where they are")
{
    test::Leader leader;
    auto bulk = test::products(1).front();
    bulk.gtin = core::Gtin::parse("0200000000004").value_or(bulk.gtin);
    bulk.name = "Bulk rice of the leader";
    bulk.origin.source = "bulk-of-the-leader.csv";
    bulk.this_place_only = true;
    const auto shop = leader.folder.file("shop.db");
    {
        catalog::Store store(shop);
        store.put(test::products(40, 100));
        store.put(bulk);
    }
    const auto bundle = leader.seal_catalog("winter", shop);
    const auto bytes = test::bytes_of(bundle);
    CHECK(test::bytes_of(shop).find(bulk.name) != std::string::npos);
    CHECK(bytes.find(bulk.name) == std::string::npos);
    CHECK(bytes.find(bulk.origin.source) == std::string::npos);

    const test::Station station;
    fs::create_directories(station.data);
    bulk.name = "Bulk oats of the pantry";
    catalog::Store(catalog::own_catalog(station.data).string()).put(bulk);
    const auto done = station.install(bundle, leader.fingerprint());
    REQUIRE(done);
    CHECK(done->came_along == 1);
    const auto now = catalog::read_installed(station.data)->now;
    const auto store = catalog::Store::open(catalog::catalog_of(station.data, *now), catalog::Store::Mode::ReadOnly);
    REQUIRE(store);
    CHECK(store->count() == 41);
    CHECK(store->find(bulk.gtin)->name == bulk.name);
}
