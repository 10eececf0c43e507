// Firm answers are true: many true foods are printed as the rule allows, compared, and looked at behind the label.
// The printing is tests/core/figure/lawful.h, a second statement of the rule that knows nothing of core's engine.
#include "core/compare/comparison.h"
#include "core/figure/daily_values.h"
#include "core/figure/percent.h"
#include "tests/core/compare/rows.h"
#include "tests/core/figure/lawful.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <random>
#include <tuple>

namespace test {
namespace {

using core::Basis;
using core::Finding;
__extension__ using Wide = __int128;
using Random = std::mt19937_64;

constexpr std::int64_t one = 1'000'000'000;
constexpr Basis bases[] = {Basis::Serving, Basis::Package, Basis::SameAmount};

/// What no label tells: in billionths of a gram (or calorie) a serving, of a gram, of a serving.
struct TrueFood {
    std::int64_t content;
    std::int64_t size;
    std::int64_t servings;
};

std::int64_t between(Random& random, std::int64_t low, std::int64_t high)
{
    return std::uniform_int_distribution<std::int64_t>(low, high)(random);
}

const Print& any_of(const std::set<Print>& prints, Random& random)
{
    return *std::next(prints.begin(), between(random, 0, static_cast<std::int64_t>(prints.size()) - 1));
}

/// The percent as a maker may print it: from the true amount, or from the printed one.
core::PrintedPercent percent_of(std::int64_t content, core::Content daily, core::PercentRounding rounding,
                                Random& random)
{
    static const auto whole = whole_percent_rule();
    static const auto vitamin = vitamin_percent_rule();
    const auto exact = static_cast<std::int64_t>(Wide{content} * 100 * one / daily.nano());
    const auto prints = (rounding == core::PercentRounding::Whole ? whole : vitamin).lawful(exact);
    const Print print = any_of(prints, random);
    return {static_cast<int>(print.nano / one), print.less_than};
}

/// Prints one nutrient of a true food by one of the lawful choices.
core::Label print(const TrueFood& food, const NutrientRule& rule, Random& random)
{
    static const auto size_rule = serving_size_rule();
    static const auto servings_print = servings_rule();
    core::Label label;
    label.panel = rule.panel;
    label.serving.metric = core::Mass::from_nano(any_of(size_rule.lawful(food.size), random).nano);
    const std::int64_t servings = any_of(servings_print.lawful(food.servings), random).nano;
    const bool exact = servings == food.servings && between(random, 0, 1) == 0; // "about" may stand there all the same
    using Kind = core::ServingsPerContainer::Kind;
    label.servings = {exact ? Kind::Number : Kind::About, core::Count::from_nano(servings)};
    const Print figure = any_of(rule.rule.lawful(food.content), random);
    core::Line line{core::Figure{core::Content::from_nano(figure.nano), figure.less_than, 0}, std::nullopt};
    const auto rounding = core::percent_rounding(rule.nutrient, rule.panel);
    const auto daily = core::daily_value(rule.nutrient, rule.panel, core::Audience::Adult);
    const bool percent_only = daily && rounding != core::PercentRounding::None &&
                              rule.nutrient != core::Nutrient::Protein && between(random, 0, 2) == 0;
    if (percent_only) {
        const bool from_printed = between(random, 0, 1) == 0 && !figure.less_than;
        line = {std::nullopt, percent_of(from_printed ? figure.nano : food.content, *daily, rounding, random)};
    }
    label.per_serving.lines[rule.nutrient] = line;
    return label;
}

/// Below 0: the left truly has less on this basis; above 0: more. Exact, and crosswise.
int truth(const TrueFood& left, const TrueFood& right, Basis basis)
{
    Wide a = left.content;
    Wide b = right.content;
    if (basis == Basis::Package) {
        a *= left.servings;
        b *= right.servings;
    } else if (basis == Basis::SameAmount) {
        a *= right.size;
        b *= left.size;
    }
    return a < b ? -1 : a > b ? 1 : 0;
}

TrueFood random_food(const NutrientRule& rule, Random& random)
{
    // On the grid and beside it; servings often whole, as packages are filled.
    TrueFood food;
    food.content = between(random, 0, rule.rule.most / rule.rule.grid / 4) * rule.rule.grid;
    food.content += between(random, 0, 3) == 0 ? between(random, 0, rule.rule.grid) : 0;
    food.size = between(random, 100, 60'000) * one / 1'000;
    food.servings =
        between(random, 0, 1) == 0 ? between(random, 1, 20) * one : between(random, 1'000, 20'000) * one / 1'000;
    return food;
}

/// A food that is hard to tell from `food`: a little more or less of everything.
TrueFood neighbour(const TrueFood& food, const NutrientRule& rule, Random& random)
{
    TrueFood near = food;
    near.content = std::max<std::int64_t>(0, food.content + between(random, -2, 2) * rule.rule.finest +
                                                 between(random, -1, 1) * rule.rule.grid);
    near.size = std::max(one / 10, food.size + between(random, -2, 2) * one / 2);
    near.servings = std::max(one, food.servings + between(random, -1, 1) * one);
    return near;
}

std::vector<NutrientRule> all_rules()
{
    auto rules = nutrient_rules();
    for (auto& rule : vitamin_rules())
        rules.push_back(std::move(rule));
    return rules;
}

} // namespace

TEST_CASE("soundness: a less or more that is said is true of the foods behind the labels")
{
    Random random(20'161'127);
    std::map<Basis, int> firm;
    std::map<Basis, int> unsure;
    for (const auto& rule : all_rules()) {
        CAPTURE(std::string(core::info(rule.nutrient).key));
        CAPTURE(rule.rule.source);
        for (int trial = 0; trial < 400; ++trial) {
            const auto left_food = random_food(rule, random);
            const auto right_food = trial % 2 == 0 ? neighbour(left_food, rule, random) : random_food(rule, random);
            const auto left = print(left_food, rule, random);
            const auto right = print(right_food, rule, random);
            for (const auto basis : bases) {
                const auto both = core::compare(left, right, basis);
                CAPTURE(left_food.content);
                CAPTURE(right_food.content);
                CAPTURE(static_cast<int>(basis));
                REQUIRE(core::compare(right, left, basis) == swapped(both));
                const auto finding = row_of(both, rule.nutrient).finding;
                const int order = truth(left_food, right_food, basis);
                REQUIRE((finding != Finding::LeftLess || order < 0));
                REQUIRE((finding != Finding::LeftMore || order > 0));
                REQUIRE(finding != Finding::NotComparable); // what is printed by the rule is never off it
                ++(finding == Finding::LeftLess || finding == Finding::LeftMore ? firm : unsure)[basis];
            }
        }
    }
    for (const auto basis : bases) { // the test would say nothing if one of the two never came up
        CAPTURE(static_cast<int>(basis));
        CHECK(firm[basis] > 1'000);
        CHECK(unsure[basis] > 1'000);
    }
}

namespace {

/// All foods of a grid that print alike, by the least and the most that is in them on each basis.
struct Alike {
    TrueFood least[3];
    TrueFood most[3];
};

using LabelKey = std::tuple<std::int64_t, std::int64_t, std::int64_t>; // figure, size, servings

std::map<LabelKey, Alike> foods_by_label()
{
    const auto rules = nutrient_rules();
    const auto& fat = *std::find_if(rules.begin(), rules.end(),
                                    [](const auto& rule) { return rule.nutrient == core::Nutrient::TotalFat; });
    const auto size_rule = serving_size_rule();
    const auto servings_print = servings_rule();
    std::map<LabelKey, Alike> all;
    for (std::int64_t content = 0; content < 7 * one; content += one / 50)
        for (std::int64_t size = 28 * one; size < 32 * one; size += one / 10)
            for (std::int64_t servings = 4 * one; servings < 7 * one; servings += one / 20) {
                const TrueFood food{content, size, servings};
                const LabelKey key{fat.rule.lawful(content).begin()->nano, size_rule.lawful(size).begin()->nano,
                                   servings_print.lawful(servings).begin()->nano};
                const auto [place, is_new] = all.try_emplace(key);
                auto& alike = place->second;
                for (std::size_t i = 0; i < 3; ++i) {
                    if (is_new || truth(food, alike.least[i], bases[i]) < 0)
                        alike.least[i] = food;
                    if (is_new || truth(food, alike.most[i], bases[i]) > 0)
                        alike.most[i] = food;
                }
            }
    return all;
}

core::Label label_of(const LabelKey& key)
{
    core::Label label;
    label.serving.metric = core::Mass::from_nano(std::get<1>(key));
    label.servings = {core::ServingsPerContainer::Kind::About, core::Count::from_nano(std::get<2>(key))};
    label.per_serving.lines[core::Nutrient::TotalFat].amount =
        core::Figure{core::Content::from_nano(std::get<0>(key)), false, 0};
    return label;
}

} // namespace

TEST_CASE("soundness: never firm where other foods with the same two labels stand the other way round, and never timid")
{
    const auto foods = foods_by_label();
    REQUIRE(foods.size() > 150);
    int parted[3] = {};
    int said[3] = {};
    for (const auto& [left_key, left] : foods) {
        const auto left_label = label_of(left_key);
        for (const auto& [right_key, right] : foods) {
            const auto right_label = label_of(right_key);
            for (std::size_t i = 0; i < 3; ++i) {
                const auto finding =
                    row_of(core::compare(left_label, right_label, bases[i]), core::Nutrient::TotalFat).finding;
                const bool all_less = truth(left.most[i], right.least[i], bases[i]) < 0;
                const bool all_more = truth(left.least[i], right.most[i], bases[i]) > 0;
                parted[i] += all_less || all_more ? 1 : 0;
                said[i] += finding == Finding::LeftLess || finding == Finding::LeftMore ? 1 : 0;
                REQUIRE((finding != Finding::LeftLess || all_less));
                REQUIRE((finding != Finding::LeftMore || all_more));
            }
        }
    }
    for (std::size_t i = 0; i < 3; ++i) {
        CAPTURE(i);
        CHECK(said[i] <= parted[i]);
        CHECK(said[i] * 100 >= parted[i] * 97); // the grid has gaps at the edges, so a few are parted there only
    }
}

// A sheet refuses such figures or lets them just pass (core/figure/figure.h, core/label/serving.h): nothing may
// overflow.
TEST_CASE("soundness: hostile labels are compared without overflow")
{
    std::vector<core::Label> labels;
    const std::int64_t sizes[] = {0, 1, one / 10, 30 * one, 100'000 * one};
    const std::int64_t counts[] = {0, 1, one, 1'000 * one};
    const std::int64_t amounts[] = {0, 1, one, 1'000 * one, 100'000 * one};
    for (const auto size : sizes)
        for (const auto count : counts)
            for (const auto amount : amounts) {
                core::Label label;
                label.serving.metric.emplace(core::Mass::from_nano(size));
                const auto kind =
                    count == one ? core::ServingsPerContainer::Kind::About : core::ServingsPerContainer::Kind::Number;
                label.servings = {kind, core::Count::from_nano(count)};
                for (const auto& known : core::nutrients()) {
                    const bool calories = known.unit == core::Unit::Kilocalorie;
                    const auto most = calories ? amount : std::min(amount, 1'000 * one);
                    label.per_serving.lines[known.nutrient] = {
                        core::Figure{core::Content::from_nano(most), amount == one, 0},
                        core::PrintedPercent{amount == 0 ? 0 : 10'000, false}};
                }
                labels.push_back(label);
                for (auto& [nutrient, line] : label.per_serving.lines)
                    line.amount.reset();
                label.panel = core::Panel::Older;
                labels.push_back(label);
            }
    std::size_t letters = 0;
    const core::Label* const others[] = {&labels.front(), &labels[labels.size() / 2], &labels.back()};
    for (const auto& left : labels)
        for (const auto* right : others)
            for (const auto basis : bases) {
                const auto both = core::compare(left, *right, basis);
                for (const auto& row : both.rows)
                    for (const auto* side : {&row.left, &row.right}) {
                        if (side->figure)
                            letters += core::as_printed(*side->figure, row.nutrient).size();
                        if (side->range) // what shows it counts in the nutrient's own unit, to nine places
                            CHECK(side->range->high.nano() <=
                                  INT64_MAX / (one / core::nano_of(core::info(row.nutrient).unit)));
                    }
                REQUIRE(core::compare(*right, left, basis) == swapped(both));
            }
    CHECK(letters > 0);
}

} // namespace test
