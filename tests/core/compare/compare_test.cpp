// What is said of two labels, nutrient by nutrient, on each basis. Roundings behind it: 21 CFR 101.9(c), as in
// docs/label-math.md; the answers follow from its section on comparing two labels.
#include "tests/core/compare/rows.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using core::Basis;
using core::Finding;
using core::Why;
using N = core::Nutrient;

/// One nutrient on two labels that are alike in everything else.
struct Case {
    std::string why;
    N nutrient;
    std::string left, right;
    Finding finding;
};

core::Comparison compared(const Case& c, Basis basis, const std::string& size = "30 g",
                          const std::string& servings = "8")
{
    return core::compare(make_label(size, servings, {{c.nutrient, c.left}}),
                         make_label(size, servings, {{c.nutrient, c.right}}), basis);
}

} // namespace

TEST_CASE("compare: one serving, neighbouring figures share no value")
{
    const Case cases[] = {
        {"fat 2.75 to 3.25 g against 3.25 to 3.75 g: equal edges are still less", N::TotalFat, "3", "3.5",
         Finding::LeftLess},
        {"the other way round", N::TotalFat, "3.5", "3", Finding::LeftMore},
        {"where the step changes: 4.25 to 4.75 g against 4.75 to 5.5 g", N::TotalFat, "4.5", "5", Finding::LeftLess},
        {"the same figure, although the foods may differ", N::TotalFat, "3", "3", Finding::SameFigure},
        {"printed to another place it is the same number", N::TotalFat, "3", "3.0", Finding::SameFigure},
        {"0 g is all below 0.5 g, and 0.5 g starts there", N::TotalFat, "0", "0.5", Finding::LeftLess},
        {"both print 0", N::SaturatedFat, "0", "0", Finding::SameFigure},
        {"calories 0 may be up to 5, and 5 may be from 2.5", N::Calories, "0", "5", Finding::TooCloseToTell},
        {"calories 45 and 50", N::Calories, "45", "50", Finding::LeftLess},
        {"calories 140 and 130", N::Calories, "140", "130", Finding::LeftMore},
        {"cholesterol 0 mg is up to 2.5, less than 5 mg from 2", N::Cholesterol, "0", "less than 5",
         Finding::TooCloseToTell},
        {"cholesterol less than 5 mg and 5 mg share 2.5 to 5", N::Cholesterol, "less than 5", "5",
         Finding::TooCloseToTell},
        {"cholesterol less than 5 mg, 5 itself included, and 10 mg from 7.5", N::Cholesterol, "less than 5", "10",
         Finding::LeftLess},
        {"both print less than 1 g", N::DietaryFiber, "less than 1", "less than 1", Finding::SameFigure},
        {"less than 1 g is another print than 1 g", N::DietaryFiber, "less than 1", "1", Finding::TooCloseToTell},
        {"less than 1 g and 2 g", N::DietaryFiber, "less than 1", "2", Finding::LeftLess},
        {"sodium 140 mg is 137.5 to 145, 150 mg from 145", N::Sodium, "140", "150", Finding::LeftLess},
        {"iron 2 mg may be printed to ones (1.5 to 2.5), 2.1 mg is finer", N::Iron, "2", "2.1",
         Finding::TooCloseToTell},
        {"potassium 240 mg may be printed to tens (235 to 245), 235 mg is 234.5 to 235.5", N::Potassium, "240", "235",
         Finding::TooCloseToTell},
        {"fat 5.5 g is no figure of the rule", N::TotalFat, "5.5", "3", Finding::NotComparable},
        {"nor is 3.2 g on the other side", N::TotalFat, "5", "3.2", Finding::NotComparable},
        {"a figure off the rule cannot be right, so it is not even the same figure", N::TotalFat, "5.5", "5.5",
         Finding::NotComparable},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto row = row_of(compared(c, Basis::Serving), c.nutrient);
        CHECK(row.finding == c.finding);
        CHECK(row.why == (c.finding == Finding::NotComparable ? Why::FigureOffTheRule : Why::Comparable));
    }
}

