// What core and catalog say in English, in Spanish: every phrase has its text, and no fault of a sheet is left in
// English.
#include "catalog/read/sheet.h"
#include "catalog/read/sheet_columns.h"
#include "kiosk/desk/settings.h"
#include "tests/support/headless.h"
#include "tests/support/temp_folder.h"
#include "ui/words/core_words.h"
#include "ui/words/error_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace {

using ui::core_words;

const ui::Language& spanish()
{
    return test::language("es");
}

/// One word, a key or a number: it must be typed as it stands.
bool is_key(const std::string& words)
{
    return words.find(' ') == std::string::npos;
}

void check_translated(const core::Error& error)
{
    const auto& place = error.place;
    CAPTURE(place.expected);
    CAPTURE(place.found);
    CHECK((is_key(place.expected) || core_words(place.expected, spanish()) != place.expected));
    CHECK(core_words(place.expected, test::language("en")) == place.expected);
    if (place.column.empty())
        CHECK((is_key(place.found) || core_words(place.found, spanish()) != place.found));
}

} // namespace

TEST_CASE("core words: a phrase is written as the English file has it, and has an own text in Spanish")
{
    std::set<std::string_view> seen;
    for (const auto& phrase : ui::core_phrases()) {
        CAPTURE(phrase.english);
        CHECK(test::language("en").text(phrase.id) == phrase.english);
        CHECK(spanish().text(phrase.id) != phrase.english);
        CHECK(seen.insert(phrase.english).second);
    }
    CHECK(seen.size() > 100);
}

TEST_CASE("core words: what changes in a phrase is kept, and is a phrase itself where it is one")
{
    struct Case {
        std::string english;
        std::string words;
    };
    const Case cases[] = {
        {"12 cells", "12 celdas"},
        {"15 cells, as many as the header has", "15 celdas, tantas como el encabezado"},
        {"a header row", "una fila de encabezado"},
        {"at most that much", "como máximo eso"},
        {"at most 200", "como máximo 200"},
        {"each number once; it already stands in row 3", "cada número una vez; ya está en la fila 3"},
        {"each number once; it already stands in a.csv, row 3", "cada número una vez; ya está en a.csv, fila 3"},
        {"class, label_2016 or label_older", "class, label_2016 o label_older"},
        {"as_prepared or per_container, since the row has figures of a second column",
         "as_prepared o per_container, porque la fila tiene cifras de una segunda columna"},
        {"grams or millilitres, such as 55 g or 240 mL (or a column serving_household)",
         "gramos o mililitros, como 55 g o 240 mL (o una columna serving_household)"},
        {"1500 or 1.5, since it can be read as either", "1500 o 1.5, porque se puede leer de las dos maneras"},
        {"a number of mg, such as 3 or \"less than 1\"", "un número de mg, como 3, o “less than 1” si es menos de 1"},
        {"7 CFR 246.10(e)(12), Table 4", "7 CFR 246.10(e)(12), tabla 4"},
        {"7 CFR 246.10(e)(12), Table 4, as amended by 89 FR 28488",
         "7 CFR 246.10(e)(12), tabla 4, con los cambios de 89 FR 28488"},
        {"21 CFR 101.9(b)(7)", "21 CFR 101.9(b)(7)"},
        {"common practice", "costumbre"},
        {"two and a half", "two and a half"}, // somebody's cell
        {"sodium_mg", "sodium_mg"},
        {" or ", " or "},
        {"", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.english);
        CHECK(core_words(c.english, spanish()) == c.words);
        CHECK(core_words(c.english, test::language("en")) == c.english);
    }
}

TEST_CASE("core words: a cell is never translated, what is said of a file is")
{
    using core::Error;
    CHECK(
        ui::sentence({Error::Kind::BadValue, "", {"h.csv", 2, "gtin", "12 rows", "a CSV file in UTF-8"}}, spanish()) ==
        "h.csv, fila 2, columna gtin: dice \"12 rows\", se esperaba un archivo CSV en UTF-8.");
    CHECK(ui::sentence({Error::Kind::TooLarge, "", {"h.csv", 0, "", "12 rows", "at most 10"}}, spanish()) ==
          "h.csv: dice \"12 filas\", se esperaba como máximo 10.");
}

TEST_CASE("core words: what every column of a sheet takes is told in Spanish")
{
    for (const auto& column : catalog::sheet_columns()) {
        CAPTURE(column.name);
        CHECK(core_words(column.expected, spanish()) != column.expected);
        CHECK(core_words(column.expected, test::language("en")) == column.expected);
    }
}

TEST_CASE("core words: what every setting takes is told in Spanish")
{
    for (const auto& row : kiosk::settings_table()) {
        CAPTURE(row.key);
        CHECK(core_words(row.expected, spanish()) != row.expected);
    }
    for (const auto* const text : {"aims\n", "aims = class\naims = class\n", "aims = all\n", "nothing = 1\n"})
        for (const auto read = kiosk::read_settings(text, "station.conf"); const auto& fault : read.faults)
            check_translated(fault);
}

TEST_CASE("core words: every fault of many broken sheets is told in Spanish")
{
    const std::string head =
        "gtin,name,entered_on,serving_size,calories,total_fat_g,second_column,second_calories,note\n";
    const std::string start = "9520000000998,Corn stars,2026-03-02,30 g,110,1";
    const std::string sheets[] = {
        test::bytes_of(PAIRSTAND_SOURCE "/tests/data/sheets/twenty_faults.csv"),
        "",
        "gtin\n",
        head,
        head + start + "\n",
        head + start + ",,,,more\n",
        head + start + ",as_prepared,,\n",
        head + start + ",,120,\n",
        head + start + ",frozen,120,\n",
        head + start + ",,,\n" + start + ",,,\n",
        head + start + ",,," + std::string(600, 'n') + "\n",
        head + start + ",,,\"half\n",
        head + start + ",,,\xFF\n",
        head + "9.52E+12,Corn stars,2026-03-02,30 g,\"1,500\",1.2.3,,,\n",
        head + "19520000000995,Corn stars,02/03/2026,thirty,many,x,,,\n",
        head + "2001230000009,Corn stars,2026-03-02,30 g,110,1,,,\n",
        head + "5012345678901,Corn stars,2026-03-02,30 g,110,1,,,\n",
        head + "9780306406157,Corn stars,2026-03-02,30 g,110,1,,,\n",
        head + "9900000000004,Corn stars,2026-03-02,30 g,110,1,,,\n",
        head + "12345,Corn stars,2026-03-02,30 g,110,1,,,\n",
        "gtin,gtin,nam,sodum\n1,2,3,4\n",
        "gtin,name,entered_on,serving_size,calories,\n" + start.substr(0, start.size() - 2) + ",stray\n",
        std::string("PK\x03\x04 no workbook", 17),
        std::string("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1", 8),
        std::string("a\0b", 3),
    };
    std::size_t faults = 0;
    for (const auto& bytes : sheets) {
        const auto sheet = catalog::read_sheet(bytes, "sheet.csv");
        for (const auto& fault : sheet.faults.kept()) {
            check_translated(fault);
            ++faults;
        }
    }
    CHECK(faults > 40);
}
