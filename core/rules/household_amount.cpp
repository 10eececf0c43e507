#include "core/rules/household_amount.h"

#include <algorithm>
#include <string>

namespace core {
namespace {

std::string_view trimmed(std::string_view text)
{
    while (text.starts_with(' '))
        text.remove_prefix(1);
    while (text.ends_with(' '))
        text.remove_suffix(1);
    return text;
}

bool take_end(std::string& text, std::string_view end)
{
    if (!text.ends_with(end))
        return false;
    text.resize(text.size() - end.size());
    return true;
}

/// "2 Tablespoons" as "2 tbsp"; empty for what is no cup or spoon.
std::string plain(std::string_view measure)
{
    std::string text(trimmed(measure));
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    constexpr std::string_view units[][2] = {{" tablespoons", " tbsp"}, {" tablespoon", " tbsp"}, {" tbsp", " tbsp"},
                                             {" teaspoons", " tsp"},    {" teaspoon", " tsp"},    {" tsp", " tsp"},
                                             {" cups", " cup"},         {" cup", " cup"},         {" fl oz", " fl oz"}};
    for (const auto& [end, unit] : units)
        if (take_end(text, end)) {
            const bool number = !text.empty() && text.find_first_not_of("0123456789/. ") == std::string::npos;
            return number ? text.append(unit) : std::string{};
        }
    return {};
}

} // namespace

bool same_household(std::string_view on_label, std::string_view reference)
{
    const std::string printed = plain(on_label.substr(0, on_label.find('(')));
    if (printed.empty())
        return false;
    constexpr std::string_view or_else = " or ";
    while (true) {
        const auto end = reference.find(or_else);
        if (plain(reference.substr(0, end)) == printed)
            return true;
        if (end == std::string_view::npos)
            return false;
        reference.remove_prefix(end + or_else.size());
    }
}

} // namespace core
