#include "tests/core/compare/printer.h"

#include "tests/core/compare/line_rules.h"

#include <algorithm>
#include <string>

namespace test {
namespace {

using brute::Halves;
using brute::Kind;
using brute::one;
using core::Panel;
using N = core::Nutrient;
using Kitchen = core::Household::Unit;

/// Prints one food.
class Maker {
public:
    Maker(const Style& style, Dice& dice) : style_(style), dice_(dice) {}

    core::Column column(const Contents& contents, Panel panel);
    void sizes(core::Label& label, const TrueFood& food);
    void household(core::Label& label, const TrueFood& food);
    [[nodiscard]] bool half_down() const { return half_down_; }

private:
    brute::Print any_of(const brute::Prints& all)
    {
        return *(all.begin() + dice_.between(0, static_cast<std::int64_t>(all.size()) - 1));
    }
    /// One print of a value, and a note where it is one that only a half rounded down gives.
    template<class PrintsBy>
    brute::Print print(PrintsBy by)
    {
        const auto chosen = any_of(by(style_.halves));
        half_down_ = half_down_ || !by(Halves::Up).contains(chosen);
        return chosen;
    }
    brute::Print print(Kind kind, brute::Value value)
    {
        return print([&](Halves halves) { return brute::prints(kind, value, halves); });
    }
    brute::Print amount(const LineRule& rule, std::int64_t content)
    {
        return print([&](Halves halves) { return rule.amounts(content, halves); });
    }
    core::Line line(N nutrient, Panel panel, std::int64_t content);
    std::optional<core::PrintedPercent> percent(N nutrient, Panel panel, std::int64_t content, brute::Print printed);
    std::optional<core::NetQuantity> net_quantity(const TrueFood& food);

