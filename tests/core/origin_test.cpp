// Days that exist and days that do not.
#include "core/origin.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <string>

namespace test {

using core::Date;

// Source: ISO 8601 (extended form of a calendar date) and the rule of the Gregorian calendar on leap years.
TEST_CASE("date: a day that exists reads and prints alike")
{
    for (const std::string& day : {std::string("2026-11-25"), std::string("1900-01-01"), std::string("2024-02-29"),
                                   std::string("2000-02-29"), std::string("2026-12-31"), std::string("9999-12-31")}) {
        CAPTURE(day);
        const auto date = Date::parse(day);
        REQUIRE(date);
        CHECK(date->text() == day);
    }
}

TEST_CASE("date: everything else is refused")
{
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"no leap year", "2026-02-29"},
        {"a hundredth year is none", "2100-02-29"},
        {"a thirtieth of February", "2024-02-30"},
        {"a thirty-first of April", "2026-04-31"},
        {"no day", "2026-01-00"},
        {"no month", "2026-00-01"},
        {"a thirteenth month", "2026-13-01"},
        {"before barcodes: a slip", "1899-12-31"},
        {"short year", "26-11-25"},
        {"one digit", "2026-1-5"},
        {"slashes", "2026/11/25"},
        {"American order", "11/25/2026"},
        {"with a time", "2026-11-25T10:00"},
        {"a blank in front", " 2026-11-25"},
        {"a blank behind", "2026-11-25 "},
        {"a sign in a number", "2026-+1-25"},
        {"a blank in a number", "2026- 1-25"},
        {"letters", "2026-Nov-5"},
        {"a NUL byte", std::string("2026-11-2\0", 10)},
        {"ten bytes, other digits", "\xEF\xBC\x92\xEF\xBC\x90-1-1"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto date = Date::parse(c.text);
        REQUIRE_FALSE(date);
        CHECK(date.error().kind == core::Error::Kind::BadValue);
        CHECK(date.error().place.found == c.text);
        CHECK_FALSE(date.error().place.expected.empty());
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        const auto date = Date::parse(text);
        REQUIRE_FALSE(date);
        CHECK(date.error().place.found.size() <= 40);
    }
}

TEST_CASE("date: days come in their order")
{
    CHECK(*Date::parse("2025-12-31") < *Date::parse("2026-01-01"));
    CHECK(*Date::parse("2026-01-31") < *Date::parse("2026-02-01"));
    CHECK(*Date::parse("2026-02-01") < *Date::parse("2026-02-02"));
    CHECK(*Date::parse("2026-02-02") == *Date::parse("2026-02-02"));
}

} // namespace test
