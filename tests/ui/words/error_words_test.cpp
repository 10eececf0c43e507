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
        {"a file", {Kind::CannotRead, "it is torn", Place{"shop", 0, "", "", ""}}, "shop: cannot be read: it is torn."},
        {"a code without a place",
         {Kind::WrongCheckDigit, "123", {}},
         "\"123\" is no product number: its last digit does not fit the others."},
        {"a cell that looks like a placeholder",
         {Kind::BadValue, "", Place{"", 2, "", "{expected}", "{found}"}},
         "row 2: found \"{expected}\", expected {found}."},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(ui::sentence(c.error) == c.sentence);
    }
}

TEST_CASE("error words: every kind has words of its own, with and without a place")
{
    for (int kind = 0; kind <= static_cast<int>(Kind::CannotWrite); ++kind) {
        CAPTURE(kind);
        const auto bare = ui::sentence({static_cast<Kind>(kind), "detail", {}});
        const auto placed = ui::sentence({static_cast<Kind>(kind), "detail", Place{"s", 1, "c", "f", "e"}});
        CHECK(bare.ends_with('.'));
        CHECK(placed.starts_with("s, row 1"));
        CHECK(bare.find('{') == std::string::npos);
        // The row of the first kind must not stand in for one that the table forgot.
        if (kind > 0)
            CHECK(bare != ui::sentence({static_cast<Kind>(0), "detail", {}}));
    }
}
