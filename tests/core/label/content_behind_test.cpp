// Backwards from a line that prints a percent only, on labels of 2016 and before.
#include "core/compare/comparison.h"
#include "core/label/content_behind.h"
#include "tests/core/compare/rows.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using core::Basis;
using core::Content;
using core::Finding;
using core::Panel;
using core::Why;
using N = core::Nutrient;

core::Label percent_only(N nutrient, const std::string& percent, Panel panel = Panel::Of2016)
{
    auto label = make_label("30 g", "2", {{nutrient, "", percent}});
    label.panel = panel;
    return label;
}

core::Label amount_only(N nutrient, const std::string& amount, Panel panel = Panel::Of2016)
{
    auto label = make_label("30 g", "2", {{nutrient, amount}});
    label.panel = panel;
    return label;
}

core::Label not_significant(N nutrient, Panel panel)
{
    auto label = make_label("30 g", "2", {});
    label.per_serving.not_significant = {nutrient};
    label.panel = panel;
    return label;
}

} // namespace

// 21 CFR 101.9(d)(7)(ii): the percent is counted from the amount as printed or from the true one, as the maker likes.
TEST_CASE("percent only: both ways of counting it are allowed for")
{
    struct Case {
        std::string why;
        N nutrient;
        std::string percent;
        std::int64_t low_micro, high_micro; // of a gram
    };
    const Case cases[] = {
        {"saturated fat 8%: true 1.5 to 1.7 g, or printed as 1.5 g from 1.25 g on", N::SaturatedFat, "8%", 1'250'000,
         1'750'000},
        {"saturated fat 5%: true 0.9 to 1.1 g, or printed as 1 g", N::SaturatedFat, "5%", 750'000, 1'250'000},
        {"saturated fat 6%: true 1.1 to 1.3 g; no printed figure gives it", N::SaturatedFat, "6%", 1'100'000,
         1'300'000},
        {"fat 5%: true 3.51 to 4.29 g; 4 g stands for 3.75 to 4.25 g, inside", N::TotalFat, "5%", 3'510'000, 4'290'000},
        {"fat 0%: true below 0.39 g, or printed as 0 g", N::TotalFat, "0%", 0, 500'000},
        {"sodium 19%: true 425.5 to 448.5 mg, or printed as 430 mg (425 mg on) or 440 mg", N::Sodium, "19%", 425'000,
         448'500},
        {"cholesterol 2%: true 4.5 to 7.5 mg, printed as less than 5 mg (2 mg on) or 5 mg", N::Cholesterol, "2%", 2'000,
         7'500},
        {"fiber 4%: true 0.98 to 1.26 g, or printed as 1 g or less than 1 g", N::DietaryFiber, "4%", 0, 1'500'000},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto label = percent_only(c.nutrient, c.percent);
        const auto behind = core::content_behind(label, label.per_serving, c.nutrient, std::nullopt);
        REQUIRE(behind);
        CHECK(behind->low == Content::micro(c.low_micro));
        CHECK(behind->high == Content::micro(c.high_micro));
    }
}

TEST_CASE("percent only: less is not said where the printed amount may have been counted")
{
    const auto eight_percent = percent_only(N::SaturatedFat, "8%");
    const auto true_of_1_25_g = amount_only(N::SaturatedFat, "1.5");
    const auto one_gram = amount_only(N::SaturatedFat, "1");
    CHECK(row_of(core::compare(true_of_1_25_g, eight_percent, Basis::Serving), N::SaturatedFat).finding ==
          Finding::TooCloseToTell);
    CHECK(row_of(core::compare(one_gram, eight_percent, Basis::Serving), N::SaturatedFat).finding == Finding::LeftLess);
}

TEST_CASE("percent only: a vitamin of 2016 may have been counted from an amount in any of its places")
{
    const auto label = percent_only(N::Potassium, "6%"); // 5 to 7% of 4700 mg: 235 to 329 mg; printed to tens or ones
    const auto behind = core::content_behind(label, label.per_serving, N::Potassium, std::nullopt);
    REQUIRE(behind);
    CHECK(behind->low <= Content::milli(235));
    CHECK(behind->low >= Content::milli(225));
    CHECK(behind->high >= Content::milli(329));
    CHECK(behind->high <= Content::milli(339));
}

// What prints as 0 is below 2 percent of the adult's 1300 mg, 26 mg, although the percent counts from 700 mg.
TEST_CASE("percent only: a child's 0% may have been counted from a printed 0")
{
    auto label = percent_only(N::Calcium, "0%");
    label.audience = core::Audience::Ages1To3;
    const auto behind = core::content_behind(label, label.per_serving, N::Calcium, std::nullopt);
    REQUIRE(behind);
    CHECK(behind->low == Content{});
    CHECK(behind->high == Content::milli(26));
}

// Before 2016 vitamins A, D and E counted in international units: no amount can be worked out of their percents.
TEST_CASE("percent only: vitamins on two labels of before 2016 compare by their percents")
{
    struct Case {
        std::string why, left, right;
        Finding finding;
    };
    const Case cases[] = {
        {"4% is 3 to 5, 10% is 9 to 12.5", "4%", "10%", Finding::LeftLess},
        {"10% and 8% share no value", "10%", "8%", Finding::LeftMore},
        {"the same figure", "10%", "10%", Finding::SameFigure},
        {"less than 2% and 2%", "<2%", "2%", Finding::TooCloseToTell},
        {"0% may be up to 2%", "0%", "2%", Finding::TooCloseToTell},
        {"7% is never printed for a vitamin", "7%", "10%", Finding::NotComparable},
    };
    for (const auto nutrient : {N::VitaminA, N::VitaminC, N::Calcium}) {
        CAPTURE(std::string(core::info(nutrient).key));
        for (const auto& c : cases) {
            CAPTURE(c.why);
            const auto both = core::compare(percent_only(nutrient, c.left, Panel::Older),
                                            percent_only(nutrient, c.right, Panel::Older), Basis::Serving);
            const auto row = row_of(both, nutrient);
            CHECK(row.finding == c.finding);
            CHECK(row.why == (c.finding == Finding::NotComparable ? Why::FigureOffTheRule : Why::Comparable));
        }
    }
    for (const auto basis : {Basis::Package, Basis::SameAmount}) {
        const auto row = row_of(core::compare(percent_only(N::VitaminA, "4%", Panel::Older),
                                              percent_only(N::VitaminA, "10%", Panel::Older), basis),
                                N::VitaminA);
        CHECK(row.finding == Finding::LeftLess);
        CHECK_FALSE(row.left.range); // a share of an unknown Daily Value is no amount
        CHECK(row.left.percent->range);
    }
}

TEST_CASE("percent only: percents of unlike Daily Values are not held against each other")
{
    const auto older = percent_only(N::VitaminA, "10%", Panel::Older);
    for (const auto& other : {percent_only(N::VitaminA, "10%"), amount_only(N::VitaminA, "300"),
                              amount_only(N::VitaminA, "300", Panel::Older)}) {
        const auto row = row_of(core::compare(older, other, Basis::Serving), N::VitaminA);
        CHECK(row.finding == Finding::NotComparable);
        CHECK(row.why == Why::PercentsOfUnlikeLabels);
    }
    // Calcium has a Daily Value in both: 10% is 90 to 125 mg of 1000, and 117 to 162.5 mg of 1300.
    CHECK(row_of(core::compare(percent_only(N::Calcium, "10%", Panel::Older), percent_only(N::Calcium, "15%"),
                               Basis::Serving),
                 N::Calcium)
              .finding == Finding::LeftLess);
}

TEST_CASE("percent only: the same percent of unlike Daily Values is no same figure")
{
    const auto row = row_of(
        core::compare(percent_only(N::Calcium, "10%", Panel::Older), percent_only(N::Calcium, "10%"), Basis::Serving),
        N::Calcium);
    CHECK(row.finding == Finding::TooCloseToTell); // 90 to 125 mg and 117 to 162.5 mg
}

// 2 percent of the Daily Value of its time: 21 CFR 101.9(c)(8)(iii). Vitamin B12 was 6 mcg, now 2.4 mcg.
TEST_CASE("not significant: on a label of before 2016 it is 2 percent of the older Daily Value")
{
    const auto older = not_significant(N::VitaminB12, Panel::Older);
    const auto behind = core::content_behind(older, older.per_serving, N::VitaminB12, std::nullopt);
    REQUIRE(behind);
    CHECK(behind->high == Content::from_nano(120)); // 0.12 mcg
    CHECK(row_of(core::compare(older, amount_only(N::VitaminB12, "0.1"), Basis::Serving), N::VitaminB12).finding ==
          Finding::TooCloseToTell);
}

TEST_CASE("not significant: against a percent of the same unknown Daily Value")
{
    const auto named = not_significant(N::VitaminA, Panel::Older);
    const auto finding = [&](const std::string& percent) {
        return row_of(core::compare(named, percent_only(N::VitaminA, percent, Panel::Older), Basis::Serving),
                      N::VitaminA)
            .finding;
    };
    CHECK(finding("2%") == Finding::TooCloseToTell); // below 2% against 1 to 3%
    CHECK(finding("4%") == Finding::LeftLess);       // against 3 to 5%
    const auto row = row_of(core::compare(named, amount_only(N::VitaminA, "300"), Basis::Serving), N::VitaminA);
    CHECK(row.finding == Finding::NotComparable);
    CHECK(row.why == Why::PercentsOfUnlikeLabels);
}

// 21 CFR 101.9(c)(7)(ii): protein's percent counts its quality, so it says nothing of the grams.
TEST_CASE("percent only: a protein's grams are not read out of its percent")
{
    const auto row = row_of(
        core::compare(percent_only(N::Protein, "10%"), amount_only(N::Protein, "9"), Basis::Serving), N::Protein);
    CHECK(row.finding == Finding::NotPrinted);
    CHECK(row.left.percent->percent == 10);
    CHECK_FALSE(row.left.range);
}

TEST_CASE("nominal value: only for percents of one unknown Daily Value")
{
    const auto older = percent_only(N::VitaminA, "10%", Panel::Older);
    CHECK(core::nominal_value(older, older, N::VitaminA));
    CHECK_FALSE(core::nominal_value(older, percent_only(N::VitaminA, "10%"), N::VitaminA));
    CHECK_FALSE(core::nominal_value(older, amount_only(N::VitaminA, "300", Panel::Older), N::VitaminA));
    CHECK_FALSE(core::nominal_value(percent_only(N::Calcium, "10%", Panel::Older),
                                    percent_only(N::Calcium, "10%", Panel::Older), N::Calcium));
    const auto trans = amount_only(N::TransFat, "1");
    CHECK_FALSE(core::nominal_value(trans, trans, N::TransFat));
}

} // namespace test
