// A million true foods, printed as labels by any lawful choice and compared on every basis: nothing that is said firmly
// may be untrue of the foods, and no true label may be called inconsistent. Printing: tests/core/brute, which knows
// nothing of the program.
#include "core/compare/comparison.h"
#include "tests/core/compare/printer.h"
#include "tests/core/compare/true_food.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <iostream>
#include <map>
#include <string>

namespace test {
namespace {

using core::Basis;
using core::Finding;

// Under sanitizers one in ten of them (tests/core/CMakeLists.txt): what they look for shows in the first thousands.
constexpr int one_in = PAIRSTAND_ONE_IN;
constexpr int foods_of_a_seed = 200'000 / one_in;
constexpr std::uint64_t seeds[] = {20'160'527, 20'200'101, 19'930'106, 5'203'052, 101'9};

/// What came up; a property that never had an occasion says nothing.
struct Tally {
    long foods = 0;
    long pairs = 0;
    long rows = 0;
    std::map<Finding, long> findings;
    std::map<Basis, long> firm;
    long equal_at_half = 0; ///< firm, but equal, where a half was rounded down
};

core::MyAmount random_amount(Dice& dice)
{
    using Of = core::MyAmount::Of;
    constexpr Of kinds[] = {Of::Servings, Of::Cups, Of::Tablespoons, Of::Pieces, Of::Package};
    return {kinds[dice.between(0, 4)], {dice.between(1, 6), dice.between(1, 4)}};
}

/// Whether what is said of a row is true of the foods.
void check_row(const core::Row& row, int truth, bool half_down, Tally& tally)
{
    ++tally.rows;
    ++tally.findings[row.finding];
    if (row.finding != Finding::LeftLess && row.finding != Finding::LeftMore)
        return;
    const int said = row.finding == Finding::LeftLess ? -1 : 1;
    CAPTURE(std::string(core::info(row.nutrient).key));
    if (truth == -said)
        FAIL("the foods stand the other way round");
    if (truth == 0 && !half_down)
        FAIL("the foods hold the same");
    tally.equal_at_half += truth == 0 ? 1 : 0;
}

bool same_prints(const core::Row& row)
{
    return row.finding != Finding::NotComparable || row.why == core::Why::PercentsOfUnlikeLabels;
}

void compare_foods(const TrueFood& left, const TrueFood& right, const Style& style, Dice& dice, Tally& tally)
{
    const auto left_label = print_food(left, style, dice);
    const auto right_label = print_food(right, style, dice);
    const bool half_down = left_label.half_down || right_label.half_down;
    const auto amount = random_amount(dice);
    for (const auto basis : core::all_bases) {
        if (core::comparable_on(basis, left_label.label, right_label.label, amount) != core::Why::Comparable)
            continue;
        const auto both = core::compare(left_label.label, right_label.label, basis, {}, amount);
        ++tally.pairs;
        CAPTURE(static_cast<int>(basis));
        if (both.left_inconsistent || both.right_inconsistent)
            FAIL("a true label is called inconsistent");
        for (const auto& row : both.rows) {
            if (!same_prints(row))
                FAIL("what is printed by the rule is not compared: ", std::string(core::info(row.nutrient).key));
            check_row(row, order(left, right, row.nutrient, basis, amount), half_down, tally);
            if (row.finding == Finding::LeftLess || row.finding == Finding::LeftMore)
                ++tally.firm[basis];
        }
    }
}

void run(std::uint64_t seed, Tally& tally)
{
    CAPTURE(seed);
    Dice dice(seed);
    for (int trial = 0; trial < foods_of_a_seed / 2; ++trial) {
        CAPTURE(trial);
        const auto left = random_food(dice);
        const auto right = dice.one_in(2) ? neighbour(left, dice) : random_food(dice);
        Style style;
        style.halves = dice.one_in(2) ? brute::Halves::Either : brute::Halves::Up;
        style.audience = !dice.one_in(8)  ? core::Audience::Adult
                         : dice.one_in(2) ? core::Audience::Ages1To3
                                          : core::Audience::Infant;
        style.millilitres = dice.one_in(4);
        style.lines = random_lines(dice);
        tally.foods += 2;
        compare_foods(left, right, style, dice, tally);
    }
}

} // namespace

TEST_CASE("properties: of a million true foods nothing firm is untrue and no label inconsistent")
{
    Tally tally;
    for (const auto seed : seeds)
        run(seed, tally);
    std::cout << "properties: " << tally.foods << " true foods, " << tally.pairs << " comparisons, " << tally.rows
              << " rows: " << tally.findings[Finding::LeftLess] << " less, " << tally.findings[Finding::LeftMore]
              << " more, " << tally.findings[Finding::SameFigure] << " same figure, "
              << tally.findings[Finding::TooCloseToTell] << " too close to tell; " << tally.equal_at_half
              << " firm ones equal at a half rounded down\n";
    CHECK(tally.foods >= 1'000'000 / one_in);
    for (const auto basis : core::all_bases) {
        CAPTURE(static_cast<int>(basis));
        CHECK(tally.firm[basis] > 20'000 / one_in);
    }
    CHECK(tally.findings[Finding::TooCloseToTell] > 100'000 / one_in);
    CHECK(tally.findings[Finding::SameFigure] > 10'000 / one_in);
    CHECK(tally.equal_at_half > 0); // else the rule on halves would not have been tried
}

} // namespace test
