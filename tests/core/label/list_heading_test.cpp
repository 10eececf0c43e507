#include "core/label/list_heading.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

using Kind = core::ListHeading::Kind;

// Sources: 21 CFR 101.4(a)(2) ("contains _ percent or less of"); FD&C Act 403(w)(1)(A) ("Contains"). What may be in a
// food has no fixed wording: common practice.
TEST_CASE("list heading: which part of the text begins, and where its words end")
{
    struct Case {
        std::string text;
        std::optional<Kind> kind;
        std::string rest;
    };
    const Case cases[] = {
        {"INGREDIENTS: salt", Kind::List, "salt"},
        {"Ingredients salt", Kind::List, "salt"},
        {"Ingredientes: sal", Kind::List, "sal"},
        {"CONTAINS: WHEAT", Kind::Contains, "WHEAT"},
        {"Contains wheat and milk", Kind::Contains, "wheat and milk"},
        {"Contiene: trigo", Kind::Contains, "trigo"},
        {"Allergens: wheat", Kind::Contains, "wheat"},
        {"ALLERGY INFORMATION: CONTAINS MILK", Kind::Contains, "MILK"},
        {"Allergen statement: may contain milk", Kind::MayContain, "may contain milk"},
        {"May contain almonds", Kind::MayContain, "May contain almonds"},
        {"MAY ALSO CONTAIN SOY", Kind::MayContain, "MAY ALSO CONTAIN SOY"},
        {"Puede contener leche", Kind::MayContain, "Puede contener leche"},
        {"Made in a facility that uses milk", Kind::MayContain, "Made in a facility that uses milk"},
        {"Manufactured on shared equipment", Kind::MayContain, "Manufactured on shared equipment"},
        {"Contains 2% or less of: salt", Kind::Little, "salt"},
        {"CONTAINS LESS THAN 2% OF EACH OF THE FOLLOWING: SALT", Kind::Little, "SALT"},
        {"contains two percent or less of salt", Kind::Little, "salt"},
        {"Less than 2% of salt", Kind::Little, "salt"},
        {"and less than 1% salt", Kind::Little, "salt"},
        {"Contiene menos de 2% de sal", Kind::Little, "sal"},
        {"Contains no sulfites", Kind::Footnote, "Contains no sulfites"},
        {"*Organic", Kind::Footnote, "*Organic"},
        {"\u2020 Adds no fat", Kind::Footnote, "\u2020 Adds no fat"},
        {"*, sugar", std::nullopt, ""},
        {"contains one or more of the following oils: corn", std::nullopt, ""},
        {"made from milk", std::nullopt, ""},
        {"MILK. INGREDIENTES: sal", std::nullopt, ""}, // the milk must not go with the heading
        {"less salt", std::nullopt, ""},
        {"milk", std::nullopt, ""},
        {" contains", std::nullopt, ""},
        {"", std::nullopt, ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        const auto heading = core::heading_of(c.text);
        CHECK(heading.has_value() == c.kind.has_value());
        if (heading && c.kind) {
            CHECK(heading->kind == *c.kind);
            CHECK(c.text.substr(heading->size) == c.rest);
        }
    }
}

TEST_CASE("list heading: a colon and the language are told")
{
    CHECK(core::heading_of("CONTAINS: WHEAT")->colon);
    CHECK_FALSE(core::heading_of("Contains wheat")->colon);
    CHECK(core::heading_of("INGREDIENTES: SAL")->spanish);
    CHECK_FALSE(core::heading_of("INGREDIENTS: SALT")->spanish);
}
