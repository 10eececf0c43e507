// Bundles and audits at the leader desk, by touches: a key is compared, what is foreign or older is refused with the
// command's sentence, and what a leader looked at is written down.
#include "catalog/bundle/seal.h"
#include "catalog/load/load.h"
#include "tests/kiosk/session/desk_station.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <string>

namespace {

namespace fs = std::filesystem;
using test::DeskStation;
using ui::ScreenId;
using ui::TextId;

/// Seals the two rows under a key, made where it is not there yet; returns the fingerprint.
std::string seal(const DeskStation& station, const std::string& name, const std::string& key, std::uint64_t number)
{
    const auto folder = station.folder.file(key);
    if (!fs::exists(folder))
        REQUIRE(catalog::make_keys(folder));
    const auto labels = station.folder.file("sealed.db");
    REQUIRE(catalog::load({station.folder.write("sealed.csv", test::two_rows)}, labels));
    const auto sealed = catalog::seal(
        {labels, "", "", folder, "Winter", "Cedar Hollow Market", "2026-11-26", number, station.stick() + "/" + name});
    REQUIRE(sealed);
    return catalog::fingerprint(sealed->key);
}

std::size_t in_place(const DeskStation& station)
{
    const auto installed = catalog::read_installed(station.data());
    REQUIRE(installed);
    return installed->now ? catalog::manifest_of(station.data(), *installed->now)->counter : 0;
}

} // namespace

TEST_CASE("desk: the first bundle is installed after its fingerprint was compared, and taken back")
{
    DeskStation station;
    const auto fingerprint = seal(station, "winter.bundle", "key", 7);
    station.open("winter.bundle");
    CHECK(station.lead().find("“Winter” (number 7), made 2026-11-26 by Cedar Hollow Market.\nLabels in it: "
                              "2.\nFingerprint of its key: " +
                              fingerprint + ".\n") != std::string::npos);
    CHECK(station.lead().find("has not accepted a key yet") != std::string::npos);
    station.touch(ui::InstallFile{});
    REQUIRE(station.state().screen == ScreenId::DeskKey);
    std::string groups;
    for (const auto& group : station.page().fingerprint)
        groups += (groups.empty() ? "" : " ") + group;
    CHECK(groups == fingerprint);
    CHECK(in_place(station) == 0); // nothing by default

    station.touch(ui::AnswerKey{false});
    CHECK(station.lead().starts_with("Nothing was installed, because the fingerprint is another"));
    CHECK(in_place(station) == 0);

    station.open("winter.bundle");
    station.touch(ui::InstallFile{});
    station.touch(ui::AnswerKey{true});
    CHECK(station.lead() == "In place now: “Winter” (number 7), made 2026-11-26 by Cedar Hollow Market. Products: 2.");
    CHECK(in_place(station) == 7);
    CHECK(station.offers(TextId::desk_undo_install));
    station.ask(ui::GoBack{}); // what the preview said of key and number holds no more
    CHECK(station.state().screen == ScreenId::DeskFile);
    CHECK(!station.offers(TextId::desk_install));
    REQUIRE(station.offers(TextId::desk_look_again));
    station.touch(ui::DeskAction(station.page().buttons.front().asked));
    CHECK(station.lead().find("has not accepted a key yet") == std::string::npos);
    station.touch(ui::UndoInstall{});
    CHECK(station.lead().starts_with("No bundle is in place now"));
    CHECK(in_place(station) == 0);
}

