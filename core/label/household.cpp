#include "core/label/household.h"

#include "core/figure/figure.h"

#include <cstdint>
#include <numeric>
#include <utility>

namespace core {
namespace {

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
std::optional<Ratio> one_number(std::string_view text)
{
    if (const auto slash = text.find('/'); slash != std::string_view::npos) {
        const auto over = small_number(text.substr(0, slash));
        const auto under = small_number(text.substr(slash + 1));
        if (!over || !under || *under == 0)
            return std::nullopt;
        return Ratio{*over, *under};
    }
    if (const auto whole = small_number(text))
        return Ratio{*whole, 1};
    const auto decimal = parse_decimal(text);
    if (!decimal || decimal->decimals > 3)
        return std::nullopt;
    return Ratio{decimal->nano / 1'000'000, 1000};
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
std::optional<Ratio> take_number(std::string_view& text)
{
    auto number = one_number(first_word(text));
    if (!number)
        return std::nullopt;
    text = after_word(text);
    const auto part = first_word(text);
    if (number->under == 1 && part.find('/') != std::string_view::npos)
        if (const auto fraction = one_number(part)) {
            text = after_word(text);
            number = Ratio{number->over * fraction->under + fraction->over, fraction->under};
        }
    return number;
}

/// "½ cup" and "1½ cups" as "1/2 cup" and "1 1/2 cups".
std::string with_plain_fractions(std::string_view text)
{
    constexpr std::pair<std::string_view, std::string_view> signs[] = {
        {"\xC2\xBC", "1/4"},     {"\xC2\xBD", "1/2"},     {"\xC2\xBE", "3/4"},
        {"\xE2\x85\x93", "1/3"}, {"\xE2\x85\x94", "2/3"}, {"\xE2\x85\x9B", "1/8"},
        {"\xE2\x85\x9C", "3/8"}, {"\xE2\x85\x9D", "5/8"}, {"\xE2\x85\x9E", "7/8"},
    };
    std::string plain(text);
    for (const auto& [sign, written] : signs)
        for (auto at = plain.find(sign); at != std::string::npos; at = plain.find(sign)) {
            const bool behind_digit = at > 0 && plain[at - 1] >= '0' && plain[at - 1] <= '9';
            plain.replace(at, sign.size(), (behind_digit ? " " : "") + std::string(written));
        }
    return plain;
}

/// Lower case, without what stands in brackets, single spaces, no full stop or comma at the end of a word.
std::string tidy(std::string_view text)
{
    std::string tidied;
    int depth = 0;
    for (const char c : with_plain_fractions(text)) {
        if (c == '(')
            ++depth;
        const bool skip = depth > 0;
        if (c == ')' && depth > 0)
            --depth;
        if (skip)
            continue;
        if (c == ' ' && (tidied.empty() || tidied.back() == ' '))
            continue;
        if (c == ' ' && (tidied.back() == '.' || tidied.back() == ','))
            tidied.pop_back();
        tidied += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    while (!tidied.empty() && (tidied.back() == ' ' || tidied.back() == '.' || tidied.back() == ','))
        tidied.pop_back();
    return tidied;
}

struct MeasureName {
    std::string_view name;
    Household::Unit unit;
};

/// Longest first where one begins with another.
constexpr MeasureName measure_names[] = {
    {"cups", Household::Unit::Cup},
    {"cup", Household::Unit::Cup},
    {"tablespoons", Household::Unit::Tablespoon},
    {"tablespoon", Household::Unit::Tablespoon},
    {"tbsps", Household::Unit::Tablespoon},
    {"tbsp", Household::Unit::Tablespoon},
    {"teaspoons", Household::Unit::Teaspoon},
    {"teaspoon", Household::Unit::Teaspoon},
    {"tsps", Household::Unit::Teaspoon},
    {"tsp", Household::Unit::Teaspoon},
    {"fluid ounces", Household::Unit::FluidOunce},
    {"fluid ounce", Household::Unit::FluidOunce},
    {"fl oz", Household::Unit::FluidOunce},
    {"fl. oz", Household::Unit::FluidOunce},
    {"ounces", Household::Unit::Ounce},
    {"ounce", Household::Unit::Ounce},
    {"oz", Household::Unit::Ounce},
};

/// What a whole package is called: two of them need not be alike.
constexpr std::string_view package_nouns[] = {"package",  "pkg",    "container", "can",  "bottle", "meal", "tray",
                                              "pouch",    "packet", "bowl",      "box",  "bag",    "jar",  "carton",
                                              "envelope", "tub",    "pizza",     "loaf", "entree"};

/// "cookies" and "cookie" as one word; two spellings of one word are all that this must bring together.
std::string singular(std::string_view noun)
{
    for (const auto& unit : units)
        if (noun == unit.many || noun == unit.one)
            return std::string(unit.one);
    if (noun.size() > 3 && noun.ends_with("s") && !noun.ends_with("ss"))
        noun.remove_suffix(1);
    return std::string(noun);
}

bool names_package(std::string_view noun)
{
    if (noun.starts_with("of "))
        noun = after_word(noun);
    if (noun.starts_with("the "))
        noun = after_word(noun);
    const std::string one = singular(first_word(noun));
    for (const auto name : package_nouns)
        if (one == name)
            return true;
    return false;
}

} // namespace

std::optional<std::string> ratio_text(Ratio amount)
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

std::int64_t label_millilitres(Household::Unit unit)
{
    switch (unit) {
    case Household::Unit::Cup:
        return 240;
    case Household::Unit::Tablespoon:
        return 15;
    case Household::Unit::Teaspoon:
        return 5;
    case Household::Unit::FluidOunce:
        return 30;
    case Household::Unit::Ounce:
    case Household::Unit::Piece:
    case Household::Unit::Package:
        break;
    }
    return 0;
}

std::optional<Household> parse_household(std::string_view household)
{
    constexpr std::size_t most_letters = 200;
    const std::string tidied = tidy(household.substr(0, most_letters));
    std::string_view rest = tidied;
    Household read;
    read.about = rest.starts_with("about ");
    if (read.about)
        rest = after_word(rest);
    const auto number = take_number(rest);
    if (!number || number->over <= 0 || rest.empty())
        return std::nullopt;
    read.count = *number;
    for (const auto& measure : measure_names)
        if (rest == measure.name || (rest.starts_with(measure.name) && rest[measure.name.size()] == ' ')) {
            read.unit = measure.unit;
            read.noun = rest.size() > measure.name.size() ? rest.substr(measure.name.size() + 1) : "";
            return read;
        }
    read.unit = names_package(rest) ? Household::Unit::Package : Household::Unit::Piece;
    read.noun = singular(rest);
    return read;
}

std::optional<std::string> household_times(std::string_view household, Count servings)
{
    household = household.substr(0, household.find('('));
    while (household.ends_with(' '))
        household.remove_suffix(1);
    const auto number = take_number(household);
    constexpr std::int64_t thousandth = 1'000'000;
    if (!number || number->over == 0 || servings.nano() <= 0 || servings.nano() % thousandth != 0)
        return std::nullopt;
    const Ratio total{number->over * (servings.nano() / thousandth), number->under * 1000};
    const auto text = ratio_text(total);
    if (!text)
        return std::nullopt;
    for (const auto& unit : units)
        if (household == unit.one || household == unit.many)
            return *text + " " + std::string(total.over > total.under ? unit.many : unit.one);
    return std::nullopt;
}

} // namespace core
