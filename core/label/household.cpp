#include "core/label/household.h"

#include "core/figure/figure.h"

#include <cstdint>
#include <numeric>

namespace core {
namespace {

struct Fraction {
    std::int64_t over;
    std::int64_t under;
};

/// A unit that is counted, with its plural; abbreviations have none.
struct CountedUnit {
    std::string_view one;
    std::string_view many;
};

constexpr CountedUnit units[] = {
    {"cup", "cups"},
    {"tbsp", "tbsp"},
    {"tsp", "tsp"},
    {"fl oz", "fl oz"},
    {"oz", "oz"},
    {"piece", "pieces"},
    {"slice", "slices"},
    {"cracker", "crackers"},
    {"cookie", "cookies"},
    {"bar", "bars"},
    {"bottle", "bottles"},
    {"can", "cans"},
    {"chip", "chips"},
    {"tablespoon", "tablespoons"},
    {"teaspoon", "teaspoons"},
    {"container", "containers"},
    {"package", "packages"},
    {"meal", "meals"},
    {"tray", "trays"},
    {"biscuit", "biscuits"},
};

std::optional<std::int64_t> small_number(std::string_view text)
{
    if (text.empty() || text.size() > 4)
        return std::nullopt;
    std::int64_t value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

/// "2/3" or "2" or "0.5".
std::optional<Fraction> one_number(std::string_view text)
{
    if (const auto slash = text.find('/'); slash != std::string_view::npos) {
        const auto over = small_number(text.substr(0, slash));
        const auto under = small_number(text.substr(slash + 1));
        if (!over || !under || *under == 0)
            return std::nullopt;
        return Fraction{*over, *under};
    }
    if (const auto whole = small_number(text))
        return Fraction{*whole, 1};
    const auto decimal = parse_decimal(text);
    if (!decimal || decimal->decimals > 3)
        return std::nullopt;
    return Fraction{decimal->nano / 1'000'000, 1000};
}

std::string_view first_word(std::string_view text)
{
    return text.substr(0, text.find(' '));
}

std::string_view after_word(std::string_view text)
{
    const auto space = text.find(' ');
    return space == std::string_view::npos ? std::string_view{} : text.substr(space + 1);
}

/// Takes "1 1/2", "2/3" or "3" off the front.
std::optional<Fraction> take_number(std::string_view& text)
{
    auto number = one_number(first_word(text));
    if (!number)
        return std::nullopt;
    text = after_word(text);
    const auto part = first_word(text);
    if (number->under == 1 && part.find('/') != std::string_view::npos)
        if (const auto fraction = one_number(part)) {
            text = after_word(text);
            number = Fraction{number->over * fraction->under + fraction->over, fraction->under};
        }
    return number;
}

std::optional<std::string> text_of(Fraction amount)
{
    const auto common = std::gcd(amount.over, amount.under);
    const std::int64_t over = amount.over / common;
    const std::int64_t under = amount.under / common;
    if (under > 8) // nobody measures sixteenths of a cup: say nothing rather than something odd
        return std::nullopt;
    std::string text = over >= under ? std::to_string(over / under) : "";
    if (over % under != 0)
        text += (text.empty() ? "" : " ") + std::to_string(over % under) + "/" + std::to_string(under);
    return text;
}

} // namespace

std::optional<std::string> household_times(std::string_view household, Count servings)
{
    household = household.substr(0, household.find('('));
    while (household.ends_with(' '))
        household.remove_suffix(1);
    const auto number = take_number(household);
    constexpr std::int64_t thousandth = 1'000'000;
    if (!number || number->over == 0 || servings.nano() <= 0 || servings.nano() % thousandth != 0)
        return std::nullopt;
    const Fraction total{number->over * (servings.nano() / thousandth), number->under * 1000};
    const auto text = text_of(total);
    if (!text)
        return std::nullopt;
    for (const auto& unit : units)
        if (household == unit.one || household == unit.many)
            return *text + " " + std::string(total.over > total.under ? unit.many : unit.one);
    return std::nullopt;
}

} // namespace core
