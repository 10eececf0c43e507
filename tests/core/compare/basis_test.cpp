// What can be compared at all, and why not. 21 CFR 101.9(c)(9) and (j)(5): other ages, other Daily Values.
#include "core/compare/comparison.h"
#include "tests/core/compare/rows.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using core::Basis;
using core::ServingSizes;
using core::Why;
using N = core::Nutrient;

core::Label food(const std::string& size, const std::string& servings)
{
    return make_label(size, servings, {{N::TotalFat, "3"}});
}

} // namespace

TEST_CASE("basis: what stands in the way of each")
{
    struct Case {
        std::string why;
        core::Label left, right;
        Why serving, package, same;
    };
    const Case cases[] = {
        {"two like labels", food("30 g", "8"), food("55 g", "about 9"), Why::Comparable, Why::Comparable,
         Why::Comparable},
        {"grams and millilitres", food("30 g", "8"), food("240 mL", "2"), Why::Comparable, Why::Comparable,
         Why::GramsAgainstMillilitres},
        {"no metric serving", food("30 g", "8"), food("", "2"), Why::Comparable, Why::Comparable, Why::NoMetricServing},
        {"servings varied", food("30 g", "varied"), food("30 g", "2"), Why::Comparable, Why::ServingsVaried,
         Why::Comparable},
        {"servings not printed", food("30 g", ""), food("30 g", "2"), Why::Comparable, Why::ServingsNotPrinted,
         Why::Comparable},
        {"one varied, one not printed", food("30 g", "varied"), food("30 g", ""), Why::Comparable,
         Why::ServingsNotPrinted, Why::Comparable},
        {"about 5.5: halves are printed from 2 to 5 only (b)(8)(i)", food("30 g", "about 5.5"), food("30 g", "2"),
         Why::Comparable, Why::ServingsOffTheRule, Why::Comparable},
        {"about 3.5 is printed", food("30 g", "about 3.5"), food("30 g", "2"), Why::Comparable, Why::Comparable,
         Why::Comparable},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::comparable_on(Basis::Serving, c.left, c.right) == c.serving);
        CHECK(core::comparable_on(Basis::Package, c.left, c.right) == c.package);
        CHECK(core::comparable_on(Basis::SameAmount, c.left, c.right) == c.same);
        for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
            CHECK(core::comparable_on(basis, c.right, c.left) == core::comparable_on(basis, c.left, c.right));
            CHECK(core::compare(c.right, c.left, basis) == swapped(core::compare(c.left, c.right, basis)));
        }
    }
}

TEST_CASE("basis: labels for different ages are shown, one serving of each, and not compared")
{
    const auto adult = food("30 g", "8");
    for (const auto audience : {core::Audience::Ages1To3, core::Audience::Infant}) {
        auto child = food("30 g", "8");
        child.audience = audience;
        CHECK(core::compare(child, child, Basis::Serving).why == Why::Comparable);
        for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
            const auto both = core::compare(adult, child, basis);
            CHECK(both.why == Why::UnlikeAudience);
            REQUIRE(both.rows.size() == 1);
            CHECK(both.rows[0].finding == core::Finding::NotComparable);
            CHECK(both.rows[0].why == Why::UnlikeAudience);
            CHECK(both.rows[0].left.figure->amount == core::Content::whole(3)); // as printed, not multiplied
            CHECK(both.rows[0].left.source == core::Source::Printed);
        }
    }
}

TEST_CASE("basis: a printed column per container needs no number of servings")
{
    auto left = food("30 g", "varied");
    left.second = core::SecondColumn{core::SecondColumn::Kind::PerContainer, make_column({{N::TotalFat, "10"}})};
    const auto right = food("30 g", "2");
    CHECK(core::comparable_on(Basis::Package, left, right) == Why::Comparable);
    CHECK(row_of(core::compare(left, right, Basis::Package), N::TotalFat).finding == core::Finding::LeftMore);
    left.second->kind = core::SecondColumn::Kind::AsPrepared; // as prepared says nothing of the package
    CHECK(core::comparable_on(Basis::Package, left, right) == Why::ServingsVaried);
}

