// From one serving to the amount of a basis: factors worked out by hand. 21 CFR 101.9(b)(5), (b)(7) and (b)(8).
#include "core/compare/factor.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <limits>
#include <numeric>
#include <optional>
#include <string>

namespace test {
namespace {

using core::Basis;
using core::Content;
using core::MyAmount;
using core::Range;
using core::Ratio;
using core::Scale;
using Of = MyAmount::Of;

core::Label label_of(const std::string& size, const std::string& servings, const std::string& household)
{
    auto label = make_label(size, servings, {});
    label.serving.household = household;
    return label;
}

std::optional<core::Factor> factor_of(Basis basis, const core::Label& label, const MyAmount& amount = {})
{
    return core::factor_of(basis, label, core::sizes_of(label), amount, core::common_measure(label, label));
}

Ratio reduced(Ratio ratio)
{
    const auto common = std::gcd(ratio.over, ratio.under);
    return {ratio.over / common, ratio.under / common};
}

} // namespace

TEST_CASE("factor: of each basis, as taught and by all that the sizes allow")
{
    struct Case {
        std::string why;
        Basis basis;
        core::Label label;
        MyAmount amount;
        Ratio taught, low, high;
    };
    const Case cases[] = {
        {"one serving", Basis::Serving, label_of("30 g", "8", ""), {}, {1, 1}, {1, 1}, {1, 1}},
        {"8 servings, no about", Basis::Package, label_of("30 g", "8", ""), {}, {8, 1}, {8, 1}, {8, 1}},
        {"about 9 is 8.5 to 9.5, (b)(8)(i)",
         Basis::Package,
         label_of("30 g", "about 9", ""),
         {},
         {9, 1},
         {17, 2},
         {19, 2}},
        {"a package that is one serving", Basis::Package, label_of("30 g", "single", ""), {}, {1, 1}, {1, 1}, {1, 1}},
        {"100 g of 30 g: 100/30.5 to 100/29.5, (b)(7)(ii)",
         Basis::SameAmount,
         label_of("30 g", "8", ""),
         {},
         {10, 3},
         {200, 61},
         {200, 59}},
        {"one cup of 2/3 cup", Basis::SameMeasure, label_of("55 g", "8", "2/3 cup (55 g)"), {}, {3, 2}, {3, 2}, {3, 2}},
        {"one piece of 3 cookies",
         Basis::SameMeasure,
         label_of("32 g", "8", "3 cookies (32 g)"),
         {},
         {1, 3},
         {1, 3},
         {1, 3}},
        {"one of about 12 chips: 11.5 to 12.5 in a serving",
         Basis::SameMeasure,
         label_of("28 g", "8", "about 12 chips"),
         {},
         {1, 12},
         {2, 25},
         {2, 23}},
        {"one tablespoon of 2", Basis::SameMeasure, label_of("32 g", "8", "2 tbsp (32 g)"), {}, {1, 2}, {1, 2}, {1, 2}},
        {"one cup of 8 fl oz: 240 mL both, (b)(5)(viii)",
         Basis::SameMeasure,
         label_of("240 mL", "8", "8 fl oz"),
         {},
         {1, 1},
         {1, 1},
         {1, 1}},
        {"2 servings", Basis::MyAmount, label_of("30 g", "8", ""), {Of::Servings, {2, 1}}, {2, 1}, {2, 1}, {2, 1}},
        {"1 1/2 cups of 2/3 cup",
         Basis::MyAmount,
         label_of("55 g", "8", "2/3 cup"),
         {Of::Cups, {3, 2}},
         {9, 4},
         {9, 4},
         {9, 4}},
        {"a cup in tablespoons: 2 tbsp of 1 cup are 30 of 240 mL",
         Basis::MyAmount,
         label_of("240 g", "8", "1 cup"),
         {Of::Tablespoons, {2, 1}},
         {1, 8},
         {1, 8},
         {1, 8}},
        {"5 pieces of about 12",
         Basis::MyAmount,
         label_of("28 g", "8", "about 12 chips"),
         {Of::Pieces, {5, 1}},
         {5, 12},
         {2, 5},
         {10, 23}},
        {"half of a package of about 9",
         Basis::MyAmount,
         label_of("30 g", "about 9", ""),
         {Of::Package, {1, 2}},
         {9, 2},
         {17, 4},
         {19, 4}},
        {"as prepared: one serving", Basis::Prepared, label_of("30 g", "8", ""), {}, {1, 1}, {1, 1}, {1, 1}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto factor = factor_of(c.basis, c.label, c.amount);
        REQUIRE(factor);
        CHECK(reduced(factor->taught) == c.taught);
        CHECK(reduced({factor->range.low_over, factor->range.low_under}) == c.low);
        CHECK(reduced({factor->range.high_over, factor->range.high_under}) == c.high);
    }
}

TEST_CASE("factor: none where the label cannot be brought to the basis")
{
    CHECK_FALSE(factor_of(Basis::Package, label_of("30 g", "varied", "")));
    CHECK_FALSE(factor_of(Basis::Package, label_of("30 g", "", "")));
    CHECK_FALSE(factor_of(Basis::Package, label_of("30 g", "about 5.5", "")));
    CHECK_FALSE(factor_of(Basis::SameAmount, label_of("", "8", "1 cup")));
    CHECK_FALSE(factor_of(Basis::SameMeasure, label_of("30 g", "8", "")));
    CHECK_FALSE(factor_of(Basis::SameMeasure, label_of("30 g", "8", "1/4 package")));
    CHECK_FALSE(factor_of(Basis::MyAmount, label_of("30 g", "8", "3 cookies"), {Of::Cups, {1, 1}}));
    CHECK_FALSE(factor_of(Basis::MyAmount, label_of("30 g", "8", "1 cup"), {Of::Pieces, {1, 1}}));
    CHECK_FALSE(factor_of(Basis::MyAmount, label_of("30 g", "8", "1 cup"), {Of::Servings, {0, 1}}));
    CHECK_FALSE(factor_of(Basis::MyAmount, label_of("30 g", "varied", ""), {Of::Package, {1, 2}}));
}

TEST_CASE("factor: less is said crosswise, equal edges included")
{
    const Range<Content> three{Content::milli(2'750), Content::milli(3'250)};
    const Range<Content> three_and_a_half{Content::milli(3'250), Content::milli(3'750)};
    const Scale once{};
    CHECK(core::surely_less(three, once, three_and_a_half, once));
    CHECK_FALSE(core::surely_less(three_and_a_half, once, three, once));
    CHECK_FALSE(core::surely_less(three, once, three, once));
    const Scale wider{100, 31, 100, 29}; // what 30 g of serving do to a hundred: the two then overlap
    CHECK_FALSE(core::surely_less(three, wider, three_and_a_half, wider));
    const Scale half{1, 2, 1, 2};
    CHECK(core::surely_less(three_and_a_half, half, three, once)); // 1.875 against 2.75
}

TEST_CASE("factor: products that do not fit are never surely anything")
{
    constexpr auto most = std::numeric_limits<std::int64_t>::max();
    const Range<Content> small{Content{}, Content::from_nano(1)};
    const Range<Content> huge{Content::from_nano(most - 1), Content::from_nano(most)};
    const Scale hostile{most, most, most, most};
    CHECK_FALSE(core::surely_less(huge, hostile, huge, hostile));
    CHECK_FALSE(core::surely_less(small, hostile, huge, hostile));
}

} // namespace test
