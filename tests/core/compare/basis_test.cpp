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

} // namespace test
