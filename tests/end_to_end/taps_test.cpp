// A finger on the real window: every touch, short or held, does what the same touch means to a session of our own.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/end_to_end/twin.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace {

using std::chrono::milliseconds;
using ui::TextId;

} // namespace

TEST_CASE("end to end: a touch acts once, however short or long the finger stays")
{
    const auto products = test::demo_products();
    struct Touch {
        std::string why;
        test::IsIt what;
        ui::Action action;
    };
    for (const auto held : {milliseconds(0), milliseconds(40), milliseconds(400)}) {
        CAPTURE(held.count());
        test::Station station;
        test::Twin twin;
        for (int i : {0, 1}) {
            station.scan(products[static_cast<std::size_t>(i)].digits);
            REQUIRE(station.answer(i + 1));
            twin.scan(products[static_cast<std::size_t>(i)].digits);
        }
        REQUIRE(twin.state().screen == ui::ScreenId::Pair);
        const Touch touches[] = {
            {"another basis", test::text(TextId::basis_package), ui::ChooseBasis{core::Basis::Package}},
            {"the other language", test::text(TextId::language_name), ui::NextLanguage{}},
            {"and back", test::text(TextId::language_name), ui::NextLanguage{}},
            {"larger letters", test::text(TextId::button_text_size), ui::NextTextSize{}},
            {"the next page", test::text(TextId::button_page_next), ui::TurnPage{1}},
            {"a label by itself", test::text(TextId::button_open_label), ui::OpenLabel{ui::Side::Left}},
            {"back", test::text(TextId::button_back), ui::GoBack{}},
            {"start over", test::text(TextId::button_start_over), ui::StartOver{}},
            {"take back", test::text(TextId::button_take_back), ui::TakeBack{}},
            {"the letters", test::text(TextId::button_by_name), ui::FindByName{}},
            {"the aisles", test::text(TextId::find_by_aisle), ui::ChooseAisle{}},
        };
        for (const auto& touch : touches) {
            CAPTURE(touch.why);
            station.touch(twin.place_of(touch.what), held);
            twin.ask({touch.action});
            const bool same = test::says(station, twin.words());
            CAPTURE(twin.words());
            CAPTURE(station.trace().back().words);
            REQUIRE(same);
        }
        const auto& first = twin.state().aisles.front();
        station.touch(twin.place_of(test::named(first.words)), held);
        twin.ask({ui::OpenAisle{first.aisle}});
        REQUIRE(test::says(station, twin.words()));
        const auto pick = twin.state().picks.front(); // the others may be on another page
        station.touch(twin.place_of(test::named(pick.name)), held);
        twin.ask({ui::TakeProduct{pick.gtin}});
        CHECK(test::says(station, twin.words()));
    }
}

TEST_CASE("end to end: a finger that slides off a button asks for nothing")
{
    test::Station station;
    test::Twin twin;
    twin.ask({});
    const ImVec2 on = twin.place_of(test::text(TextId::button_by_name));
    station.touch(on, milliseconds(40), ImVec2{on.x, on.y - 300});
    station.touch(twin.place_of(test::text(TextId::language_name)), milliseconds(40));
    twin.ask({ui::NextLanguage{}});
    const bool same = test::says(station, twin.words());
    CAPTURE(twin.words());
    CAPTURE(station.trace().back().words);
    CHECK(same);
    CHECK(twin.state().screen == ui::ScreenId::Welcome);
}

TEST_CASE("end to end: two touches that come before a frame is drawn are both answered")
{
    test::Station station;
    test::Twin twin;
    twin.ask({});
    std::vector<ImVec2> places;
    for (const auto& [id, action] : {std::pair<TextId, ui::Action>{TextId::language_name, ui::NextLanguage{}},
                                     {TextId::button_text_size, ui::NextTextSize{}},
                                     {TextId::button_by_name, ui::FindByName{}}}) {
        places.push_back(twin.place_of(test::text(id)));
        twin.ask({action});
    }
    REQUIRE(twin.state().screen == ui::ScreenId::FindByName);
    station.touch_at_once(places);
    const bool same = test::says(station, twin.words());
    CAPTURE(twin.words());
    CAPTURE(station.trace().back().words);
    CHECK(same);
}
