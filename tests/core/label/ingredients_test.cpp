#include "core/label/allergens.h"
#include "core/label/ingredients.h"

#include <doctest/doctest.h>

#include <chrono>
#include <random>
#include <string>
#include <vector>

namespace {

using Texts = std::vector<std::string>;

/// "flour (wheat flour, niacin), ~salt": brackets as depth, "~" for little, "2:" for a second language.
std::string told(const core::IngredientList& list)
{
    std::string all;
    for (const auto& ingredient : list.all) {
        all += (all.empty() ? "" : ", ") + std::string(ingredient.depth, '>') + (ingredient.little ? "~" : "") +
               (ingredient.list == 0 ? "" : "2:") + ingredient.printed;
        CHECK((!ingredient.within || list.all[*ingredient.within].depth < ingredient.depth));
    }
    return all;
}

} // namespace

// Source: 21 CFR 101.4(a)(2), (b)(2) (the form of a list); the rest is how packages and data bases write (common
// practice).
TEST_CASE("ingredients: a list is taken apart in its order")
{
    struct Case {
        std::string why, printed, told;
    };
    const Case cases[] = {
        {"plain", "Rice, salt.", "Rice, salt"},
        {"brackets", "Flour (wheat flour, niacin), salt", "Flour, >wheat flour, >niacin, salt"},
        {"nested", "sauce (soy sauce (water, wheat), sugar), salt",
         "sauce, >soy sauce, >>water, >>wheat, >sugar, salt"},
        {"all kinds of brackets", "a [b {c (d)}], e", "a, >b, >>c, >>>d, e"},
        {"left open", "a (b, c", "a, >b, >c"},
        {"closed too often", "a), b)), c", "a, b, c"},
        {"unlike brackets", "a (b], c", "a, >b, c"},
        {"brackets without a name", "(a, b), c", ">a, >b, c"},
        {"words behind a bracket", "cheese (milk) powder, salt", "cheese powder, >milk, salt"},
        {"two brackets behind one name", "oil (palm) (color), salt", "oil, >palm, >color, salt"},
        {"heading", "INGREDIENTS: SALT, WATER", "SALT, WATER"},
        {"small amounts", "oats, contains 2% or less of: salt, sugar.", "oats, ~salt, ~sugar"},
        {"small amounts, new sentence", "oats. Contains less than 2% of salt. water", "oats, ~salt, water"},
        {"and, and/or", "oats, corn and/or soybean oil, and salt", "oats, corn and/or soybean oil, salt"},
        {"percents and numbers", "milk 2.5%, oil 1,5 g, water (60%)", "milk 2.5%, oil 1,5 g, water"},
        {"initials", "L. acidophilus, B. lactis, salt.", "L. acidophilus, B. lactis, salt"},
        {"semicolons, bullets, bars", "oats; salt \u2022 water | milk", "oats, salt, water, milk"},
        {"a name before a colon", "crust: flour, water", "crust, flour, water"},
        {"footnote marks", "*organic oats, sugar\u2020, salt**", "organic oats, sugar, salt"},
        {"blanks and line ends", "  whole\n wheat  flour ,\tsalt ", "whole wheat flour, salt"},
        {"two languages", "INGREDIENTS: SALT. INGREDIENTES: SAL.", "SALT, 2:SAL"},
        {"a list a part", "INGREDIENTS: OATS. TOPPING: INGREDIENTS: SUGAR", "OATS, TOPPING, SUGAR"},
        {"empty", "", ""},
        {"nothing but signs", " ,.;()[]{}*", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(told(core::take_apart(c.printed)) == c.told);
    }
}

TEST_CASE("ingredients: statements in the text are split off and kept")
{
    struct Case {
        std::string printed, told;
        Texts contains, may_contain, footnotes;
    };
    const Case cases[] = {
        {"Oats, milk. CONTAINS: MILK.", "Oats, milk", {"MILK"}, {}, {}},
        {"Oats, milk. Contains milk and soy. May contain wheat.",
         "Oats, milk",
         {"milk and soy"},
         {"May contain wheat"},
         {}},
        {"OATS, SALT CONTAINS: MILK", "OATS, SALT", {"MILK"}, {}, {}},
        {"OATS, VITAMIN C. CONTAINS MILK", "OATS, VITAMIN C", {"MILK"}, {}, {}},
        {"OATS (FLOUR, NIACIN. CONTAINS: WHEAT", "OATS, >FLOUR, >NIACIN", {"WHEAT"}, {}, {}},
        {"OATS\nCONTAINS: WHEAT\nMAY CONTAIN: MILK", "OATS", {"WHEAT"}, {"MAY CONTAIN: MILK"}, {}},
        {"CONTAINS: WHEAT MAY CONTAIN MILK", "", {"WHEAT"}, {"MAY CONTAIN MILK"}, {}},
        {"CONTAINS: WHEAT, SOY. INGREDIENTS: OATS", "OATS", {"WHEAT, SOY"}, {}, {}},
        {"Oats, may contain milk", "Oats", {}, {"may contain milk"}, {}},
        {"Oats. Made in a facility that uses nuts.", "Oats", {}, {"Made in a facility that uses nuts"}, {}},
        {"Oats*. *Organic. Contains no milk.", "Oats", {}, {}, {"Organic", "Contains no milk"}},
        {"Oats. Contains: milk. Sugar.", "Oats, Sugar", {"milk"}, {}, {}},
        {"cheese (contains: milk), salt", "cheese, >contains, >milk, salt", {}, {}, {}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        const auto list = core::take_apart(c.printed);
        CHECK(told(list) == c.told);
        CHECK(list.contains == c.contains);
        CHECK(list.may_contain == c.may_contain);
        CHECK(list.footnotes == c.footnotes);
    }
}

TEST_CASE("ingredients: what is too long is cut between letters, and says so")
{
    std::string text(core::longest_ingredient_list - 1, 'a');
    CHECK_FALSE(core::take_apart(text + "b").cut);
    const auto cut = core::take_apart(text + "\u00e9");
    CHECK(cut.cut);
    REQUIRE(cut.all.size() == 1);
    CHECK(cut.all[0].printed == text);
}

// Wherever it stands, and whatever stands around it, a word of a text must not get lost on the way.
TEST_CASE("ingredients: cheese put anywhere into any text is named somewhere")
{
    const Texts pieces{"oats",
                       ", ",
                       ". ",
                       " (",
                       ") ",
                       "[",
                       "}",
                       "CONTAINS: ",
                       "Contains ",
                       "salt",
                       "*",
                       " *Organic ",
                       "2% or less of ",
                       "may contain ",
                       "INGREDIENTS: ",
                       "INGREDIENTES: ",
                       " and/or ",
                       "contains 2% or less of ",
                       ";",
                       "\n",
                       "made in a facility ",
                       "Allergens: ",
                       "Contains no ",
                       ": ",
                       " less than ",
                       "vitamin C. ",
                       "\u2020",
                       "5"};
    std::mt19937 random(20'230'101);
    core::Label label;
    const auto day = core::Date::parse("2026-01-01").value();
    int found = 0;
    for (int run = 0; run < 20'000; ++run) {
        std::string text;
        const auto some = [&] {
            for (auto n = random() % 6; n > 0; --n)
                text += pieces[random() % pieces.size()];
        };
        some();
        text += " cheese ";
        some();
        label.ingredients = text;
        const auto reading = core::allergens_of(label, day);
        CAPTURE(text);
        REQUIRE_FALSE(reading.named.empty());
        CHECK(reading.named.front().allergen == core::Allergen::Milk);
        ++found;
    }
    CHECK(found == 20'000);
}

TEST_CASE("ingredients: hostile lists take no longer than their length allows")
{
    const std::size_t most = core::longest_ingredient_list;
    Texts texts{std::string(most, '('), std::string(most, ')'), std::string(most, ','), std::string(most, '*')};
    const auto repeated = [&](std::string_view part) {
        std::string text;
        while (text.size() < most)
            text += part;
        texts.push_back(text);
    };
    for (const auto* part : {"milk(", "a(b)", "contains ", "CONTAINS: ", "flour (", "soybean ", "less than 2% of ",
                             "whole ", "milk\xff,", "vegetable oil (soybean, ", "peanut and "})
        repeated(part);
    std::string many; // many words that are all looked at, none of them known
    for (int i = 0; many.size() < most; ++i)
        many += "milk" + std::to_string(i) + ",";
    texts.push_back(many);
    core::Label label;
    const auto begin = std::chrono::steady_clock::now();
    for (const auto& text : texts) {
        label.ingredients = text;
        static_cast<void>(core::allergens_of(label, core::Date::parse("2026-01-01").value()));
    }
    const auto took = std::chrono::steady_clock::now() - begin;
    CHECK(took < std::chrono::seconds(20)); // a fraction of a second each, also in slow builds
}

// Source: 21 CFR 101.4(b)(14): an oil that is partially hydrogenated is named so.
TEST_CASE("ingredients: partially hydrogenated oils are found, also in brackets and in Spanish")
{
    struct Case {
        std::string printed;
        Texts found;
    };
    const Case cases[] = {
        {"Flour, partially hydrogenated soybean oil, salt", {"partially hydrogenated soybean oil"}},
        {"VEGETABLE SHORTENING (PARTIALLY-HYDROGENATED SOYBEAN AND COTTONSEED OILS)",
         {"PARTIALLY-HYDROGENATED SOYBEAN AND COTTONSEED OILS"}},
        {"soybean oil (partially hydrogenated)", {"soybean oil (partially hydrogenated)"}},
        {"partially hydrogenised palm oil, partly hydrogenized oil",
         {"partially hydrogenised palm oil", "partly hydrogenized oil"}},
        {"aceite de soya parcialmente hidrogenado", {"aceite de soya parcialmente hidrogenado"}},
        {"Partially hydrogenated oil, partially hydrogenated oil",
         {"Partially hydrogenated oil", "partially hydrogenated oil"}},
        {"hydrogenated soybean oil, palm oil", {}}, // fully hydrogenated is another thing
        {"partially skimmed milk, hydrogenated oil", {}},
        {"", {}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        CHECK(core::partially_hydrogenated(core::take_apart(c.printed)) == c.found);
    }
}
