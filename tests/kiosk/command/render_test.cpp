#include "catalog/bundle/seal.h"
#include "catalog/load/load.h"
#include "kiosk/command/picture.h"
#include "kiosk/command/reach.h"
#include "kiosk/command/render.h"
#include "kiosk/desk/desk_words.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "tests/support/temp_folder.h"
#include "ui/screens/screens.h"

#include <SDL_image.h>
#include <doctest/doctest.h>

#include <filesystem>
#include <sstream>

namespace {

struct Station {
    std::vector<ui::Language> languages = kiosk::read_languages(kiosk::data_folder());
    kiosk::FontBytes fonts = kiosk::read_fonts();
    kiosk::StationCatalog catalog{"", kiosk::data_folder(), [](const std::string&) { return std::nullopt; }};
};

int render(kiosk::RenderArguments arguments, std::string& err)
{
    std::ostringstream out;
    std::ostringstream sentence;
    const int status = kiosk::render(arguments, out, sentence);
    err = sentence.str();
    return status;
}

/// The two codes and a basis, drawn into a file in the folder.
kiosk::RenderArguments pair_into(const test::TempFolder& folder)
{
    kiosk::RenderArguments arguments;
    arguments.screen = "pair";
    arguments.out = folder.file("pair.png");
    return arguments;
}

} // namespace

TEST_CASE("reach: every screen of the list, with the demo catalog, by scans and touches alone")
{
    Station station;
    for (const auto& screen : ui::screens()) {
        CAPTURE(std::string(screen.name));
        if (kiosk::is_desk(screen.id)) // these need files
            continue;
        kiosk::Session session(station.catalog.store(), station.languages);
        CHECK(kiosk::reach(session, station.catalog.store(), {screen.id, "", "", core::Basis::Serving, 1}) ==
              std::nullopt);
        CHECK(session.state().screen == screen.id);
    }
}

TEST_CASE("reach: every page of the leader desk, with files of a folder, and nothing stays of what it loads")
{
    Station station;
    const test::TempFolder folder;
    // 70 g of fat in 30 g: a doubt.
    const auto sheet = folder.write("stick.csv", "gtin,name,entered_on,serving_size,calories,total_fat_g\n"
                                                 "9520000000011,Corn stars,2026-03-02,30 g,110,70\n");
    REQUIRE(catalog::load({sheet}, folder.file("shop.db")));
    REQUIRE(catalog::make_keys(folder.file("key")));
    std::filesystem::create_directories(folder.file("STICK"));
    std::filesystem::rename(sheet, folder.file("STICK/a.csv"));
    REQUIRE(catalog::seal({folder.file("shop.db"), "", "", folder.file("key"), "Winter", "Cedar Hollow Market",
                           "2026-11-26", std::nullopt, folder.file("STICK/b.bundle")}));
    const auto before = test::bytes_of(folder.file("shop.db"));
    for (const auto& screen : ui::screens()) {
        CAPTURE(std::string(screen.name));
        if (!kiosk::is_desk(screen.id))
            continue;
        const std::string file = screen.id == ui::ScreenId::DeskKey ? "b.bundle" : "a.csv";
        kiosk::PictureDesk desk({folder.file("shop.db"), folder.file("STICK"), file});
        kiosk::Session session(station.catalog.store(), station.languages);
        kiosk::Route route{screen.id, "", "", core::Basis::Serving, 1};
        route.desk = &desk;
        CHECK(kiosk::reach(session, station.catalog.store(), route) == std::nullopt);
        CHECK(session.state().screen == screen.id);
        REQUIRE(session.state().desk);
        CHECK(!session.state().desk->title.empty());
    }
    CHECK(test::bytes_of(folder.file("shop.db")) == before);
    CHECK(!std::filesystem::exists(folder.file("in-place.json")));
}

TEST_CASE("reach: basis and page are set as by touch")
{
    Station station;
    kiosk::Session session(station.catalog.store(), station.languages);
    REQUIRE(kiosk::reach(session, station.catalog.store(), {ui::ScreenId::Pair, "", "", core::Basis::Package, 2}) ==
            std::nullopt);
    CHECK(session.state().basis == core::Basis::Package);
    CHECK(session.state().page == 1);
}

