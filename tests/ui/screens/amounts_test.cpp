// The screen on which another amount is chosen.
#include "core/compare/my_amount.h"
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using ui::TextId;
using Of = core::MyAmount::Of;

namespace {

ui::State two_cereals(core::MyAmount amount, const std::string& code = "en")
{
    // 1 cup (39 g), 2/3 cup (55 g)
    return test::amounts_state(test::demo_product("9520141001120"), test::demo_product("9520208001131"), amount,
                               test::language(code));
}

} // namespace

TEST_CASE("amounts screen: says the amount, and one touch is one step")
{
    test::Headless screen;
    const core::MyAmount cups{Of::Cups, {3, 2}};
    const auto state = two_cereals(cups);
    screen.frame(state);
    CHECK(screen.says("1 1/2 cups"));
    CHECK(screen.tap(state, TextId::amounts_more) == ui::Actions{ui::ChooseMyAmount{core::stepped(cups, 1)}});
    CHECK(screen.tap(state, TextId::amounts_fewer) == ui::Actions{ui::ChooseMyAmount{core::stepped(cups, -1)}});
    CHECK(screen.tap(state, TextId::amounts_show) == ui::Actions{ui::ShowPair{}});
}

TEST_CASE("amounts screen: offers what both labels can be told in, and nothing else")
{
    test::Headless screen;
    const auto cups = two_cereals({});
    screen.frame(cups);
    CHECK(screen.says("cup"));
    CHECK_FALSE(cups.amounts->kinds.empty());
    const auto pieces = [](const ui::State& state) {
        return std::ranges::any_of(state.amounts->kinds, [](const auto& kind) { return kind.amount.of == Of::Pieces; });
    };
    CHECK_FALSE(pieces(cups));
    for (const auto& kind : cups.amounts->kinds)
        CHECK(screen.tap(cups, kind.id) == ui::Actions{ui::ChooseMyAmount{kind.amount}});
    for (const auto& basis : cups.amounts->bases)
        CHECK(screen.tap(cups, basis.words) == ui::Actions{ui::ChooseBasis{basis.basis}});
}

TEST_CASE("amounts screen: the smallest amount has nothing below it")
{
    core::MyAmount amount{Of::Servings, {1, 1}};
    for (int i = 0; i < 1000 && core::stepped(amount, -1) != amount; ++i)
        amount = core::stepped(amount, -1);
    const auto state = two_cereals(amount);
    CHECK_FALSE(state.amounts->fewer);
    CHECK(state.amounts->more);
    test::Headless screen;
    CHECK(screen.tap(state, TextId::amounts_fewer) == ui::Actions{ui::ChooseMyAmount{amount}});
}
