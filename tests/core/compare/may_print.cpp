// Whether a true food may be printed as a label: see witness.h.
#include "tests/core/compare/line_rules.h"
#include "tests/core/compare/witness.h"

#include <algorithm>
#include <string>

namespace test {
namespace {

using brute::Halves;
using brute::one;
using brute::Wide;
using core::Panel;
using N = core::Nutrient;

brute::Print print_of(const core::Figure& figure)
{
    return {figure.amount.nano(), figure.less_than};
}

/// 21 CFR 101.9(d)(7)(ii): from the true amount, or from the one that is printed or would be.
bool percent_fits(const core::Label& label, N nutrient, const core::Line& line, std::int64_t content)
{
    const LineRule& rule = line_rule(nutrient, label.panel);
    const std::int64_t daily = hidden_daily_value(nutrient, label.panel, label.audience);
    const brute::Print percent{line.percent->percent * one, line.percent->less_than};
    const auto gives = [&](std::int64_t amount, Halves halves) {
        return brute::prints(*rule.percent, brute::percent_of(amount, daily), halves).contains(percent);
    };
    if (nutrient == N::Protein || gives(content, Halves::Up)) // protein's counts its quality, which may be anything
        return true;
    if (line.amount)
        return gives(line.amount->amount.nano(), Halves::Either);
    if (label.panel == Panel::Older && is_vitamin(nutrient, label.panel))
        return false;
    const auto printable = rule.amounts(content, Halves::Up);
    return std::any_of(printable.begin(), printable.end(),
                       [&](const brute::Print& print) { return gives(print.nano, Halves::Either); });
}

bool column_fits(const core::Label& label, const core::Column& column, const Contents& contents, bool sums)
{
    const auto of = [&](N nutrient) { return contents[static_cast<std::size_t>(nutrient)]; };
    for (const N nutrient : tested_nutrients())
        if (!line_may_print(label, column, nutrient, of(nutrient)))
            return false;
    for (const auto& [part, whole] : core::parts_of_wholes())
        if (of(part) > of(whole))
            return false;
    if (!sums)
        return true;
    Contents shared = contents;
    make_consistent(shared); // leaves what is consistent as it is
    return shared == contents;
}

std::int64_t nano_of(const core::Measure& measure)
{
    return std::visit([](auto amount) { return amount.nano(); }, measure);
}

bool size_fits(const core::Label& label, const TrueFood& food, bool finer_sizes)
{
    if (!label.serving.metric)
        return true;
    const std::int64_t printed = nano_of(*label.serving.metric);
    if (brute::prints(brute::Kind::ServingSize, {food.size}, Halves::Up).contains({printed}))
        return true;
    const std::int64_t step = printed < 2 * one ? one / 10 : printed < 5 * one ? one / 2 : one;
    if (printed % step == 0) // not a finer figure
        return false;
    const std::int64_t width = finer_sizes ? one / 100 : step; // to the hundredth, as printer.cpp prints it
    return 2 * food.size >= 2 * printed - width && 2 * food.size < 2 * printed + width;
}

bool servings_fit(const core::Label& label, const TrueFood& food)
{
    using Kind = core::ServingsPerContainer::Kind;
    const std::int64_t printed = label.servings.count.nano();
    switch (label.servings.kind) {
    case Kind::Varied:
    case Kind::NotPrinted:
        return true;
    case Kind::Number:
    case Kind::Single:
        return food.servings == printed;
    case Kind::About:
        break;
    }
    return brute::prints(brute::Kind::Servings, {food.servings}, Halves::Up).contains({printed});
}

/// Right to one of its last place (common practice): the gram or finer, or three figures.
bool net_fits(const core::Label& label, const TrueFood& food)
{
    if (!label.net_quantity || !label.net_quantity->metric || !label.serving.metric)
        return true;
    const std::int64_t printed = nano_of(*label.net_quantity->metric);
    std::int64_t place = 1;
    for (std::int64_t wider = 10; printed % wider == 0 && (wider <= one || printed >= 100 * wider); wider *= 10)
        place = wider;
    const Wide off = food.net() - Wide{printed} * one;
    return off < Wide{place} * one && -off < Wide{place} * one;
}

bool household_fits(const core::Label& label, const TrueFood& food)
{
    const std::string about = "about ";
    if (!label.serving.household.starts_with(about))
        return true; // it is the measure that the food was printed from
    const std::int64_t printed = std::stoll(label.serving.household.substr(about.size()));
    const std::int64_t rounded = (2 * food.count.over + food.count.under) / (2 * food.count.under);
    return std::max<std::int64_t>(rounded, 1) == printed;
}

} // namespace

bool line_may_print(const core::Label& label, const core::Column& column, N nutrient, std::int64_t content)
{
    const core::Line* line = column.find(nutrient);
    if (!line)
        return !column.not_significant.contains(nutrient) || content < left_out_below(nutrient, label.panel);
    if (line->amount &&
        !line_rule(nutrient, label.panel).amounts(content, Halves::Up).contains(print_of(*line->amount)))
        return false;
    return !line->percent || percent_fits(label, nutrient, *line, content);
}

bool sizes_may_print(const TrueFood& food, const core::Label& label, const Strictness& strictness)
{
    return size_fits(label, food, strictness.finer_sizes) && servings_fit(label, food) && net_fits(label, food) &&
           household_fits(label, food);
}

bool may_print(const TrueFood& food, const core::Label& label, const Strictness& strictness)
{
    if (!sizes_may_print(food, label, strictness) ||
        !column_fits(label, label.per_serving, food.serving, strictness.sums))
        return false;
    if (!label.second)
        return true;
    if (label.second->kind == core::SecondColumn::Kind::AsPrepared)
        return column_fits(label, label.second->column, food.prepared, strictness.sums);
    return !strictness.both_columns || column_fits(label, label.second->column, food.package(), strictness.sums);
}

} // namespace test
