// The leader desk by touches, with real files: what is found, shown, loaded and taken back, and what never stops.
#include "catalog/file/safe_write.h"
#include "tests/kiosk/session/desk_station.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <string>

namespace {

namespace fs = std::filesystem;
using test::DeskStation;
using test::two_rows;
using ui::ScreenId;
using ui::TextId;

const std::string torn_row = two_rows + "9520000001124,Barley rings,2026-03-02,30 g,many,2.5\n";

} // namespace

TEST_CASE("desk: no touch reaches it unless the station was opened with it")
{
    test::Station station;
    CHECK(!station.state().desk_open);
    station.ask(ui::AskDesk{ui::OpenDesk{}});
    station.ask(ui::AskDesk{ui::LookForFiles{}});
    CHECK(station.state().screen == ScreenId::Welcome);
    CHECK(!station.session.follow_desk());
}

TEST_CASE("desk: a sheet is found, shown before anything changes, loaded, and taken back")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    CHECK(station.state().desk_open);
    station.touch(ui::OpenDesk{});
    CHECK(station.state().screen == ScreenId::Desk);
    CHECK(station.lead() == "Labels that this station shows: 5.\nLoads go into " + station.shop() + ".");
    CHECK(!station.offers(TextId::desk_undo_load));
    station.touch(ui::LookForFiles{});
    CHECK(station.state().screen == ScreenId::DeskFiles);
    REQUIRE(station.page().choices.size() == 1);
    CHECK(station.page().choices[0].name == "own.csv");
    CHECK(station.page().choices[0].detail.starts_with("Sheet, 1 KB, of 20"));
    CHECK(station.page().choices[0].detail.ends_with(", on STICK"));
    station.touch(ui::OpenFile{0});
    CHECK(station.state().screen == ScreenId::DeskFile);
    CHECK(station.page().title == "own.csv");
    CHECK(station.lead().ends_with("\nProducts in it: 2."));
    CHECK(station.page().lines[1].words == "Corn stars");
    CHECK(!fs::exists(station.shop()));
    station.touch(ui::LoadFile{false});
    CHECK(station.state().screen == ScreenId::DeskReport);
    CHECK(station.lead() == "2 products loaded into " + station.shop() + ".");
    CHECK(station.loaded() == 2);
    CHECK(station.offers(TextId::desk_undo_load));
    station.touch(ui::UndoLoad{});
    CHECK(station.lead() ==
          "The catalog is as it was before the last load: without a label. What was loaded comes back "
          "with “Take the undo back”.");
    CHECK(station.loaded() == 0);
    CHECK(station.offers(TextId::desk_redo_load));
    kiosk::DeskPlaces places;
    places.catalog = station.shop();
    CHECK(kiosk::Desk(places).state().load_undone); // opened anew
    station.touch(ui::UndoLoad{});
    CHECK(station.lead() == "The catalog is as the last load left it.");
    CHECK(station.loaded() == 2);
}

TEST_CASE("desk: a load that fails leaves the way back as it was, and offers none of its own")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.put("torn.csv", torn_row);
    station.open("own.csv");
    station.touch(ui::LoadFile{false});
    station.touch(ui::UndoLoad{});
    station.open("torn.csv");
    station.touch(ui::LoadFile{false});
    CHECK(station.lead().starts_with("Nothing was loaded"));
    CHECK(!station.offers(TextId::desk_undo_load));
    CHECK(!station.offers(TextId::desk_redo_load));
    station.touch(ui::OpenDesk{});
    CHECK(station.offers(TextId::desk_redo_load));
    station.touch(ui::UndoLoad{});
    CHECK(station.lead() == "The catalog is as the last load left it.");
    CHECK(station.loaded() == 2);
}

TEST_CASE("desk: labels are looked through only where loads have gone")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.touch(ui::OpenDesk{});
    CHECK(!station.offers(TextId::desk_audit));
    station.open("own.csv");
    station.touch(ui::LoadFile{false});
    station.touch(ui::OpenDesk{});
    CHECK(station.offers(TextId::desk_audit));
}

