#include "core/label/tell_panel.h"

#include "core/figure/daily_values.h"
#include "core/label/sharpen.h"

namespace core {
namespace {

/// Whether the label has a line for it, or names it among what it is no significant source of.
bool names(const Label& label, Nutrient nutrient)
{
    return label.per_serving.find(nutrient) != nullptr || label.per_serving.not_significant.contains(nutrient);
}

/// Whether amount and percent of a line fit together by the Daily Value of this panel.
bool fits(const Label& label, const Column& column, Nutrient nutrient, Panel panel)
{
    if (!daily_value(nutrient, panel, label.audience))
        return false;
    Column line_alone; // what else stands there is not asked
    line_alone.lines[nutrient] = *column.find(nutrient);
    Label as_panel;
    as_panel.panel = panel;
    as_panel.audience = label.audience;
    return !sharpen(as_panel, line_alone).of(nutrient).contradiction;
}

/// How many lines fit one panel alone, and the first such line.
struct Votes {
    int count = 0;
    std::optional<Nutrient> first;
    void add(Nutrient nutrient)
    {
        ++count;
        if (!first)
            first = nutrient;
    }
};

void count_votes(const Label& label, const Column& column, Votes& of_2016, Votes& older)
{
    for (const auto& [nutrient, line] : column.lines) {
        // Protein's percent counts its quality (21 CFR 101.9(c)(7)(ii)), so it tells no Daily Value.
        if (!line.amount || !line.percent || nutrient == Nutrient::Protein)
            continue;
        const bool new_fits = fits(label, column, nutrient, Panel::Of2016);
        const bool old_fits = fits(label, column, nutrient, Panel::Older);
        if (new_fits != old_fits)
            (new_fits ? of_2016 : older).add(nutrient);
    }
}

} // namespace

ToldPanel tell_panel(const Label& label)
{
    using By = ToldPanel::By;
    if (names(label, Nutrient::AddedSugars))
        return {Panel::Of2016, By::AddedSugars, std::nullopt};
    Votes of_2016;
    Votes older;
    count_votes(label, label.per_serving, of_2016, older);
    if (label.second)
        count_votes(label, label.second->column, of_2016, older);
    if (of_2016.count > older.count)
        return {Panel::Of2016, By::DailyValues, of_2016.first};
    if (older.count > of_2016.count)
        return {Panel::Older, By::DailyValues, older.first};
    const bool a_and_c = names(label, Nutrient::VitaminA) && names(label, Nutrient::VitaminC);
    const bool d_and_potassium = names(label, Nutrient::VitaminD) && names(label, Nutrient::Potassium);
    if (a_and_c && !d_and_potassium)
        return {Panel::Older, By::Vitamins, std::nullopt};
    if (d_and_potassium && !a_and_c)
        return {Panel::Of2016, By::Vitamins, std::nullopt};
    return {Panel::Of2016, By::Nothing, std::nullopt};
}

} // namespace core