TEST_CASE("basis: how the serving sizes stand to each other")
{
    CHECK(core::serving_sizes(food("30 g", "8"), food("30 g", "2")) == ServingSizes::Same);
    CHECK(core::serving_sizes(food("30 g", "8"), food("31 g", "2")) == ServingSizes::Differ);
    CHECK(core::serving_sizes(food("30 g", "8"), food("30 mL", "2")) == ServingSizes::Unlike);
    CHECK(core::serving_sizes(food("", "8"), food("30 g", "2")) == ServingSizes::Unknown);
}

TEST_CASE("basis: labels of 2016 and older ones are told apart")
{
    auto older = food("30 g", "8");
    older.panel = core::Panel::Older;
    CHECK(core::compare(older, food("30 g", "8"), Basis::Serving).unlike_panels);
    CHECK_FALSE(core::compare(older, older, Basis::Serving).unlike_panels);
}

namespace {

core::Label told_in(const std::string& household, const std::string& fat = "3")
{
    auto label = make_label("30 g", "8", {{N::TotalFat, fat}});
    label.serving.household = household;
    return label;
}

} // namespace

// 21 CFR 101.9(b)(5)(viii): a label's cup is 240 mL, its tablespoon 15 mL, its teaspoon 5 mL, its fluid ounce 30 mL.
TEST_CASE("basis: the same cup, spoon or piece")
{
    using Unit = core::Household::Unit;
    struct Case {
        std::string why, left, right;
        Why possible;
        std::optional<Unit> unit;
    };
    const Case cases[] = {
        {"cups and cups", "2/3 cup", "1 1/2 cups", Why::Comparable, Unit::Cup},
        {"fluid ounces and cups meet in cups", "8 fl oz", "1 cup", Why::Comparable, Unit::Cup},
        {"fluid ounces alone as well", "8 fl oz", "12 fl oz", Why::Comparable, Unit::Cup},
        {"spoons with cups in tablespoons", "2 tbsp", "1/4 cup", Why::Comparable, Unit::Tablespoon},
        {"teaspoons with tablespoons too", "1 tsp", "1 tbsp", Why::Comparable, Unit::Tablespoon},
        {"teaspoons alone", "1 tsp", "2 tsp", Why::Comparable, Unit::Teaspoon},
        {"pieces of one name", "3 cookies", "1 cookie", Why::Comparable, Unit::Piece},
        {"pieces of two names", "3 cookies", "5 crackers", Why::UnlikeMeasures, std::nullopt},
        {"cups against pieces", "1 cup", "3 cookies", Why::UnlikeMeasures, std::nullopt},
        {"a dry cup is another one", "1 cup", "1 cup dry", Why::UnlikeMeasures, std::nullopt},
        {"packages are not alike", "1/4 package", "1/4 package", Why::NoHouseholdMeasure, std::nullopt},
        {"ounces weigh", "1 oz", "1 oz", Why::NoHouseholdMeasure, std::nullopt},
        {"nothing told", "", "1 cup", Why::NoHouseholdMeasure, std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto left = told_in(c.left);
        const auto right = told_in(c.right);
        CHECK(core::comparable_on(Basis::SameMeasure, left, right) == c.possible);
        CHECK(core::comparable_on(Basis::SameMeasure, right, left) == c.possible);
        const auto measure = core::common_measure(left, right);
        CHECK((c.possible == Why::Comparable) == (measure && c.unit && measure->unit == *c.unit));
        CHECK(core::compare(right, left, Basis::SameMeasure) ==
              swapped(core::compare(left, right, Basis::SameMeasure)));
    }
}

TEST_CASE("basis: in the same cup, fat 3 g in 2/3 cup is more than 4 g in 1 cup")
{
    // 2.75 to 3.25 g x 3/2 is 4.125 to 4.875 g; 4 g is 3.75 to 4.25 g; 3.5 g is 3.25 to 3.75 g
    const auto small = told_in("2/3 cup");
    CHECK(row_of(core::compare(small, told_in("1 cup", "4"), Basis::SameMeasure), N::TotalFat).finding ==
          core::Finding::TooCloseToTell);
    CHECK(row_of(core::compare(small, told_in("1 cup", "3.5"), Basis::SameMeasure), N::TotalFat).finding ==
          core::Finding::LeftMore);
    CHECK(row_of(core::compare(small, told_in("1 cup", "3.5"), Basis::Serving), N::TotalFat).finding ==
          core::Finding::LeftLess);
    // "about 3 cookies" are 2.5 to 3.5: 3 g is 0.79 to 1.3 g each; 1 cookie of 1.5 g is 1.25 to 1.75 g
    CHECK(row_of(core::compare(told_in("about 3 cookies"), told_in("1 cookie", "1.5"), Basis::SameMeasure), N::TotalFat)
              .finding == core::Finding::TooCloseToTell);
    CHECK(row_of(core::compare(told_in("3 cookies"), told_in("1 cookie", "1.5"), Basis::SameMeasure), N::TotalFat)
              .finding == core::Finding::LeftLess);
}

TEST_CASE("basis: my amount, where each label can be brought to it")
{
    using Of = core::MyAmount::Of;
    const auto cups = told_in("2/3 cup");
    const auto cookies = told_in("3 cookies");
    auto varied = told_in("1 cup");
    varied.servings = core::parse_servings("varied").value();
    const auto on = [](const core::Label& left, const core::Label& right, Of of) {
        return core::comparable_on(Basis::MyAmount, left, right, {of, {2, 1}});
    };
    CHECK(on(cups, cookies, Of::Servings) == Why::Comparable);
    CHECK(on(cups, cups, Of::Cups) == Why::Comparable);
    CHECK(on(cups, cups, Of::Tablespoons) == Why::Comparable);
    CHECK(on(cups, cookies, Of::Cups) == Why::NoHouseholdMeasure);
    CHECK(on(cookies, cups, Of::Pieces) == Why::NoHouseholdMeasure);
    CHECK(on(cookies, told_in("5 crackers"), Of::Pieces) == Why::Comparable); // two of each are what they are
    CHECK(on(cups, varied, Of::Package) == Why::ServingsVaried);
    CHECK(on(cups, cookies, Of::Package) == Why::Comparable);
}

TEST_CASE("basis: as prepared, where both labels print that")
{
    auto left = told_in("1/4 cup dry");
    auto right = told_in("1/4 cup dry");
    CHECK(core::comparable_on(Basis::Prepared, left, right) == Why::NotPrepared);
    using Kind = core::SecondColumn::Kind;
    left.second = core::SecondColumn{Kind::AsPrepared, make_column({{N::TotalFat, "8"}})};
    CHECK(core::comparable_on(Basis::Prepared, left, right) == Why::NotPrepared);
    CHECK(core::comparable_on(Basis::Prepared, right, left) == Why::NotPrepared);
    right.second = core::SecondColumn{Kind::AsPrepared, make_column({{N::TotalFat, "5"}})};
    CHECK(core::comparable_on(Basis::Prepared, left, right) == Why::Comparable);
    CHECK(row_of(core::compare(left, right, Basis::Prepared), N::TotalFat).finding == core::Finding::LeftMore);
    CHECK(row_of(core::compare(left, right, Basis::Serving), N::TotalFat).finding == core::Finding::SameFigure);
}

TEST_CASE("basis: what is offered for two labels, in order")
{
    const auto cups = told_in("2/3 cup");
    CHECK(core::possible_bases(cups, told_in("1 cup")) ==
          std::vector<Basis>{Basis::Serving, Basis::Package, Basis::SameAmount, Basis::SameMeasure, Basis::MyAmount});
    auto drink = told_in("3 cookies");
    drink.serving.metric = core::parse_measure("240 mL").value();
    drink.servings = {};
    CHECK(core::possible_bases(cups, drink) == std::vector<Basis>{Basis::Serving, Basis::MyAmount});
    auto infant = cups;
    infant.audience = core::Audience::Infant;
    CHECK(core::possible_bases(cups, infant).empty());
}

} // namespace test