TEST_CASE("desk: whoever scans during an audit comes back to what it found")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.open("own.csv");
    station.touch(ui::LoadFile{false});
    station.ask(ui::AskDesk{ui::AuditCatalog{}});
    station.scan(test::shelf::oats);
    CHECK(station.state().screen == ScreenId::OneLabel);
    station.wait();
    CHECK(station.state().screen == ScreenId::OneLabel);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::DeskAudit);
    station.touch(ui::OpenDesk{});
    station.touch(ui::OpenReport{});
    CHECK(station.state().screen == ScreenId::DeskAudit);
}

TEST_CASE("desk: every page is said in the other language too, at a touch")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.open("own.csv");
    station.ask(ui::NextLanguage{});
    CHECK(station.lead().ends_with("\nProductos que tiene: 2."));
    station.touch(ui::LoadFile{false});
    CHECK(station.lead() == "Se cargaron 2 productos en " + station.shop() + ".");
}

TEST_CASE("desk: of a sheet with faults nothing is loaded but on purpose")
{
    DeskStation station;
    station.put("torn.csv", torn_row);
    station.open("torn.csv");
    CHECK(station.lead().ends_with("Products in it: 2.\nRows that cannot be taken: 1.\nBecause of them nothing is "
                                   "loaded, unless you take the good rows only."));
    CHECK(!station.offers(TextId::desk_load));
    CHECK(station.page().lines[1].words.find("row 4, column calories: found \"many\"") != std::string::npos);
    station.touch(ui::LoadFile{false});
    CHECK(station.lead() == "Nothing was loaded: 1 fault. " + station.shop() +
                                " was not written. Put right what is named, and load again.");
    station.touch(ui::LoadFile{true});
    CHECK(station.lead() == "2 products loaded into " + station.shop() + "; 1 row not taken.");
}

TEST_CASE("desk: a stick that is pulled out gives one sentence, wherever one is")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    const std::string gone =
        "The stick was pulled out, and nothing was changed. Put it in again and look for its files anew.";
    station.touch(ui::LookForFiles{});
    fs::remove_all(station.stick());
    station.touch(ui::OpenFile{0});
    CHECK(station.lead() == gone);
    station.touch(ui::LookForFiles{});
    CHECK(station.lead() == "No stick is here. Put one in, wait a moment, and touch Look again.");
    fs::create_directories(station.stick());
    station.put("own.csv", two_rows);
    station.open("own.csv");
    fs::remove_all(station.stick());
    station.touch(ui::LoadFile{false});
    CHECK(station.lead() == gone);
    CHECK(!fs::exists(station.shop()));
}

TEST_CASE("desk: two loads at once: the second gets the command's sentence")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.open("own.csv");
    fs::create_directories(station.folder.file("data"));
    const auto other = catalog::FolderLock::take(station.folder.file("data"));
    REQUIRE(other);
    station.touch(ui::LoadFile{false});
    CHECK(station.lead() == station.shop() + ": another program is writing there; try again when it is done.");
}

TEST_CASE("desk: scans are answered while it works, and what came of the work waits for whoever left")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.open("own.csv");
    station.ask(ui::AskDesk{ui::LoadFile{false}});
    CHECK(station.state().screen == ScreenId::DeskWork);
    station.scan(test::shelf::oats);
    CHECK(station.state().screen == ScreenId::OneLabel);
    CHECK(station.on(ui::Side::Left) == "Oat rounds");
    station.wait();
    CHECK(station.state().screen == ScreenId::OneLabel);
    CHECK(station.notice() == "The work at the leader desk is done.");
    station.touch(ui::OpenDesk{});
    CHECK(station.offers(TextId::desk_report));
    station.touch(ui::OpenReport{});
    CHECK(station.lead().starts_with("2 products loaded"));
}

TEST_CASE("desk: Back leads over its pages, and touches on what is not there change nothing")
{
    DeskStation station;
    station.put("own.csv", two_rows);
    station.touch(ui::OpenDesk{});
    station.open("own.csv");
    station.touch(ui::LoadFile{false});
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::DeskFile);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::DeskFiles);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Desk);
    for (const ui::DeskAction& action :
         {ui::DeskAction(ui::OpenFile{7}), ui::DeskAction(ui::InstallFile{}), ui::DeskAction(ui::AnswerKey{true}),
          ui::DeskAction(ui::OpenRule{0}), ui::DeskAction(ui::OpenDoubt{0}), ui::DeskAction(ui::ApproveDoubt{})}) {
        station.touch(action);
        CHECK(station.state().screen == ScreenId::Desk);
    }
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Welcome);
}