TEST_CASE("compare: a whole package that was multiplied is never the same figure")
{
    const Case cases[] = {
        {"both 3 g: eight times as many, but not known to be the same", N::TotalFat, "3", "3", Finding::TooCloseToTell},
        {"3 g and 3.5 g stay apart when both are multiplied by 8", N::TotalFat, "3", "3.5", Finding::LeftLess},
        {"0 g and 0.5 g: up to 4 g against 4 g and more", N::TotalFat, "0", "0.5", Finding::LeftLess},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(row_of(compared(c, Basis::Package), c.nutrient).finding == c.finding);
    }
    const Case same{"a package that is one serving is not multiplied", N::TotalFat, "3", "3", Finding::SameFigure};
    CAPTURE(same.why);
    CHECK(row_of(compared(same, Basis::Package, "30 g", "single"), N::TotalFat).finding == Finding::SameFigure);
    CHECK(row_of(compared(same, Basis::Package, "30 g", "1"), N::TotalFat).finding == Finding::SameFigure);
    CHECK(row_of(compared(same, Basis::Package, "30 g", "about 1"), N::TotalFat).finding == Finding::TooCloseToTell);
}

TEST_CASE("compare: servings decide a whole package")
{
    struct Packages {
        std::string why, left_servings, right_servings, left, right;
        Finding finding;
    };
    const Packages cases[] = {
        {"less per serving, more per package: 8 x 3 g against 2 x 3.5 g", "8", "2", "3", "3.5", Finding::LeftMore},
        {"about 9 is 8.5 to 9.5: 9 x 3 g may be either", "about 9", "9", "3", "3", Finding::TooCloseToTell},
        {"9 x 3 g is below 29.25, about 9 x 3.5 g from 27.6 g", "9", "about 9", "3", "3.5", Finding::TooCloseToTell},
        {"exactly 9 of both: 29.25 g parts them", "9", "9", "3", "3.5", Finding::LeftLess},
        {"equal edges: 2 x 2.75 to 3.25 ends at 6.5, single 6.5 to 7.5 begins there", "2", "single", "3", "7",
         Finding::LeftLess},
        {"single against two servings", "single", "2", "7", "3", Finding::LeftMore},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto both = core::compare(make_label("30 g", c.left_servings, {{N::TotalFat, c.left}}),
                                        make_label("30 g", c.right_servings, {{N::TotalFat, c.right}}), Basis::Package);
        CHECK(row_of(both, N::TotalFat).finding == c.finding);
    }
}

// The serving size is a rounded figure, 21 CFR 101.9(b)(7)(ii): 30 g stands for 29.5 to 30.5 g.
TEST_CASE("compare: equal amounts are held against each other crosswise, serving sizes as ranges")
{
    struct Sizes {
        std::string why, left_size, right_size, left, right;
        Finding finding;
    };
    const Sizes cases[] = {
        {"less per serving, yet too close: 3.25/29.5 is more than 3.25/30.5", "30 g", "30 g", "3", "3.5",
         Finding::TooCloseToTell},
        {"3 g and 4 g in 30 g: 3.25/29.5 is less than 3.75/30.5", "30 g", "30 g", "3", "4", Finding::LeftLess},
        {"3 g in 30 g is more than 3 g in 45 g", "30 g", "45 g", "3", "3", Finding::LeftMore},
        {"the same share in unlike sizes", "30 g", "60 g", "3", "6", Finding::TooCloseToTell},
        {"less per serving, more per weight", "15 g", "60 g", "2", "4", Finding::LeftMore},
        {"100 g of both: printed for this amount", "100 g", "100 g", "3", "3", Finding::SameFigure},
        {"100 g against 50 g is worked out", "100 g", "50 g", "3", "3", Finding::LeftLess},
        {"millilitres with millilitres", "240 mL", "120 mL", "3", "3", Finding::LeftLess},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto both = core::compare(make_label(c.left_size, "8", {{N::TotalFat, c.left}}),
                                        make_label(c.right_size, "8", {{N::TotalFat, c.right}}), Basis::SameAmount);
        CHECK(both.why == Why::Comparable);
        CHECK(both.in_millilitres == c.left_size.ends_with("mL"));
        CHECK(row_of(both, N::TotalFat).finding == c.finding);
    }
    const Case same{"", N::TotalFat, "3", "3.5", Finding::LeftLess};
    CHECK(row_of(compared(same, Basis::Serving), N::TotalFat).finding == Finding::LeftLess);
}

TEST_CASE("compare: what is absent is not printed, never 0")
{
    const auto left = make_label("30 g", "8", {{N::TotalFat, "3"}, {N::Sodium, "0"}});
    const auto right = make_label("30 g", "8", {{N::TotalFat, "3"}, {N::Iron, "2"}});
    for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
        const auto both = core::compare(left, right, basis);
        REQUIRE(both.rows.size() == 3); // no row for what neither prints
        const auto sodium = row_of(both, N::Sodium);
        CHECK(sodium.finding == Finding::NotPrinted);
        CHECK(sodium.right.source == core::Source::NotPrinted);
        CHECK_FALSE(sodium.right.figure);
        CHECK_FALSE(sodium.right.range);
        CHECK(row_of(both, N::Iron).finding == Finding::NotPrinted);
    }
}

