// A finger on the real window: every touch, short or held, does what the same touch means to a session of our own.
#include "kiosk/command/picture.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "kiosk/session/session.h"
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace {

using std::chrono::milliseconds;
using ui::TextId;
using IsIt = std::function<bool(const ui::Note&)>;

/// A session that nobody sees, asked for the same as the station: it knows where things stand and what must be said.
class Twin {
public:
    Twin() { session_.say_demo(); }

    void scan(const std::string& digits)
    {
        session_.take({digits, core::Symbology::Unknown, {}});
        ask({});
    }
    void ask(const ui::Actions& actions)
    {
        session_.apply(actions);
        notes_.clear();
        (void)kiosk::draw_picture(session_.state(), session_.language(), {ui::paper(), fonts_.files(), 1280, 800},
                                  &notes_);
    }

    /// The middle of the first thing to touch that is meant.
    [[nodiscard]] ImVec2 place_of(const IsIt& is_it) const
    {
        const auto found =
            std::ranges::find_if(notes_, [&](const ui::Note& note) { return note.touchable && is_it(note); });
        REQUIRE(found != notes_.end());
        return {(found->low.x + found->high.x) / 2, (found->low.y + found->high.y) / 2};
    }
    /// All that its screen says, as the trace writes it.
    [[nodiscard]] std::string words() const
    {
        std::string words;
        for (const auto& note : notes_)
            words += (words.empty() ? "" : " | ") + note.words;
        std::ranges::replace(words, '\n', ' ');
        return words;
    }

    [[nodiscard]] const ui::State& state() const { return session_.state(); }

private:
    kiosk::StationCatalog catalog_{"", kiosk::data_folder(), [](const std::string&) { return std::nullopt; }};
    std::vector<ui::Language> languages_ = kiosk::read_languages(kiosk::data_folder());
    kiosk::FontBytes fonts_ = kiosk::read_fonts();
    kiosk::Session session_{catalog_.store(), languages_};
    ui::Notes notes_;
};

bool says(test::Station& station, const std::string& words)
{
    return test::becomes_true(
        [&] {
            const auto& trace = station.trace();
            const auto last =
                std::find_if(trace.rbegin(), trace.rend(), [](const auto& line) { return line.kind == "frame"; });
            return last != trace.rend() && last->words == words;
        },
        std::chrono::seconds(20));
}

IsIt text(TextId id)
{
    return [id](const ui::Note& note) { return note.id == id; };
}

IsIt named(const std::string& words)
{
    return [words](const ui::Note& note) { return note.words == words; };
}

} // namespace

TEST_CASE("end to end: a touch acts once, however short or long the finger stays")
{
    const auto products = test::demo_products();
    struct Touch {
        std::string why;
        IsIt what;
        ui::Action action;
    };
    for (const auto held : {milliseconds(0), milliseconds(40), milliseconds(400)}) {
        CAPTURE(held.count());
        test::Station station;
        Twin twin;
        for (int i : {0, 1}) {
            station.scan(products[static_cast<std::size_t>(i)].digits);
            REQUIRE(station.answer(i + 1));
            twin.scan(products[static_cast<std::size_t>(i)].digits);
        }
        REQUIRE(twin.state().screen == ui::ScreenId::Pair);
        const Touch touches[] = {
            {"another basis", text(TextId::basis_package), ui::ChooseBasis{core::Basis::Package}},
            {"the other language", text(TextId::language_name), ui::NextLanguage{}},
            {"and back", text(TextId::language_name), ui::NextLanguage{}},
            {"larger letters", text(TextId::button_text_size), ui::NextTextSize{}},
            {"the next page", text(TextId::button_page_next), ui::TurnPage{1}},
            {"a label by itself", text(TextId::button_open_label), ui::OpenLabel{ui::Side::Left}},
            {"back", text(TextId::button_back), ui::GoBack{}},
            {"start over", text(TextId::button_start_over), ui::StartOver{}},
            {"take back", text(TextId::button_take_back), ui::TakeBack{}},
            {"the aisles", text(TextId::button_by_name), ui::ChooseByName{}},
        };
        for (const auto& touch : touches) {
            CAPTURE(touch.why);
            station.touch(twin.place_of(touch.what), held);
            twin.ask({touch.action});
            const bool same = says(station, twin.words());
            CAPTURE(twin.words());
            CAPTURE(station.trace().back().words);
            REQUIRE(same);
        }
        const auto& first = twin.state().aisles.front();
        station.touch(twin.place_of(named(first.words)), held);
        twin.ask({ui::OpenAisle{first.aisle}});
        REQUIRE(says(station, twin.words()));
        const auto pick = twin.state().picks.back();
        station.touch(twin.place_of(named(pick.name)), held);
        twin.ask({ui::TakeProduct{pick.gtin}});
        CHECK(says(station, twin.words()));
    }
}

TEST_CASE("end to end: a finger that slides off a button asks for nothing")
{
    test::Station station;
    Twin twin;
    twin.ask({});
    const ImVec2 on = twin.place_of(text(TextId::button_by_name));
    station.touch(on, milliseconds(40), ImVec2{on.x, on.y - 300});
    station.touch(twin.place_of(text(TextId::language_name)), milliseconds(40));
    twin.ask({ui::NextLanguage{}});
    const bool same = says(station, twin.words());
    CAPTURE(twin.words());
    CAPTURE(station.trace().back().words);
    CHECK(same);
    CHECK(twin.state().screen == ui::ScreenId::Welcome);
}

TEST_CASE("end to end: two touches that come before a frame is drawn are both answered")
{
    test::Station station;
    Twin twin;
    twin.ask({});
    std::vector<ImVec2> places;
    for (const auto& [id, action] : {std::pair<TextId, ui::Action>{TextId::language_name, ui::NextLanguage{}},
                                     {TextId::button_text_size, ui::NextTextSize{}},
                                     {TextId::button_by_name, ui::ChooseByName{}}}) {
        places.push_back(twin.place_of(text(id)));
        twin.ask({action});
    }
    REQUIRE(twin.state().screen == ui::ScreenId::PickAisle);
    station.touch_at_once(places);
    const bool same = says(station, twin.words());
    CAPTURE(twin.words());
    CAPTURE(station.trace().back().words);
    CHECK(same);
}
