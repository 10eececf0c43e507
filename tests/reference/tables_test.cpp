// The tables themselves: all are read, none is forgotten, and the reader refuses what would let a test pass on nothing.
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <array>
#include <filesystem>
#include <set>
#include <stdexcept>
#include <string>

namespace test {

TEST_CASE("reference: every table in the folder is known, has rows and says how far each can be trusted")
{
    struct Table {
        std::string name;
        std::size_t rows;
    };
    const std::array tables{
        Table{"allergens.csv", 263},
        Table{"contrast_examples.csv", 59},
        Table{"conversions.csv", 45},
        Table{"energy_and_measures.csv", 107},
        Table{"estimated_calories.csv", 193},
        Table{"unit_price.csv", 67},
        Table{"unit_price_rules.csv", 25},
        Table{"daily_values.csv", 171},
        Table{"gtin.csv", 321},
        Table{"label_examples.csv", 196},
        Table{"label_names.csv", 18},
        Table{"racc.csv", 170},
        Table{"rounding.csv", 139},
        Table{"rounding_examples.csv", 342},
        Table{"claims.csv", 128},
        Table{"program_rules.csv", 140},
        Table{"whole_grain_words.csv", 186},
        Table{"category_words.csv", 177},
        Table{"readability.csv", 91},
    };
    std::set<std::string> known{"README.md"};
    for (const auto& table : tables) {
        CAPTURE(table.name);
        const auto rows = reference_rows(table.name);
        CHECK(rows.size() == table.rows); // a table cut short would pass all else
        for (const auto& row : rows) {
            CAPTURE(row.place());
            const auto& checked = row["checked"];
            CHECK((checked == "verified" || checked == "memory" || checked.starts_with("computed")));
        }
        known.insert(table.name);
    }
    std::set<std::string> found;
    for (const auto& file : std::filesystem::directory_iterator(PAIRSTAND_SOURCE "/tests/data/reference"))
        found.insert(file.path().filename().string());
    CHECK(found == known);
}

// Source: RFC 4180, section 2.
TEST_CASE("reference: cells are read as RFC 4180 writes them")
{
    for (const std::string& end : {std::string("\n"), std::string("\r\n")}) {
        CAPTURE(end.size());
        const auto rows = parse_reference(
            "name,note,source" + end + R"("a, b","say ""yes""",)" + end + "c,\"two\nlines\",s", "a table");
        REQUIRE(rows.size() == 2);
        CHECK(rows[0]["name"] == "a, b");
        CHECK(rows[0]["note"] == "say \"yes\"");
        CHECK(rows[0]["source"].empty());
        CHECK(rows[1]["note"] == "two\nlines");
        CHECK(rows[1].place() == "a table row 3 (source: s)");
    }
}

TEST_CASE("reference: a table that would let a test pass on nothing throws")
{
    struct Case {
        std::string why, csv;
    };
    const Case cases[] = {
        {"no text", ""},
        {"a header alone", "name,source\n"},
        {"a cell too few", "name,source\na\n"},
        {"a cell too many", "name,source\na,b,c\n"},
        {"a column twice", "name,name\na,b\n"},
        {"a quote that never closes", "name,source\n\"a,b\n"},
        {"text behind a closing quote", "name,source\n\"a\"b,c\n"},
        {"a quote inside a bare cell", "name,source\na\"b,c\n"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK_THROWS_AS((void)parse_reference(c.csv, "a table"), std::runtime_error);
    }
    const auto rows = parse_reference("name,source\na,b\n", "a table");
    CHECK_THROWS_AS((void)rows[0]["no such column"], std::runtime_error);
    CHECK_THROWS_AS((void)reference_rows("no_such_table.csv"), std::runtime_error);
    CHECK_THROWS_AS((void)reference_rows("gtin.csv", "kind", "no such kind"), std::runtime_error);
    CHECK_THROWS_AS((void)reference_rows("gtin.csv", "no such column", "valid"), std::runtime_error);
}

} // namespace test
