#include "catalog/load/load.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/languages.h"
#include "tests/catalog/bundle/leader.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <map>
#include <vector>

namespace {

using kiosk::catalog_place;
using kiosk::StationCatalog;

const std::filesystem::path config = std::filesystem::path(PAIRSTAND_SOURCE) / "config";

kiosk::Environment environment(std::map<std::string, std::string> variables)
{
    return [variables = std::move(variables)](const std::string& name) -> std::optional<std::string> {
        const auto found = variables.find(name);
        return found == variables.end() ? std::nullopt : std::optional(found->second);
    };
}

/// Puts the demo sheet into a catalog file.
void load_demo(const std::filesystem::path& into)
{
    const auto report = catalog::load({(config / "demo" / "cedar_hollow.csv").string()}, into);
    REQUIRE(report);
    REQUIRE(report->taken > 0);
}

} // namespace

TEST_CASE("catalog place: option, then variable, then the user's own, then the demo")
{
    const test::TempFolder home;
    const auto own = std::filesystem::path(home.file("pairstand"));
    const auto variables = environment({{"PAIRSTAND_CATALOG", "/from/variable"}, {"XDG_DATA_HOME", home.file("")}});
    CHECK(catalog_place("/from/option", config, variables).path == "/from/option");
    CHECK(catalog_place("", config, variables).path == "/from/variable");

    const auto user = environment({{"XDG_DATA_HOME", home.file("")}});
    CHECK(catalog_place("", config, user).demo);
    std::filesystem::create_directory(own);
    home.write("pairstand/catalog.db", "");
    CHECK(catalog_place("", config, user).path == own / "catalog.db");
    CHECK_FALSE(catalog_place("", config, user).demo);
}

TEST_CASE("catalog place: an own catalog without a label, as undoing a first load leaves it, gives way to the demo")
{
    const test::TempFolder home;
    const auto user = environment({{"XDG_DATA_HOME", home.file("")}});
    std::filesystem::create_directory(home.file("pairstand"));
    const std::filesystem::path own = home.file("pairstand/catalog.db");
    {
        const catalog::Store nothing(own.string());
    }
    REQUIRE(std::filesystem::exists(own));
    CHECK(catalog_place("", config, user).demo);
    load_demo(own);
    CHECK(catalog_place("", config, user).path == own);
}

TEST_CASE("catalog place: the user's data folder is ~/.local/share without XDG_DATA_HOME")
{
    const test::TempFolder home;
    std::filesystem::create_directories(home.file(".local/share/pairstand"));
    home.write(".local/share/pairstand/catalog.db", "");
    CHECK(catalog_place("", config, environment({{"HOME", home.file("")}})).path ==
          std::filesystem::path(home.file(".local/share/pairstand/catalog.db")));
}

TEST_CASE("catalog place: the demo is read whole")
{
    StationCatalog demo("", config, environment({}));
    CHECK(demo.place().demo);
    CHECK(demo.store().count() >= 80);
    CHECK(demo.look_again() == StationCatalog::News::None);
}

TEST_CASE("catalog place: what cannot be opened is said in one sentence that helps")
{
    const auto languages = kiosk::read_languages(config);
    const auto trouble = [&](const std::string& code, const std::string& path) -> std::string {
        try {
            static_cast<void>(kiosk::station_catalog(path, config, kiosk::language_named(code, languages)));
        } catch (const std::runtime_error& refused) {
            return refused.what();
        }
        return "";
    };
    CHECK(trouble("en", "/nowhere/catalog.db") ==
          "/nowhere/catalog.db: there is no catalog here; make one with 'pairstand load SHEET --into "
          "/nowhere/catalog.db', or give another name.");
    CHECK(trouble("es", "/nowhere/catalog.db").find("aquí no hay ningún catálogo") != std::string::npos);
    // What is there already is not advised to be loaded into: the load would refuse it, too.
    const test::TempFolder folder;
    const auto text = folder.write("notes.txt", "no catalog");
    CHECK(trouble("en", text).starts_with(text + ": this file is no Pairstand catalog; give another name, or move"));
    CHECK(trouble("en", text).find("--into " + text) == std::string::npos);
    CHECK(trouble("en", folder.file("")).find("this is a folder") != std::string::npos);
    CHECK_THROWS_AS(StationCatalog(text, config, environment({})), kiosk::CatalogRefused);
}

