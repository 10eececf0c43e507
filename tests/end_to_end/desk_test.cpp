// The leader desk on the real window, by touches alone: a sheet is loaded from a folder and taken back, and a bundle is
// installed after its fingerprint was compared.
#include "catalog/store/store.h"
#include "tests/end_to_end/station.h"
#include "tests/end_to_end/twin.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <thread>

namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;
using ui::TextId;

const std::string sheet = "gtin,name,entered_on,serving_size,calories,total_fat_g\n"
                          "9520000000998,Corn stars,2026-03-02,30 g,110,1\n"
                          "9520000001117,Rye thins,2026-03-02,30 g,120,2.5\n";

/// A desk that nobody sees, in a folder of its own: asked for the same as the station, it knows where things stand.
class DeskTwin {
public:
    explicit DeskTwin(const std::string& stick)
        : desk_({folder_.file("data/catalog.db"),
                 false,
                 folder_.file("data"),
                 {stick},
                 false,
                 [] { return std::optional<kiosk::Frame>(); }, // as the station, which looks for a camera
                 {},
                 {}})
    {
        session_.say_demo();
        session_.open_desk(desk_);
        draw();
    }
    void ask(const ui::DeskAction& action)
    {
        session_.apply({ui::AskDesk{action}});
        while (desk_.busy()) {
            (void)session_.follow_desk();
            std::this_thread::sleep_for(milliseconds(1));
        }
        draw();
    }
    [[nodiscard]] ImVec2 place_of(const test::IsIt& is_it) const
    {
        const auto found =
            std::ranges::find_if(notes_, [&](const ui::Note& note) { return note.touchable && is_it(note); });
        REQUIRE(found != notes_.end());
        return {(found->low.x + found->high.x) / 2, (found->low.y + found->high.y) / 2};
    }
    [[nodiscard]] const ui::DeskPage& page() const { return *session_.state().desk; }

private:
    void draw()
    {
        notes_.clear();
        (void)kiosk::draw_picture(session_.state(), session_.language(), {ui::paper(), fonts_.files(), 1280, 800},
                                  &notes_);
    }

    test::TempFolder folder_;
    kiosk::StationCatalog catalog_{"", kiosk::data_folder(), [](const std::string&) { return std::nullopt; }};
    std::vector<ui::Language> languages_ = kiosk::read_language_files(kiosk::data_folder()).languages;
    kiosk::FontBytes fonts_ = kiosk::read_fonts();
    kiosk::Desk desk_;
    kiosk::Session session_{catalog_.store(), languages_};
    ui::Notes notes_;
};

/// Touches on both, and waits until the station's screen has these words.
void touch(test::Station& station, DeskTwin& twin, const test::IsIt& what, const ui::DeskAction& action,
           const std::string& words)
{
    station.touch(twin.place_of(what), milliseconds(40));
    twin.ask(action);
    const bool said = test::becomes_true(
        [&] { return !station.trace().empty() && station.trace().back().words.find(words) != std::string::npos; },
        std::chrono::seconds(20));
    CAPTURE(words);
    CAPTURE(station.trace().back().words);
    REQUIRE(said);
}

void open_file(test::Station& station, DeskTwin& twin, const std::string& name, const std::string& words)
{
    touch(station, twin, test::text(TextId::desk_title), ui::OpenDesk{}, "Loads go into");
    touch(station, twin, test::named("Files on a stick"), ui::LookForFiles{}, "Look again");
    const auto& choices = twin.page().choices;
    const auto found = std::ranges::find(choices, name, &ui::DeskChoice::name);
    REQUIRE(found != choices.end());
    touch(station, twin, test::named(name), ui::DeskAction(found->asked), words);
}

fs::path data_of(const test::Station& station)
{
    return fs::path(station.folder().file("")) / ".local" / "share" / "pairstand";
}

std::size_t labels_in(const test::Station& station)
{
    const auto own = catalog::Store::open(data_of(station) / "catalog.db", catalog::Store::Mode::ReadOnly);
    REQUIRE(own);
    return own->count();
}

} // namespace

TEST_CASE("end to end: a sheet is loaded at the desk by touch, served at once, and taken back")
{
    const test::TempFolder stick;
    (void)stick.write("own.csv", sheet);
    test::Station station({"--desk", "--files", stick.file("")});
    DeskTwin twin(stick.file(""));
    open_file(station, twin, "own.csv", "Products in it: 2.");
    CHECK(!fs::exists(data_of(station) / "catalog.db"));
    touch(station, twin, test::text(TextId::desk_load), ui::LoadFile{false}, "2 products loaded into");
    CHECK(labels_in(station) == 2);
    touch(station, twin, test::text(TextId::desk_undo_load), ui::UndoLoad{},
          "The catalog is as it was before the last load: without a label.");
    CHECK(labels_in(station) == 0);
    touch(station, twin, test::text(TextId::desk_redo_load), ui::UndoLoad{}, "as the last load left it");
    CHECK(labels_in(station) == 2);
    station.scan("9520000000998");
    const auto found = station.answer(1);
    REQUIRE(found);
    CHECK(found->left == "09520000000998");
}

TEST_CASE("end to end: a bundle is installed at the desk by touch, after its fingerprint was compared")
{
    const test::TempFolder stick;
    const test::TempFolder leader;
    REQUIRE(test::pairstand({"load", leader.write("own.csv", sheet), "--into", leader.file("shop.db")}).status == 0);
    REQUIRE(test::pairstand({"keys", "make", "--into", leader.file("key")}).status == 0);
    const auto sealed =
        test::pairstand({"seal", "--catalog", leader.file("shop.db"), "--key", leader.file("key"), "--name", "Winter",
                         "--maker", "Cedar Hollow Market", "--out", stick.file("winter.bundle")});
    REQUIRE(sealed.status == 0);
    test::Station station({"--desk", "--files", stick.file("")});
    DeskTwin twin(stick.file(""));
    open_file(station, twin, "winter.bundle", "This station has not accepted a key yet");
    touch(station, twin, test::text(TextId::desk_install), ui::InstallFile{}, "Is this the fingerprint?");
    std::string digits;
    for (const auto& group : twin.page().fingerprint)
        digits += (digits.empty() ? "" : " ") + group;
    CHECK(sealed.out.find(digits) != std::string::npos); // what the leader reads aloud
    touch(station, twin, test::text(TextId::desk_key_same), ui::AnswerKey{true}, "In place now: “Winter” (number 1)");
    CHECK(fs::exists(data_of(station) / "bundles" / "in-place.json"));
    station.scan("9520000001117");
    const auto found = station.answer(1);
    REQUIRE(found);
    CHECK(found->left == "09520000001117");
}
