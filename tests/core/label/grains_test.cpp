#include "core/label/grains.h"

#include <doctest/doctest.h>

#include <string>

using Kind = core::FirstGrain::Kind;

// Sources: the lists that core/label/grains_table.cpp names, row by row.
TEST_CASE("grains: the first grain of a list, and the words that decide")
{
    struct Case {
        std::string printed;
        Kind kind;
        std::string matched;
    };
    const Case cases[] = {
        {"Whole wheat flour, water", Kind::Whole, "Whole wheat flour"},
        {"Sugar, whole grain oat flour, rice", Kind::Whole, "whole grain oat flour"},
        {"WHOLE HARD RED WINTER WHEAT, SALT", Kind::Whole, "WHOLE HARD RED WINTER WHEAT"},
        {"whole-grain yellow corn", Kind::Whole, "whole-grain yellow corn"},
        {"Stoneground whole wheat flour", Kind::Whole, "Stoneground whole wheat flour"},
        {"organic oats", Kind::Whole, "oats"},
        {"wheat berries", Kind::Whole, "wheat berries"},
        {"Enriched flour (wheat flour, niacin), whole wheat flour", Kind::NotWhole, "Enriched flour"},
        {"flour (whole wheat), salt", Kind::Whole, "whole wheat"},
        {"Wheat (whole grain)", Kind::Whole, "whole grain"},
        {"Granola (whole oats, sugar)", Kind::Whole, "whole oats"},
        {"Wheat, salt", Kind::NotWhole, "Wheat"},
        {"wheat bran", Kind::NotWhole, "wheat bran"},
        {"stoneground flour", Kind::NotWhole, "flour"},
        {"milk, corn syrup, rice bran oil, wheat gluten, corn starch, malted barley extract", Kind::NoneNamed, ""},
        {"whole milk, whole eggs, whole almonds", Kind::NoneNamed, ""},
        {"corn syrup, rye flour", Kind::NotWhole, "rye flour"},
        {"Rice, salt", Kind::Unclear, "Rice"},
        {"multigrain blend (oats, wheat)", Kind::Whole, "oats"},
        {"masa harina, salt", Kind::CountsInPrograms, "masa harina"},
        {"buckwheat, wheat", Kind::Whole, "buckwheat"},
        {"INGREDIENTS: SUGAR. INGREDIENTES: HARINA DE TRIGO", Kind::NoneNamed, ""},
        {"", Kind::NoneNamed, ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        const auto grain = core::first_grain(core::take_apart(c.printed));
        CHECK(grain.kind == c.kind);
        CHECK(grain.matched == c.matched);
        CHECK(grain.source.empty() == (c.kind == Kind::NoneNamed));
        CHECK(grain.ingredient.empty() == (c.kind == Kind::NoneNamed));
    }
}
