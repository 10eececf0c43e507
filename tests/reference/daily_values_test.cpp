// Every row of daily_values.csv, and the other way round: core holds no Daily Value that is not in it.
#include "core/figure/daily_values.h"
#include "core/figure/daily_values_table.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>

namespace test {
namespace {

using core::Audience;

/// Whom a row is for; nothing for foods for pregnant women, which the label model does not tell apart.
std::optional<Audience> audience_of(const std::string& group)
{
    static const std::map<std::string, std::optional<Audience>> groups{{"adult", Audience::Adult},
                                                                       {"children_1_3", Audience::Ages1To3},
                                                                       {"infants", Audience::Infant},
                                                                       {"pregnant", std::nullopt}};
    return groups.at(group);
}

} // namespace

TEST_CASE("daily_values.csv: every row that a label of ours can ask for")
{
    TableRun run("daily_values.csv");
    const auto rows = reference_rows("daily_values.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        CAPTURE(row["nutrient"]);
        const auto nutrient = core::nutrient_by_key(row["nutrient"]);
        REQUIRE(nutrient);
        const auto audience = audience_of(row["group"]);
        if (!audience) {
            run.skipped("a label for pregnant women is not told from one for adults");
            continue;
        }
        const auto value = core::daily_value(*nutrient, panel_of(row["label"]), *audience);
        if (row["unit"] == "IU") { // older labels print these vitamins as percents alone: no amount to divide
            run.skipped("counted in international units before 2016: printed as a percent alone");
            CHECK_FALSE(value);
            continue;
        }
        run.used();
        REQUIRE(value);
        CHECK(*value == content_of_cell(row["amount"], row["unit"]));
    }
    run.done(rows.size());
}

TEST_CASE("daily_values.csv: core holds no Daily Value that is not in the table")
{
    using Key = std::tuple<core::Nutrient, core::Panel, Audience>;
    std::set<Key> published;
    for (const auto& row : reference_rows("daily_values.csv"))
        if (const auto audience = audience_of(row["group"]))
            published.emplace(core::nutrient_by_key(row["nutrient"]).value(), panel_of(row["label"]), *audience);
    std::set<Key> held;
    for (const auto& row : core::daily_value_rows()) {
        CAPTURE(std::string(core::info(row.nutrient).key));
        const Key key{row.nutrient, row.panel, row.audience};
        CHECK(published.contains(key));
        CHECK(held.insert(key).second); // twice in the table: the second would never be found
    }
}

} // namespace test
