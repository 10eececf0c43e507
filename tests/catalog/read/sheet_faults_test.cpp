// Everything that can be wrong with a sheet, and how it is told.
#include "catalog/read/sheet.h"
#include "tests/catalog/products.h"
#include "tests/catalog/read/one_row.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

using catalog::read_sheet;
using test::OneRow;
using test::tell;
using test::told;
using Kind = core::Error::Kind;
using namespace std::string_literals;

TEST_CASE("sheet: a wrong cell is told by row, column, value and what was expected")
{
    struct Case {
        const char* column;
        const char* cell;
        Kind kind;
        const char* expected;
    };
    const Case cases[] = {
        {"gtin", "", Kind::MissingValue, "8, 12, 13 or 14 digits"},
        {"gtin", "200123456788", Kind::NotAProductCode, "a store's own"},
        {"name", " ", Kind::MissingValue, "the product's name"},
        {"name", "Oat\x1B[2J", Kind::BadEncoding, "letters and signs"},
        {"entered_on", "11/25/2026", Kind::BadValue, "2026-11-25"},
        {"entered_on", "2026-02-30", Kind::BadValue, "2026-11-25"},
        {"entered_on", "", Kind::MissingValue, "2026-11-25"},
        {"panel", "new", Kind::BadValue, "2016 or older"},
        {"audience", "dogs", Kind::BadValue, "adult, ages_1_3 or infant"},
        {"serving_size", "1 cup", Kind::BadValue, "grams or millilitres"},
        {"serving_size", "0 g", Kind::BadValue, "grams or millilitres"},
        {"serving_size", "", Kind::MissingValue, "grams or millilitres"},
        {"servings_per_container", "a few", Kind::BadValue, "about 9"},
        {"calories", "", Kind::MissingValue, "calories"},
        {"calories", "lots", Kind::BadValue, "calories"},
        {"sodium_mg", "12x", Kind::BadValue, "mg"},
        {"sodium_mg", "12 g", Kind::BadValue, "mg"},
        {"sodium_mg", "-5", Kind::BadValue, "mg"},
        {"sodium_mg", "1,500", Kind::BadValue, "1500 or 1.5"},
        {"sodium_mg", "0,5", Kind::BadValue, "with a point"},
        {"sodium_percent_dv", "8.5", Kind::BadValue, "whole percent"},
        {"sodium_percent_dv", "8%%", Kind::BadValue, "whole percent"},
        {"sodium_percent_dv", "99999", Kind::BadValue, "whole percent"},
        {"not_significant", "trans_fatt", Kind::BadValue, "trans_fat"},
        {"reference_food", "cereal 20 to 43", Kind::BadValue, "cereal_20_to_43_g_per_cup"},
        {"reference_food", "something else altogether", Kind::BadValue, "a key of the list of reference foods"},
        {"second_column", "both", Kind::BadValue, "as_prepared or per_container"},
        {"second_column", "as_prepared", Kind::BadValue, "second_calories"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.column);
        CAPTURE(c.cell);
        const auto sheet = OneRow().with(c.column, c.cell).read();
        REQUIRE(sheet.faults.count() == 1);
        const auto& error = sheet.faults.kept().front();
        CHECK(error.kind == c.kind);
        CHECK(error.place.source == "some/folder/cereals.csv");
        CHECK(error.place.row == 2);
        CHECK(error.place.column == c.column);
        CAPTURE(error.place.expected);
        CHECK(error.place.expected.find(c.expected) != std::string::npos);
        CHECK(sheet.products.empty());
        CHECK(sheet.refused_rows == 1);
    }
    CHECK(OneRow().with("sodium_mg", "12x").read().faults.kept()[0].place.found == "12x");
}

TEST_CASE("sheet: a second column without figures is told by the word that stands there")
{
    for (const char* word : {"as_prepared", "Per_container"}) {
        CAPTURE(word);
        const auto sheet = OneRow().with("second_column", word).with("second_calories", " ").read();
        REQUIRE(told(sheet) == std::vector{tell(2, "second_column", Kind::BadValue)});
        CHECK(sheet.faults.kept()[0].place.found == word); // an empty one would leave no sentence to make of it
    }
}

