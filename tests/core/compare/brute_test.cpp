// core::compare held row by row against tests/core/brute, which tries every food of a grid and includes nothing of the
// program: firm exactly where the foods behind the two labels stand one way only.
#include "core/compare/comparison.h"
#include "tests/core/brute/orders.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iostream>
#include <string>

namespace test {
namespace {

using core::Basis;
using core::Finding;
using N = core::Nutrient;

core::Line line_of(const brute::LinePrint& print)
{
    core::Line line;
    if (print.amount.nano >= 0)
        line.amount = core::Figure{core::Content::from_nano(print.amount.nano), print.amount.less_than, 0};
    if (print.percent.nano >= 0)
        line.percent = core::PrintedPercent{static_cast<int>(print.percent.nano / brute::one), print.percent.less_than};
    return line;
}

struct Case {
    std::string why;
    N part;
    N whole;
    brute::Grid grid;
};

/// The adapter: what the grid prints as the label that core reads.
core::Label label_of(const brute::LabelPrint& print, const Case& c)
{
    core::Label label;
    label.serving.metric = core::Mass::from_nano(print.size);
    using Kind = core::ServingsPerContainer::Kind;
    label.servings = {c.grid.servings.size() == 1 ? Kind::Number : Kind::About, core::Count::from_nano(print.servings)};
    if (c.grid.net_place != 0)
        label.net_quantity = core::NetQuantity{"", core::Mass::from_nano(c.grid.net)};
    label.per_serving.lines[c.part] = line_of(print.part);
    label.per_serving.lines[c.whole] = line_of(print.whole);
    return label;
}

struct Tally {
    long rows = 0;
    long firm = 0;
    long close = 0;
    long same_figure = 0;
    long within_a_billionth = 0; ///< core is not firm, the grid is, and only by the last billionth
};

/// As `orders`, had every food a few billionths more or less: what an edge of the grid hides.
brute::Ends widened(brute::Ends ends)
{
    constexpr std::int64_t few = 2;
    const auto move = [](brute::Food& food, std::int64_t by) {
        food.part = std::max<std::int64_t>(food.part + by, 0);
        food.whole = std::max<std::int64_t>(food.whole + by, 0);
        food.size -= by;
        food.servings += by;
    };
    for (int of = 0; of < 2; ++of)
        for (int in = 0; in < 3; ++in) {
            move(ends.least[of][in], -few);
            move(ends.most[of][in], few);
        }
    return ends;
}

void check(const core::Row& row, const brute::Ends& left, const brute::Ends& right, brute::Of of, brute::In in,
           Tally& tally)
{
    ++tally.rows;
    const auto possible = orders(left, right, of, in);
    switch (row.finding) {
    case Finding::LeftLess:
        ++tally.firm;
        if (possible.equal || possible.more)
            FAIL("less is said, but foods stand otherwise");
        return;
    case Finding::LeftMore:
        ++tally.firm;
        if (possible.equal || possible.less)
            FAIL("more is said, but foods stand otherwise");
        return;
    case Finding::SameFigure:
        ++tally.same_figure;
        return;
    case Finding::TooCloseToTell: {
        ++tally.close;
        if (possible.less && possible.more)
            return;
        const auto wider = orders(widened(left), widened(right), of, in);
        if (!wider.less || !wider.more)
            FAIL("too close to tell, but all foods stand one way");
        ++tally.within_a_billionth;
        return;
    }
    case Finding::NotPrinted:
    case Finding::NotComparable:
        break;
    }
    FAIL("what is printed by the rule is not compared");
}

const core::Row& row_for(const core::Comparison& both, N nutrient)
{
    return *std::find_if(both.rows.begin(), both.rows.end(), [&](const auto& row) { return row.nutrient == nutrient; });
}

/// The grids have every edge of servings of 30 and 31 g and of 4.5 to 6 servings; of others they have a few only.
bool is_whole(const brute::LabelPrint& print)
{
    return print.size >= 30 * brute::one && print.size <= 31 * brute::one && 2 * print.servings >= 9 * brute::one &&
           print.servings <= 6 * brute::one;
}

/// `every`: one pair of labels of so many; all of them but under sanitizers.
void run(const Case& c, std::size_t every = PAIRSTAND_ONE_IN)
{
    CAPTURE(c.why);
    const auto ends = brute::labels_of(c.grid);
    long foods = 0;
    std::vector<std::pair<core::Label, const brute::Ends*>> labels;
    long at_edge = 0;
    for (const auto& [print, behind] : ends) {
        if (behind.at_edge || !is_whole(print)) {
            ++at_edge;
            continue;
        }
        labels.emplace_back(label_of(print, c), &behind);
        foods += behind.foods;
    }
    Tally tally;
    struct Asked {
        Basis basis;
        brute::In in;
        core::MyAmount amount{};
    };
    using Of = core::MyAmount::Of;
    const Asked bases[] = {{Basis::Serving, brute::In::Serving},
                           {Basis::Package, brute::In::Package},
                           {Basis::SameAmount, brute::In::Hundred},
                           {Basis::MyAmount, brute::In::Serving, {Of::Servings, {3, 2}}},
                           {Basis::MyAmount, brute::In::Package, {Of::Package, {1, 2}}}};
    for (std::size_t i = 0; i < labels.size(); ++i)
        for (std::size_t j = i % every; j < labels.size(); j += every)
            for (const auto& [basis, in, amount] : bases) {
                const auto both = core::compare(labels[i].first, labels[j].first, basis, {}, amount);
                if (both.left_inconsistent || both.right_inconsistent)
                    FAIL("a label that foods print is called inconsistent");
                CAPTURE(i);
                CAPTURE(j);
                const int number = static_cast<int>(basis);
                CAPTURE(number);
                check(row_for(both, c.part), *labels[i].second, *labels[j].second, brute::Of::Part, in, tally);
                check(row_for(both, c.whole), *labels[i].second, *labels[j].second, brute::Of::Whole, in, tally);
            }
    std::cout << "brute: " << c.why << ": " << labels.size() << " labels (" << at_edge
              << " more reach over the edge of the grid), " << foods << " foods behind them, " << tally.rows
              << " rows: " << tally.firm << " firm, " << tally.close << " too close to tell ("
              << tally.within_a_billionth << " by the last billionth of the grid only), " << tally.same_figure
              << " same figure\n";
    CHECK(tally.firm > 1'000);
    CHECK(tally.close > 1'000);
    CHECK(tally.within_a_billionth * 100 <= tally.close);
}

/// Where the net quantity ends, at each size and each number of servings.
void add_corners(brute::Grid& grid)
{
    const auto sizes = grid.sizes;
    const auto servings = grid.servings;
    const auto add = [](std::vector<std::int64_t>& values, std::int64_t net, std::int64_t by) {
        const auto corner = static_cast<std::int64_t>(brute::Wide{net} * brute::one / by);
        values.insert(values.end(), {corner - 1, corner, corner + 1});
    };
    for (const std::int64_t net : {grid.net - grid.net_place, grid.net + grid.net_place}) {
        for (const auto count : servings)
            add(grid.sizes, net, count);
        for (const auto size : sizes)
            add(grid.servings, net, size);
    }
}

} // namespace

TEST_CASE("brute: the second implementation includes nothing of the program")
{
    for (const std::string file : {"prints.h", "prints.cpp", "orders.h", "orders.cpp"}) {
        std::ifstream in(PAIRSTAND_SOURCE "/tests/core/brute/" + file);
        REQUIRE(in);
        CAPTURE(file);
        int includes = 0;
        for (std::string line; std::getline(in, line);)
            if (line.starts_with("#include")) {
                ++includes;
                CAPTURE(line);
                CHECK((line.starts_with("#include <") || line.starts_with("#include \"tests/core/brute/")));
            }
        CHECK(includes > 0);
    }
}

// Daily Values: 21 CFR 101.9(c)(9): fat 78 g, saturated fat 20 g, carbohydrate 275 g, fiber 28 g, added sugars 50 g.
TEST_CASE("brute: core::compare is firm exactly where every food of a grid stands one way")
{
    using brute::Kind;
    using brute::one;
    const std::vector<std::int64_t> sizes{29 * one + one / 2, 30 * one, 30 * one + one / 2 - 1, 30 * one + one / 2,
                                          31 * one + one / 2 - 1};
    const std::vector<std::int64_t> servings{
        4 * one + one / 4,     4 * one + 3 * one / 4 - 1, 4 * one + 3 * one / 4, 5 * one,
        5 * one + one / 2 - 1, 5 * one + one / 2,         6 * one + one / 2 - 1};
    const std::vector<std::int64_t> one_size{29 * one + one / 2, 30 * one + one / 2 - 1}; // 30 g
    const auto fats = brute::edges(one / 4, one / 10, 6 * one);                           // half a percent of 20 g
    const auto sugars = brute::edges(one / 2, one / 4, 6 * one);                          // half a percent of 50 g
    const auto fibers = brute::edges(one / 2, 28 * one / 200, 3 * one);                   // half a percent of 28 g
    run({"saturated fat in fat",
         N::SaturatedFat,
         N::TotalFat,
         {Kind::Fat, Kind::Fat, 20 * one, 0, fats, one_size, {5 * one}, 0, 0}});
    run({"added sugars in sugars",
         N::AddedSugars,
         N::TotalSugars,
         {Kind::Carbohydrate, Kind::Carbohydrate, 50 * one, 0, sugars, one_size, {5 * one}, 0, 0}});
    run({"fiber in carbohydrate",
         N::DietaryFiber,
         N::TotalCarbohydrate,
         {Kind::Carbohydrate, Kind::Carbohydrate, 28 * one, 0, fibers, one_size, {5 * one}, 0, 0}});
    const auto few_fats = brute::edges(one / 4, 0, 4 * one);
    run({"fat with sizes and servings",
         N::SaturatedFat,
         N::TotalFat,
         {Kind::Fat, Kind::Fat, 0, 0, few_fats, sizes, servings, 0, 0}});
    brute::Grid with_net{Kind::Fat, Kind::Fat, 0, 0, few_fats, sizes, servings, one, 151 * one};
    add_corners(with_net);
    run({"fat with sizes, servings and a net quantity of 151 g", N::SaturatedFat, N::TotalFat, with_net});
}

} // namespace test
