// The pairs that docs/demo-catalog.md promises teach what it says they teach.
#include "core/compare/comparison.h"
#include "core/label/household.h"
#include "tests/demo/demo_files.h"

#include <doctest/doctest.h>

#include <stdexcept>

namespace test::demo {
namespace {

using core::Basis;
using core::Finding;
using N = core::Nutrient;

core::Comparison compared(const std::string& left, const std::string& right, Basis basis)
{
    return core::compare(product(left).label, product(right).label, basis);
}

const core::Row& row_of(const core::Comparison& comparison, N nutrient)
{
    for (const auto& row : comparison.rows)
        if (row.nutrient == nutrient)
            return row;
    throw std::runtime_error("no row for " + std::string(core::info(nutrient).key));
}

Finding found(const std::string& left, const std::string& right, Basis basis, N nutrient)
{
    return row_of(compared(left, right, basis), nutrient).finding;
}

/// "480", "less than 1 g": what the left side shows.
std::string shown_left(const core::Comparison& comparison, N nutrient)
{
    const auto& figure = row_of(comparison, nutrient).left.figure;
    return figure ? core::as_printed(*figure, nutrient) : "nothing";
}

} // namespace

TEST_CASE("demo pairs: better looking in a serving, worse in the package, by the printed column")
{
    const std::string can = "9520588008010";
    const std::string bowl = "9520588008027";
    CHECK(found(can, bowl, Basis::Serving, N::Sodium) == Finding::LeftLess);
    CHECK(found(can, bowl, Basis::Package, N::Sodium) == Finding::LeftMore);
    const auto package = compared(can, bowl, Basis::Package);
    CHECK(row_of(package, N::Sodium).left.source == core::Source::Printed);
    CHECK(shown_left(package, N::Sodium) == "1420 mg");
}

TEST_CASE("demo pairs: better looking in a serving, worse in the package, worked out")
{
    const std::string peach = "9520519007051";
    const std::string lemonade = "9520519007075";
    CHECK(found(peach, lemonade, Basis::Serving, N::TotalSugars) == Finding::LeftLess);
    CHECK(found(peach, lemonade, Basis::Package, N::TotalSugars) == Finding::LeftMore);
    CHECK(row_of(compared(peach, lemonade, Basis::Package), N::TotalSugars).left.source == core::Source::WorkedOut);
}

TEST_CASE("demo pairs: equal labels, unlike servings")
{
    const std::string oat = "9520233002035";
    const std::string rye = "9520233002042";
    const auto serving = compared(oat, rye, Basis::Serving);
    CHECK(serving.sizes == core::ServingSizes::Differ);
    REQUIRE(!serving.rows.empty());
    for (const auto& row : serving.rows) {
        CAPTURE(core::info(row.nutrient).key);
        CHECK(row.finding == Finding::SameFigure);
    }
    CHECK(found(oat, rye, Basis::SameAmount, N::Calories) == Finding::LeftMore);
    CHECK(found(oat, rye, Basis::SameAmount, N::Sodium) == Finding::LeftMore);
}

// Common practice: 27 g sugars a cup and 2 cups a container are 54 g a container.
TEST_CASE("demo pairs: the bottle of two cups, with and without a printed column")
{
    const std::string peach = "9520519007051";
    const std::string limeade = "9520519007068";
    const auto serving = compared(peach, limeade, Basis::Serving);
    CHECK(shown_left(serving, N::TotalSugars) == "27 g");
    CHECK(row_of(serving, N::TotalSugars).finding == Finding::SameFigure);
    const auto package = compared(peach, limeade, Basis::Package);
    const auto& sugars = row_of(package, N::TotalSugars);
    CHECK(shown_left(package, N::TotalSugars) == "54 g");
    CHECK(sugars.left.source == core::Source::WorkedOut);
    REQUIRE(sugars.right.figure.has_value());
    CHECK(core::as_printed(*sugars.right.figure, N::TotalSugars) == "54 g");
    CHECK(sugars.right.source == core::Source::Printed);
}

TEST_CASE("demo pairs: too close to tell in equal amounts")
{
    const std::string wheat = "9520310003023";
    const std::string seed = "9520310003030";
    CHECK(compared(wheat, seed, Basis::Serving).sizes == core::ServingSizes::Same);
    CHECK(found(wheat, seed, Basis::Serving, N::TotalFat) == Finding::LeftLess);
    CHECK(found(wheat, seed, Basis::SameAmount, N::TotalFat) == Finding::TooCloseToTell);
    CHECK(found(wheat, seed, Basis::SameAmount, N::Sodium) == Finding::TooCloseToTell);
}

TEST_CASE("demo pairs: an older label beside one of 2016")
{
    const std::string older = "9520588008041";
    const std::string newer = "520417008036";
    const auto serving = compared(older, newer, Basis::Serving);
    CHECK(serving.unlike_panels);
    CHECK(row_of(serving, N::Sodium).finding == Finding::LeftMore);
    CHECK(row_of(serving, N::AddedSugars).finding == Finding::NotPrinted);
    CHECK(row_of(serving, N::VitaminA).finding == Finding::NotPrinted);
}

TEST_CASE("demo pairs: grams beside millilitres")
{
    const auto same = compared("9520427005033", "9520427005088", Basis::SameAmount);
    CHECK(same.why == core::Why::GramsAgainstMillilitres);
    CHECK(compared("9520427005033", "9520427005088", Basis::Package).why == core::Why::Comparable);
}

TEST_CASE("demo pairs: a label for toddlers beside one for everybody")
{
    for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
        CHECK(compared("9520427005095", "9520427005057", basis).why == core::Why::UnlikeAudience);
        CHECK(compared("9520519007105", "520417007022", basis).why == core::Why::UnlikeAudience);
    }
}