TEST_CASE("sheet: all faults of a row are told at once, and its number is still known")
{
    const auto bad =
        OneRow().with("name", "").with("calories", "x").with("sodium_mg", "y").with("second_calories", "280").read();
    CHECK(told(bad) == std::vector{tell(2, "name", Kind::MissingValue), tell(2, "calories", Kind::BadValue),
                                   tell(2, "sodium_mg", Kind::BadValue), tell(2, "second_column", Kind::MissingValue)});
    const auto doubled = read_sheet("gtin,name,entered_on,serving_size,calories\n"
                                    "9521234543213,,2026-03-02,39 g,140\n"
                                    "09521234543213,Oats,2026-03-02,39 g,140\n",
                                    "x.csv");
    CHECK(told(doubled) == std::vector{tell(2, "name", Kind::MissingValue), tell(3, "gtin", Kind::DoubledValue)});
    CHECK(doubled.faults.kept()[1].place.expected == "each number once; it already stands in row 2");
    CHECK(doubled.faults.kept()[1].place.found == "09521234543213");
    CHECK(doubled.refused_rows == 2);
}

TEST_CASE("sheet: too long a cell is told with both lengths")
{
    const auto sheet =
        OneRow().with("name", std::string(121, 'x')).with("ingredients", std::string(10'000, 'x')).read();
    REQUIRE(sheet.faults.count() == 1);
    CHECK(sheet.faults.kept()[0].kind == Kind::TooLarge);
    CHECK(sheet.faults.kept()[0].place.expected == "at most 120 letters, not 121");
    CHECK(sheet.faults.kept()[0].place.found.size() < 100);
    std::string accents;
    for (int i = 0; i < 120; ++i)
        accents += "é"; // letters are counted, not bytes
    CHECK(OneRow().with("name", accents).read().faults.empty());
}

TEST_CASE("sheet: rows are numbered as the spreadsheet shows them")
{
    const auto sheet = read_sheet("gtin,name,entered_on,serving_size,calories,ingredients\n"
                                  "9521234543213,Oats,2026-03-02,39 g,140,\"Oats,\nsalt,\nhoney\"\n"
                                  "\n"
                                  ",,,,,\n"
                                  "9520000001001,Oats,2026-03-02,39 g,x,\n",
                                  "x.csv");
    CHECK(told(sheet) == std::vector{tell(5, "calories", Kind::BadValue)});
}

TEST_CASE("sheet: rows with cells too few or too many are told, and nothing is guessed of them")
{
    const std::string header = "gtin,name,entered_on,serving_size,calories\n";
    struct Case {
        const char* why;
        std::string row;
        bool good;
    };
    const Case cases[] = {
        {"right", "9521234543213,Oats,2026-03-02,39 g,140", true},
        {"one too few", "9521234543213,Oats,2026-03-02,39 g", false},
        {"one too many", "9521234543213,Oats,honey,2026-03-02,39 g,140", false},
        {"empty ones too many", "9521234543213,Oats,2026-03-02,39 g,140,, ", true},
        {"thousands too many", "9521234543213,Oats,2026-03-02,39 g,140" + std::string(1000, ','), false},
        {"a quote never closed", "9521234543213,\"Oats,2026-03-02,39 g,140", false},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sheet = read_sheet(header + c.row + "\n9520000001001,Oats,2026-03-02,39 g,140\n", "x.csv");
        CHECK(sheet.products.size() == (c.good ? 2 : 1));
        CHECK(sheet.refused_rows == (c.good ? 0 : 1));
        REQUIRE(sheet.faults.count() == (c.good ? 0 : 1));
        if (!c.good)
            CHECK(told(sheet) == std::vector{tell(2, "", Kind::BadRow)});
    }
}

// A column that is misspelt or missing would leave every label without its figure: no row of such a sheet is good.
TEST_CASE("sheet: with a fault in the header no row is good, and all cells are looked at all the same")
{
    struct Case {
        const char* why;
        const char* header;
        Kind kind;
        const char* column;
        const char* expected;
    };
    const Case cases[] = {
        {"a misspelt name", "gtin,name,entered_on,serving_size,calories,sodum_mg", Kind::UnknownColumn, "sodum_mg",
         "sodium_mg"},
        {"an unknown name", "gtin,name,entered_on,serving_size,calories,price", Kind::UnknownColumn, "price", ""},
        {"a name twice", "gtin,name,entered_on,serving_size,calories,calories", Kind::DoubledValue, "calories",
         "column number 5 (E)"},
        {"no number", "note,name,entered_on,serving_size,calories,brand", Kind::MissingColumn, "gtin", "digits"},
        {"no serving", "gtin,name,entered_on,note,calories,brand", Kind::MissingColumn, "serving_size",
         "serving_household"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sheet = read_sheet(c.header + "\n9521234543213,Oats,2026-03-02,39 g,140,150\n"s, "x.csv");
        REQUIRE(sheet.faults.count() == 1);
        const auto& error = sheet.faults.kept().front();
        CHECK(error.kind == c.kind);
        CHECK(error.place.row == 1);
        CHECK(error.place.column == c.column);
        CHECK(error.place.expected.find(c.expected) != std::string::npos);
        CHECK(sheet.products.empty());
        CHECK(sheet.refused_rows == 1);
    }
    const auto both = read_sheet("gtin,name,entered_on,serving_size,calories,sodum_mg\n"
                                 "9521234543213,Oats,2026-03-02,39 g,x,150\n",
                                 "x.csv");
    CHECK(told(both) == std::vector{tell(1, "sodum_mg", Kind::UnknownColumn), tell(2, "calories", Kind::BadValue)});
}

TEST_CASE("sheet: a cell under no name is told, since it would be lost")
{
    const auto sheet = read_sheet("gtin,name,entered_on,serving_size,calories,\n"
                                  "9521234543213,Oats,2026-03-02,39 g,140,150\n",
                                  "x.csv");
    CHECK(told(sheet) == std::vector{tell(2, "number 6 (F)", Kind::BadValue)});
}

TEST_CASE("sheet: what is no sheet has one fault, which says what it is")
{
    struct Case {
        const char* why;
        std::string bytes;
        Kind kind;
    };
    const Case cases[] = {
        {"nothing", "", Kind::Empty},
        {"only empty lines", "\n\n ,\n", Kind::Empty},
        {"only a header", "gtin,name,entered_on,serving_size,calories\n", Kind::Empty},
        {"a torn workbook", "PK\x03\x04 and so on", Kind::TornFile},
        {"an old workbook", "\xD0\xCF\x11\xE0\xA1\xB1", Kind::BadEncoding},
        {"UTF-16 without its mark", "g\0t\0i\0n\0"s, Kind::BadEncoding},
        {"a header with an open quote", "gtin,\"name\n1,2\n", Kind::BadRow},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sheet = read_sheet(c.bytes, "x.csv");
        REQUIRE(sheet.faults.count() == 1);
        CHECK(sheet.faults.kept()[0].kind == c.kind);
        CHECK(sheet.products.empty());
    }
}

TEST_CASE("sheet: files that cannot be read, and files without end")
{
    const test::TempFolder folder;
    const auto kind_of = [](const std::string& path) {
        const auto sheet = catalog::read_sheet_file(path);
        REQUIRE(sheet.faults.count() == 1);
        CHECK(sheet.faults.kept()[0].place.source == path);
        return sheet.faults.kept()[0].kind;
    };
    CHECK(kind_of(folder.file("missing.csv")) == Kind::NoSuchFile);
    CHECK(kind_of(folder.file("")) == Kind::IsFolder);
    CHECK(kind_of("/dev/zero") == Kind::TooLarge);
    const auto good = catalog::read_sheet_file(folder.write("good.csv", test::good_sheet(3)));
    CHECK(good.faults.empty());
    CHECK(good.products.size() == 3);
}

TEST_CASE("sheet: more rows than any sheet has are refused, not kept")
{
    std::string many = "gtin,name,entered_on,serving_size,calories\n";
    for (std::size_t i = 0; i <= catalog::most_rows; ++i)
        many += "1,,,,\n";
    const auto sheet = read_sheet(many, "x.csv");
    CHECK(sheet.faults.count() > catalog::Faults::most_kept);
    CHECK(sheet.faults.kept().size() == catalog::Faults::most_kept);
    CHECK(sheet.products.empty());
    CHECK(sheet.refused_rows == catalog::most_rows + 1);
}
