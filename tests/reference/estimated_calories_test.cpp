// Every row of estimated_calories.csv, and the other way round: core holds no estimate that is not in it.
#include "core/rules/day.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <string>

namespace test {
namespace {

const core::DayNeed* need_of(const ReferenceRow& row)
{
    const bool months = row["age_unit"] == "month";
    const int from = std::stoi(row["age_from"]);
    const int to = row["age_to"].empty() ? core::no_end : std::stoi(row["age_to"]);
    const auto sex = row["sex"] == "male" ? core::Sex::Male : core::Sex::Female;
    for (const auto& need : core::day_needs())
        if (need.sex == sex && need.in_months == months && need.from == from && need.to == to)
            return &need;
    return nullptr;
}

int figure_of(const core::DayNeed& need, const std::string& activity)
{
    if (activity == "moderate")
        return need.moderate;
    return activity == "active" ? need.active : need.sedentary;
}

} // namespace

TEST_CASE("estimated_calories.csv: every estimate of an age")
{
    TableRun run("estimated_calories.csv");
    const auto rows = reference_rows("estimated_calories.csv");
    std::size_t held = 0;
    for (const auto& row : rows) {
        CAPTURE(row.place());
        if (row["age_unit"] == "stage") { // Table A2-3
            run.skipped("pregnancy and lactation are for a doctor or a dietitian");
            continue;
        }
        const auto* need = need_of(row);
        REQUIRE(need != nullptr);
        CHECK(figure_of(*need, row["activity"]) == std::stoi(row["kcal"]));
        CHECK(row["source"].starts_with(core::day_edition));
        if (row["activity"] == "not_stated") // one figure for all
            CHECK((need->sedentary == need->active && need->moderate == need->active));
        held += 1;
        run.used();
    }
    std::size_t figures = 0;
    for (const auto& need : core::day_needs())
        figures += need.in_months ? 1 : 3;
    CHECK(figures == held); // none that is not in the table
    run.done(rows.size());
}

TEST_CASE("estimated calories: the table of docs/label-math.md is the one that the station shows")
{
    const auto page = bytes_of(PAIRSTAND_SOURCE "/docs/label-math.md");
    const auto number = [](int calories) {
        const auto text = std::to_string(calories);
        return text.size() < 4 ? text : text.substr(0, 1) + "," + text.substr(1);
    };
    for (const auto& group : core::day_groups()) {
        const auto end = group.to == core::no_end ? std::string(" and older") : " to " + std::to_string(group.to);
        std::string row = "\n| " + std::to_string(group.from) + end + (group.in_months ? " months" : "") + " |";
        for (const auto sex : {core::Sex::Female, core::Sex::Male}) {
            const auto at = static_cast<std::size_t>(sex);
            row += " " + number(group.low[at]) + " to " + number(group.high[at]) + " |";
        }
        CAPTURE(row);
        CHECK(page.find(row + "\n") != std::string::npos);
    }
}

} // namespace test
