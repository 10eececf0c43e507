#include "core/rules/household_amount.h"

#include "core/label/household.h"

namespace core {
namespace {

/// A cup, a spoon or fluid ounces, and nothing behind them: a reference amount such as "2 tbsp prepared" is another.
bool is_plain_volume(const Household& measure)
{
    return label_millilitres(measure.unit) > 0 && !measure.about && measure.noun.empty();
}

} // namespace

bool same_household(std::string_view on_label, std::string_view reference)
{
    const auto printed = parse_household(on_label);
    if (!printed || !is_plain_volume(*printed))
        return false;
    constexpr std::string_view or_else = " or ";
    while (true) {
        const auto end = reference.find(or_else);
        const auto wanted = parse_household(reference.substr(0, end));
        if (wanted && *wanted == *printed)
            return true;
        if (end == std::string_view::npos)
            return false;
        reference.remove_prefix(end + or_else.size());
    }
}

} // namespace core
