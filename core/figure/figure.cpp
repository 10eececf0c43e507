#include "core/figure/figure.h"

#include <algorithm>

namespace core {
namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

bool take_prefix(std::string_view& text, std::string_view prefix)
{
    if (text.size() < prefix.size())
        return false;
    for (std::size_t i = 0; i < prefix.size(); ++i) {
        const char c = text[i] >= 'A' && text[i] <= 'Z' ? static_cast<char>(text[i] - 'A' + 'a') : text[i];
        if (c != prefix[i])
            return false;
    }
    text = trimmed(text.substr(prefix.size()));
    return true;
}

bool take_suffix(std::string_view& text, std::string_view suffix)
{
    if (suffix.empty() || !text.ends_with(suffix))
        return false;
    text = trimmed(text.substr(0, text.size() - suffix.size()));
    return true;
}

bool take_less_than(std::string_view& text)
{
    return take_prefix(text, "less than") || take_prefix(text, "<");
}

/// More of a nutrient than any package holds (a kilogram, or 100,000 calories): a typing slip, and a guard for
/// products.
constexpr std::int64_t most_grams = 1'000;
constexpr std::int64_t most_calories = 100'000;

std::string expected_figure(Nutrient nutrient)
{
    const auto unit = unit_name(info(nutrient).unit);
    if (unit.empty())
        return "a number of calories, such as 140";
    return std::string("a number of ") + std::string(unit) + ", such as 3 or \"less than 1\"";
}

} // namespace

std::optional<Decimal> parse_decimal(std::string_view text)
{
    constexpr std::size_t most_digits = 9;
    const auto point = text.find('.');
    const auto whole = text.substr(0, point);
    const auto part = point == std::string_view::npos ? std::string_view{} : text.substr(point + 1);
    if (whole.empty() || whole.size() > most_digits || part.size() > most_digits ||
        (point != std::string_view::npos && part.empty()))
        return std::nullopt;
    if (!std::all_of(whole.begin(), whole.end(), is_digit) || !std::all_of(part.begin(), part.end(), is_digit))
        return std::nullopt;
    Decimal value;
    for (const char c : whole)
        value.nano = value.nano * 10 + (c - '0');
    for (std::size_t i = 0; i < most_digits; ++i)
        value.nano = value.nano * 10 + (i < part.size() ? part[i] - '0' : 0);
    value.decimals = static_cast<int>(part.size());
    return value;
}

std::string decimal_text(std::int64_t nano, int decimals)
{
    std::int64_t place = 1'000'000'000;
    for (int i = 0; i < decimals && place > 1; ++i)
        place /= 10;
    // Rounded half up without a sum, which the largest amounts do not leave room for.
    const std::int64_t whole = nano / place + (nano % place >= (place + 1) / 2 ? 1 : 0);
    std::string digits = std::to_string(whole);
    if (decimals == 0)
        return digits;
    const auto width = static_cast<std::size_t>(decimals) + 1;
    if (digits.size() < width)
        digits.insert(0, width - digits.size(), '0');
    return digits.insert(digits.size() - static_cast<std::size_t>(decimals), ".");
}

Result<Figure> parse_figure(Nutrient nutrient, std::string_view text)
{
    const auto refused = [&] {
        return refuse(Error::Kind::BadValue, info(nutrient).key,
                      Place{"", 0, "", std::string(text.substr(0, 40)), expected_figure(nutrient)});
    };
    const auto& known = info(nutrient);
    std::string_view rest = trimmed(text);
    Figure figure;
    figure.less_than = take_less_than(rest);
    take_suffix(rest, known.unit_note);
    take_suffix(rest, unit_name(known.unit));
    const auto number = parse_decimal(rest);
    if (!number || (figure.less_than && number->nano == 0))
        return refused();
    const std::int64_t unit = nano_of(known.unit);
    const std::int64_t per_nano = 1'000'000'000 / unit; // how many billionths of the unit one billionth of a gram is
    if (number->nano % per_nano != 0)
        return refused();
    figure.amount = Content::from_nano(number->nano / per_nano);
    figure.decimals = number->decimals;
    const auto most = Content::whole(known.unit == Unit::Kilocalorie ? most_calories : most_grams);
    if (figure.amount > most)
        return refused();
    return figure;
}

Result<PrintedPercent> parse_percent(std::string_view text)
{
    constexpr std::int64_t most = 10'000;
    std::string_view rest = trimmed(text);
    PrintedPercent printed;
    printed.less_than = take_less_than(rest);
    take_suffix(rest, "%");
    const auto number = parse_decimal(rest);
    if (!number || number->decimals != 0 || number->nano > most * 1'000'000'000 ||
        (printed.less_than && number->nano == 0))
        return refuse(Error::Kind::BadValue, "percent",
                      Place{"", 0, "", std::string(text.substr(0, 40)), "a whole percent, such as 8"});
    printed.percent = static_cast<int>(number->nano / 1'000'000'000);
    return printed;
}

std::string number_of(const Figure& figure, Unit unit)
{
    // Amounts are held in grams; in milligrams the same digits stand three places further left.
    const std::int64_t times = 1'000'000'000 / nano_of(unit);
    return decimal_text(figure.amount.nano() * times, figure.decimals);
}

std::string as_printed(const Figure& figure, Nutrient nutrient)
{
    const auto& known = info(nutrient);
    std::string text = figure.less_than ? "less than " : "";
    text += number_of(figure, known.unit);
    if (const auto unit = unit_name(known.unit); !unit.empty())
        text.append(" ").append(unit);
    return text;
}

} // namespace core