TEST_CASE("station catalog: follows a catalog that is put in place of the demo, and keeps serving past a broken one")
{
    const test::TempFolder home;
    StationCatalog station("", config, environment({{"XDG_DATA_HOME", home.file("")}}));
    REQUIRE(station.place().demo);
    const auto* const store = &station.store();

    std::filesystem::create_directory(home.file("pairstand"));
    const auto own = home.file("pairstand/catalog.db");
    load_demo(own);
    CHECK(station.look_again() == StationCatalog::News::Another);
    CHECK_FALSE(station.place().demo);
    CHECK(&station.store() == store); // whoever holds it goes on
    CHECK(station.look_again() == StationCatalog::News::None);

    const auto count = station.store().count();
    std::filesystem::remove(own);
    home.write("pairstand/catalog.db", "this is no catalog");
    std::vector<core::Error::Kind> told;
    station.on_trouble([&](const kiosk::CatalogPlace& place, const core::Error& error) {
        CHECK(place.path == own);
        told.push_back(error.kind);
    });
    CHECK(station.look_again() == StationCatalog::News::Broken);
    CHECK(station.look_again() == StationCatalog::News::None); // said once
    CHECK(told == std::vector{core::Error::Kind::NoCatalog});
    CHECK(station.store().count() == count);

    std::filesystem::remove(own);
    load_demo(own);
    CHECK(station.look_again() == StationCatalog::News::Another);
}

TEST_CASE("station catalog: goes on with its own products when their file is gone, and never with the demo")
{
    const auto english = kiosk::language_named("en", kiosk::read_languages(config));
    for (const bool named : {false, true}) { // the user's own one, or one given by name
        CAPTURE(named);
        const test::TempFolder home;
        std::filesystem::create_directory(home.file("pairstand"));
        const auto own = home.file("pairstand/catalog.db");
        REQUIRE(catalog::load({home.write("two.csv", "gtin,name,entered_on,serving_size,calories\n"
                                                     "9521234543213,Oats,2026-03-02,39 g,140\n"
                                                     "9520000001001,Rye,2026-03-02,39 g,130\n")},
                              own));
        StationCatalog station(named ? own : "", config, environment({{"XDG_DATA_HOME", home.file("")}}));
        std::vector<std::string> told;
        station.on_trouble([&](const kiosk::CatalogPlace& place, const core::Error& error) {
            told.push_back(kiosk::catalog_trouble(place, error, english));
        });
        REQUIRE(station.store().count() == 2);

        std::filesystem::rename(own, home.file("away.db"));
        CHECK(station.look_again() == StationCatalog::News::Broken);
        CHECK(station.look_again() == StationCatalog::News::None); // said once
        REQUIRE(told.size() == 1);
        CHECK(told[0] == own + ": there is no catalog here; make one with 'pairstand load SHEET --into " + own +
                             "', or give another name.");
        CHECK_FALSE(station.place().demo);
        CHECK(station.store().count() == 2);
        CHECK(station.store().find(core::Gtin::parse("9521234543213").value()));

        std::filesystem::rename(home.file("away.db"), own);
        CHECK(station.look_again() == StationCatalog::News::Another); // back, and said
        CHECK(station.look_again() == StationCatalog::News::None);
        std::filesystem::remove(own);
        CHECK(station.look_again() == StationCatalog::News::Broken); // and gone again
        CHECK(told.size() == 2);
        load_demo(own);
        CHECK(station.look_again() == StationCatalog::News::Another);
        CHECK(station.store().count() >= 80);
    }
}