TEST_CASE("demo pairs: servings varied")
{
    CHECK(compared("520417002072", "9520233002028", Basis::Package).why == core::Why::ServingsVaried);
    CHECK(compared("520417002072", "9520233002028", Basis::SameAmount).why == core::Why::Comparable);
}

TEST_CASE("demo pairs: a package that is one serving")
{
    const auto package = compared("9520208011055", "9520208011048", Basis::Package);
    CHECK(shown_left(package, N::Calories) == "200");
    CHECK(row_of(package, N::Calories).left.source == core::Source::Printed);
}

TEST_CASE("demo pairs: two columns, per container and as prepared")
{
    using Kind = core::SecondColumn::Kind;
    for (const auto* gtin : {"9520366004036", "9520519007068", "9520588008010", "9520588008058"}) {
        CAPTURE(gtin);
        REQUIRE(product(gtin).label.second.has_value());
        CHECK(product(gtin).label.second->kind == Kind::PerContainer);
    }
    for (const auto* gtin : {"9520141001069", "520417001099", "520417008036", "9520588008089", "9520777012019"}) {
        CAPTURE(gtin);
        REQUIRE(product(gtin).label.second.has_value());
        CHECK(product(gtin).label.second->kind == Kind::AsPrepared);
    }
}

// Common practice: 130 calories, fat 7 g = 9 %, x 9 = 81 %; sodium 55 mg = 2 %, x 9 = 18 % as taught, while 495 mg of
// 2,300 mg (21 CFR 101.9(c)(9)) are 21.5 %.
TEST_CASE("demo pairs: nine servings of chips")
{
    const std::string chips = "9520366004012";
    CHECK(product(chips).label.servings ==
          core::ServingsPerContainer{core::ServingsPerContainer::Kind::Number, core::Count::whole(9)});
    CHECK(product(chips).label.serving.household == "1 oz");
    const auto serving = compared(chips, "9520366004029", Basis::Serving);
    CHECK(shown_left(serving, N::Calories) == "130");
    CHECK(shown_left(serving, N::TotalFat) == "7 g");
    CHECK(shown_left(serving, N::Sodium) == "55 mg");
    CHECK(row_of(serving, N::TotalFat).left.percent.value().percent == 9);
    CHECK(row_of(serving, N::Sodium).left.percent.value().percent == 2);
    const auto package = compared(chips, "9520366004029", Basis::Package);
    CHECK(row_of(package, N::TotalFat).left.percent.value().percent == 81);
    CHECK(row_of(package, N::Sodium).left.percent.value().percent == 18);
    CHECK(row_of(package, N::Sodium).left.percent.value().say_range);
}

// Common practice: 240 calories x 2 = 480; fat 4 g is 5 %, x 2 = 10 %; saturated fat 1.5 g is 8 %, x 2 = 16 %; sodium
// 430 mg is 19 %, x 2 = 38 %; 1 1/2 cups a serving, 2 servings: 3 cups.
TEST_CASE("demo pairs: one and a half cups a serving, two servings")
{
    const std::string kit = "9520777012019";
    const auto& label = product(kit).label;
    CHECK(core::household_times(label.serving.household, label.servings.count) == "3 cups");
    const auto serving = compared(kit, "9520777012026", Basis::Serving);
    CHECK(shown_left(serving, N::Calories) == "240");
    CHECK(shown_left(serving, N::TotalFat) == "4 g");
    CHECK(shown_left(serving, N::SaturatedFat) == "1.5 g");
    CHECK(shown_left(serving, N::Sodium) == "430 mg");
    CHECK(row_of(serving, N::TotalFat).left.percent.value().percent == 5);
    CHECK(row_of(serving, N::SaturatedFat).left.percent.value().percent == 8);
    CHECK(row_of(serving, N::Sodium).left.percent.value().percent == 19);
    const auto package = compared(kit, "9520777012026", Basis::Package);
    CHECK(shown_left(package, N::Calories) == "480");
    CHECK(row_of(package, N::TotalFat).left.percent.value().percent == 10);
    CHECK(row_of(package, N::SaturatedFat).left.percent.value().percent == 16);
    CHECK(row_of(package, N::Sodium).left.percent.value().percent == 38);
}

} // namespace test::demo
