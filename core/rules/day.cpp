#include "core/rules/day.h"

#include <algorithm>
#include <vector>

namespace core {
namespace {

/// The ages that are shown together: each ends where a row of the tables ends.
struct Ages {
    bool in_months;
    int from;
    int to;
};
constexpr Ages ages[] = {{true, 12, 23},  {false, 2, 3},   {false, 4, 8},   {false, 9, 13},
                         {false, 14, 18}, {false, 19, 30}, {false, 31, 50}, {false, 51, no_end}};

DayGroup group_of(const Ages& of)
{
    DayGroup group{of.in_months, of.from, of.to, {no_end * 100, no_end * 100}, {0, 0}};
    for (const auto& row : day_needs()) {
        if (row.in_months != of.in_months || row.from < of.from || row.to > of.to)
            continue;
        const auto sex = static_cast<std::size_t>(row.sex);
        group.low[sex] = std::min({group.low[sex], row.sedentary, row.moderate, row.active});
        group.high[sex] = std::max({group.high[sex], row.sedentary, row.moderate, row.active});
    }
    return group;
}

} // namespace

std::span<const DayGroup> day_groups()
{
    static const auto groups = [] {
        std::vector<DayGroup> all;
        for (const auto& of : ages)
            all.push_back(group_of(of));
        return all;
    }();
    return groups;
}

} // namespace core