TEST_CASE("desk: a foreign and an older bundle are refused with a sentence of the desk, and cannot be touched")
{
    DeskStation station;
    (void)seal(station, "winter.bundle", "key", 7);
    (void)seal(station, "autumn.bundle", "key", 6);
    (void)seal(station, "foreign.bundle", "other key", 9);
    station.open("winter.bundle");
    station.touch(ui::InstallFile{});
    station.touch(ui::AnswerKey{true});
    REQUIRE(in_place(station) == 7);
    station.open("autumn.bundle");
    const std::string older =
        "Its number is 6, and number 7 was in place here already: this station takes no older one. Ask "
        "for a newer one. What was in place before the last bundle comes back at the leader desk.";
    CHECK(station.lead().ends_with(older));
    CHECK(!station.offers(TextId::desk_install));
    station.touch(ui::InstallFile{}); // also past the page
    CHECK(station.lead() == older);
    CHECK(!station.offers(TextId::desk_undo_install)); // nothing was changed: nobody should undo the good one
    station.open("foreign.bundle");
    CHECK(station.lead().find("Its key is another than the one accepted here") != std::string::npos);
    CHECK(!station.offers(TextId::desk_install));
    station.touch(ui::InstallFile{});
    CHECK(station.lead().find("this bundle is sealed with another key") != std::string::npos);
    CHECK(in_place(station) == 7);
}

TEST_CASE("desk: a bundle that was changed after its fingerprint was compared is not installed")
{
    DeskStation station;
    (void)seal(station, "winter.bundle", "key", 7);
    station.open("winter.bundle");
    station.touch(ui::InstallFile{});
    fs::remove(station.stick() + "/winter.bundle");
    (void)seal(station, "winter.bundle", "other key", 8);
    station.touch(ui::AnswerKey{true});
    CHECK(station.lead().find("so it was not installed; compare it with the maker once more") != std::string::npos);
    CHECK(in_place(station) == 0);
}

TEST_CASE("desk: a damaged and a half copied bundle are told when they are opened")
{
    DeskStation station;
    (void)seal(station, "winter.bundle", "key", 7);
    auto bytes = test::bytes_of(station.stick() + "/winter.bundle");
    station.put("half.bundle", bytes.substr(0, bytes.size() / 2));
    bytes[60] = static_cast<char>(bytes[60] ^ 1);
    station.put("damaged.bundle", bytes);
    station.open("half.bundle");
    CHECK(station.state().screen == ScreenId::DeskReport);
    CHECK(station.lead().find("only a part of this bundle was copied") != std::string::npos);
    station.open("damaged.bundle");
    CHECK(station.lead().find("is not as it was sealed") != std::string::npos);
}

TEST_CASE("desk: the audit tells rules and samples, and what a leader looked at is not told again")
{
    DeskStation station;
    // 7 g of fat and 110 calories in 30 g are a label; 70 g of fat in 30 g are not.
    station.put("own.csv", test::two_rows + "9520000001209,Barley rings,2026-03-02,30 g,110,70\n");
    station.open("own.csv");
    station.touch(ui::AuditFile{});
    REQUIRE(station.state().screen == ScreenId::DeskAudit);
    CHECK(station.page().lead[1] == "Labels looked through: 3. With something to look at on the package: 1.");
    REQUIRE(!station.page().choices.empty());
    station.touch(ui::OpenRule{0});
    REQUIRE(station.page().choices.size() == 1);
    CHECK(station.page().choices[0].name == "Barley rings");
    station.touch(ui::OpenDoubt{0});
    CHECK(!station.offers(TextId::desk_approve)); // a sheet keeps nothing
    station.open("own.csv");
    station.touch(ui::LoadFile{false});

    station.touch(ui::AuditCatalog{});
    const auto doubts = station.page().choices.size();
    station.touch(ui::OpenRule{0});
    const auto rule = station.page().title;
    station.touch(ui::OpenDoubt{0});
    REQUIRE(station.offers(TextId::desk_approve));
    station.touch(ui::ApproveDoubt{});
    CHECK(station.state().screen == ScreenId::DeskRule);
    CHECK(station.page().choices.empty());
    station.touch(ui::AuditCatalog{});
    CHECK(station.page().choices.size() == doubts - 1);
    CHECK(station.lead().starts_with("Doubts that are not told, because you looked at the package and it says so: 1."));
    for (const auto& choice : station.page().choices)
        CHECK(choice.name != rule);
    const auto own = catalog::Store::open(station.shop(), catalog::Store::Mode::ReadOnly);
    REQUIRE(own);
    REQUIRE(own->approvals().all().size() == 1);
    CHECK(own->approvals().all().front().on == core::Date::parse("2026-11-26").value());
}
