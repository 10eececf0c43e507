// What catalogs of version 1 and 2 hold as text.
#include "catalog/store/figures.h"

#include <charconv>
#include <stdexcept>

namespace catalog {
namespace {

[[noreturn]] void broken(std::string_view what, std::string_view found)
{
    throw std::runtime_error("catalog: a row holds no " + std::string(what) + ": " + std::string(found));
}

/// Calls `take` with every part of a text between the signs.
template<class Take>
void for_each_part(std::string_view text, char sign, Take take)
{
    while (!text.empty()) {
        const auto end = text.find(sign);
        take(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
}

core::Nutrient nutrient_of(std::string_view key)
{
    const auto nutrient = core::nutrient_by_key(key);
    if (!nutrient)
        broken("known nutrient", key);
    return *nutrient;
}

template<class Number>
Number number_of(std::string_view text)
{
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size())
        broken("number", text);
    return number;
}

bool take_sign(std::string_view& text, char sign)
{
    if (text.empty() || text.front() != sign)
        return false;
    text.remove_prefix(1);
    return true;
}

core::Figure figure_of(std::string_view text)
{
    core::Figure figure;
    figure.less_than = take_sign(text, '<');
    const auto slash = text.find('/');
    if (slash == std::string_view::npos)
        broken("figure", text);
    figure.amount = core::Content::from_nano(number_of<std::int64_t>(text.substr(0, slash)));
    figure.decimals = number_of<int>(text.substr(slash + 1));
    return figure;
}

core::PrintedPercent percent_of(std::string_view text)
{
    core::PrintedPercent percent;
    percent.less_than = take_sign(text, '<');
    percent.percent = number_of<int>(text);
    return percent;
}

} // namespace

void read_figures_text(std::string_view text, core::Column& column)
{
    for_each_part(text, ';', [&](std::string_view part) {
        const auto equals = part.find('=');
        const auto comma = part.find(',');
        if (equals == std::string_view::npos || comma == std::string_view::npos || comma < equals)
            broken("figure", part);
        core::Line line;
        const auto amount = part.substr(equals + 1, comma - equals - 1);
        const auto percent = part.substr(comma + 1);
        if (!amount.empty())
            line.amount = figure_of(amount);
        if (!percent.empty())
            line.percent = percent_of(percent);
        column.lines.insert_or_assign(nutrient_of(part.substr(0, equals)), line);
    });
}

std::set<core::Nutrient> nutrients_of_text(std::string_view text)
{
    std::set<core::Nutrient> nutrients;
    for_each_part(text, ';', [&](std::string_view key) { nutrients.insert(nutrient_of(key)); });
    return nutrients;
}

} // namespace catalog