TEST_CASE("reach: words are typed, and their answers are there")
{
    Station station;
    kiosk::Session session(station.catalog.store(), station.languages);
    kiosk::Route route{ui::ScreenId::FindByName, "", "", {}, 1};
    route.words = "potato salted";
    REQUIRE(kiosk::reach(session, station.catalog.store(), route) == std::nullopt);
    CHECK(session.state().typed == "POTATO SALTED");
    CHECK(session.state().found_words == "2 products");
    REQUIRE(session.state().found.size() == 2);
    CHECK(session.state().found[0].name == "Potato chips, lightly salted");
    CHECK(session.state().found[1].detail == "Saltwhistle · 8 oz (227 g)");
}

TEST_CASE("picture: the same state gives the same picture, and says what the screen says")
{
    Station station;
    kiosk::Session session(station.catalog.store(), station.languages);
    REQUIRE(kiosk::reach(session, station.catalog.store(), {ui::ScreenId::Pair, "", "", {}, 1}) == std::nullopt);
    const kiosk::PictureLook look{ui::paper(), station.fonts.files(), 1280, 800};
    ui::Notes notes;
    const auto first = kiosk::draw_picture(session.state(), session.language(), look, &notes);
    const auto second = kiosk::draw_picture(session.state(), session.language(), look);
    CHECK(first.width == 1280);
    CHECK(first.height == 800);
    CHECK(first.rgba == second.rgba);
    std::string words;
    for (const auto& note : notes)
        words += note.words + "\n";
    for (const auto& side : session.state().sides)
        CHECK(words.find(side->product.name) != std::string::npos);
}

TEST_CASE("render: writes a PNG of the size asked for")
{
    const test::TempFolder folder;
    auto arguments = pair_into(folder);
    arguments.width = 800;
    arguments.height = 1280;
    arguments.language = "es";
    std::string err;
    CHECK(render(arguments, err) == 0);
    CHECK(err.empty());
    SDL_Surface* picture = IMG_Load(arguments.out.c_str());
    REQUIRE(picture != nullptr);
    CHECK(picture->w == 800);
    CHECK(picture->h == 1280);
    SDL_FreeSurface(picture);
}

TEST_CASE("render: what cannot be drawn is refused with status 2 and one sentence that names it")
{
    const test::TempFolder folder;
    struct Case {
        std::string why;
        void (*spoil)(kiosk::RenderArguments&);
        std::string names;
    };
    const Case cases[] = {
        {"no such screen", [](auto& a) { a.screen = "kitchen"; }, "kitchen"},
        {"no such language", [](auto& a) { a.language = "tlh"; }, "tlh"},
        {"a right number that the catalog does not have", [](auto& a) { a.left = a.right = "9520000000004"; },
         "9520000000004"},
        {"no number at all", [](auto& a) { a.left = a.right = "banana"; }, "banana"},
        {"one product of a pair", [](auto& a) { a.left = "9520366004012"; }, "--left and --right"},
        {"no such catalog", [](auto& a) { a.catalog = "/nowhere/c.db"; }, "/nowhere/c.db"},
        {"no such folder", [](auto& a) { a.out = "/nowhere/p.png"; }, "/nowhere/p.png"},
        {"a full disk", [](auto& a) { a.out = "/dev/full"; }, "/dev/full: the picture cannot be written"},
        {"a folder below a file", [](auto& a) { a.screen = "all", a.out = "/dev/null/all"; },
         "/dev/null/all: no folder"},
        {"a catalog that is none", [](auto& a) { a.catalog = "/dev/null", a.language = "es"; },
         "/dev/null: este archivo no es un cat"},
        {"one product for a screen that asks which",
         [](auto& a) {
             a.screen = "which_product";
             a.left = "9520588008010";
         },
         "9520588008010"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        auto arguments = pair_into(folder);
        c.spoil(arguments);
        std::string err;
        CHECK(render(arguments, err) == 2);
        CAPTURE(err);
        CHECK(err.find(c.names) != std::string::npos);
        CHECK(std::count(err.begin(), err.end(), '\n') == 1);
    }
}
