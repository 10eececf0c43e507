#include "core/rules/day.h"

#include <doctest/doctest.h>

#include <algorithm>

using core::Sex;

TEST_CASE("day: more activity never needs less, and no age is left out between two rows")
{
    for (const auto sex : {Sex::Male, Sex::Female}) {
        int next = 2;
        for (const auto& row : core::day_needs()) {
            CAPTURE(row.from);
            CHECK(row.sedentary <= row.moderate);
            CHECK(row.moderate <= row.active);
            if (row.sex != sex || row.in_months)
                continue;
            CHECK(row.from == next);
            next = row.to + 1;
        }
        CHECK(next == core::no_end + 1);
    }
}

TEST_CASE("day: the groups hold every row of their ages, and together all of them")
{
    // Dietary Guidelines for Americans, 2020-2025, Appendix 2, Table A2-2.
    const auto group = [](int from) { return *std::ranges::find(core::day_groups(), from, &core::DayGroup::from); };
    const auto women = static_cast<std::size_t>(Sex::Female);
    const auto men = static_cast<std::size_t>(Sex::Male);
    CHECK(group(31).to == 50);
    CHECK(group(31).low[women] == 1800);
    CHECK(group(31).high[women] == 2200);
    CHECK(group(31).low[men] == 2200);
    CHECK(group(31).high[men] == 3000);
    CHECK(group(51).low[women] == 1600);
    CHECK(group(51).high[men] == 2800);
    int next = 2;
    for (const auto& one : core::day_groups()) {
        CHECK(one.low[men] <= one.high[men]);
        CHECK(one.low[men] >= 800); // both sexes have rows in every group
        CHECK(one.high[women] <= 3200);
        if (one.in_months)
            continue;
        CHECK(one.from == next);
        next = one.to + 1;
    }
    CHECK(next == core::no_end + 1);
}
