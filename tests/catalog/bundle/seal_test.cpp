// What goes into a bundle, under which number, and what cannot be sealed.
#include "tests/catalog/bundle/leader.h"

#include <filesystem>
#include <functional>
#include <vector>

using Kind = core::Error::Kind;

namespace fs = std::filesystem;

namespace {

catalog::SealOrder order_of(const test::Leader& leader, const std::string& shop)
{
    return {shop, {}, {}, leader.keys, "Winter", "Cedar Hollow", "2026-11-25", std::nullopt, leader.folder.file("b")};
}

std::string shop_of(const test::Leader& leader, std::size_t products = 2)
{
    const auto shop = leader.folder.file("shop.db");
    catalog::Store(shop).put(test::products(products));
    return shop;
}

std::size_t files_in(const fs::path& folder)
{
    const auto files = fs::directory_iterator(folder);
    return static_cast<std::size_t>(std::distance(begin(files), end(files)));
}

} // namespace

TEST_CASE("seal: tour and texts go in, by name, and come out on the station as they were")
{
    test::Leader leader;
    auto order = order_of(leader, shop_of(leader));
    order.tour = leader.folder.write("our tour.csv", "stop,shelf\n");
    order.texts = leader.folder.file("texts");
    fs::create_directory(order.texts);
    leader.folder.write("texts/welcome.es.txt", "Bienvenidos");
    leader.folder.write("texts/welcome.en.txt", "Welcome");
    const auto sealed = catalog::seal(order);
    REQUIRE(sealed);
    std::vector<std::string> names;
    for (const auto& part : sealed->manifest.parts)
        names.push_back(part.name);
    CHECK(names == std::vector<std::string>{"catalog.db", "tour.csv", "texts/welcome.en.txt", "texts/welcome.es.txt"});
    CHECK(sealed->bytes == fs::file_size(order.out));
    const test::Station station;
    REQUIRE(station.install(order.out.string(), leader.fingerprint()));
    const auto in_place = catalog::bundles_folder(station.data) / "b1";
    CHECK(test::bytes_of(in_place / "tour.csv") == "stop,shelf\n");
    CHECK(test::bytes_of(in_place / "texts" / "welcome.es.txt") == "Bienvenidos");
}

TEST_CASE("seal: nothing is left beside the bundle, and the catalog is as it was")
{
    test::Leader leader;
    const auto shop = shop_of(leader);
    const auto before = test::bytes_of(shop);
    const auto files = files_in(leader.folder.file(""));
    REQUIRE(catalog::seal(order_of(leader, shop)));
    CHECK(files_in(leader.folder.file("")) == files + 1);
    CHECK(test::bytes_of(shop) == before);
}

TEST_CASE("seal: numbers count up by key, over names of files, and a given one is taken")
{
    test::Leader leader;
    auto order = order_of(leader, shop_of(leader));
    CHECK(catalog::seal(order)->manifest.counter == 1);
    CHECK(catalog::seal(order)->manifest.counter == 2);
    order.out = leader.folder.file("another");
    CHECK(catalog::seal(order)->manifest.counter == 3);
    order.counter = 40;
    CHECK(catalog::seal(order)->manifest.counter == 40);
    order.counter.reset();
    fs::remove(fs::path(leader.keys) / "pairstand.count"); // keys brought to another machine: the bundle tells
    CHECK(catalog::seal(order)->manifest.counter == 41);
    order.counter = 5;
    CHECK(catalog::seal(order)->manifest.counter == 5); // as asked; a station will refuse it
    order.counter.reset();
    CHECK(catalog::seal(order)->manifest.counter == 42);
}

TEST_CASE("seal: what cannot be sealed is refused with its place, and an older bundle stays")
{
    test::Leader leader;
    const auto good = order_of(leader, shop_of(leader));
    REQUIRE(catalog::seal(good));
    const auto before = test::bytes_of(good.out);
    const auto empty = leader.folder.file("empty.db");
    {
        const catalog::Store made(empty);
    }
    fs::create_directories(leader.folder.file("bad texts/inner"));
    struct Case {
        const char* why;
        std::function<void(catalog::SealOrder&)> change;
        Kind kind;
    };
    const Case cases[] = {
        {"no name", [](auto& o) { o.name = ""; }, Kind::BadValue},
        {"a name on two lines", [](auto& o) { o.name = "a\nb"; }, Kind::BadValue},
        {"a long maker", [](auto& o) { o.maker = std::string(81, 'm'); }, Kind::BadValue},
        {"a counter of 0", [](auto& o) { o.counter = 0; }, Kind::BadValue},
        {"no key", [&](auto& o) { o.key = leader.folder.file("none"); }, Kind::NoSuchFile},
        {"a catalog for a key", [](auto& o) { o.key = o.catalog; }, Kind::NoKey},
        {"no catalog", [&](auto& o) { o.catalog = leader.folder.file("none"); }, Kind::NoSuchFile},
        {"a bundle for a catalog", [](auto& o) { o.catalog = o.out; }, Kind::NoCatalog},
        {"an empty catalog", [&](auto& o) { o.catalog = empty; }, Kind::Empty},
        {"no tour", [&](auto& o) { o.tour = leader.folder.file("none"); }, Kind::NoSuchFile},
        {"a tour that is a folder", [&](auto& o) { o.tour = leader.folder.file(""); }, Kind::IsFolder},
        {"a folder among the texts", [&](auto& o) { o.texts = leader.folder.file("bad texts"); }, Kind::BadValue},
        {"no texts", [&](auto& o) { o.texts = leader.folder.file("none"); }, Kind::CannotRead},
        {"a folder to write to", [&](auto& o) { o.out = leader.folder.file(""); }, Kind::IsFolder},
        {"no folder to write to", [&](auto& o) { o.out = leader.folder.file("none/b"); }, Kind::CannotWrite},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        auto order = good;
        c.change(order);
        const auto sealed = catalog::seal(order);
        REQUIRE_FALSE(sealed);
        CHECK(sealed.error().kind == c.kind);
        CHECK_FALSE(sealed.error().place.source.empty());
        CHECK(test::bytes_of(good.out) == before);
    }
}