    const Style& style_;
    Dice& dice_;
    bool half_down_ = false;
};

core::PrintedPercent percent_of(brute::Print print)
{
    return {static_cast<int>(print.nano / one), print.less_than};
}

/// 21 CFR 101.9(d)(7)(ii): from the true amount or from the printed one. Before 2016 vitamins printed no amount.
std::optional<core::PrintedPercent> Maker::percent(N nutrient, Panel panel, std::int64_t content, brute::Print printed)
{
    const auto kind = line_rule(nutrient, panel).percent;
    const std::int64_t daily = hidden_daily_value(nutrient, panel, style_.audience);
    if (!kind || daily == 0)
        return std::nullopt;
    if (nutrient == N::Protein) // counts the protein's quality, which is anything from 0 to 1
        content = content * dice_.between(0, 10) / 10;
    const bool from_true = (panel == Panel::Older && is_vitamin(nutrient, panel)) || dice_.one_in(2);
    return percent_of(print(*kind, brute::percent_of(from_true ? content : printed.nano, daily)));
}

core::Line Maker::line(N nutrient, Panel panel, std::int64_t content)
{
    const LineRule& rule = line_rule(nutrient, panel);
    const bool older_vitamin = panel == Panel::Older && is_vitamin(nutrient, panel);
    const bool percent_alone = older_vitamin || (nutrient != N::Protein && dice_.one_in(5));
    const auto printed = amount(rule, content);
    core::Line line;
    if (percent_alone)
        line.percent = percent(nutrient, panel, content, printed);
    if (line.percent || older_vitamin)
        return line;
    line.amount = core::Figure{core::Content::from_nano(printed.nano), printed.less_than, 0};
    if (dice_.one_in(2))
        line.percent = percent(nutrient, panel, content, printed);
    return line;
}

core::Column Maker::column(const Contents& contents, Panel panel)
{
    core::Column column;
    for (const N nutrient : style_.lines) {
        if (panel == Panel::Older && nutrient == N::AddedSugars)
            continue;
        const std::int64_t content = contents[static_cast<std::size_t>(nutrient)];
        if (content < left_out_below(nutrient, panel) && dice_.one_in(3)) {
            if (dice_.one_in(2))
                column.not_significant.insert(nutrient);
            continue;
        }
        column.lines[nutrient] = line(nutrient, panel, content);
    }
    return column;
}

/// Cut or rounded to its place: the gram, three figures, or finer (common practice).
std::optional<core::NetQuantity> Maker::net_quantity(const TrueFood& food)
{
    const brute::Wide exact = food.net(); // billionths of billionths
    const auto net = static_cast<std::int64_t>(exact / one);
    std::int64_t place = dice_.one_in(4) ? one / 10 : one;
    if (place == one && dice_.one_in(2))
        while (net >= place * 1'000)
            place *= 10;
    std::int64_t printed = net / place * place;
    if (dice_.one_in(2) && 2 * (net - printed) >= place)
        printed += place;
    if (printed == 0)
        return std::nullopt;
    core::NetQuantity quantity;
    if (style_.millilitres)
        quantity.metric = core::Volume::from_nano(printed);
    else
        quantity.metric = core::Mass::from_nano(printed);
    return quantity;
}

void Maker::sizes(core::Label& label, const TrueFood& food)
{
    auto size = print(Kind::ServingSize, {food.size});
    if (dice_.one_in(8)) // finer than the rule asks for
        size = {(food.size + one / 200) / (one / 100) * (one / 100)};
    if (!dice_.one_in(16) && size.nano > 0) {
        if (style_.millilitres)
            label.serving.metric = core::Volume::from_nano(size.nano);
        else
            label.serving.metric = core::Mass::from_nano(size.nano);
    }
    using Count = core::ServingsPerContainer::Kind;
    const auto servings = print(Kind::Servings, {food.servings});
    const bool exact = servings.nano == food.servings && dice_.one_in(2); // "about" may stand there all the same
    if (food.servings == one && dice_.one_in(2))
        label.servings = {Count::Single, core::Count::whole(1)};
    else if (dice_.one_in(16))
        label.servings = {dice_.one_in(2) ? Count::Varied : Count::NotPrinted, {}};
    else
        label.servings = {exact ? Count::Number : Count::About, core::Count::from_nano(servings.nano)};
    if (dice_.one_in(2))
        label.net_quantity = net_quantity(food);
}

/// 11.7 chips are "about 12 chips"; cups and spoons are the measure itself.
void Maker::household(core::Label& label, const TrueFood& food)
{
    if (dice_.one_in(8))
        return;
    core::Ratio count = food.count;
    std::string words;
    if (food.unit == Kitchen::Piece && (count.over % count.under != 0 || dice_.one_in(4))) {
        const auto rounded = print([&](Halves halves) { // to the whole piece
            brute::Prints all;
            all.add({(2 * count.over + count.under) / (2 * count.under)});
            if (halves == Halves::Either && 2 * count.over % (2 * count.under) == count.under)
                all.add({count.over / count.under});
            return all;
        });
        count = {std::max<std::int64_t>(rounded.nano, 1), 1};
        words = "about ";
    }
    constexpr std::string_view names[] = {" cups", " tbsp", " tsp", " fl oz", " oz", " crackers", " package"};
    if (count.over >= count.under)
        words += std::to_string(count.over / count.under) + (count.over % count.under != 0 ? " " : "");
    if (count.over % count.under != 0)
        words += std::to_string(count.over % count.under) + "/" + std::to_string(count.under);
    label.serving.household = words + std::string(names[static_cast<std::size_t>(food.unit)]);
}

} // namespace

std::vector<N> random_lines(Dice& dice)
{
    if (dice.one_in(12))
        return tested_nutrients();
    static const std::vector<N> groups[] = {
        {N::TotalFat, N::SaturatedFat, N::TransFat},
        {N::TotalFat, N::SaturatedFat, N::PolyunsaturatedFat, N::MonounsaturatedFat},
        {N::TotalCarbohydrate, N::DietaryFiber, N::TotalSugars, N::AddedSugars},
        {N::TotalCarbohydrate, N::DietaryFiber, N::SolubleFiber, N::InsolubleFiber, N::SugarAlcohol},
        {N::Calories, N::Cholesterol, N::Sodium, N::Protein, N::Fluoride},
        {N::VitaminD, N::Calcium, N::Iron, N::Potassium},
        {N::VitaminA, N::VitaminC, N::Thiamin, N::VitaminB12},
        {N::Copper, N::Choline, N::AddedSugars, N::TotalCarbohydrate},
    };
    return groups[dice.between(0, 7)];
}

PrintedFood print_food(const TrueFood& food, const Style& style, Dice& dice)
{
    Maker maker(style, dice);
    PrintedFood printed;
    core::Label& label = printed.label;
    label.panel = style.older && dice.one_in(4) ? Panel::Older : Panel::Of2016;
    label.audience = style.audience;
    label.per_serving = maker.column(food.serving, label.panel);
    maker.sizes(label, food);
    maker.household(label, food);
    using Second = core::SecondColumn::Kind;
    if (food.servings % one == 0 && dice.one_in(8))
        label.second = {Second::PerContainer, maker.column(food.package(), label.panel)};
    else if (dice.one_in(6))
        label.second = {Second::AsPrepared, maker.column(food.prepared, label.panel)};
    printed.half_down = maker.half_down();
    return printed;
}

} // namespace test
