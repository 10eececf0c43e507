#include "kiosk/session/idle.h"
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

namespace {

using kiosk::Idle;
using kiosk::TimePoint;
using std::chrono::seconds;
using What = Idle::What;

} // namespace

// Source of 20 seconds: WCAG 2.2, success criterion 2.2.1.
TEST_CASE("idle: asks after its patience, counts down, and forgets; people have at least 20 seconds to answer")
{
    const TimePoint start{};
    Idle idle(seconds{300}, start);
    CHECK(idle.look(start + seconds{299}, true).what == What::Nothing);
    const auto asked = idle.look(start + seconds{300}, true);
    CHECK(asked.what == What::Ask);
    CHECK(asked.seconds_left == 30);
    CHECK(idle.look(start + seconds{301}, true).what == What::Nothing);
    CHECK(idle.look(start + seconds{306}, true).seconds_left == 25);
    CHECK(idle.look(start + seconds{321}, true).what == What::Ask);
    CHECK(idle.look(start + seconds{329}, true).what != What::Forget);
    CHECK(idle.look(start + seconds{330}, true).what == What::Forget);
    CHECK(Idle::to_answer >= seconds{20});
}

TEST_CASE("idle: any touch is an answer, as often as one likes")
{
    TimePoint now{};
    Idle idle(seconds{60}, now);
    for (int i = 0; i < 12; ++i) {
        now += seconds{60};
        CHECK(idle.look(now, true).what == What::Ask);
        now += seconds{29};
        idle.touched(now);
    }
}

TEST_CASE("idle: a station that nobody uses asks nobody, and none asks when it is set so")
{
    TimePoint now{};
    Idle idle(seconds{60}, now);
    CHECK(idle.look(now + seconds{4000}, false).what == What::Nothing);
    Idle never(seconds{0}, now);
    CHECK(never.look(now + seconds{90'000}, true).what == What::Nothing);
    CHECK_FALSE(never.due());
}

TEST_CASE("idle: the moment to look again is never past")
{
    TimePoint now{};
    Idle idle(seconds{60}, now);
    int asked = 0;
    while (asked < 3) {
        REQUIRE(idle.due().has_value());
        CHECK(*idle.due() >= now);
        now = *idle.due();
        const auto step = idle.look(now, true);
        CHECK(step.what != What::Nothing);
        asked += step.what == What::Forget;
    }
}

TEST_CASE("session: nobody there, and the next person finds it as it began")
{
    test::Station station;
    station.session.begin_with({"en", 150, ui::ThemeName::Night});
    CHECK_FALSE(station.session.in_use());
    station.scan(test::shelf::oats);
    station.ask(ui::NextLanguage{});
    station.ask(ui::NextTextSize{});
    station.ask(ui::AskAccess{ui::ChooseTheme{ui::ThemeName::Plain}});
    CHECK(station.session.in_use());
    station.session.ask_whether_there(30);
    CHECK(station.state().screen == ui::ScreenId::StillThere);
    station.ask(ui::AskAccess{ui::KeepGoing{}});
    CHECK(station.state().screen == ui::ScreenId::OneLabel);
    station.session.ask_whether_there(30);
    station.session.forget();
    CHECK_FALSE(station.session.in_use());
    CHECK(station.state().screen == ui::ScreenId::Welcome);
    CHECK_FALSE(station.state().sides[0]);
    CHECK_FALSE(station.state().can_take_back); // what others have scanned is nobody's business
    CHECK(station.session.language().code() == "en");
    CHECK(station.state().text_percent == 150);
    CHECK(station.state().theme == ui::ThemeName::Night);
}

TEST_CASE("session: the glass is measured with a card, and kept")
{
    test::Station station;
    station.session.glass_is(0, 1280);
    station.ask(ui::AskAccess{ui::OpenMeasure{}}); // not where nobody may
    CHECK(station.state().screen == ui::ScreenId::Welcome);
    float kept = 0;
    station.session.may_measure([&kept](float px_per_mm) {
        kept = px_per_mm;
        return true;
    });
    station.ask(ui::AskAccess{ui::OpenMeasure{}});
    station.ask(ui::AskAccess{ui::SetCardWidth{508}});
    station.ask(ui::AskAccess{ui::KeepMeasure{}});
    // 85.60 mm: ISO/IEC 7810, ID-1. 508 px a card are 5.93 px a mm: a panel of 1280 pixels on 216 mm.
    CHECK(kept == doctest::Approx(508 / 85.60).epsilon(0.0001));
    CHECK(station.state().px_per_mm == kept);
    CHECK(station.state().screen == ui::ScreenId::Welcome);
}

TEST_CASE("idle: the session tells screens how long one may do nothing; below zero is never")
{
    test::Station station;
    const auto told = [&station](int seconds) {
        station.session.asks_after(std::chrono::seconds{seconds});
        return station.state().idle_seconds;
    };
    CHECK(told(300) == 300);
    CHECK(told(-1) == 0);
    CHECK(told(0) == 0);
}
