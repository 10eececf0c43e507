#include "tests/core/audit/label_mill.h"

#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace test {
namespace {

using N = core::Nutrient;
using core::Content;

constexpr std::int64_t milligram = 1'000'000;

core::Measure measure(std::int64_t nano, bool volume)
{
    if (volume)
        return core::printed_serving_size(core::Volume::from_nano(nano));
    return core::printed_serving_size(core::Mass::from_nano(nano));
}

core::Figure times(const core::Figure& figure, core::Nutrient nutrient, std::int64_t up, std::int64_t down)
{
    const std::int64_t nano = figure.amount.nano() * up / down;
    int decimals = 0;
    for (std::int64_t place = core::nano_of(core::info(nutrient).unit); place > 1 && nano % place != 0; place /= 10)
        ++decimals;
    return {Content::from_nano(nano), false, decimals};
}

bool can_be_spoiled(const core::Line& line)
{
    return line.amount && line.amount->amount > Content{} && !line.amount->less_than;
}

} // namespace

std::int64_t LabelMill::between(std::int64_t low, std::int64_t high)
{
    return low + static_cast<std::int64_t>(dice_() % static_cast<std::uint64_t>(high - low + 1));
}

TrueFood LabelMill::grow(const FoodKind& kind)
{
    const auto draw = [this](Spread span) { return between(span.low, span.high); };
    TrueFood food;
    food.serving = draw(kind.serving) * 100 * milligram;
    const auto share = [](std::int64_t whole, std::int64_t thousandths) { return whole / 1'000 * thousandths; };
    food[N::TotalFat] = share(food.serving, draw(kind.fat));
    food[N::TotalCarbohydrate] = share(food.serving, draw(kind.carbohydrate));
    food[N::Protein] = share(food.serving, draw(kind.protein));
    const auto all = food[N::TotalFat] + food[N::TotalCarbohydrate] + food[N::Protein];
    if (all > food.serving) // no food weighs less than what is in it
        for (const N nutrient : {N::TotalFat, N::TotalCarbohydrate, N::Protein})
            food[nutrient] = share(food[nutrient], food.serving / (all / 1'000));
    const auto carbohydrate = food[N::TotalCarbohydrate];
    std::int64_t fiber = draw(kind.fiber);
    const std::int64_t polyol = std::min(draw(kind.polyol), 1'000 - fiber);
    const std::int64_t sugars = std::min(draw(kind.sugars), 1'000 - fiber - polyol);
    food[N::DietaryFiber] = share(carbohydrate, fiber);
    food[N::SugarAlcohol] = share(carbohydrate, polyol);
    food[N::TotalSugars] = share(carbohydrate, sugars);
    food[N::AddedSugars] = share(food[N::TotalSugars], between(0, 1'000));
    food[N::SaturatedFat] = share(food[N::TotalFat], between(80, 650));
    food[N::TransFat] = happens(10) ? share(food[N::TotalFat], between(0, 40)) : 0;
    food[N::Cholesterol] = food.serving / 100'000 * between(0, happens(60) ? 0 : 90); // milligrams in 100 g
    food[N::Sodium] = food.serving / 100'000 * draw(kind.sodium);
    food[N::VitaminD] = food.serving / 100'000'000 * between(0, happens(70) ? 0 : 5'000) / 1'000 * 1;
    food[N::Calcium] = food.serving / 100'000 * between(2, 400);
    food[N::Iron] = food.serving / 100'000'000 * between(50, 9'000);
    food[N::Potassium] = food.serving / 100'000 * between(10, 900);
    if (kind.serving.high < 200)
        food[N::VitaminD] = 0;

    return food;
}

void LabelMill::count_calories(const FoodKind& kind, TrueFood& food)
{
    // Calories in billionths; alcohol from a tenth to a seventh of the serving's weight.
    auto fat_factor = std::int64_t{900};
    auto protein_factor = std::int64_t{400};
    auto carbohydrate_factor = std::int64_t{400};
    const auto way = between(1, 100);
    if (way <= 15) { // (A): factors of Handbook 74, as widely as common foods have them (memory)
        fat_factor = between(837, 902);
        protein_factor = between(340, 436);
        carbohydrate_factor = between(360, 416);
    }
    std::int64_t full = food[N::TotalCarbohydrate] - food[N::SugarAlcohol];
    std::int64_t few = food[N::SugarAlcohol] / 100 * between(0, 300); // (F): 0 to 3.0
    if (way > 70)                                                     // (C): fiber counts for nothing, or 2
        few += food[N::DietaryFiber] / 100 * (way > 85 ? 0 : 200), full -= food[N::DietaryFiber];
    food[N::Calories] = food[N::TotalFat] / 100 * fat_factor + food[N::Protein] / 100 * protein_factor +
                        full / 100 * carbohydrate_factor + few +
                        (kind.alcohol ? food.serving / 100 * between(9, 12) * 7 : 0);
}

core::Label LabelMill::print(const FoodKind& kind, TrueFood& food, Written written)
{
    core::Label label;
    const auto who = between(1, 100);
    label.panel = who <= 20 ? core::Panel::Older : core::Panel::Of2016;
    label.audience = who > 92 && !kind.alcohol ? core::Audience::Ages1To3 : core::Audience::Adult;
    label.serving.metric = measure(food.serving, kind.volume);
    const bool from_printed = happens(50);
    const auto print = [&](N nutrient) {
        core::Line line;
        const auto amount = Content::from_nano(food[nutrient]);
        line.amount = core::printed_figure(nutrient, amount, label.panel);
        if (written == Written::AsPackage && nutrient != N::Protein)
            if (const auto percent = core::percent_daily_value(
                    nutrient, from_printed && !line.amount->less_than ? line.amount->amount : amount, label.panel,
                    label.audience))
                line.percent = core::PrintedPercent{*percent};
        label.per_serving.lines[nutrient] = line;
    };
    for (const N nutrient : {N::Calories, N::TotalFat, N::SaturatedFat, N::TransFat, N::Cholesterol, N::Sodium,
                             N::TotalCarbohydrate, N::DietaryFiber, N::TotalSugars, N::Protein, N::Calcium, N::Iron})
        print(nutrient);
    if (label.panel == core::Panel::Of2016)
        for (const N nutrient : {N::AddedSugars, N::VitaminD, N::Potassium})
            print(nutrient);
    if (food[N::SugarAlcohol] > 0)
        print(N::SugarAlcohol);
    return label;
}

MadeLabel LabelMill::sound(Written written)
{
    const FoodKind& kind =
        food_kinds()[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(food_kinds().size()) - 1))];
    TrueFood food = grow(kind);
    count_calories(kind, food);
    const core::Label label = print(kind, food, written);
    core::Product product{core::Gtin::parse("036000291452").value(),
                          kind.alcohol ? "Red wine" : kind.name,
                          "",
                          "",
                          "",
                          label,
                          core::Origin{"", 0, core::Date::of_number(20260101).value()}};
    product.category = label.audience == core::Audience::Adult ? kind.category : "";
    if (happens(70)) { // as many servings as a package may hold, its net quantity cut to the gram
        const auto servings = between(2, 14);
        const auto net = food.serving * servings / 1'000'000'000;
        product.label.servings = {core::ServingsPerContainer::Kind::About, core::Count::whole(servings)};
        product.label.net_quantity = core::parse_net_quantity(std::to_string(net) + (kind.volume ? " mL" : " g"));
        if (net < 20)
            product.label.net_quantity.reset();
    }
    return {product, kind.name};
}

void LabelMill::swap_unit(core::Nutrient nutrient, core::Line& line)
{
    if (nutrient == N::Calories) { // kilojoules as packages print them: whole (NIST SP 811: 4.184)
        const auto kilojoules = line.amount->amount.nano() / 1'000'000'000 * 4184 / 1'000;
        line.amount = core::Figure{Content::whole(kilojoules)};
        return;
    }
    if (nutrient == N::VitaminD && happens(50)) { // 40 IU a microgram
        line.amount = times(*line.amount, nutrient, 40, 1);
        return;
    }
    const bool up = happens(50) && core::info(nutrient).unit != core::Unit::Gram;
    line.amount = times(*line.amount, nutrient, up ? 1'000 : 1, up ? 1 : 1'000);
}

std::optional<core::Nutrient> LabelMill::spoil(core::Product& product, Spoiled how)
{
    auto& lines = product.label.per_serving.lines;
    std::vector<N> open;
    for (const auto& [nutrient, line] : lines)
        if (can_be_spoiled(line) && (how != Spoiled::UnitSwap || core::info(nutrient).unit != core::Unit::Gram))
            open.push_back(nutrient);
    if (how == Spoiled::SlipOfTen || how == Spoiled::LawfulSlip || how == Spoiled::UnitSwap) {
        if (open.empty())
            return std::nullopt;
        const N chosen = open[static_cast<std::size_t>(between(0, static_cast<std::int64_t>(open.size()) - 1))];
        core::Line& line = lines.at(chosen);
        if (how == Spoiled::SlipOfTen) {
            const bool up = happens(50);
            line.amount = times(*line.amount, chosen, up ? 10 : 1, up ? 1 : 10);
        } else if (how == Spoiled::LawfulSlip) {
            const auto up = times(*line.amount, chosen, 10, 1);
            const auto down = times(*line.amount, chosen, 1, 10);
            const bool either = core::range_behind(chosen, down, product.label.panel).has_value() && happens(50);
            line.amount = either ? down : up;
            if (!core::range_behind(chosen, *line.amount, product.label.panel))
                return std::nullopt;
        } else {
            swap_unit(chosen, line);
        }
        return chosen;
    }
    if (how == Spoiled::ServingSlip) {
        const bool up = happens(50);
        std::visit(
            [&](auto size) {
                product.label.serving.metric =
                    core::Measure{decltype(size)::from_nano(up ? size.nano() * 10 : size.nano() / 10)};
            },
            *product.label.serving.metric);
        return N::Calories;
    }
    const std::int64_t serving = std::visit([](auto size) { return size.nano(); }, *product.label.serving.metric);
    for (auto& [nutrient, line] : lines)
        if (line.amount) {
            const std::int64_t unit = core::nano_of(core::info(nutrient).unit);
            const auto place = core::info(nutrient).unit == core::Unit::Gram ? unit / 100 : unit;
            const auto nano =
                static_cast<std::int64_t>(core::Wide{line.amount->amount.nano()} * 100'000'000'000 / serving);
            line.amount = times({Content::from_nano((nano + place / 2) / place * place)}, nutrient, 1, 1);
            line.percent.reset();
        }
    return N::Calories;
}

} // namespace test
