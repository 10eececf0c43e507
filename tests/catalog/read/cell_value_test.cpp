#include "catalog/read/cell_value.h"

#include <doctest/doctest.h>

using Kind = catalog::NumberForm::Kind;

TEST_CASE("cell value: which form the code of a number format shows")
{
    // ECMA-376 part 1, 18.8.31: quoted letters, letters behind a backslash and what stands in brackets are no code.
    struct Case {
        const char* code;
        Kind kind;
        std::size_t digits;
    };
    const Case cases[] = {
        {"General", Kind::Plain, 0},
        {"0.00", Kind::Plain, 0},
        {"0%", Kind::Percent, 0},
        {"0.0%;[Red]-0.0%", Kind::Percent, 0},
        {"0\\%", Kind::Plain, 1},
        {"0\"%\"", Kind::Plain, 1},
        {"yyyy\\-mm\\-dd;@", Kind::Day, 0},
        {"[$-409]d\\-mmm;@", Kind::Day, 0},
        {"MM/DD/YYYY", Kind::Day, 0},
        {"[h]:mm:ss", Kind::Time, 0},
        {"h:mm AM/PM", Kind::Time, 0},
        {"0 \"days\"", Kind::Plain, 0},
        {"#,##0", Kind::Plain, 0},
        {"000000000000", Kind::Plain, 12},
        {"@", Kind::Plain, 0},
        {"", Kind::Plain, 0},
        {"\"", Kind::Plain, 0},
        {"\\", Kind::Plain, 0},
        {"[", Kind::Plain, 0},
    };
    for (const auto& c : cases) {
        CAPTURE(c.code);
        CHECK(catalog::form_of_code(c.code) == catalog::NumberForm{c.kind, c.digits});
    }
}

TEST_CASE("cell value: formats that have a number and no code")
{
    // ECMA-376 part 1, 18.8.30: 0 General, 9 and 10 percent, 14 to 17 days, 18 to 21 times, 22 both, 49 text.
    CHECK(catalog::form_of_number(0).kind == Kind::Plain);
    CHECK(catalog::form_of_number(9).kind == Kind::Percent);
    CHECK(catalog::form_of_number(10).kind == Kind::Percent);
    CHECK(catalog::form_of_number(11).kind == Kind::Plain);
    CHECK(catalog::form_of_number(14).kind == Kind::Day);
    CHECK(catalog::form_of_number(17).kind == Kind::Day);
    CHECK(catalog::form_of_number(20).kind == Kind::Time);
    CHECK(catalog::form_of_number(22).kind == Kind::Day);
    CHECK(catalog::form_of_number(49).kind == Kind::Plain);
}

TEST_CASE("cell value: numbers are shown with the digits that count")
{
    struct Case {
        double number;
        const char* text;
    };
    const Case cases[] = {{0.29, "0.29"},
                          {0.28999999999999998, "0.29"},
                          {0.1 + 0.2, "0.3"},
                          {9521234543213, "9521234543213"},
                          {99521234543216, "99521234543216"},
                          {0.0000005, "0.0000005"},
                          {-2.5, "-2.5"},
                          {0, "0"},
                          {-0.0, "0"},
                          {140, "140"},
                          {1e300, "1e+300"}};
    for (const auto& c : cases) {
        CAPTURE(c.text);
        CHECK(catalog::number_text(c.number) == c.text);
    }
    for (int percent = 0; percent <= 1000; ++percent)
        CHECK(catalog::percent_text(percent / 100.0) == std::to_string(percent) + "%");
}

TEST_CASE("cell value: every whole and half number of a label comes back")
{
    for (int tenths = 0; tenths < 30'000; ++tenths) {
        const auto text = catalog::number_text(tenths / 10.0);
        const auto rest = tenths % 10;
        CHECK(text == std::to_string(tenths / 10) + (rest ? "." + std::to_string(rest) : ""));
    }
}

TEST_CASE("cell value: numbers of XML")
{
    CHECK(catalog::parse_number("1E-3") == 0.001);
    CHECK(catalog::parse_number("140") == 140);
    for (const auto* bad : {"", "12x", "1,5", "nan", "inf", "1e999", " 1"}) {
        CAPTURE(bad);
        CHECK_FALSE(catalog::parse_number(bad).has_value());
    }
}

TEST_CASE("cell value: days are counted from 1899-12-30 or 1904-01-01")
{
    // ECMA-376 part 1, 18.17.4.1: in the 1900 system 2 is 1900-01-02 and 1900-02-29 has a number although it never was,
    // so days from 1900-03-01 (61) on are those since 1899-12-30; in the 1904 system 0 is 1904-01-01.
    CHECK(catalog::day_text(61, false) == "1900-03-01");
    CHECK(catalog::day_text(46'351, false) == "2026-11-25");
    CHECK(catalog::day_text(46'351.75, false) == "2026-11-25");
    CHECK(catalog::day_text(46'351 - 1'462, true) == "2026-11-25");
    CHECK(catalog::day_text(0, true) == "1904-01-01");
    CHECK(catalog::day_text(2'958'465, false) == "9999-12-31");
    CHECK_FALSE(catalog::day_text(60, false).has_value());
    CHECK_FALSE(catalog::day_text(2'958'466, false).has_value());
    CHECK_FALSE(catalog::day_text(-1e300, false).has_value());
}

TEST_CASE("cell value: a number in its form")
{
    CHECK(catalog::shown_as(0.08, {Kind::Percent, 0}, false) == "8%");
    CHECK(catalog::shown_as(12345000065, {Kind::Plain, 12}, false) == "012345000065");
    CHECK(catalog::shown_as(2.5, {Kind::Plain, 12}, false) == "2.5");
    CHECK(catalog::shown_as(5, {Kind::Day, 0}, false) == "5");
}
