// Every row of claims.csv against the rules: limit, unit, comparison, amount, small-serving rule, paragraph.
#include "core/rules/claims.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace test {
namespace {

using core::Beyond;
using core::Bound;
using core::Counted;
using core::Limit;
using core::Per;
using core::Rule;

/// The key of our rule for a row's claim, where the table names it otherwise.
std::string key_of(const std::string& claim)
{
    static const std::map<std::string, std::string> others{{"disclosure_level", "within_disclosure_levels"},
                                                           {"high_or_good_source_fiber", "fiber_claim_without_fat"}};
    const auto other = others.find(claim);
    return other == others.end() ? claim : other->second;
}

/// The rules of this claim with the row's paragraph, or with the paragraph above it.
std::vector<const Rule*> rules_behind(const ReferenceRow& row)
{
    std::vector<const Rule*> rules;
    for (const auto& rule : core::claim_rules()) {
        // The table calls "light" by sodium what its paragraph, 101.56(c)(1), lets a light food say.
        const bool light_by_sodium = row["source"] == "21 CFR 101.56(c)(1)" && rule.key == "light_in_sodium";
        if ((rule.key == key_of(row["claim"]) || light_by_sodium) && row["source"].starts_with(rule.citation))
            rules.push_back(&rule);
    }
    return rules;
}

std::string why_skipped(const ReferenceRow& row)
{
    if (row["claim"] == "healthy_old")
        return "healthy as it stood before 89 FR 106064: no such rule is shown";
    if (row["claim"] == "meal_product" || row["claim"] == "main_dish")
        return "what a meal is: no label tells";
    if (row["nutrient"] == "two_thirds_of_vitamins_and_minerals")
        return "counts vitamins and minerals that a label need not print";
    return "";
}

/// Rows whose `memory` mark is settled, with the published text.
std::optional<std::string> settled_by(const ReferenceRow& row)
{
    if (row["checked"] != "memory")
        return std::nullopt;
    if (row["claim"] == "saturated_fat_free")
        return "Institute of Medicine (2010), Front-of-Package Nutrition Rating Systems and Symbols: Phase I Report, "
               "appendix B: saturated and trans fat per reference amount and per labeled serving (table right)";
    if (row["claim"] == "fat_free" || row["claim"] == "cholesterol_free")
        return "published notes on nutrient content claims: free means an insignificant amount in the reference amount "
               "and in the labeled serving (table right)";
    return std::nullopt;
}

bool is_about_another_food(const std::string& kind)
{
    return kind == "reduced_by_at_least" || kind == "more_by_at_least";
}

Bound bound_of(const std::string& kind)
{
    static const std::map<std::string, Bound> bounds{
        {"below", Bound::Below}, {"at_most", Bound::AtMost}, {"at_least", Bound::AtLeast}, {"above", Bound::AtMost}};
    return bounds.at(kind); // "above" tells when to disclose: "at most" is where nothing must be
}

bool per_fits(const Limit& limit, const std::string& per)
{
    if (limit.counted == Counted::PercentOfCalories)
        return true; // the same share in any amount
    if (per == "racc")
        return limit.per == Per::ReferenceAmount;
    if (per == "100g")
        return limit.per == Per::Portion &&
               limit.portion == core::Portion{core::Mass::whole(100), core::Mass::whole(100)};
    return limit.per == Per::Serving; // "serving", and "meal": per labeled serving
}

Limit limit_of_row(const ReferenceRow& row, core::Nutrient nutrient)
{
    Limit limit{nutrient, bound_of(row["kind"]), 0};
    if (row["unit"] == "% DV")
        limit.counted = Counted::PercentDailyValue;
    else if (row["unit"] == "%")
        limit.counted = Counted::PercentOfCalories;
    limit.value = limit.counted == Counted::Amount ? content_of_cell(row["limit"], row["unit"]).nano()
                                                   : nano_of_cell(row["limit"]) / 1'000'000'000;
    return limit;
}

bool has_limit(const Rule& rule, const Limit& wanted, const ReferenceRow& row)
{
    const bool confirmed = row["checked"] == "verified" || settled_by(row);
    const auto fits = [&](const Limit& limit) {
        return limit.nutrient == wanted.nutrient && limit.bound == wanted.bound && limit.value == wanted.value &&
               limit.counted == wanted.counted && per_fits(limit, row["per"]) && limit.confirmed == confirmed;
    };
    const auto small = [&](const Limit& limit) { return limit.small_serving && limit.nutrient == wanted.nutrient; };
    return std::ranges::any_of(rule.limits, fits) &&
           std::ranges::any_of(rule.limits, small) == !row["small_serving_rule"].empty();
}

/// The nutrients that a row is about: several for "any nutrient".
std::vector<core::Nutrient> nutrients_of(const ReferenceRow& row)
{
    const auto& name = row["nutrient"];
    if (name == "calories_from_fat_percent")
        return {core::Nutrient::TotalFat};
    if (name == "calories_from_saturated_fat_percent")
        return {core::Nutrient::SaturatedFat};
    if (const auto nutrient = core::nutrient_by_key(name))
        return {*nutrient};
    REQUIRE((name == "any_rdi_or_drv_nutrient" || name == "single_vitamin_or_mineral"));
    std::vector<core::Nutrient> all;
    for (const Rule* rule : rules_behind(row))
        all.push_back(rule->subject.value());
    CHECK(all.size() == 29);
    return all;
}

void check_figures(const ReferenceRow& row)
{
    for (const auto nutrient : nutrients_of(row)) {
        CAPTURE(std::string(core::info(nutrient).key));
        const Limit wanted = limit_of_row(row, nutrient);
        const auto rules = rules_behind(row);
        CHECK(std::ranges::any_of(rules, [&](const Rule* rule) { return has_limit(*rule, wanted, row); }));
    }
}

} // namespace

