#include "core/label/label.h"

#include <algorithm>

namespace core {
namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

std::string_view without_front(std::string_view text, bool (*goes)(char))
{
    text.remove_prefix(static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), goes) - text.begin()));
    return text;
}

/// "6 - 12 FL OZ", "4 x 113 g": a number of packages, then what is in each.
bool counts_packages(std::string_view text)
{
    constexpr std::string_view between[] = {"-", "x", "X", "\xC3\x97", "\xE2\x80\x93"}; // also the signs x and en dash
    const auto is_blank = [](char c) { return c == ' '; };
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!is_digit(text[i]))
            continue;
        const auto rest = without_front(text.substr(i + 1), is_blank);
        for (const auto sign : between)
            if (rest.starts_with(sign)) {
                const auto next = without_front(rest.substr(sign.size()), is_blank);
                if (!next.empty() && is_digit(next.front()))
                    return true;
            }
    }
    return false;
}

/// "35 g EACH", "(355 mL) CANS": the amount of one of several.
bool speaks_of_one(std::string_view text)
{
    std::string small(text);
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    constexpr std::string_view words[] = {"each", "pack", "cans", "bottles", "bars", "pouches", "cups", "count"};
    return std::any_of(std::begin(words), std::end(words),
                       [&](auto word) { return small.find(word) != std::string::npos; });
}

/// "NET WT 340 g" and "340 g": words may stand in front of the number.
std::optional<Measure> metric_of(std::string_view part)
{
    const auto number =
        without_front(part, [](char c) { return is_letter(c) || c == ' ' || c == '.' || c == ':' || c == ','; });
    if (const auto measure = parse_measure(number))
        return *measure;
    return std::nullopt;
}

} // namespace

NetQuantity parse_net_quantity(std::string_view printed)
{
    NetQuantity net{std::string(printed), std::nullopt};
    if (counts_packages(printed) || speaks_of_one(printed))
        return net;
    const auto open = printed.rfind('(');
    if (open == std::string_view::npos) {
        net.metric = metric_of(printed);
        return net;
    }
    const auto close = printed.find(')', open);
    const auto inside = printed.substr(open + 1, close == std::string_view::npos ? close : close - open - 1);
    const auto behind = close == std::string_view::npos ? std::string_view{} : printed.substr(close + 1);
    for (const auto part : {inside, behind, printed.substr(0, open)})
        if (!net.metric)
            net.metric = metric_of(part);
    return net;
}

} // namespace core
