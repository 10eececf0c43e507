#include "core/audit/audit.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using core::audit;
using core::Doubt;
using core::DoubtRule;
using N = core::Nutrient;
using test::make_label;
using test::make_product;
using test::Printed;

namespace {

/// A sound label of 2016: 9 x 8 + 4 x 37 + 4 x 3 = 232 calories; percents by 21 CFR 101.9(c)(8)(iv), (c)(9).
std::vector<Printed> sound_lines()
{
    return {{N::Calories, "230"},
            {N::TotalFat, "8", "10%"},
            {N::SaturatedFat, "1", "5%"},
            {N::TransFat, "0"},
            {N::Cholesterol, "0", "0%"},
            {N::Sodium, "160", "7%"},
            {N::TotalCarbohydrate, "37", "13%"},
            {N::DietaryFiber, "4", "14%"},
            {N::TotalSugars, "12"},
            {N::AddedSugars, "10", "20%"},
            {N::Protein, "3"},
            {N::VitaminD, "2", "10%"},
            {N::Calcium, "260", "20%"},
            {N::Iron, "8", "45%"},
            {N::Potassium, "235", "6%"}};
}

core::Product with(N nutrient, const std::string& amount, const std::string& percent, const std::string& size = "55 g")
{
    auto lines = sound_lines();
    for (auto& line : lines)
        if (line.nutrient == nutrient)
            line = {nutrient, amount, percent};
    return make_product("03600029145", "Oat rounds", make_label(size, "about 8", lines));
}

std::vector<DoubtRule> rules_of(const core::Product& product)
{
    std::vector<DoubtRule> rules;
    for (const Doubt& doubt : audit(product))
        rules.push_back(doubt.rule);
    return rules;
}

using Rules = std::vector<DoubtRule>;

} // namespace

TEST_CASE("audit: a sound label raises no doubt and allocates nothing")
{
    // FDA, Interactive Nutrition Facts Label: the sample panel of 2016.
    const auto doubts = audit(with(N::Calories, "230", ""));
    CHECK(doubts.empty());
    CHECK(doubts.capacity() == 0);
}

TEST_CASE("audit: one line spoiled, one doubt that names it")
{
    struct Row {
        std::string why;
        N nutrient;
        const char* amount;
        const char* percent;
        DoubtRule rule;
        const char* likely; ///< empty: none
    };
    const Row rows[] = {
        {"ten times the sodium", N::Sodium, "1600", "7%", DoubtRule::SlippedByTen, "160"},
        {"a tenth of the carbohydrate", N::TotalCarbohydrate, "3.7", "13%", DoubtRule::SlippedByTen, "37"},
        {"a tenth of the fat", N::TotalFat, "0.8", "10%", DoubtRule::SlippedByTen, "8"},
        {"calories without their zero", N::Calories, "25", "", DoubtRule::SlippedByTen, "250"},
        {"calories with one zero more", N::Calories, "2300", "", DoubtRule::SlippedByTen, "230"},
        {"too much carbohydrate by ten", N::TotalCarbohydrate, "370", "13%", DoubtRule::SlippedByTen, "37"},
        {"protein ten times", N::Protein, "30", "", DoubtRule::SlippedByTen, "3"},
        {"sodium in grams", N::Sodium, "0.16", "7%", DoubtRule::UnitSwapped, "160"},
        {"sodium in grams, no percent", N::Sodium, "0.16", "", DoubtRule::UnitSwapped, "160"},
        {"sodium taken for grams", N::Sodium, "160000", "", DoubtRule::UnitSwapped, "160"},
        {"vitamin D in IU: 40 IU a microgram", N::VitaminD, "80", "10%", DoubtRule::UnitSwapped, "2"},
        {"calcium in grams", N::Calcium, "0.26", "", DoubtRule::UnitSwapped, "260"},
        {"iron in micrograms", N::Iron, "8000", "45%", DoubtRule::UnitSwapped, "8"},
        {"kilojoules: 230 x 4.184", N::Calories, "962", "", DoubtRule::OffTheGrid, ""},
        {"kilojoules", N::Calories, "960", "", DoubtRule::Kilojoules, "230"},
        {"no slip explains it", N::Sodium, "400", "7%", DoubtRule::PercentAgainstAmount, ""},
        {"fat is printed in halves and wholes, 21 CFR 101.9(c)(2)", N::TotalFat, "8.3", "", DoubtRule::OffTheGrid, ""},
        {"percents of vitamins go by twos, fives and tens, 21 CFR 101.9(c)(8)(iii)", N::Iron, "8", "44%",
         DoubtRule::OffTheGrid, ""},
        {"more saturated than total fat", N::SaturatedFat, "12", "60%", DoubtRule::PartOverWhole, "8"},
        {"fiber, sugars together above carbohydrate", N::TotalSugars, "36", "", DoubtRule::PartsOverWhole, ""},
        {"calories of nothing on the label", N::Calories, "500", "", DoubtRule::Calories, ""},
    };
    for (const auto& row : rows) {
        CAPTURE(row.why);
        const auto doubts = audit(with(row.nutrient, row.amount, row.percent));
        const auto found = std::ranges::find(doubts, row.rule, &Doubt::rule);
        REQUIRE(found != doubts.end());
        if (row.rule != DoubtRule::Kilojoules && row.rule != DoubtRule::OffTheGrid)
            CHECK(doubts.size() == 1);
        CHECK(found->likely.has_value() == (*row.likely != '\0'));
        if (found->likely)
            CHECK(core::number_of(
                      *found->likely,
                      core::info(found->rule == DoubtRule::PartOverWhole ? N::TotalFat : row.nutrient).unit) ==
                  row.likely);
    }
}

