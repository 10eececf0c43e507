// Each figure of a label read with all the others: worked out by hand, with the paragraph beside each.
#include "core/label/sharpen.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <vector>

namespace test {
namespace {

using core::Content;
using core::Contradiction;
using N = core::Nutrient;

core::SharpColumn read(const std::vector<Printed>& lines, core::Panel panel = core::Panel::Of2016)
{
    auto label = make_label("30 g", "2", lines);
    label.panel = panel;
    return core::sharpen(label, label.per_serving);
}

} // namespace

TEST_CASE("sharpen: amount, percent, parts and wholes narrow each other")
{
    struct Case {
        std::string why;
        std::vector<Printed> lines;
        N nutrient;
        std::int64_t low_micro, high_micro; // of a gram
    };
    const Case cases[] = {
        // (c)(2): 3 g is 2.75 to 3.25 g
        {"an amount alone", {{N::TotalFat, "3"}}, N::TotalFat, 2'750'000, 3'250'000},
        // (d)(7)(ii): 3 g of 78 g is 3.8%, prints 4%: may have been counted from the printed 3 g, so nothing narrows
        {"a percent that the printed amount comes to", {{N::TotalFat, "3", "4%"}}, N::TotalFat, 2'750'000, 3'250'000},
        // (d)(7)(ii): 7 g is 9%, so 8% was counted from the true amount: 7.5 to 8.5% of 78 g is 5.85 to 6.63 g;
        // (c)(2): 7 g is 6.5 to 7.5 g
        {"a percent that it does not come to", {{N::TotalFat, "7", "8%"}}, N::TotalFat, 6'500'000, 6'630'000},
        // the same from above: 10% is 9.5 to 10.5%, 7.41 to 8.19 g
        {"a percent above it", {{N::TotalFat, "7", "10%"}}, N::TotalFat, 7'410'000, 7'500'000},
        // (d)(7)(ii) says "nearest" and is silent on halves
        {"saturated fat: 1.5 g is 7.5%, 7% by a half rounded down",
         {{N::SaturatedFat, "1.5", "7%"}},
         N::SaturatedFat,
         1'250'000,
         1'750'000},
        // (c)(2)(i): saturated fat is part of total fat: 1 g of fat is at most 1.25 g, so 1 g saturated stays 0.75 to
        // 1.25 g, and the fat has at least 0.75 g, which it has
        {"a part as large as its whole", {{N::TotalFat, "1"}, {N::SaturatedFat, "1"}}, N::TotalFat, 750'000, 1'250'000},
        // 3 g is 15% of 20 g, so 16% was counted from the true amount: 15.5 to 16.5%, 3.1 to 3.3 g
        {"fat 3 g, saturated 3 g by 16%: 3.1 to 3.25 g raise the fat",
         {{N::TotalFat, "3"}, {N::SaturatedFat, "3", "16%"}},
         N::TotalFat,
         3'100'000,
         3'250'000},
        // (c)(6)(iii): added sugars are part of total sugars
        {"added sugars 5 g, sugars 5 g by nothing",
         {{N::TotalSugars, "5"}, {N::AddedSugars, "5"}},
         N::AddedSugars,
         4'500'000,
         5'500'000},
        // 11% of 50 g is 5.25 to 5.75 g; 5 g comes to 10%, so it was counted from the true amount: 5.25 to 5.5 g
        {"sugars 5 g are at least the added 5.25 g",
         {{N::TotalSugars, "5"}, {N::AddedSugars, "5", "11%"}},
         N::TotalSugars,
         5'250'000,
         5'500'000},
        // over one step: no total sugars printed; carbohydrate 5 g holds the same 5.25 g
        {"carbohydrate holds added sugars where no sugars are printed",
         {{N::TotalCarbohydrate, "5"}, {N::AddedSugars, "5", "11%"}},
         N::TotalCarbohydrate,
         5'250'000,
         5'500'000},
        // (c)(6)(i): fiber is part of carbohydrate: fiber 1 g (0.5 to 1.5), carbohydrate "less than 1 g" (0 to 1)
        {"fiber 1 g in less than 1 g of carbohydrate",
         {{N::TotalCarbohydrate, "less than 1"}, {N::DietaryFiber, "1"}},
         N::DietaryFiber,
         500'000,
         1'000'000},
        {"and the carbohydrate is at least the fiber",
         {{N::TotalCarbohydrate, "less than 1"}, {N::DietaryFiber, "1"}},
         N::TotalCarbohydrate,
         500'000,
         1'000'000},
        // calories narrow nothing, (c)(1)(i): 9 kcal a gram of fat would say 4.4 g at most
        {"calories narrow no fat", {{N::Calories, "40"}, {N::TotalFat, "5"}}, N::TotalFat, 4'750'000, 5'500'000},
        // (c)(8)(iii): 40 mg is 3.08% of 1300 mg, prints 4%; by tens it is 35 to 45 mg
        {"calcium 40 mg, 4%: counted from 40 mg", {{N::Calcium, "40", "4%"}}, N::Calcium, 35'000, 45'000},
        // 230 mg is 17.7%, prints 20%, so 15% was counted from the true amount: 12.5 to 17.5%, at most 227.5 mg
        {"calcium 230 mg, 15%: by the true amount at most 227.5 mg",
         {{N::Calcium, "230", "15%"}},
         N::Calcium,
         225'000,
         227'500},
        // (d)(7)(ii) and "<1%": below 1% of 300 g; a printed 3 g is 1% and never "<1%"
        {"carbohydrate <1% alone: below 2.75 g, or as printed 1 or 2 g",
         {{N::TotalCarbohydrate, "", "<1%"}},
         N::TotalCarbohydrate,
         0,
         2'750'000},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sharp = read(c.lines);
        CHECK_FALSE(sharp.inconsistent());
        const auto& content = sharp.of(c.nutrient).content;
        REQUIRE(content);
        CHECK(content->low == Content::micro(c.low_micro));
        CHECK(content->high == Content::micro(c.high_micro));
    }
}

TEST_CASE("sharpen: what narrowed a line is told, for the steps of why")
{
    const auto sharp = read({{N::TotalFat, "3"}, {N::SaturatedFat, "3", "16%"}, {N::TransFat, "0"}});
    const auto& saturated = sharp.of(N::SaturatedFat);
    CHECK(saturated.from_amount == core::Range<Content>{Content::micro(2'750'000), Content::micro(3'250'000)});
    CHECK(saturated.from_percent == core::Range<Content>{Content::micro(3'100'000), Content::micro(3'300'000)});
    CHECK_FALSE(saturated.percent_of_amount); // 3 g is 15%
    CHECK_FALSE(saturated.whole);
    CHECK(sharp.of(N::TotalFat).part == N::SaturatedFat);
    CHECK_FALSE(sharp.of(N::TotalFat).whole);
    CHECK_FALSE(sharp.of(N::TransFat).content == std::nullopt);
    const auto fiber = read({{N::TotalCarbohydrate, "less than 1"}, {N::DietaryFiber, "1"}});
    CHECK(fiber.of(N::DietaryFiber).whole == N::TotalCarbohydrate);
    CHECK(fiber.of(N::TotalCarbohydrate).part == N::DietaryFiber);
    CHECK(read({{N::TotalFat, "3", "4%"}}).of(N::TotalFat).percent_of_amount);
    CHECK_FALSE(read({}).of(N::TotalFat).content);
}

TEST_CASE("sharpen: a label that contradicts itself is called so, and what is contradicted has no content")
{
    struct Case {
        std::string why;
        std::vector<Printed> lines;
        N nutrient;
        Contradiction contradiction;
        std::optional<N> against;
    };
    const Case cases[] = {
        {"5.5 g of fat is never printed, (c)(2)", {{N::TotalFat, "5.5"}}, N::TotalFat, Contradiction::OffTheRule, {}},
        {"7% of calcium is never printed, (c)(8)(iii)",
         {{N::Calcium, "", "7%"}},
         N::Calcium,
         Contradiction::OffTheRule,
         {}},
        {"7 g of fat is 8 to 10% of 78 g, not 20%",
         {{N::TotalFat, "7", "20%"}},
         N::TotalFat,
         Contradiction::AmountAgainstPercent,
         {}},
        {"saturated fat 3 g in fat 2 g, (c)(2)(i)",
         {{N::TotalFat, "2"}, {N::SaturatedFat, "3"}},
         N::SaturatedFat,
         Contradiction::PartAgainstWhole,
         N::TotalFat},
        {"and the fat as well",
         {{N::TotalFat, "2"}, {N::SaturatedFat, "3"}},
         N::TotalFat,
         Contradiction::PartAgainstWhole,
         N::SaturatedFat},
        {"added sugars 12 g in sugars 10 g, (c)(6)(iii)",
         {{N::TotalSugars, "10"}, {N::AddedSugars, "12"}},
         N::AddedSugars,
         Contradiction::PartAgainstWhole,
         N::TotalSugars},
        {"fiber 5 g in carbohydrate 3 g, (c)(6)(i)",
         {{N::TotalCarbohydrate, "3"}, {N::DietaryFiber, "5"}},
         N::DietaryFiber,
         Contradiction::PartAgainstWhole,
         N::TotalCarbohydrate},
        {"sugar alcohol in carbohydrate, (c)(6)(iv)",
         {{N::TotalCarbohydrate, "3"}, {N::SugarAlcohol, "5"}},
         N::SugarAlcohol,
         Contradiction::PartAgainstWhole,
         N::TotalCarbohydrate},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sharp = read(c.lines);
        CHECK(sharp.inconsistent());
        const auto& line = sharp.of(c.nutrient);
        CHECK(line.contradiction == c.contradiction);
        CHECK(line.against == c.against);
        CHECK_FALSE(line.content);
    }
}

TEST_CASE("sharpen: a wrong line takes none along")
{
    const auto sharp = read({{N::TotalFat, "5.5"}, {N::SaturatedFat, "3"}, {N::Sodium, "140"}});
    CHECK(sharp.of(N::TotalFat).contradiction);
    CHECK_FALSE(sharp.of(N::SaturatedFat).contradiction);
    CHECK(sharp.of(N::SaturatedFat).content);
    CHECK(sharp.of(N::Sodium).content);
}

// A half that one maker rounded down lies on the edge of two ranges: they touch, and that one value is what is left.
TEST_CASE("sharpen: what a release does not tell for certain has no content, narrows nothing, and is no contradiction")
{
    auto label = make_label("30 g", "2", {{N::TotalFat, "5.5"}, {N::SaturatedFat, "6"}, {N::Sodium, "140"}});
    CHECK(core::sharpen(label, label.per_serving).inconsistent());
    label.per_serving.lines[N::TotalFat].worked_back = true;
    const auto sharp = core::sharpen(label, label.per_serving);
    CHECK(sharp.of(N::TotalFat).contradiction == Contradiction::WorkedBack);
    CHECK_FALSE(sharp.of(N::TotalFat).content);
    CHECK(sharp.of(N::SaturatedFat).content);
    CHECK_FALSE(sharp.inconsistent());
}

TEST_CASE("sharpen: ranges that only touch leave the value on the edge")
{
    const auto sharp = read({{N::TotalFat, "2.5"}, {N::SaturatedFat, "3"}}); // 2.25 to 2.75 and 2.75 to 3.25 g
    CHECK_FALSE(sharp.inconsistent());
    CHECK(sharp.of(N::SaturatedFat).content ==
          core::Range<Content>{Content::milli(2'750), Content::from_nano(2'750'000'001)});
    CHECK(sharp.of(N::TotalFat).content->holds(Content::from_nano(2'749'999'999)));
}

TEST_CASE("sharpen: both columns and the sizes of a label count for whether it is consistent")
{
    auto label = make_label("30 g", "2", {{N::TotalFat, "3"}});
    CHECK_FALSE(core::sharpen(label).inconsistent());
    label.second = core::SecondColumn{core::SecondColumn::Kind::PerContainer, make_column({{N::TotalFat, "5.5"}})};
    CHECK(core::sharpen(label).inconsistent());
    label.second.reset();
    label.net_quantity = core::parse_net_quantity("NET WT 340 g"); // two servings of 30 g are 60 g
    CHECK(core::sharpen(label).inconsistent());
    CHECK_FALSE(core::sharpen(label).serving.inconsistent());
}

TEST_CASE("sharpen: which line is part of which reaches over one step")
{
    for (const auto& [part, whole] : core::parts_of_wholes())
        for (const auto& [inner, outer] : core::parts_of_wholes()) {
            if (outer != part)
                continue;
            bool found = false;
            for (const auto& relation : core::parts_of_wholes())
                found = found || (relation.part == inner && relation.whole == whole);
            CHECK(found);
        }
}

} // namespace test
