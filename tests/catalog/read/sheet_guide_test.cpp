// docs/sheet.md explains every column that there is, and none that there is not; its example loads.
#include "catalog/read/sheet.h"
#include "catalog/read/sheet_columns.h"
#include "core/rules/reference_amounts.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace {

std::string guide()
{
    return test::bytes_of(std::string(PAIRSTAND_SOURCE) + "/docs/sheet.md");
}

/// The part of a text between two marks, without them.
std::string between(const std::string& text, const std::string& begin, const std::string& end)
{
    const auto from = text.find(begin);
    REQUIRE(from != std::string::npos);
    const auto to = text.find(end, from + begin.size());
    REQUIRE(to != std::string::npos);
    return text.substr(from + begin.size(), to - from - begin.size());
}

/// Every name in backquotes that is all there is in a cell of a table.
std::multiset<std::string> names_in_tables(const std::string& text)
{
    std::multiset<std::string> names;
    for (std::size_t at = text.find("| `"); at != std::string::npos; at = text.find("| `", at + 1)) {
        const auto end = text.find('`', at + 3);
        if (text.compare(end, 3, "` |") == 0)
            names.insert(text.substr(at + 3, end - at - 3));
    }
    return names;
}

} // namespace

TEST_CASE("sheet guide: the columns of the page are the columns of the program")
{
    const auto text = guide();
    // In the first table examples stand in backquotes as well: its first cells alone count.
    std::multiset<std::string> told;
    const auto first = between(text, "\n| column |", "\n### Figures");
    for (std::size_t at = first.find("\n| `"); at != std::string::npos; at = first.find("\n| `", at + 1))
        told.insert(first.substr(at + 4, first.find('`', at + 4) - at - 4));
    told.merge(names_in_tables(between(text, "| nutrient |", "\n### A second column")));
    std::multiset<std::string> known;
    for (const auto& column : catalog::sheet_columns())
        if (!column.second)
            known.insert(column.name);
        else
            CHECK(column.name.starts_with("second_"));
    CHECK(told == known);
    CHECK(known.size() > 80);
}

TEST_CASE("sheet guide: every second figure is a first one with a word in front")
{
    for (const auto& column : catalog::sheet_columns())
        if (column.nutrient) {
            CAPTURE(column.name);
            const auto* other = catalog::sheet_column(column.second ? column.name.substr(7) : "second_" + column.name);
            REQUIRE(other != nullptr);
            CHECK(other->nutrient == column.nutrient);
            CHECK(other->field == column.field);
        }
}

TEST_CASE("sheet guide: the limits on the page hold")
{
    const auto text = guide();
    const auto table = between(text, "\n| column |", "\n### Figures");
    for (const auto& row : catalog::sheet_columns_table()) {
        if (row.longest <= 40)
            continue; // numbers and words from a list: nobody meets that limit
        CAPTURE(row.name);
        const auto line = between(table, "\n| `" + std::string(row.name) + "` |", "\n");
        auto letters = std::to_string(row.longest);
        if (letters.size() > 3)
            letters.insert(letters.size() - 3, ",");
        if (!row.expected.starts_with("nutrients ")) // a list of nutrients has no limit that people meet
            CHECK(line.find("at most " + letters + " letters") != std::string::npos);
    }
    CHECK(text.find("64 MiB and 200,000") != std::string::npos);
    CHECK(catalog::largest_sheet == 64U * 1024 * 1024);
    CHECK(catalog::most_rows == 200'000);
    CHECK(text.find("At most 1,000 faults") != std::string::npos);
    CHECK(catalog::Faults::most_kept == 1000);
}

TEST_CASE("sheet guide: the page lists every reference food with its amount, and no other")
{
    const auto table = between(guide(), "\n| key | food |", "\n## What the load says");
    CHECK(std::count(table.begin(), table.end(), '\n') == std::ptrdiff_t{2} + std::ssize(core::reference_amounts()));
    for (const auto& food : core::reference_amounts()) {
        CAPTURE(std::string(food.key));
        const auto line = between(table, "\n| `" + std::string(food.key) + "` | ", "\n");
        CHECK(line.starts_with(std::string(food.category) + " | "));
        const auto amount = core::amount_of(food);
        CHECK(line.find(amount ? core::measure_text(*amount) : "in words: ") != std::string::npos);
    }
}

TEST_CASE("sheet guide: the example loads as it stands")
{
    const auto sheet = catalog::read_sheet(between(guide(), "```csv\n", "```"), "example.csv");
    CHECK(sheet.faults.empty());
    REQUIRE(sheet.products.size() == 1);
    CHECK(sheet.products[0].name == "Oat rounds, honey");
    CHECK(sheet.products[0].label.contains == "");
}

TEST_CASE("sheet guide: every example of the table is one that its column takes")
{
    std::string header;
    std::string row;
    for (const auto& column : catalog::sheet_columns()) {
        header += (header.empty() ? "" : ",") + column.name;
        row += (row.empty() ? "" : ",") + ("\"" + column.example + "\"");
    }
    const auto sheet = catalog::read_sheet(header + "\n" + row + "\n", "all.csv");
    for (const auto& error : sheet.faults.kept())
        FAIL_CHECK(error.place.column);
    REQUIRE(sheet.products.size() == 1);
    CHECK(sheet.products[0].label.per_serving.lines.size() == core::nutrients().size());
}
