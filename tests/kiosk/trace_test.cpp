#include "kiosk/trace.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

TEST_CASE("trace: one line an event, with its columns, and line ends in words taken out")
{
    const test::TempFolder folder;
    const auto file = folder.file("trace");
    kiosk::Trace trace(file);
    ui::State state;
    state.notice = {"not\nfound\there", ui::Notice::Tone::Refused, 7};
    trace.answered({"12345670", core::Symbology::Unknown, kiosk::Scan::From::Scanner, kiosk::TimePoint{}}, state);
    ui::Notes notes(2);
    notes[0].words = "Welcome";
    notes[1].words = "two\nlines";
    trace.drawn(state, notes, kiosk::TimePoint{} + kiosk::Milliseconds{3});
    trace.drawn(state, {}, kiosk::TimePoint{});
    CHECK(test::bytes_of(file) == "answer\t1\t0\twelcome\t-\t-\t7\t12345670 | not found here\n"
                                  "frame\t1\t3000\twelcome\t-\t-\t7\tWelcome | two lines\n"
                                  "frame\t2\t0\twelcome\t-\t-\t7\t\n");
}

TEST_CASE("trace: a place that cannot be written is said")
{
    CHECK_THROWS_WITH_AS(kiosk::Trace("/nowhere/trace"), doctest::Contains("/nowhere/trace"), std::runtime_error);
}
