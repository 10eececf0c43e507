#include "tests/reference/cells.h"

#include "core/figure/figure.h"

#include <array>
#include <stdexcept>

namespace test {
namespace {

[[noreturn]] void not_understood(std::string_view cell)
{
    throw std::runtime_error("a cell that the tests do not understand: " + std::string(cell));
}

bool cut_end(std::string_view& text, std::string_view end)
{
    if (!text.ends_with(end))
        return false;
    text.remove_suffix(end.size());
    return true;
}

} // namespace

std::int64_t nano_of_cell(std::string_view decimal)
{
    const auto number = core::parse_decimal(decimal);
    if (!number)
        not_understood(decimal);
    return number->nano;
}

core::Content content_of_cell(std::string_view decimal, std::string_view unit)
{
    const auto name = unit.substr(0, unit.find(' ')); // "mcg RAE", "mcg DFE", "mg NE"
    const std::int64_t nano = nano_of_cell(decimal);
    if (name == "g" || name == "kcal")
        return core::Content::from_nano(nano);
    const std::int64_t parts = name == "mg" ? 1'000 : name == "mcg" ? 1'000'000 : 0;
    if (parts == 0 || nano % parts != 0)
        not_understood(unit);
    return core::Content::from_nano(nano / parts);
}

std::optional<RuleOf> rule_of(std::string_view name)
{
    constexpr std::array not_held{"calories_from_fat", "calories_from_saturated_fat", "other_carbohydrate"};
    const auto panel = cut_end(name, "_pre2016") ? core::Panel::Older : core::Panel::Of2016;
    for (const std::string_view line : not_held)
        if (name == line)
            return std::nullopt;
    const auto nutrient = core::nutrient_by_key(name);
    if (!nutrient)
        not_understood(name);
    return RuleOf{*nutrient, panel};
}

std::optional<core::PercentRounding> percent_rule_of(std::string_view name)
{
    cut_end(name, "_pre2016");
    if (!cut_end(name, "_percent_dv"))
        return std::nullopt;
    if (name == "vitamin_mineral")
        return core::PercentRounding::Vitamin;
    if (name == "drv")
        return core::PercentRounding::Whole;
    const auto nutrient = core::nutrient_by_key(name);
    if (!nutrient)
        not_understood(name);
    return core::info(*nutrient).percent;
}

core::Panel panel_of(std::string_view label)
{
    if (label != "2016" && label != "pre2016")
        not_understood(label);
    return label == "2016" ? core::Panel::Of2016 : core::Panel::Older;
}

} // namespace test
