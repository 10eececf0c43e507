// Every row of allergens.csv: a word in an ingredient list or in a statement, and what is read from it.
#include "core/label/allergens.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace test {
namespace {

using core::Allergen;
using core::AllergenPlace;

Allergen allergen_of(const ReferenceRow& row)
{
    static const std::map<std::string, Allergen> names{
        {"milk", Allergen::Milk},
        {"egg", Allergen::Egg},
        {"fish", Allergen::Fish},
        {"wheat", Allergen::Wheat},
        {"peanuts", Allergen::Peanuts},
        {"tree_nuts", Allergen::TreeNuts},
        {"soybeans", Allergen::Soybeans},
        {"sesame", Allergen::Sesame},
        {"crustacean_shellfish", Allergen::Crustaceans},
    };
    return names.at(row["allergen"]);
}

core::AllergenReading read(const std::string& ingredients, const std::optional<std::string>& contains = std::nullopt)
{
    core::Label label;
    label.ingredients = ingredients;
    label.contains = contains;
    return core::allergens_of(label, core::Date::parse("2026-01-19").value());
}

/// "e.g. bass, flounder or cod": the names.
std::vector<std::string> examples_of(std::string note)
{
    for (const std::string_view joint : {"e.g. ", " or "})
        if (const auto at = note.find(joint); at != std::string::npos)
            note.replace(at, joint.size(), at == 0 ? "" : ", ");
    std::vector<std::string> names;
    for (std::size_t at = 0; at < note.size();) {
        const auto end = std::min(note.find(", ", at), note.size());
        names.push_back(note.substr(at, end - at));
        at = end + 2;
    }
    return names;
}

void check_stated(Allergen allergen, const std::string& word)
{
    CAPTURE(word);
    CHECK(read("salt", "Rice, " + word).names(allergen, AllergenPlace::Statement));
    CHECK(read("salt. CONTAINS: " + word).names(allergen, AllergenPlace::StatementInText));
    CHECK(read("salt, " + word).names(allergen, AllergenPlace::Ingredients));
}

/// The words of an ingredient: named, in doubt, or not this allergen.
void check_word(const ReferenceRow& row)
{
    const auto allergen = allergen_of(row);
    const auto& kind = row["kind"];
    for (const auto& text : {row["word"], "salt, " + row["word"] + ", water", "SALT (" + row["word"] + ")"}) {
        CAPTURE(text);
        const auto reading = read(text);
        CHECK(reading.names(allergen, AllergenPlace::Ingredients) == (kind == "ingredient_word"));
        CHECK(reading.names(allergen, AllergenPlace::InDoubt) == (kind == "may_hold"));
    }
}

/// How the law lets a label name its allergens.
void check_form(const ReferenceRow& row)
{
    const auto& word = row["word"];
    if (word == "Contains")
        CHECK(read("Oats. Contains milk").names(Allergen::Milk, AllergenPlace::StatementInText));
    else if (word == "name in brackets")
        CHECK(read("casein (milk)").names(Allergen::Milk, AllergenPlace::Ingredients));
    else if (word == "name already in the ingredient name")
        CHECK(read("wheat flour").names(Allergen::Wheat, AllergenPlace::Ingredients));
    else if (word == "name elsewhere in the list")
        CHECK(read("hydrolysate, milk").names(Allergen::Milk, AllergenPlace::Ingredients));
    else if (word == "highly refined oil") // its name alone does not tell how it was refined
        for (const auto& [oil, allergen] :
             {std::pair("soybean oil", Allergen::Soybeans), std::pair("peanut oil", Allergen::Peanuts)}) {
            CHECK(read(oil).names(allergen, AllergenPlace::InDoubt));
            CHECK_FALSE(read(oil).names(allergen, AllergenPlace::Ingredients));
        }
    else if (word == "may contain")
        CHECK(read("Oats. May contain milk").names(Allergen::Milk, AllergenPlace::MayContain));
    else
        FAIL_CHECK("no such form is known");
}

void check_scope(const ReferenceRow& row)
{
    const bool milk = allergen_of(row) == Allergen::Milk;
    const std::vector<std::string> words =
        milk ? std::vector<std::string>{"goat milk", "sheep's milk", "goats' milk", "buffalo milk"}
             : std::vector<std::string>{"duck eggs", "quail eggs", "goose eggs"};
    for (const auto& word : words)
        check_stated(allergen_of(row), word);
}

/// Rows whose `memory` mark is settled, with the published text.
std::optional<std::string> settled_by(const ReferenceRow& row)
{
    static const std::string holds =
        "FD&C Act 403(w)(1)(B)(i): the name of the ingredient holds the name of its source";
    static const std::string triticum =
        "FDA: any species in the genus Triticum is wheat (published lists, How to Read a "
        "Label for a Wheat-Free Diet)";
    static const std::map<std::string, std::string> texts{
        {"peanut", "FDA, Questions and Answers Regarding Food Allergens: peanut may stand for peanuts"},
        {"may contain", "FDA, Food Facts, Food Allergies: the labeling rules do not apply to cross-contact"},
        {"soy lecithin", holds},
        {"fish gelatin", holds},
        {"fish sauce", holds},
        {"khorasan wheat", triticum},
        {"farro", triticum},
        {"fu", "published lists of wheat ingredients: fu is dried wheat gluten"},
        {"arachis oil", "published lists of peanut names"},
    };
    const auto found = row["checked"] == "memory" ? texts.find(row["word"]) : texts.end();
    return found == texts.end() ? std::nullopt : std::optional(found->second);
}

std::string why_skipped(const ReferenceRow& row)
{
    return row["word"] == "raw fruit and vegetables" ? "which foods need no list: nothing that a list says" : "";
}

void check(const ReferenceRow& row)
{
    const auto& kind = row["kind"];
    if (kind == "ingredient_word" || kind == "may_hold" || kind == "not_this_allergen")
        check_word(row);
    else if (kind == "must_name" && row["word"].starts_with("the "))
        for (const auto& name : examples_of(row["note"]))
            check_stated(allergen_of(row), name);
    else if (kind == "must_name" || kind == "accepted_form")
        check_stated(allergen_of(row), row["word"]);
    else if (kind == "scope")
        check_scope(row);
    else
        check_form(row);
}

} // namespace

TEST_CASE("allergens.csv: every word is read as what it is")
{
    TableRun run("allergens.csv");
    for (const auto& row : reference_rows("allergens.csv")) {
        CAPTURE(row.place());
        CAPTURE(row["word"]);
        CAPTURE(row["kind"]);
        if (const auto why = why_skipped(row); !why.empty()) {
            run.skipped(why);
            continue;
        }
        check(row);
        if (settled_by(row))
            run.settled();
        else
            run.used();
    }
    run.done(263);
}

} // namespace test
