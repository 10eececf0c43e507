#include "tests/demo/label_checks.h"

#include "core/figure/daily_values.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"
#include "tests/demo/allergens.h"

#include <algorithm>

namespace test::demo {
namespace {

using core::Wide;
using N = core::Nutrient;
using Contents = core::Range<core::Content>;
constexpr Wide one = 1'000'000'000;

class Checks {
public:
    explicit Checks(const core::Product& product) : product_(product), label_(product.label) {}

    std::vector<Complaint> all()
    {
        check_column(label_.per_serving, "");
        check_energy();
        check_package();
        if (label_.second) {
            check_column(label_.second->column, "second column: ");
            check_second_column();
        }
        check_contains();
        return std::move(found_);
    }

private:
    void complain(Doubt doubt, std::string where) { found_.push_back({doubt, std::move(where)}); }

    /// What is behind a line of this column; nothing for a figure off the rule, 0 to 0.. for what is not there.
    std::optional<Contents> behind(const core::Column& column, N nutrient) const
    {
        if (const auto* line = column.find(nutrient); line && line->amount)
            return core::range_behind(nutrient, *line->amount, label_.panel);
        if (column.not_significant.contains(nutrient))
            return core::range_behind_not_significant(nutrient, label_.panel);
        return Contents{core::Content{}, core::Content::from_nano(1)};
    }

    void check_column(const core::Column& column, const std::string& prefix)
    {
        for (const auto& [nutrient, line] : column.lines)
            check_line(column, nutrient, line, prefix + std::string(core::info(nutrient).key));
        check_parts(column, prefix);
    }

    void check_line(const core::Column& column, N nutrient, const core::Line& line, const std::string& where)
    {
        const auto amount = behind(column, nutrient);
        if (!amount)
            complain(Doubt::AmountOffTheRule, where);
        if (!line.percent)
            return;
        auto rounding = core::info(nutrient).percent;
        if (nutrient == N::Potassium && label_.panel == core::Panel::Older)
            rounding = core::PercentRounding::Whole;
        const auto percent = core::range_behind(rounding, *line.percent);
        if (!percent)
            complain(Doubt::PercentOffTheRule, where);
        if (amount && percent && line.amount && !fits(nutrient, *line.amount, *amount, *line.percent, *percent))
            complain(Doubt::PercentDoesNotFit, where);
    }

    /// 21 CFR 101.9(d)(7)(ii): worked out from the printed amount or from the true one.
    bool fits(N nutrient, const core::Figure& figure, Contents amount, const core::PrintedPercent& printed,
              core::Range<core::Percent> percent) const
    {
        const auto value = core::daily_value(nutrient, label_.panel, label_.audience);
        if (!value)
            return false; // a percent of nothing
        const auto of_value = [&](core::Content content) { return Wide{content.nano()} * 100 * one / value->nano(); };
        const bool high_enough = of_value(amount.high) > percent.low.nano();
        if (nutrient == N::Protein)
            return high_enough; // its quality only takes away: 21 CFR 101.9(c)(7)(ii)
        if (!figure.less_than &&
            core::percent_daily_value(nutrient, figure.amount, label_.panel, label_.audience) == printed.percent)
            return true;
        return high_enough && of_value(amount.low) < percent.high.nano();
    }

    void check_parts(const core::Column& column, const std::string& prefix)
    {
        check_whole(column, N::TotalFat, {N::SaturatedFat, N::TransFat, N::PolyunsaturatedFat, N::MonounsaturatedFat},
                    prefix);
        check_whole(column, N::TotalCarbohydrate, {N::DietaryFiber, N::TotalSugars, N::SugarAlcohol}, prefix);
        check_whole(column, N::DietaryFiber, {N::SolubleFiber, N::InsolubleFiber}, prefix);
        check_whole(column, N::TotalSugars, {N::AddedSugars}, prefix);
    }

    void check_whole(const core::Column& column, N whole, const std::vector<N>& parts, const std::string& prefix)
    {
        core::Content least;
        for (const N part : parts)
            if (const auto range = behind(column, part))
                least = least + range->low;
        const auto most = behind(column, whole);
        if (most && least > core::Content{} && least >= most->high)
            complain(Doubt::PartAboveWhole, prefix + std::string(core::info(whole).key));
    }