TEST_CASE("claims.csv: every row stands in the rules")
{
    TableRun run("claims.csv");
    for (const auto& row : reference_rows("claims.csv")) {
        CAPTURE(row.place());
        CAPTURE(row["claim"]);
        if (const auto why = why_skipped(row); !why.empty()) {
            run.skipped(why);
            continue;
        }
        const auto rules = rules_behind(row);
        REQUIRE_FALSE(rules.empty());
        if (is_about_another_food(row["kind"])) {
            CHECK(std::ranges::all_of(rules, [](const Rule* rule) { return rule->beyond == Beyond::ReferenceFood; }));
        } else if (row["kind"] == "statement") {
            CHECK(std::ranges::all_of(rules, [](const Rule* rule) { return rule->beyond == Beyond::PackageWords; }));
        } else {
            check_figures(row);
        }
        if (const auto citation = settled_by(row))
            run.settled();
        else
            run.used();
    }
    run.done(128);
}

TEST_CASE("claims.csv: the rules hold no limit that is not in the table")
{
    const auto rows = reference_rows("claims.csv");
    for (const auto& rule : core::claim_rules())
        for (const auto& limit : rule.limits) {
            CAPTURE(std::string(rule.key));
            CAPTURE(std::string(core::info(limit.nutrient).key));
            CAPTURE(limit.value);
            const auto fits = [&](const ReferenceRow& row) {
                if (!why_skipped(row).empty() || row["kind"] == "statement" || is_about_another_food(row["kind"]))
                    return false;
                const auto behind = rules_behind(row);
                return std::ranges::find(behind, &rule) != behind.end() &&
                       std::ranges::any_of(nutrients_of(row), [&](core::Nutrient nutrient) {
                           const Limit wanted = limit_of_row(row, nutrient);
                           return wanted.nutrient == limit.nutrient && wanted.value == limit.value &&
                                  wanted.bound == limit.bound && per_fits(limit, row["per"]);
                       });
            };
            CHECK(std::ranges::any_of(rows, fits));
        }
}

} // namespace test
