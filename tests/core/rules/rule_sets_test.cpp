// The sets that a leader switches on, and the answers of one label to them.
#include "core/rules/rule_sets.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <array>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace test {

using N = core::Nutrient;

TEST_CASE("rule sets: each has its own key and at least one rule, and no rule is without a set")
{
    std::set<std::string_view> keys;
    std::size_t rules = 0;
    for (const auto& info : core::rule_sets()) {
        CAPTURE(std::string(info.key));
        CHECK(keys.insert(info.key).second);
        CHECK(core::rule_set_by_key(info.key) == info.set);
        CHECK_FALSE(core::rules_of(info.set).empty());
        rules += core::rules_of(info.set).size();
    }
    CHECK(rules == 147);
    CHECK_FALSE(core::rule_set_by_key("claims"));
    CHECK_FALSE(core::rule_set_by_key(""));
    CHECK(core::rule_set_keys().starts_with("claims_calories, claims_fat, "));
    CHECK(core::rule_set_keys().ends_with("cacfp, cacfp_before"));
}

TEST_CASE("rule sets: nothing is answered that was not switched on, and rules for other foods are left out")
{
    const auto label = make_label("40 g", "", {{N::AddedSugars, "8"}, {N::Sodium, "130"}, {N::Iron, "11.2"}});
    const auto* cereal = core::reference_amount("cereal_20_to_43_g_per_cup");
    CHECK(core::answers_to({}, label, cereal).empty());
    const auto keys = [&](core::RuleSet set, const core::ReferenceAmount* food) {
        std::string all;
        for (const auto& answer : core::answers_to(std::array{set}, label, food))
            all.append(answer.rule->key).append(" ");
        return all;
    };
    CHECK(keys(core::RuleSet::Cacfp, cereal) == "cacfp_cereal_added_sugars ");
    CHECK(keys(core::RuleSet::Cacfp, core::reference_amount("soups")).empty());
    CHECK(keys(core::RuleSet::LeanClaims, cereal).empty());
    // "high" and "good source" only for what is printed
    CHECK(keys(core::RuleSet::SourceClaims, cereal) == "more high good_source high_potency ");
}

} // namespace test

TEST_CASE("rule sets: a list of keys, in the order in which they are shown")
{
    using S = core::RuleSet;
    CHECK(core::rule_sets_named("") == std::vector<S>{});
    CHECK(core::rule_sets_named(" \t") == std::vector<S>{});
    CHECK(core::rule_sets_named("cacfp ,\twic, claims_fat") == std::vector{S::FatClaims, S::Wic, S::Cacfp});
    CHECK(core::rule_sets_named(core::rule_set_keys())->size() == core::rule_sets().size());
    for (const auto* wrong : {"wick", "WIC", "wic,", ",wic", "wic,,cacfp", "wic, wic", "wic cacfp", ","}) {
        CAPTURE(wrong);
        CHECK_FALSE(core::rule_sets_named(wrong));
    }
}