TEST_CASE("audit: a line that was worked back is not accused of being off the grid")
{
    auto product = with(N::TotalFat, "8.3", "");
    product.label.per_serving.lines.at(N::TotalFat).worked_back = true;
    CHECK(audit(product).empty());
}

TEST_CASE("audit: percents of another panel or age are one doubt, not many")
{
    // The same food by the Daily Values before 2016: fat 65 g, sodium 2,400 mg, carbohydrate 300 g, fiber 25 g,
    // potassium 3,500 mg (21 CFR 101.9(c)(9) as it stood).
    auto older = make_product("03600029145", "Oat rounds",
                              make_label("55 g", "about 8",
                                         {{N::Calories, "230"},
                                          {N::TotalFat, "8", "12%"},
                                          {N::Sodium, "160", "7%"},
                                          {N::TotalCarbohydrate, "37", "12%"},
                                          {N::DietaryFiber, "4", "16%"},
                                          {N::Protein, "3"}}));
    REQUIRE(rules_of(older) == Rules{DoubtRule::OtherPanel});
    CHECK(audit(older).front().panel == core::Panel::Older);
    older.label.panel = core::Panel::Older;
    CHECK(audit(older).empty());
    // One line is enough where no slip explains it: 10 g of fat are 15% of 65 g; 13% of 78 g.
    auto one_line = make_product("03600029145", "Cheese",
                                 make_label("30 g", "about 8",
                                            {{N::Calories, "120"},
                                             {N::TotalFat, "10", "15%"},
                                             {N::Sodium, "180", "8%"},
                                             {N::TotalCarbohydrate, "0", "0%"},
                                             {N::Protein, "7"}}));
    CHECK(rules_of(one_line) == Rules{DoubtRule::OtherPanel});

    // Ages 1 to 3: fat 39 g, sodium 1,500 mg, carbohydrate 150 g, fiber 14 g (21 CFR 101.9(c)(9)).
    auto young = make_product("03600029145", "Oat rounds for small children",
                              make_label("25 g", "about 8",
                                         {{N::Calories, "110"},
                                          {N::TotalFat, "4", "10%"},
                                          {N::Sodium, "75", "5%"},
                                          {N::TotalCarbohydrate, "17", "11%"},
                                          {N::DietaryFiber, "2", "14%"},
                                          {N::Protein, "2"}}));
    REQUIRE(rules_of(young) == Rules{DoubtRule::OtherAudience});
    CHECK(audit(young).front().audience == core::Audience::Ages1To3);
    young.label.audience = core::Audience::Ages1To3;
    CHECK(audit(young).empty());
}

TEST_CASE("audit: figures of 100 g where those of the serving stand")
{
    // 30 g of a food with 2 g of fat, 22 g of carbohydrate, 2 g of protein: 6.67, 73.33 and 6.67 in 100 g.
    const auto typed = make_product("03600029145", "Oat rounds",
                                    make_label("30 g", "about 10",
                                               {{N::Calories, "380"},
                                                {N::TotalFat, "6.67"},
                                                {N::Sodium, "500"},
                                                {N::TotalCarbohydrate, "73.33"},
                                                {N::Protein, "6.67"}}));
    CHECK(rules_of(typed) == Rules{DoubtRule::PerHundred});
    const auto whole = make_product(
        "03600029145", "Oat rounds",
        make_label("30 g", "about 10",
                   {{N::Calories, "380"}, {N::TotalFat, "7"}, {N::TotalCarbohydrate, "73"}, {N::Protein, "7"}}));
    CHECK(rules_of(whole) == Rules{DoubtRule::PerHundred});
}

