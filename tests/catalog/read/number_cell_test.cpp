#include "catalog/read/number_cell.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

TEST_CASE("number cell: a number is read in one way or not at all")
{
    struct Case {
        const char* cell;
        std::optional<std::string> comma_sheet; ///< in a sheet with commas between its cells
        std::optional<std::string> other_sheet; ///< in one with semicolons or tabs
    };
    const Case cases[] = {
        {"", "", ""},
        {"140", "140", "140"},
        {"less than 0.5 g", "less than 0.5 g", "less than 0.5 g"},
        {"0,5", std::nullopt, "0.5"},
        {"<0,5 g", std::nullopt, "<0.5 g"},
        {"12,25 mL", std::nullopt, "12.25 mL"},
        {"0,125", std::nullopt, "0.125"}, // a nought in front is never a thousand
        {"0.125", "0.125", "0.125"},
        {"1,500", std::nullopt, std::nullopt}, // the two readings differ a thousandfold
        {"1.500", std::nullopt, std::nullopt},
        {"120,000 mg", std::nullopt, std::nullopt},
        {"1.250 g", std::nullopt, std::nullopt},
        {"1.5000", "1.5000", "1.5000"},
        {"1500.125", "1500.125", "1500.125"}, // four digits before: no group of thousands
        {"1500,125", std::nullopt, "1500.125"},
        {"1,500.5", std::nullopt, std::nullopt},
        {"1.500,5", std::nullopt, std::nullopt},
        {"1,500,000", std::nullopt, std::nullopt},
        {"about 2,5", std::nullopt, "about 2.5"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.cell);
        const auto in_comma_sheet = catalog::with_decimal_points(c.cell, false);
        CHECK(in_comma_sheet.has_value() == c.comma_sheet.has_value());
        CHECK(in_comma_sheet.value_or("") == c.comma_sheet.value_or(""));
        const auto in_other_sheet = catalog::with_decimal_points(c.cell, true);
        CHECK(in_other_sheet.has_value() == c.other_sheet.has_value());
        CHECK(in_other_sheet.value_or("") == c.other_sheet.value_or(""));
    }
}

TEST_CASE("number cell: both readings are shown to the person who must choose")
{
    struct Case {
        const char* cell;
        const char* expected;
    };
    for (const auto& c : {Case{"1,500", "1500 or 1.5, since it can be read as either"},
                          Case{"2.000", "2000 or 2, since it can be read as either"},
                          Case{"12,340", "12340 or 12.34, since it can be read as either"}}) {
        CAPTURE(c.cell);
        CHECK(catalog::with_decimal_points(c.cell, true).error().place.expected == c.expected);
    }
}
