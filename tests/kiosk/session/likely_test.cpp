// Where the camera is not sure: when the station asks which product it is, and what becomes of the question.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <iterator>
#include <string>
#include <vector>

namespace test {
namespace {

using kiosk::Settled;
using std::chrono::seconds;
using ui::ScreenId;
using ui::Side;
using ui::TextId;
using Strings = std::vector<std::string>;

core::Gtin number(const std::string& digits)
{
    return core::Gtin::parse(digits).value();
}

/// A station with a clock, and a camera that is never sure.
struct DoubtStation : Station {
    DoubtStation()
    {
        session.goes_by([this] { return now; });
    }
    bool doubts(const std::vector<kiosk::Reading>& codes) { return session.consider({codes, now}); }
    bool doubts(const Strings& codes)
    {
        std::vector<kiosk::Reading> readings;
        for (const auto& code : codes)
            readings.push_back({code, core::Symbology::Ean13});
        return doubts(readings);
    }
    [[nodiscard]] Strings asked() const
    {
        Strings names;
        for (const auto& likely : state().likely)
            names.push_back(likely.name);
        return names;
    }
    kiosk::TimePoint now{seconds{1'000}};
};

const Strings two{shelf::wheat, shelf::rice};

/// Comes to a screen where the next package is awaited.
void come_to(Station& station, ScreenId screen)
{
    if (screen != ScreenId::Welcome)
        station.scan(shelf::oats);
    if (screen == ScreenId::Pair)
        station.scan(shelf::juice_upca);
    if (screen == ScreenId::NotFound)
        station.scan(shelf::nobody);
    REQUIRE(station.state().screen == screen);
}

constexpr ScreenId awaiting[] = {ScreenId::Welcome, ScreenId::OneLabel, ScreenId::Pair, ScreenId::NotFound};

} // namespace

TEST_CASE("likely: one to four products of the catalog are asked about, likeliest first, and nothing is chosen")
{
    using core::Symbology;
    const kiosk::Reading oats{shelf::oats, Symbology::Ean13};
    const kiosk::Reading wheat{shelf::wheat, Symbology::Ean13};
    const kiosk::Reading rice{shelf::rice, Symbology::Ean13};
    const kiosk::Reading juice{shelf::juice_upca, Symbology::UpcA};
    const kiosk::Reading same_juice{shelf::cookies_ean8, Symbology::UpcE};
    const kiosk::Reading bar{shelf::cookies_ean8, Symbology::Ean8};
    const kiosk::Reading nobody{shelf::nobody, Symbology::Ean13};
    struct Case {
        std::string why;
        std::vector<kiosk::Reading> codes;
        Strings names;
    };
    const Case cases[] = {
        {"nothing at all", {}, {}},
        {"codes that the catalog does not have", {nobody, {"9520000000981", Symbology::Ean13}}, {}},
        {"one product is a question, too", {rice}, {"Rice puffs"}},
        {"one among others", {nobody, rice}, {"Rice puffs"}},
        {"in the camera's order", {wheat, oats}, {"Wheat squares", "Oat rounds"}},
        {"two codes of one product", {juice, same_juice, oats}, {"Apple juice", "Oat rounds"}},
        {"the bars tell which eight digits these are", {bar}, {"Cocoa bar"}},
        {"four", {bar, rice, nobody, wheat, oats}, {"Cocoa bar", "Rice puffs", "Wheat squares", "Oat rounds"}},
        {"five are too many", {bar, rice, wheat, oats, juice}, {}},
        {"a store's own number", {{"2101234567890", Symbology::Ean13}}, {}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        DoubtStation station;
        const auto before = station.state().notice;
        CHECK(station.doubts(c.codes) == !c.names.empty());
        CHECK(station.asked() == c.names);
        CHECK(station.state().screen == (c.names.empty() ? ScreenId::Welcome : ScreenId::LikelyProduct));
        CHECK((station.state().notice == before) == c.names.empty());
        CHECK_FALSE(station.state().sides[0]);
    }
}

TEST_CASE("likely: products are told apart by brand and size, in the language of the moment")
{
    DoubtStation station;
    REQUIRE(station.doubts(two));
    CHECK(station.notice() == "The camera is not sure. Touch your package if it is here.");
    CHECK(station.state().likely.at(0).detail == "Millbrook · serving 30 g");
    station.ask(ui::NextLanguage{});
    CHECK(station.state().screen == ScreenId::LikelyProduct);
    CHECK(station.state().likely.at(0).detail == "Millbrook · porción 30 g");
}

TEST_CASE("likely: a touch on a product is answered as its scan would be")
{
    for (const auto screen : awaiting) {
        CAPTURE(static_cast<int>(screen));
        Station scanned;
        DoubtStation touched;
        for (Station* station : {&scanned, static_cast<Station*>(&touched)}) {
            come_to(*station, screen);
            if (screen == ScreenId::Pair) // there is an answer to this as well
                for (const auto side : {Side::Left, Side::Right})
                    station->ask(ui::ToggleKeep{side});
        }
        scanned.scan(shelf::rice);
        REQUIRE(touched.doubts(two));
        touched.ask(ui::TakeProduct{touched.state().likely.at(1).gtin});
        for (const bool back : {false, true}) {
            if (back)
                for (Station* station : {&scanned, static_cast<Station*>(&touched)})
                    station->ask(ui::GoBack{});
            CHECK(touched.state().screen == scanned.state().screen);
            CHECK(touched.state().sides == scanned.state().sides);
            CHECK(touched.state().newest == scanned.state().newest);
            CHECK(touched.notice() == scanned.notice());
            CHECK(touched.state().notice.tone == scanned.state().notice.tone);
            CHECK(touched.state().can_take_back == scanned.state().can_take_back);
            CHECK(touched.asked().empty());
        }
    }
}

TEST_CASE("likely: a package with its price in the number finds its item's label by a touch, too")
{
    DoubtStation station;
    auto salad = *station.store.find(number(shelf::oats));
    salad.gtin = number("212345000007");
    salad.name = "Bean salad";
    salad.this_place_only = true;
    station.store.put(salad);
    REQUIRE(station.doubts({{"212345704998", core::Symbology::UpcA}}));
    station.ask(ui::TakeProduct{station.state().likely.at(0).gtin});
    CHECK(station.on(Side::Left) == "Bean salad");
}

TEST_CASE("likely: none of these leads back to where the question came, and it does not come again at once")
{
    for (const auto screen : awaiting) {
        CAPTURE(static_cast<int>(screen));
        DoubtStation station;
        come_to(station, screen);
        station.now += seconds{60};
        station.ask(ui::TurnPage{1});
        const auto sides = station.state().sides;
        REQUIRE(station.doubts(two));
        station.ask(ui::GoBack{});
        CHECK(station.state().screen == screen);
        CHECK(station.state().page == 1);
        CHECK(station.state().sides == sides);
        CHECK(station.asked().empty());
        for (int i = 0; i < 20; ++i) { // it lies there, and is seen now and then
            station.now += Settled::quiet / 2;
            CHECK_FALSE(station.doubts(two));
        }
        CHECK_FALSE(station.doubts({shelf::rice, shelf::nobody})); // one of those
        station.now += Settled::quiet;                             // it was put away
        CHECK(station.doubts(two));
    }
}

TEST_CASE("likely: after none of these another package is asked about at once")
{
    DoubtStation station;
    REQUIRE(station.doubts({shelf::oats}));
    station.ask(ui::GoBack{});
    CHECK(station.doubts(two));
}

TEST_CASE("likely: a sure scan puts the question away and is answered as always")
{
    struct Case {
        std::string why, code;
        ScreenId screen;
    };
    const Case cases[] = {
        {"one of those", shelf::rice, ScreenId::OneLabel},
        {"another product", shelf::oats, ScreenId::OneLabel},
        {"two products of eight digits", shelf::cookies_ean8, ScreenId::WhichProduct},
        {"a code without a label", shelf::nobody, ScreenId::NotFound},
        {"a coupon", "9811234567891", ScreenId::Welcome},
        {"no code at all", "HELLO", ScreenId::Welcome},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Station undoubted;
        undoubted.scan(c.code);
        DoubtStation station;
        REQUIRE(station.doubts(two));
        station.scan(c.code);
        CHECK(station.state().screen == c.screen);
        CHECK(station.notice() == undoubted.notice());
        CHECK(station.state().sides == undoubted.state().sides);
        CHECK(station.asked().empty());
        CHECK_FALSE(station.doubts(two)); // it is still in view
        station.ask(ui::GoBack{});
        CHECK(station.state().screen == ScreenId::Welcome); // and not the question
    }
}

TEST_CASE("likely: what is sure is not doubted afterwards, nor is what was seen before it asked about")
{
    DoubtStation station;
    station.scan(shelf::rice);
    CHECK_FALSE(station.doubts(two)); // the same package, once more out of focus
    const auto before = station.now - seconds{1};
    CHECK_FALSE(station.session.consider({{{shelf::oats, core::Symbology::Ean13}}, before}));
    CHECK(station.doubts({shelf::oats}));
    DoubtStation unknown;
    unknown.scan(shelf::nobody);
    CHECK_FALSE(unknown.doubts({shelf::nobody, shelf::oats}));
    CHECK(unknown.state().screen == ScreenId::NotFound);
}

TEST_CASE("likely: nobody is asked in the middle of something")
{
    const auto on = [](ScreenId screen) {
        DoubtStation station;
        station.scan(shelf::oats);
        station.scan(shelf::juice_upca);
        if (screen != ScreenId::Pair)
            station.session.show(screen);
        return station.doubts(two);
    };
    REQUIRE(on(ScreenId::Pair));
    for (int i = 0; i <= static_cast<int>(ScreenId::DeskCamera); ++i) {
        const auto screen = static_cast<ScreenId>(i);
        CAPTURE(i);
        CHECK(on(screen) == (std::ranges::find(awaiting, screen) != std::end(awaiting)));
    }
    DoubtStation reading;
    reading.session.voice_is(true);
    reading.ask(ui::AskAccess{ui::ReadAloud{}});
    CHECK_FALSE(reading.doubts(two));
    reading.session.voice_ended();
    CHECK(reading.doubts(two));
}

TEST_CASE("likely: a question that is open stays as it is, whatever the camera sees next")
{
    DoubtStation station;
    REQUIRE(station.doubts(two));
    CHECK_FALSE(station.doubts({shelf::oats}));
    CHECK(station.asked() == Strings{"Wheat squares", "Rice puffs"});
}

TEST_CASE("likely: whoever makes the letters larger comes back to the question, elsewhere it is over")
{
    DoubtStation station;
    REQUIRE(station.doubts(two));
    station.ask(ui::AskAccess{ui::OpenWays{}});
    station.ask(ui::AskAccess{ui::ChooseTextSize{200}});
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::LikelyProduct);
    CHECK(station.asked().size() == 2);
    station.ask(ui::FindByName{});
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Welcome);

