#include "tests/core/brute/orders.h"

#include <algorithm>
#include <set>

namespace brute {
namespace {

void add_percents(std::set<LinePrint>& lines, Print amount, std::int64_t content, std::int64_t daily, bool print_amount,
                  Print counted_from)
{
    const Print shown = print_amount ? amount : Print{-1};
    for (const auto& percent : prints(Kind::WholePercent, percent_of(content, daily), Halves::Up))
        lines.insert({shown, percent});
    for (const auto& percent : prints(Kind::WholePercent, percent_of(counted_from.nano, daily), Halves::Either))
        lines.insert({shown, percent});
}

/// All that one line may print: the amount alone, the percent alone, or both.
std::set<LinePrint> lines_of(Kind kind, std::int64_t content, std::int64_t daily)
{
    std::set<LinePrint> lines;
    for (const auto& amount : prints(kind, {content}, Halves::Up)) {
        lines.insert({amount, Print{-1}});
        if (daily == 0)
            continue;
        add_percents(lines, amount, content, daily, true, amount);
        add_percents(lines, amount, content, daily, false, amount);
    }
    return lines;
}

/// The numbers whose product says how much of a line is in an amount of the food, and what the other side is multiplied
/// by.
struct Cross {
    Wide own;
    Wide others;
};

Cross cross_of(const Food& food, Of of, In in)
{
    const std::int64_t content = of == Of::Part ? food.part : food.whole;
    switch (in) {
    case In::Serving:
        return {content, 1};
    case In::Package:
        return {Wide{content} * food.servings, 1};
    case In::Hundred:
        break;
    }
    return {content, food.size};
}

int order(const Food& left, const Food& right, Of of, In in)
{
    const Cross a = cross_of(left, of, in);
    const Cross b = cross_of(right, of, in);
    const Wide of_left = a.own * b.others;
    const Wide of_right = b.own * a.others;
    return of_left < of_right ? -1 : of_left > of_right ? 1 : 0;
}

constexpr Of both_lines[] = {Of::Part, Of::Whole};
constexpr In all_amounts[] = {In::Serving, In::Package, In::Hundred};

void add(Ends& ends, const Food& food)
{
    for (const Of of : both_lines)
        for (const In in : all_amounts) {
            auto& least = ends.least[static_cast<int>(of)][static_cast<int>(in)];
            auto& most = ends.most[static_cast<int>(of)][static_cast<int>(in)];
            if (ends.foods == 0 || order(food, least, of, in) < 0)
                least = food;
            if (ends.foods == 0 || order(food, most, of, in) > 0)
                most = food;
        }
    ++ends.foods;
}

/// Sizes and servings that come to the net quantity, by what they print.
std::map<std::pair<std::int64_t, std::int64_t>, std::vector<Food>> packages_of(const Grid& grid)
{
    std::map<std::pair<std::int64_t, std::int64_t>, std::vector<Food>> packages;
    for (const auto size : grid.sizes)
        for (const auto servings : grid.servings) {
            const Wide off = Wide{size} * servings - Wide{grid.net} * one;
            const Wide place = Wide{grid.net_place} * one;
            if (grid.net_place != 0 && (off >= place || -off >= place))
                continue;
            for (const auto& size_print : prints(Kind::ServingSize, {size}, Halves::Up))
                for (const auto& servings_print : prints(Kind::Servings, {servings}, Halves::Up))
                    packages[{size_print.nano, servings_print.nano}].push_back({0, 0, size, servings});
        }
    return packages;
}

} // namespace

std::map<LabelPrint, Ends> labels_of(const Grid& grid)
{
    std::map<std::pair<LinePrint, LinePrint>, std::vector<Food>> by_lines;
    for (const auto whole : grid.amounts)
        for (const auto part : grid.amounts) {
            if (part > whole)
                break;
            for (const auto& part_line : lines_of(grid.part_kind, part, grid.part_daily_value))
                for (const auto& whole_line : lines_of(grid.whole_kind, whole, grid.whole_daily_value))
                    by_lines[{part_line, whole_line}].push_back({part, whole, 0, 0});
        }
    std::map<LabelPrint, Ends> labels;
    const auto packages = packages_of(grid);
    for (const auto& [lines, contents] : by_lines)
        for (const auto& [printed, sizes] : packages) {
            Ends& ends = labels[{lines.first, lines.second, printed.first, printed.second}];
            for (const Food& content : contents)
                for (const Food& package : sizes) {
                    ends.at_edge = ends.at_edge || content.whole == grid.amounts.back();
                    add(ends, {content.part, content.whole, package.size, package.servings});
                }
        }
    return labels;
}

Orders orders(const Ends& left, const Ends& right, Of of, In in)
{
    const auto i = static_cast<int>(of);
    const auto j = static_cast<int>(in);
    const int least_to_most = order(left.least[i][j], right.most[i][j], of, in);
    const int most_to_least = order(left.most[i][j], right.least[i][j], of, in);
    Orders possible;
    possible.less = least_to_most < 0;
    possible.more = most_to_least > 0;
    possible.equal = least_to_most <= 0 && most_to_least >= 0;
    return possible;
}

std::vector<std::int64_t> edges(std::int64_t step, std::int64_t percent_step, std::int64_t most)
{
    std::set<std::int64_t> all;
    for (const std::int64_t by : {step, percent_step})
        for (std::int64_t edge = 0; by > 0 && edge <= most; edge += by) {
            all.insert(edge);
            if (edge > 0)
                all.insert(edge - 1);
        }
    return {all.begin(), all.end()};
}

} // namespace brute