TEST_CASE("compare: an entry with neither amount nor percent is not printed")
{
    auto empty = make_label("30 g", "8", {{N::Sodium, ""}});
    const auto both = core::compare(empty, make_label("30 g", "8", {{N::Sodium, "5"}}), Basis::Serving);
    CHECK(row_of(both, N::Sodium).finding == Finding::NotPrinted);
    CHECK(core::compare(empty, empty, Basis::Serving).rows.empty());
}

// What may be left out: 21 CFR 101.9(c)(2) to (c)(8), the sentence on "not a significant source" in each paragraph.
TEST_CASE("compare: not a significant source is a range, not a figure")
{
    auto named = make_label("30 g", "8", {});
    named.per_serving.not_significant = {N::DietaryFiber, N::TransFat, N::Calcium};
    struct Against {
        std::string why;
        N nutrient;
        std::string amount;
        Finding finding;
    };
    const Against cases[] = {
        {"fiber below 1 g against 2 g", N::DietaryFiber, "2", Finding::LeftLess},
        {"fiber below 1 g against 0.5 to 1.5 g", N::DietaryFiber, "1", Finding::TooCloseToTell},
        {"fiber below 1 g against 0 g", N::DietaryFiber, "0", Finding::TooCloseToTell},
        {"trans fat below 0.5 g against 0.5 g", N::TransFat, "0.5", Finding::LeftLess},
        {"calcium below 2% of 1300 mg, 26 mg, against 130 mg", N::Calcium, "130", Finding::LeftLess},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto row =
            row_of(core::compare(named, make_label("30 g", "8", {{c.nutrient, c.amount}}), Basis::Serving), c.nutrient);
        CHECK(row.left.source == core::Source::NotSignificant);
        CHECK_FALSE(row.left.figure);
        CHECK(row.finding == c.finding);
    }
    CHECK(row_of(core::compare(named, named, Basis::Serving), N::DietaryFiber).finding == Finding::TooCloseToTell);
}

TEST_CASE("compare: calories first, then less of, more of and the rest, each in the order of the panel")
{
    const auto label = make_label("30 g", "8",
                                  {{N::Protein, "3"},
                                   {N::Iron, "2"},
                                   {N::DietaryFiber, "4"},
                                   {N::Sodium, "5"},
                                   {N::TotalFat, "3"},
                                   {N::Calories, "100"},
                                   {N::TotalCarbohydrate, "20"}});
    std::vector<N> order;
    for (const auto& row : core::compare(label, label, Basis::Serving).rows)
        order.push_back(row.nutrient);
    CHECK(order == std::vector<N>{N::Calories, N::TotalFat, N::Sodium, N::DietaryFiber, N::Iron, N::TotalCarbohydrate,
                                  N::Protein});
}

TEST_CASE("compare: what the leader wants first stands behind calories, in her order, and keeps its aim or none")
{
    const auto label = make_label(
        "30 g", "8", {{N::Calories, "100"}, {N::TotalFat, "3"}, {N::TotalCarbohydrate, "20"}, {N::Calcium, "130"}});
    core::Choices choices;
    choices.aims = core::AimList::Label2016;
    choices.first = {N::TotalCarbohydrate, N::Calories, N::Calcium};
    const auto both = core::compare(label, label, Basis::Serving, choices);
    REQUIRE(both.rows.size() == 4);
    const N order[] = {N::Calories, N::TotalCarbohydrate, N::Calcium, N::TotalFat};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(both.rows[i].nutrient == order[i]);
    CHECK_FALSE(both.rows[0].first); // calories come first by themselves
    CHECK(both.rows[1].first);
    CHECK(both.rows[1].aim == core::Aim::Neither);
    CHECK(both.rows[2].aim == core::Aim::More);
    CHECK_FALSE(both.rows[3].first);
    CHECK(both.rows[3].aim == core::Aim::Neither); // total fat stands in no list of the label of 2016
}

TEST_CASE("compare: no more than four nutrients come first")
{
    core::Choices choices;
    choices.first = {N::Protein, N::TotalFat, N::Sodium, N::Iron, N::Calcium};
    CHECK(core::comes_first(N::Iron, choices));
    CHECK_FALSE(core::comes_first(N::Calcium, choices));
}

} // namespace test