TEST_CASE("audit: true labels that look odd")
{
    // 1 g of carbohydrate in a serving of 0.8 g: half a gram prints as 1 g, 21 CFR 101.9(c)(6).
    CHECK(
        audit(make_product(
                  "03600029145", "Sweetener",
                  make_label("0.8 g", "100",
                             {{N::Calories, "0"}, {N::TotalFat, "0"}, {N::TotalCarbohydrate, "1"}, {N::Protein, "0"}})))
            .empty());
    // Sugar alcohols count 0 to 3 calories a gram, 21 CFR 101.9(c)(1)(i)(F).
    CHECK(audit(make_product("03600029145", "Candy without sugar",
                             make_label("30 g", "4",
                                        {{N::Calories, "60"},
                                         {N::TotalFat, "0"},
                                         {N::TotalCarbohydrate, "28"},
                                         {N::SugarAlcohol, "28"},
                                         {N::Protein, "0"}})))
              .empty());
    // 7 calories a gram of alcohol (common practice); 12 g of it in 150 mL.
    CHECK(audit(make_product(
                    "03600029145", "Red table wine",
                    make_label(
                        "150 mL", "5",
                        {{N::Calories, "120"}, {N::TotalFat, "0"}, {N::TotalCarbohydrate, "4"}, {N::Protein, "0"}})))
              .empty());
}

TEST_CASE("audit: sizes")
{
    auto product = with(N::Calories, "230", "");
    product.label.net_quantity = core::parse_net_quantity("16 oz (454 g)"); // 8 x 55 g is 440 g: about 8
    CHECK(audit(product).empty());
    product.label.net_quantity = core::parse_net_quantity("160 oz (4540 g)");
    CHECK(rules_of(product) == Rules{DoubtRule::ServingsAgainstNet});
    product.label.net_quantity.reset();
    product.category = "Cookies & Biscuits"; // 30 g
    CHECK(audit(product).empty());
    product.label.serving.metric = core::Mass::whole(550);
    CHECK(rules_of(product) == Rules{DoubtRule::FarFromReference});
    product.label.serving.metric = core::Mass::milli(5'500);
    const auto small = rules_of(product);
    CHECK(std::set(small.begin(), small.end()) == std::set{DoubtRule::HeavierThanServing, DoubtRule::FarFromReference});
    product.label.serving.metric = core::Mass::whole(55);
    product.reference_food = core::reference_amount("infant_dinners_junior");
    CHECK(rules_of(product) == Rules{DoubtRule::AudienceOfFood});
}

TEST_CASE("audit: every rule has a name of its own")
{
    std::set<std::string_view> names;
    for (const auto& row : core::doubt_rules()) {
        CAPTURE(row.name);
        CHECK(names.insert(row.name).second);
        CHECK(!row.citation.empty());
        CHECK(core::doubt_rule_named(row.name) == row.rule);
        CHECK(core::info(row.rule).name == row.name);
    }
    CHECK(!core::doubt_rule_named("nothing"));
}

TEST_CASE("audit: a second column is looked through as well, and its doubts say so")
{
    using Kind = core::SecondColumn::Kind;
    for (const Kind kind : {Kind::PerContainer, Kind::AsPrepared}) {
        auto product = with(N::Sodium, "160", "7%");
        auto second = product.label.per_serving;
        product.label.second = {kind, second};
        CHECK(rules_of(product).empty());
        second.lines[N::Sodium].amount = core::parse_figure(N::Sodium, "1600").value(); // 70% by 21 CFR 101.9(c)(9)
        product.label.second = {kind, second};
        const auto doubts = audit(product);
        REQUIRE(doubts.size() == 1);
        CHECK(doubts[0].rule == DoubtRule::SlippedByTen);
        CHECK(doubts[0].nutrient == N::Sodium);
        CHECK(doubts[0].column == kind);
    }
}

TEST_CASE("audit: a package of many servings weighs more than one of them, and may say so in its second column")
{
    auto product = with(N::Sodium, "160", "7%");
    product.label.second = {core::SecondColumn::Kind::PerContainer, {}};
    // Eight servings: 8 x 8 g of fat, 8 x 37 g of carbohydrate, 8 x 3 g of protein are more than one serving of 55 g.
    for (const auto& [nutrient, amount] :
         {std::pair{N::TotalFat, "64"}, {N::TotalCarbohydrate, "296"}, {N::Protein, "24"}})
        product.label.second->column.lines[nutrient].amount = core::parse_figure(nutrient, amount).value();
    CHECK(rules_of(product).empty());
}

TEST_CASE("audit: Daily Values of another panel are told once for both columns")
{
    auto product = with(N::Sodium, "160", "7%");
    product.label.panel = core::Panel::Older;
    product.label.second = {core::SecondColumn::Kind::AsPrepared, product.label.per_serving};
    const auto rules = rules_of(product);
    CHECK(std::ranges::count(rules, DoubtRule::OtherPanel) <= 1);
    CHECK(std::ranges::count(rules, DoubtRule::OtherPanel) +
              std::ranges::count(rules, DoubtRule::PercentAgainstAmount) >
          0);
}
