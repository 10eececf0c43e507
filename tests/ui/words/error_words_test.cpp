#include "tests/support/headless.h"
#include "ui/words/error_words.h"

#include <doctest/doctest.h>

using core::Error;
using core::Place;
using Kind = Error::Kind;

TEST_CASE("error words: an error is one sentence: where, what, what was expected")
{
    struct Case {
        const char* why;
        Error error;
        const char* sentence;
    };
    const Case cases[] = {
        {"a cell",
         {Kind::BadValue, "cell", Place{"sheet.csv", 7, "sodium_mg", "12x", "a number of mg"}},
         "sheet.csv, row 7, column sodium_mg: found \"12x\", expected a number of mg."},
        {"an empty cell",
         {Kind::MissingValue, "cell", Place{"sheet.csv", 7, "name", "", "the product's name"}},
         "sheet.csv, row 7, column name: the cell is empty, expected the product's name."},
        {"a misspelt column",
         {Kind::UnknownColumn, "header", Place{"sheet.csv", 1, "sodum_mg", "sodum_mg", "sodium_mg"}},
         "sheet.csv, row 1: no column is called \"sodum_mg\"; did you mean sodium_mg?"},
        {"an unknown column",
         {Kind::UnknownColumn, "header", Place{"sheet.csv", 1, "price", "price", ""}},
         "sheet.csv, row 1: no column is called \"price\"."},
        {"a missing column",
         {Kind::MissingColumn, "header", Place{"sheet.csv", 1, "gtin", "", "digits"}},
         "sheet.csv, row 1: the column gtin is missing; it takes digits."},
        {"a row",
         {Kind::BadRow, "cells", Place{"sheet.csv", 9, "", "13 cells", "15 cells"}},
         "sheet.csv, row 9: found 13 cells, expected 15 cells."},
        {"a file",
         {Kind::CannotRead, "Permission denied", Place{"shop", 0, "", "", ""}},
         "shop: cannot be read (Permission denied); check the file and whether you may read it."},
        {"a damaged catalog",
         {Kind::TornCatalog, "it is torn", Place{"shop", 0, "", "", ""}},
         "shop: this catalog is damaged; move it away and load your sheets again with 'pairstand load SHEET --into "
         "shop'."},
        {"a bundle that was not copied to its end",
         {Kind::CutBundle, "900 of 1000 bytes are there", Place{"stick/winter", 0, "", "", ""}},
         "stick/winter: only a part of this bundle was copied, so it was not installed; copy it once more, and wait "
         "until the stick may be pulled out."},
        {"a bundle that changed",
         {Kind::DamagedBundle, "a part is not as it was sealed", Place{"stick/winter", 0, "", "catalog.db", ""}},
         "stick/winter: this bundle is not as it was sealed (its catalog.db differs), so it was not installed; copy it "
         "once more from where it was sealed."},
        {"a bundle of somebody else",
         {Kind::ForeignKey, "sealed with another key", Place{"b", 0, "", "1111 2222", "3333 4444"}},
         "b: this bundle is sealed with another key (1111 2222) than the one accepted here (3333 4444), so it was not "
         "installed; ask the maker of your bundles for theirs."},
        {"an older bundle",
         {Kind::OlderBundle, "not newer", Place{"b", 0, "", "4", "7"}},
         "b: this bundle has the number 4, and number 7 was in place here already, so it was not installed; ask for a "
         "newer one, or go back with 'pairstand install --go-back'."},
        {"a full disk",
         {Kind::NoRoom, "too little room", Place{"data", 0, "", "12", "905"}},
         "data: 905 MB are needed here and 12 MB are free, so it was not installed; make room on the disk, and install "
         "it again."},
        {"a code without a place",
         {Kind::WrongCheckDigit, "123", {}},
         "\"123\" is no product number, since its last digit does not fit the others; compare it with the digits under "
         "the bars."},
        {"a cell that looks like a placeholder",
         {Kind::BadValue, "", Place{"", 2, "", "{expected}", "{found}"}},
         "row 2: found \"{expected}\", expected {found}."},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(ui::sentence(c.error, test::language("en")) == c.sentence);
    }
}

TEST_CASE("error words: in Spanish")
{
    const auto& spanish = test::language("es");
    CHECK(
        ui::sentence({Kind::TornCatalog, "it is torn", Place{"tienda", 0, "", "", ""}}, spanish) ==
        "tienda: este catálogo está dañado; muévalo a otro lugar y cargue sus hojas otra vez con 'pairstand load HOJA "
        "--into tienda'.");
    CHECK(ui::sentence({Kind::OlderBundle, "not newer", Place{"b", 0, "", "4", "7"}}, spanish) ==
          "b: este conjunto tiene el número 4, y aquí ya estuvo el número 7, por eso no se instaló; pida uno más "
          "nuevo, o "
          "vuelva al anterior con 'pairstand install --go-back'.");
    CHECK(ui::sentence({Kind::CutBundle, "", Place{"b", 0, "", "", ""}}, spanish) ==
          "b: de este conjunto solo se copió una parte, por eso no se instaló; cópielo otra vez, y espere hasta que se "
          "pueda sacar la memoria.");
    CHECK(ui::sentence({Kind::MissingColumn, "", Place{"h.csv", 1, "gtin", "", "digits"}}, spanish) ==
          "h.csv, fila 1: falta la columna gtin; lleva digits.");
    CHECK(ui::sentence({Kind::BadValue, "", Place{"h.csv", 2, "sodium_mg", "12x", "digits"}}, spanish)
              .starts_with("h.csv, fila 2, columna sodium_mg: dice \"12x\""));
}

TEST_CASE("error words: every kind has words of its own, with and without a place")
{
    for (const std::string code : {"en", "es"})
        for (int kind = 0; kind <= static_cast<int>(Kind::CannotWrite); ++kind) {
            CAPTURE(code);
            CAPTURE(kind);
            const auto& language = test::language(code);
            const auto bare = ui::sentence({static_cast<Kind>(kind), "detail", {}}, language);
            const auto placed =
                ui::sentence({static_cast<Kind>(kind), "detail", Place{"s", 1, "c", "f", "e"}}, language);
            CHECK(bare.ends_with('.'));
            CHECK(placed.starts_with(code == "en" ? "s, row 1" : "s, fila 1"));
            CHECK(bare.find('{') == std::string::npos);
            // The row of the first kind must not stand in for one that the table forgot.
            if (kind > 0)
                CHECK(bare != ui::sentence({static_cast<Kind>(0), "detail", {}}, language));
        }
}
