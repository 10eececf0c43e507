#include "core/label/sharpen.h"

#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/label/content_behind.h"

#include <algorithm>

namespace core {
namespace {

using N = Nutrient;

constexpr PartOf relations[] = {
    {N::SaturatedFat, N::TotalFat},
    {N::TransFat, N::TotalFat},
    {N::PolyunsaturatedFat, N::TotalFat},
    {N::MonounsaturatedFat, N::TotalFat},
    {N::DietaryFiber, N::TotalCarbohydrate},
    {N::SolubleFiber, N::DietaryFiber},
    {N::SolubleFiber, N::TotalCarbohydrate},
    {N::InsolubleFiber, N::DietaryFiber},
    {N::InsolubleFiber, N::TotalCarbohydrate},
    {N::TotalSugars, N::TotalCarbohydrate},
    {N::AddedSugars, N::TotalSugars},
    {N::AddedSugars, N::TotalCarbohydrate},
    {N::SugarAlcohol, N::TotalCarbohydrate},
};

/// What both allow. Where they only touch it is that one value: a half rounded down on one of the two.
std::optional<Range<Content>> meeting(Range<Content> a, Range<Content> b)
{
    const Content low = std::max(a.low, b.low);
    const Content high = std::min(a.high, b.high);
    if (low > high)
        return std::nullopt;
    return Range<Content>{low, low < high ? high : low + Content::from_nano(1)};
}

/// Amount and percent of one line. A percent that is no more than the printed amount in other words narrows nothing.
void read_line(const Label& label, const Column& column, Nutrient nutrient, Backwards& back)
{
    const Line* line = column.find(nutrient);
    if (line && line->percent)
        back.from_percent = content_of_percent(label, nutrient, *line->percent);
    back.content = content_behind(label, column, nutrient, std::nullopt);
    if (!line || !line->amount) {
        if (back.from_percent)
            back.from_percent = back.content; // counted from true or printed amount
        return;
    }
    back.from_amount = back.content;
    if (!back.content) {
        back.contradiction = Contradiction::OffTheRule;
        return;
    }
    if (!back.from_percent)
        return;
    back.percent_of_amount = counted_from_amount(label, nutrient, *line);
    if (back.percent_of_amount)
        return;
    back.content = meeting(*back.from_amount, *back.from_percent);
    if (!back.content)
        back.contradiction = Contradiction::AmountAgainstPercent;
}

/// A percent that the rule never prints (7% of a vitamin) stands beside no amount that could vouch for it.
bool percent_off_the_rule(const Label& label, const Column& column, Nutrient nutrient)
{
    const Line* line = column.find(nutrient);
    const auto rounding = percent_rounding(nutrient, label.panel);
    return line && line->percent && rounding != PercentRounding::None && !range_behind(rounding, *line->percent);
}

/// A figure of which the release does not tell for certain that the package prints it is compared with nothing, and
/// tells nothing of other lines.
void leave_out_worked_back(Backwards& line)
{
    line.contradiction = Contradiction::WorkedBack;
    line.content.reset();
}

void contradict(Backwards& line, Contradiction contradiction, std::optional<Nutrient> against)
{
    if (!line.contradiction) {
        line.contradiction = contradiction;
        line.against = against;
    }
    line.content.reset();
}

/// Held against what each line says by itself, so that a wrong line never drags others along unsaid.
void hold_parts_against_wholes(SharpColumn& sharp)
{
    const SharpColumn alone = sharp;
    for (const auto& [part, whole] : relations) {
        const auto& a = alone.of(part).content;
        const auto& b = alone.of(whole).content;
        if (!a || !b || a->low <= b->high)
            continue;
        contradict(sharp.of(part), Contradiction::PartAgainstWhole, whole);
        contradict(sharp.of(whole), Contradiction::PartAgainstWhole, part);
    }
}

void narrow_parts_and_wholes(SharpColumn& sharp)
{
    const SharpColumn alone = sharp;
    for (const auto& [part, whole] : relations) {
        const auto& a = alone.of(part).content;
        const auto& b = alone.of(whole).content;
        if (!a || !b)
            continue;
        auto& lower = sharp.of(part);
        if (b->high < lower.content->high) {
            lower.content->high = std::max(b->high, lower.content->low + Content::from_nano(1));
            lower.whole = whole;
        }
        auto& upper = sharp.of(whole);
        if (a->low > upper.content->low) {
            upper.content->low = std::min(a->low, upper.content->high - Content::from_nano(1));
            upper.part = part;
        }
    }
}

} // namespace

std::span<const PartOf> parts_of_wholes()
{
    return relations;
}

bool SharpColumn::inconsistent() const
{
    return std::ranges::any_of(lines_, [](const Backwards& line) {
        return line.contradiction.has_value() && line.contradiction != Contradiction::WorkedBack;
    });
}

SharpColumn sharpen(const Label& label, const Column& column)
{
    SharpColumn sharp;
    for (const auto& known : nutrients()) {
        auto& line = sharp.of(known.nutrient);
        read_line(label, column, known.nutrient, line);
        if (percent_off_the_rule(label, column, known.nutrient))
            contradict(line, Contradiction::OffTheRule, std::nullopt);
        if (const Line* printed = column.find(known.nutrient); printed && printed->worked_back)
            leave_out_worked_back(line);
    }
    hold_parts_against_wholes(sharp);
    narrow_parts_and_wholes(sharp);
    return sharp;
}

bool SharpLabel::inconsistent() const
{
    return serving.inconsistent() || sizes.contradict || (second && second->inconsistent());
}

SharpLabel sharpen(const Label& label)
{
    SharpLabel sharp{sharpen(label, label.per_serving), std::nullopt, sizes_of(label)};
    if (label.second)
        sharp.second = sharpen(label, label.second->column);
    return sharp;
}

} // namespace core