TEST_CASE("catalog place: a bundle in place stands before the place's own catalog")
{
    test::Leader leader;
    const test::TempFolder home;
    const auto user = environment({{"XDG_DATA_HOME", home.file("")}});
    const auto data = kiosk::own_data(user);
    CHECK(data == std::filesystem::path(home.file("pairstand")));
    load_demo(catalog::own_catalog(data));
    CHECK_FALSE(kiosk::bundle_before(catalog::own_catalog(data)));
    REQUIRE(catalog::install({leader.seal("first", 3), data, leader.fingerprint()}));
    const auto place = catalog_place("", config, user);
    CHECK(place.path == data / "bundles" / "b1" / "catalog.db");
    CHECK(kiosk::bundle_at(place, user)->name == "Winter first");
    CHECK(kiosk::bundle_before(catalog::own_catalog(data))->name == "Winter first");
    CHECK_FALSE(kiosk::bundle_before(home.file("other.db")));
    CHECK(catalog_place("/from/option", config, user).path == "/from/option");
    CHECK_FALSE(kiosk::bundle_at({"/from/option", false}, user));
    REQUIRE(catalog::go_back(data));
    CHECK(catalog_place("", config, user).path == catalog::own_catalog(data));
}

TEST_CASE("station catalog: follows bundles while it runs, and keeps the last good one when one breaks")
{
    test::Leader leader;
    const test::TempFolder home;
    const auto user = environment({{"XDG_DATA_HOME", home.file("")}});
    const auto data = kiosk::own_data(user);
    StationCatalog station("", config, user);
    REQUIRE(station.place().demo);
    CHECK_FALSE(station.bundle());
    REQUIRE(catalog::install({leader.seal("first", 3), data, leader.fingerprint()}));
    CHECK(station.look_again() == StationCatalog::News::Another);
    CHECK(station.store().count() == 3);
    CHECK(station.bundle()->name == "Winter first");
    REQUIRE(catalog::install({leader.seal("second", 4), data, {}}));
    CHECK(station.look_again() == StationCatalog::News::Another);
    CHECK(station.store().count() == 4);
    REQUIRE(catalog::go_back(data));
    CHECK(station.look_again() == StationCatalog::News::Another);
    CHECK(station.bundle()->name == "Winter first");
    REQUIRE(catalog::go_back(data));
    CHECK(station.look_again() == StationCatalog::News::Another);

    // Its disk breaks: what runs goes on, and what is opened anew takes the last good one and says so.
    const auto in_place = catalog_place("", config, user).path;
    const auto torn = home.write("torn", test::bytes_of(in_place).substr(0, 5000));
    std::filesystem::rename(torn, in_place);
    StationCatalog again("", config, user);
    CHECK(again.store().count() == 3);
    CHECK(again.bundle()->name == "Winter first");
    std::vector<core::Error::Kind> told;
    again.on_trouble([&](const kiosk::CatalogPlace&, const core::Error& error) { told.push_back(error.kind); });
    CHECK(again.look_again() == StationCatalog::News::Broken);
    CHECK(told == std::vector{core::Error::Kind::TornCatalog});

    std::filesystem::resize_file(catalog::installed_file(data), 20); // and the record, too
    CHECK(station.look_again() == StationCatalog::News::Broken);
    CHECK(station.store().count() > 0);
    CHECK_THROWS_AS(StationCatalog("", config, user), kiosk::CatalogRefused); // real products never turn into the demo
}

TEST_CASE("station catalog: a first bundle that breaks gives way to the place's own catalog")
{
    test::Leader leader;
    const test::TempFolder home;
    const auto user = environment({{"XDG_DATA_HOME", home.file("")}});
    const auto data = kiosk::own_data(user);
    load_demo(catalog::own_catalog(data));
    REQUIRE(catalog::install({leader.seal("first", 3), data, leader.fingerprint()}));
    std::filesystem::remove(catalog_place("", config, user).path);
    const StationCatalog station("", config, user);
    CHECK(station.place().path == catalog::own_catalog(data));
    CHECK_FALSE(station.bundle());
}

TEST_CASE("station catalog: a demo station that got its own products does not go back to the demo")
{
    const test::TempFolder home;
    StationCatalog station("", config, environment({{"XDG_DATA_HOME", home.file("")}}));
    std::filesystem::create_directory(home.file("pairstand"));
    const auto own = home.file("pairstand/catalog.db");
    load_demo(own);
    REQUIRE(station.look_again() == StationCatalog::News::Another);
    std::filesystem::remove(own);
    CHECK(station.look_again() == StationCatalog::News::Broken);
    CHECK_FALSE(station.place().demo);
    CHECK(station.place().path == own);
}
