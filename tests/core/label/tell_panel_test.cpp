// Which panel a label is printed by. Sources: 21 CFR 101.9(c) before and after 27 May 2016.
#include "core/label/tell_panel.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace test {
namespace {

using core::Panel;
using By = core::ToldPanel::By;
using N = core::Nutrient;

struct Case {
    std::string why;
    std::vector<Printed> lines;
    core::ToldPanel told;
};

const std::vector<Case> cases{
    // (c)(6)(iii): added sugars; no label before 2016 prints them, whatever its percents are
    {"added sugars", {{N::AddedSugars, "10", "20%"}}, {Panel::Of2016, By::AddedSugars, {}}},
    {"added sugars beside an older percent",
     {{N::TotalFat, "8", "12%"}, {N::AddedSugars, "10", "20%"}},
     {Panel::Of2016, By::AddedSugars, {}}},
    // (c)(9): total fat 78 g, before it 65 g: 8 g are 10 or 12 percent
    {"8 g of fat, 10 percent", {{N::TotalFat, "8", "10%"}}, {Panel::Of2016, By::DailyValues, N::TotalFat}},
    {"8 g of fat, 12 percent", {{N::TotalFat, "8", "12%"}}, {Panel::Older, By::DailyValues, N::TotalFat}},
    // (c)(9): sodium 2300 mg, before it 2400 mg: 160 mg are 7 percent of both
    {"160 mg of sodium tell nothing", {{N::Sodium, "160", "7%"}}, {Panel::Of2016, By::Nothing, {}}},
    {"470 mg of sodium, 20 percent", {{N::Sodium, "470", "20%"}}, {Panel::Of2016, By::Nothing, {}}},
    {"1000 mg of sodium, 42 percent", {{N::Sodium, "1000", "42%"}}, {Panel::Older, By::DailyValues, N::Sodium}},
    // (c)(9): fiber 28 g, before it 25 g; carbohydrate 275 g, before it 300 g
    {"8 g of fiber, 32 percent", {{N::DietaryFiber, "8", "32%"}}, {Panel::Older, By::DailyValues, N::DietaryFiber}},
    {"46 g of carbohydrate, 17 percent",
     {{N::TotalCarbohydrate, "46", "17%"}},
     {Panel::Of2016, By::DailyValues, N::TotalCarbohydrate}},
    // (c)(8)(iv), (c)(9): potassium 4700 mg, before it 3500 mg
    {"700 mg of potassium, 20 percent", {{N::Potassium, "700", "20%"}}, {Panel::Older, By::DailyValues, N::Potassium}},
    {"two lines against one",
     {{N::TotalFat, "8", "12%"}, {N::TotalCarbohydrate, "46", "17%"}, {N::DietaryFiber, "8", "29%"}},
     {Panel::Of2016, By::DailyValues, N::TotalCarbohydrate}},
    {"a percent that fits neither tells nothing", {{N::TotalFat, "8", "30%"}}, {Panel::Of2016, By::Nothing, {}}},
    // (c)(7)(ii): the percent of protein counts its quality
    {"protein tells nothing", {{N::Protein, "5", "4%"}}, {Panel::Of2016, By::Nothing, {}}},
    // (c)(8)(ii): before 2016 vitamins A and C stand on every label, since then vitamin D and potassium
    {"vitamins A and C", {{N::VitaminA, "", "10%"}, {N::VitaminC, "", "4%"}}, {Panel::Older, By::Vitamins, {}}},
    {"vitamin D and potassium",
     {{N::VitaminD, "", "10%"}, {N::Potassium, "235", ""}},
     {Panel::Of2016, By::Vitamins, {}}},
    {"all four: a fortified food of either kind",
     {{N::VitaminA, "", "10%"}, {N::VitaminC, "", "4%"}, {N::VitaminD, "", "10%"}, {N::Potassium, "235", ""}},
     {Panel::Of2016, By::Nothing, {}}},
    {"vitamin A alone", {{N::VitaminA, "", "10%"}}, {Panel::Of2016, By::Nothing, {}}},
    {"nothing at all", {}, {Panel::Of2016, By::Nothing, {}}},
};

} // namespace

TEST_CASE("tell panel: by added sugars, by the Daily Value that prints the percent, by the vitamins that stand there")
{
    for (const auto& [why, lines, told] : cases) {
        const auto& told_why = why;
        CAPTURE(told_why);
        auto label = make_label("30 g", "about 9", lines);
        for (const auto panel : {Panel::Of2016, Panel::Older}) { // what the label is taken for is not looked at
            label.panel = panel;
            const auto found = core::tell_panel(label);
            CHECK(found.panel == told.panel);
            CHECK(found.by == told.by);
            CHECK(found.nutrient == told.nutrient);
        }
    }
}

TEST_CASE("tell panel: a line that is named as not significant counts as a line")
{
    auto label = make_label("30 g", "about 9", {});
    label.per_serving.not_significant = {N::VitaminA, N::VitaminC};
    CHECK(core::tell_panel(label).panel == Panel::Older);
    label.per_serving.not_significant.insert(N::AddedSugars);
    CHECK(core::tell_panel(label).panel == Panel::Of2016);
}

TEST_CASE("tell panel: a second column tells as well")
{
    auto label = make_label("30 g", "about 9", {{N::TotalFat, "0", "0%"}});
    label.second = core::SecondColumn{core::SecondColumn::Kind::AsPrepared, make_column({{N::TotalFat, "8", "12%"}})};
    CHECK(core::tell_panel(label) == core::ToldPanel{Panel::Older, By::DailyValues, N::TotalFat});
}

// 21 CFR 101.9(c)(9): sodium for ages 1 to 3 has a Daily Value of 1500 mg since 2016, and had none before.
TEST_CASE("tell panel: of a label for young children, by their own Daily Values")
{
    auto label = make_label("30 g", "about 9", {{N::Sodium, "150", "10%"}});
    label.audience = core::Audience::Ages1To3;
    CHECK(core::tell_panel(label) == core::ToldPanel{Panel::Of2016, By::DailyValues, N::Sodium});
}

} // namespace test
