#include "catalog/read/csv.h"

#include <doctest/doctest.h>

#include <chrono>
#include <stdexcept>

using catalog::CsvRow;

namespace {

/// Rows as "1[a|b] 2[]"; "3!" is a row with a bad quote.
std::string rows_of(std::string_view text, char separator = ',')
{
    std::string all;
    catalog::for_each_row(text, separator, [&](const CsvRow& row) {
        all += (all.empty() ? "" : " ") + std::to_string(row.number);
        if (row.bad_quote) {
            all += "!";
            return;
        }
        std::string cells;
        for (const auto& cell : row.cells)
            cells += (&cell == row.cells.data() ? "" : "|") + cell;
        all += "[" + cells + "]";
    });
    return all;
}

} // namespace

// Source: RFC 4180, section 2, rule by rule; what lies beyond it is common practice of spreadsheet programs.
TEST_CASE("csv: rows and cells as a spreadsheet shows them")
{
    struct Case {
        const char* why;
        const char* text;
        char separator;
        const char* rows;
    };
    const Case cases[] = {
        {"nothing", "", ',', ""},
        {"rule 1", "a,b\nc,d\n", ',', "1[a|b] 2[c|d]"},
        {"rule 2, no line break at the end", "a,b\nc,d", ',', "1[a|b] 2[c|d]"},
        {"rule 4, blanks inside are kept", "a b,c", ',', "1[a b|c]"},
        {"rule 5", "\"a\",b", ',', "1[a|b]"},
        {"rule 6, a separator, a line break, a quote", "\"a,\nb\"\"c\",d\ne,f", ',', "1[a,\nb\"c|d] 2[e|f]"},
        {"semicolons", "a;b,c\n", ';', "1[a|b,c]"},
        {"tabs, an empty cell at each end", "\ta\t\n", '\t', "1[|a|]"},
        {"empty cells", ",\n,,", ',', "1[|] 2[||]"},
        {"an empty line is a row", "a\n\nb\n", ',', "1[a] 2[] 3[b]"},
        {"a quoted line break is not", "\"a\n\n\"\nb\n", ',', "1[a\n\n] 2[b]"},
        {"blanks around cells", " a , \"b\" ,c", ',', "1[a|b|c]"},
        {"a quote never closed takes its line only", "a\n\"b\nc\nd", ',', "1[a] 2! 3[c] 4[d]"},
        {"a quote that would swallow the next rows", "a,\"b\nc,\"d\"\ne,f", ',', "1! 2[c|d] 3[e|f]"},
        {"a quote in an open cell", "12\" pan,b\nc,d", ',', "1! 2[c|d]"},
        {"text behind a quoted cell", "\"a\"b,c\nd,e\n", ',', "1! 2[d|e]"},
        {"a lone quote at the very end", "a\n\"", ',', "1[a] 2!"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(rows_of(c.text, c.separator) == c.rows);
    }
}

TEST_CASE("csv: a first line that tells the separator is no row")
{
    struct Case {
        std::string_view text;
        char separator;
        std::string_view rest;
    };
    const Case cases[] = {
        {"sep=;\na;b\n", ';', "a;b\n"},
        {"\"sep=,\"\na\n", ',', "a\n"},
        {"SEP=\t\na", '\t', "a"},
        {"sep=;", ';', ""},
        {"sep=\na", 0, "sep=\na"},
        {"separator\n", 0, "separator\n"},
        {"", 0, ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        auto text = c.text;
        CHECK(catalog::take_separator_line(text) == c.separator);
        CHECK(text == c.rest);
    }
}

TEST_CASE("csv: cells beyond the limit are counted, not kept")
{
    const std::string text = std::string(100'000, ',') + "\nb\n";
    std::vector<CsvRow> rows;
    catalog::for_each_row(text, ',', [&](const CsvRow& row) { rows.push_back(row); });
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].cell_count == 100'001);
    CHECK(rows[0].cells.size() == catalog::most_cells);
    CHECK(rows[1].cells == std::vector<std::string>{"b"});
}

TEST_CASE("csv: what a row's taker throws arrives, and no later row is taken")
{
    int taken = 0;
    CHECK_THROWS_AS(catalog::for_each_row("a\nb\nc\n", ',',
                                          [&](const CsvRow&) {
                                              ++taken;
                                              throw std::runtime_error("enough");
                                          }),
                    std::runtime_error);
    CHECK(taken == 1);
}

TEST_CASE("csv: open quotes do not make reading slow")
{
    std::string open;
    for (int i = 0; i < 20'000; ++i)
        open += "\"a\"\"\n"; // each line could open a cell that reaches to the end
    const auto start = std::chrono::steady_clock::now();
    CHECK_FALSE(rows_of(open).empty());
    std::string lines = "\"";
    for (int i = 0; i < 200'000; ++i)
        lines += "a\n";
    CHECK_FALSE(rows_of(lines).empty());
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(10));
}
