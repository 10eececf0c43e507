#include "tests/ui/access/notes.h"
#include "ui/access/stops.h"

#include <doctest/doctest.h>

TEST_CASE("stops: what stands in a thing to touch belongs to it, in reading order")
{
    const auto notes = test::small_screen();
    const auto stops = ui::stops_of(notes);
    std::vector<std::string> words;
    for (const auto& stop : stops)
        words.push_back(notes[stop.note].words);
    CHECK(words == std::vector<std::string>{"Heading", "One", "Two", "Sodium", "Last"});
    CHECK(stops[3].with == std::vector<std::size_t>{4});
    CHECK_FALSE(stops[0].touchable);
}

TEST_CASE("stops: a thing that is noted behind its own words is met where they are")
{
    ui::Notes notes{test::note_at("Name", 0, 0, false), test::note_at("Below", 0, 1, true)};
    ui::Note area = test::note_at("Open", 0, 0, true);
    notes.push_back(area);
    const auto stops = ui::stops_of(notes);
    REQUIRE(stops.size() == 2);
    CHECK(stops[0].note == 2);
    CHECK(stops[0].with == std::vector<std::size_t>{0});
}

TEST_CASE("stops: lines are what stands beside each other; texts are in none")
{
    const auto lines = ui::lines_of_stops(ui::stops_of(test::small_screen()));
    CHECK(lines == std::vector<std::vector<std::size_t>>{{1, 2}, {3}, {4}});
}

TEST_CASE("stops: an empty screen has none")
{
    CHECK(ui::stops_of({}).empty());
    CHECK(ui::lines_of_stops({}).empty());
}