    /// 9 kilocalories a gram of fat, 4 of carbohydrate and protein, fiber and sugar alcohols less: 21 CFR
    /// 101.9(c)(1)(i). 5 percent to each side, since a maker may use factors of single foods.
    void check_energy()
    {
        const auto fat = behind(label_.per_serving, N::TotalFat);
        const auto carbohydrate = behind(label_.per_serving, N::TotalCarbohydrate);
        const auto protein = behind(label_.per_serving, N::Protein);
        const auto fiber = behind(label_.per_serving, N::DietaryFiber);
        const auto alcohol = behind(label_.per_serving, N::SugarAlcohol);
        const auto calories = behind(label_.per_serving, N::Calories);
        if (!fat || !carbohydrate || !protein || !fiber || !alcohol || !calories)
            return;
        const auto digested = std::max(core::Content{}, carbohydrate->low - fiber->high - alcohol->high);
        const auto low = fat->low * 9 + digested * 4 + protein->low * 4;
        const auto high = fat->high * 9 + carbohydrate->high * 4 + protein->high * 4;
        if (calories->high * 100 <= low * 95 || calories->low * 100 >= high * 105)
            complain(Doubt::EnergyDoesNotFit, "calories");
    }

    /// Low and high count of servings, in billionths; nothing where there is no number.
    std::optional<std::pair<Wide, Wide>> servings() const
    {
        using Kind = core::ServingsPerContainer::Kind;
        const Wide count = label_.servings.count.nano();
        if (label_.servings.kind == Kind::Number || label_.servings.kind == Kind::Single)
            return std::pair{count, count};
        if (label_.servings.kind != Kind::About)
            return std::nullopt;
        const auto range = core::range_behind_about(label_.servings.count);
        return range ? std::optional(std::pair{Wide{range->low.nano()}, Wide{range->high.nano()}}) : std::nullopt;
    }

    static std::pair<Wide, Wide> size(const core::Measure& serving)
    {
        return std::visit(
            [](const auto& amount) {
                const auto range = core::range_behind_serving_size(amount);
                return std::pair{Wide{range.low.nano()}, Wide{range.high.nano()}};
            },
            serving);
    }

    /// 2.5 percent to each side: a label's cup is 240 mL and the exact one 236.6 (21 CFR 101.9(b)(5)(viii)).
    void check_package()
    {
        const auto count = servings();
        if (!count && label_.servings.kind == core::ServingsPerContainer::Kind::About)
            complain(Doubt::ServingsOffTheRule, "servings per container");
        const auto& net = label_.net_quantity;
        if (!count || !net || !net->metric || !label_.serving.metric ||
            !core::same_dimension(*net->metric, *label_.serving.metric))
            return;
        const Wide printed = Wide{std::visit([](const auto& amount) { return amount.nano(); }, *net->metric)} * one;
        const auto serving = size(*label_.serving.metric);
        if (printed * 1000 < count->first * serving.first * 975 ||
            printed * 1000 > count->second * serving.second * 1025)
            complain(Doubt::PackageDoesNotFit, "net quantity");
    }

    void check_second_column()
    {
        const auto count = servings();
        const bool per_container = label_.second->kind == core::SecondColumn::Kind::PerContainer;
        for (const auto& [nutrient, line] : label_.second->column.lines) {
            const auto first = behind(label_.per_serving, nutrient);
            const auto second = behind(label_.second->column, nutrient);
            if (!first || !second)
                continue;
            const bool fit = per_container ? count && second->high.nano() * one > first->low.nano() * count->first &&
                                                 second->low.nano() * one < first->high.nano() * count->second
                                           : second->high > first->low;
            if (!fit)
                complain(Doubt::ColumnsDoNotFit, std::string(core::info(nutrient).key));
        }
    }

    void check_contains()
    {
        if (label_.ingredients && label_.contains &&
            allergens_of_ingredients(*label_.ingredients) != allergens_of_statement(*label_.contains))
            complain(Doubt::ContainsDoesNotFit, *label_.contains);
    }

    const core::Product& product_;
    const core::Label& label_;
    std::vector<Complaint> found_;
};

std::string name_of(Doubt doubt)
{
    constexpr const char* names[] = {"amount off the rule",   "percent off the rule", "percent does not fit",
                                     "part above whole",      "energy does not fit",  "package does not fit",
                                     "servings off the rule", "columns do not fit",   "contains does not fit"};
    return names[static_cast<std::size_t>(doubt)];
}

} // namespace

std::vector<Complaint> complaints_about(const core::Product& product)
{
    return Checks(product).all();
}

std::string words(const std::vector<Complaint>& complaints)
{
    std::string text;
    for (const auto& complaint : complaints)
        text.append(name_of(complaint.doubt)).append(" (").append(complaint.where).append(") ");
    return text;
}

} // namespace test::demo
