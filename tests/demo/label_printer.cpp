#include "tests/demo/label_printer.h"

#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace test::demo {
namespace {

using N = core::Nutrient;
using Contents = std::map<N, core::Content>;

/// Vitamins and minerals that the older panel printed, each as a percent alone: 21 CFR 101.9(c)(8)(ii) before 2016.
constexpr std::array older_percents{N::VitaminA, N::VitaminC, N::Calcium, N::Iron};

/// What the simplified label prints in any case: 21 CFR 101.9(f)(2)(i).
constexpr std::array simplified_core{N::Calories, N::TotalFat, N::Sodium, N::TotalCarbohydrate, N::Protein};

template<std::size_t Size>
bool among(const std::array<N, Size>& list, N nutrient)
{
    return std::ranges::find(list, nutrient) != list.end();
}

[[noreturn]] void unlawful(const TrueFood& food, const std::string& what)
{
    throw std::runtime_error(food.name + ": " + what);
}

/// The older panel knew no added sugars, and neither vitamin D nor potassium had to stand there.
bool older_prints(N nutrient)
{
    const auto& known = core::info(nutrient);
    const bool vitamin = known.rounding == core::Rounding::Vitamin;
    return known.on_the_panel && !known.since_2016 && !vitamin;
}

std::optional<core::PrintedPercent> percent(const TrueFood& food, N nutrient, const core::Figure& figure,
                                            core::Content content)
{
    if (nutrient == N::Protein) {
        // Only labels for small children must print it, of the protein as its quality counts: 21 CFR 101.9(c)(7)(i).
        if (!food.protein_quality)
            return std::nullopt;
        content = core::Content::from_nano(
            static_cast<std::int64_t>(core::Wide{content.nano()} * *food.protein_quality / 1'000'000'000));
    } else if (!figure.less_than) {
        content = figure.amount; // 21 CFR 101.9(d)(7)(ii) allows either; so the two that stand there agree
    }
    const auto printed = core::percent_daily_value(nutrient, content, food.panel, food.audience);
    return printed ? std::optional(core::PrintedPercent{*printed, false}) : std::nullopt;
}

core::Line line_of(const TrueFood& food, N nutrient, core::Content content)
{
    const core::Figure figure = core::printed_figure(nutrient, content, food.panel);
    return {figure, percent(food, nutrient, figure, content)};
}

core::Line older_percent_line(const TrueFood& food, N nutrient, const Contents& contents, std::int64_t measure)
{
    if (nutrient != N::VitaminA)
        return {std::nullopt, percent(food, nutrient, {{}, true, 0}, contents.at(nutrient))};
    if (!food.vitamin_a_iu)
        unlawful(food, "an older panel prints vitamin A");
    // 5,000 IU was the RDI of vitamin A: 21 CFR 101.9(c)(8)(iv) before 27 July 2016.
    const auto units = content_in(core::Content::from_nano(*food.vitamin_a_iu), measure).nano();
    const auto percents = core::Percent::from_nano(units * 100 / 5'000);
    return {std::nullopt, core::PrintedPercent{core::printed_percent(core::PercentRounding::Vitamin, percents), false}};
}

Contents contents_of(const TrueFood& food, std::int64_t measure)
{
    Contents contents;
    for (const auto& [nutrient, per_hundred] : food.per_hundred)
        contents[nutrient] = content_in(per_hundred, measure);
    return contents;
}

core::Column full_column(const TrueFood& food, const Contents& contents, std::int64_t measure)
{
    core::Column column;
    const bool older = food.panel == core::Panel::Older;
    for (const auto& [nutrient, content] : contents) {
        const bool voluntary = !core::info(nutrient).on_the_panel;
        if (voluntary && food.leaves_out.contains(nutrient))
            continue;
        if (!older || older_prints(nutrient))
            column.lines[nutrient] = line_of(food, nutrient, content);
    }
    if (older)
        for (const N nutrient : older_percents)
            column.lines[nutrient] = older_percent_line(food, nutrient, contents, measure);
    return column;
}

bool prints_as_nothing(const core::Line& line)
{
    if (line.amount)
        return !line.amount->less_than && line.amount->amount == core::Content{};
    return line.percent && line.percent->percent == 0;
}

/// Takes lines off the column and into the statement "not a significant source of".
void leave_out(const TrueFood& food, const Contents& contents, core::Column& column)
{
    for (const auto& [nutrient, content] : contents) {
        const auto line = column.lines.find(nutrient);
        if (line == column.lines.end())
            continue;
        const bool simplified = food.simplified && !among(simplified_core, nutrient) && prints_as_nothing(line->second);
        if (!simplified && !food.leaves_out.contains(nutrient))
            continue;
        if (!core::range_behind_not_significant(nutrient, food.panel).holds(content))
            unlawful(food, "leaves out " + std::string(core::info(nutrient).key));
        column.lines.erase(line);
        column.not_significant.insert(nutrient);
    }
    if (food.simplified && column.lines.contains(N::VitaminA) && prints_as_nothing(column.lines.at(N::VitaminA))) {
        column.lines.erase(N::VitaminA);
        column.not_significant.insert(N::VitaminA);
    }
}

/// One serving with what it is prepared with. Nutrients that the other food does not know are not printed.
Contents prepared_contents(const TrueFood& food, const std::vector<TrueFood>& foods)
{
    if (!food.prepared)
        unlawful(food, "as prepared with what?");
    const TrueFood& other = food_named(foods, food.prepared->name);
    if (!core::same_dimension(food.prepared->amount, other.serving))
        unlawful(food, "prepared with grams of a food in millilitres, or the other way round");
    const auto added = contents_of(other, nano_of(food.prepared->amount));
    Contents sum;
    for (const auto& [nutrient, content] : contents_of(food, nano_of(food.serving)))
        if (const auto found = added.find(nutrient); found != added.end())
            sum[nutrient] = content + found->second;
    return sum;
}

std::optional<core::SecondColumn> second_column(const TrueFood& food, const std::vector<TrueFood>& foods)
{
    if (!food.second)
        return std::nullopt;
    const auto package = package_nano(food);
    const auto contents = *food.second == core::SecondColumn::Kind::PerContainer ? contents_of(food, package)
                                                                                 : prepared_contents(food, foods);
    return core::SecondColumn{*food.second, full_column(food, contents, package)};
}

core::ServingsPerContainer servings_of(const TrueFood& food)
{
    using Kind = core::ServingsPerContainer::Kind;
    if (food.servings == "varied")
        return {Kind::Varied, core::Count{}};
    if (food.servings == "single")
        return {Kind::Single, core::Count::whole(1)};
    const auto inside = core::Count::from_nano(
        static_cast<std::int64_t>(core::Wide{nano_of(food.package.value())} * 1'000'000'000 / nano_of(food.serving)));
    if (!food.servings.empty()) {
        const auto counted = core::Count::from_nano(core::parse_decimal(food.servings).value().nano);
        const auto off = counted > inside ? counted - inside : inside - counted;
        if (off * 50 > counted) // a label's cup is 240 mL and the exact one 236.6 mL, 1.4 percent less
            unlawful(food, "does not hold " + food.servings + " servings");
        return {Kind::Number, counted};
    }
    const auto printed = core::printed_servings(inside);
    return {printed == inside ? Kind::Number : Kind::About, printed};
}

core::Measure printed_size(const core::Measure& serving)
{
    return std::visit([](const auto& size) { return core::Measure{core::printed_serving_size(size)}; }, serving);
}

} // namespace

core::Label printed_label(const TrueFood& food, const std::vector<TrueFood>& foods)
{
    core::Label label;
    label.panel = food.panel;
    label.audience = food.audience;
    label.serving = {food.household, printed_size(food.serving)};
    label.servings = servings_of(food);
    const auto serving = nano_of(food.serving);
    const auto contents = contents_of(food, serving);
    label.per_serving = full_column(food, contents, serving);
    leave_out(food, contents, label.per_serving);
    label.second = second_column(food, foods);
    label.ingredients = food.ingredients;
    label.contains = food.contains == "none" ? "" : food.contains;
    if (!food.net_quantity.empty())
        label.net_quantity = core::parse_net_quantity(food.net_quantity);
    return label;
}

} // namespace test::demo