    DoubtStation over;
    over.scan(shelf::oats);
    REQUIRE(over.doubts(two));
    SUBCASE("by starting over")
    {
        over.ask(ui::StartOver{});
        CHECK(over.state().screen == ScreenId::Welcome);
    }
    SUBCASE("by another catalog")
    {
        auto newer = small_store("Birchwood");
        over.session.use(newer);
        CHECK(over.state().screen == ScreenId::OneLabel);
    }
    SUBCASE("by a scan from where the letters are made larger")
    {
        over.ask(ui::AskAccess{ui::OpenWays{}});
        over.scan(shelf::juice_upca);
        over.ask(ui::GoBack{});
        over.ask(ui::GoBack{});
        CHECK(over.state().screen == ScreenId::OneLabel);
    }
    CHECK(over.asked().empty());
}

TEST_CASE("likely: nobody answers, and the question is put away before anybody is asked for")
{
    DoubtStation alone;
    REQUIRE(alone.doubts(two));
    CHECK(alone.session.in_use());
    alone.session.ask_whether_there(30);
    CHECK(alone.state().screen == ScreenId::Welcome);
    CHECK(alone.notice().empty());
    CHECK_FALSE(alone.session.in_use());
    CHECK_FALSE(alone.doubts(two)); // a poster on the wall

    DoubtStation held;
    held.scan(shelf::oats);
    REQUIRE(held.doubts(two));
    held.session.ask_whether_there(30);
    CHECK(held.state().screen == ScreenId::StillThere);
    held.ask(ui::AskAccess{ui::KeepGoing{}});
    CHECK(held.state().screen == ScreenId::OneLabel);
}

TEST_CASE("likely: what was settled stays so while it is seen, and a while longer")
{
    const auto wheat = number(shelf::wheat);
    const auto rice = number(shelf::rice);
    const kiosk::TimePoint start{};
    const std::vector both{wheat, rice};
    Settled settled;
    CHECK_FALSE(settled.sees(both, start));
    settled.settle(wheat, start);
    CHECK(settled.sees(both, start));
    CHECK(settled.sees(both, start - seconds{1})); // a picture from before the answer
    CHECK_FALSE(settled.sees(std::vector{rice}, start));
    CHECK(settled.sees(both, start + Settled::quiet - seconds{1}));
    CHECK(settled.sees(both, start + 2 * Settled::quiet - seconds{2}));
    CHECK_FALSE(settled.sees(both, start + 3 * Settled::quiet - seconds{2}));
}

} // namespace test
