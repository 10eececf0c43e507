// What somebody means to eat, read from words and moved step by step.
#include "core/compare/my_amount.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {
namespace {

using core::MyAmount;
using Of = MyAmount::Of;

} // namespace

TEST_CASE("my amount: words that name an amount, and words that do not")
{
    struct Case {
        std::string why, text;
        std::optional<MyAmount> amount;
    };
    const Case cases[] = {
        {"servings", "2 servings", MyAmount{Of::Servings, {2, 1}}},
        {"one serving", "1 serving", MyAmount{Of::Servings, {1, 1}}},
        {"half a serving", "1/2 serving", MyAmount{Of::Servings, {1, 2}}},
        {"a decimal", "1.5 servings", MyAmount{Of::Servings, {3, 2}}},
        {"cups", "1 1/2 cups", MyAmount{Of::Cups, {3, 2}}},
        {"a sign for a half", "\xC2\xBD cup", MyAmount{Of::Cups, {1, 2}}},
        {"tablespoons", "2 tbsp", MyAmount{Of::Tablespoons, {2, 1}}},
        {"written out", "3 tablespoons", MyAmount{Of::Tablespoons, {3, 1}}},
        {"pieces", "5 pieces", MyAmount{Of::Pieces, {5, 1}}},
        {"half of the package", "1/2 package", MyAmount{Of::Package, {1, 2}}},
        {"large letters", "2 SERVINGS", MyAmount{Of::Servings, {2, 1}}},
        {"2/4 is 1/2", "2/4 cup", MyAmount{Of::Cups, {1, 2}}},
        {"the most that is taken", "100 servings", MyAmount{Of::Servings, {100, 1}}},
        {"more than that", "101 servings", std::nullopt},
        {"sixteenths, which nobody measures", "1/16 cup", std::nullopt},
        {"nothing of it", "0 servings", std::nullopt},
        {"about is no amount to count with", "about 2 servings", std::nullopt},
        {"cups of something are not cups of each food", "1 cup dry", std::nullopt},
        {"ounces are a weight", "2 oz", std::nullopt},
        {"cookies may be on one side only", "2 cookies", std::nullopt},
        {"no number", "servings", std::nullopt},
        {"a number alone", "2", std::nullopt},
        {"less than nothing", "-2 servings", std::nullopt},
        {"nothing", "", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CAPTURE(c.text);
        CHECK(core::parse_my_amount(c.text) == c.amount);
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        CHECK_FALSE(core::parse_my_amount(text));
    }
}

TEST_CASE("my amount: what is sound")
{
    CHECK(core::is_sound({Of::Servings, {1, 1}}));
    CHECK(core::is_sound({Of::Servings, {100, 1}}));
    CHECK(core::is_sound({Of::Servings, {1, 8}}));
    CHECK_FALSE(core::is_sound({Of::Servings, {801, 8}}));
    CHECK_FALSE(core::is_sound({Of::Servings, {1, 9}}));
    CHECK_FALSE(core::is_sound({Of::Servings, {0, 1}}));
    CHECK_FALSE(core::is_sound({Of::Servings, {1, 0}}));
    CHECK_FALSE(core::is_sound({Of::Servings, {-1, -1}}));
}

TEST_CASE("my amount: one step up and down")
{
    struct Case {
        std::string why;
        MyAmount from;
        int by;
        MyAmount to;
    };
    const Case cases[] = {
        {"servings by ones", {Of::Servings, {2, 1}}, 1, {Of::Servings, {3, 1}}},
        {"down to one", {Of::Servings, {2, 1}}, -1, {Of::Servings, {1, 1}}},
        {"below one by halves", {Of::Servings, {1, 1}}, -1, {Of::Servings, {1, 2}}},
        {"never to nothing", {Of::Servings, {1, 2}}, -1, {Of::Servings, {1, 2}}},
        {"up from a half", {Of::Servings, {1, 2}}, 1, {Of::Servings, {1, 1}}},
        {"never above the most", {Of::Servings, {100, 1}}, 1, {Of::Servings, {100, 1}}},
        {"cups by quarters", {Of::Cups, {1, 1}}, 1, {Of::Cups, {5, 4}}},
        {"from between two steps to the next one up", {Of::Cups, {2, 3}}, 1, {Of::Cups, {3, 4}}},
        {"and down", {Of::Cups, {2, 3}}, -1, {Of::Cups, {1, 2}}},
        {"pieces by ones", {Of::Pieces, {5, 1}}, -1, {Of::Pieces, {4, 1}}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::stepped(c.from, c.by) == c.to);
    }
    for (const Of of : {Of::Servings, Of::Cups, Of::Tablespoons, Of::Pieces, Of::Package})
        for (MyAmount amount{of, {1, 3}}; core::stepped(amount, 1) != amount; amount = core::stepped(amount, 1)) {
            REQUIRE(core::is_sound(core::stepped(amount, 1)));
            const auto up = core::stepped(amount, 1);
            CHECK(up.times.over * amount.times.under > amount.times.over * up.times.under);
        }
}

} // namespace test
