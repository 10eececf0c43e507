#include "core/label/serving.h"

#include "core/figure/figure.h"

#include <algorithm>

namespace core {
namespace {

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(' ');
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::string lower(std::string_view text)
{
    std::string small(text);
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return small;
}

/// The fewest digits behind the point that show this amount exactly.
std::string shortest(std::int64_t nano)
{
    int decimals = 0;
    for (std::int64_t place = 1'000'000'000; place > 1 && nano % place != 0; place /= 10)
        ++decimals;
    return decimal_text(nano, decimals);
}

struct MetricUnit {
    std::string_view name;
    std::int64_t times;
    bool volume;
};

/// Longest names first, so that "mg" or "mL" is not read as the letter at its end.
constexpr MetricUnit metric_units[] = {
    {"ml", 1, true}, {"kg", 1000, false}, {"mg", 0, false}, {"g", 1, false}, {"l", 1000, true}};

std::optional<Measure> read_metric(std::string_view text)
{
    constexpr std::int64_t most = 100'000; // 100 kg or 100 L: more is a slip
    const std::string small = lower(trimmed(text));
    for (const auto& unit : metric_units) {
        if (!small.ends_with(unit.name))
            continue;
        const auto number = parse_decimal(trimmed(std::string_view(small).substr(0, small.size() - unit.name.size())));
        if (!number || unit.times == 0 || number->nano == 0 || number->nano > most * 1'000'000'000 / unit.times)
            return std::nullopt;
        const std::int64_t nano = number->nano * unit.times;
        return unit.volume ? Measure(Volume::from_nano(nano)) : Measure(Mass::from_nano(nano));
    }
    return std::nullopt;
}

} // namespace

Result<Measure> parse_measure(std::string_view text)
{
    if (auto measure = read_metric(text))
        return *measure;
    return refuse(Error::Kind::BadValue, "measure",
                  Place{"", 0, "", std::string(text.substr(0, 40)), "grams or millilitres, such as 39 g or 240 mL"});
}

std::string measure_text(const Measure& measure)
{
    if (const auto* mass = std::get_if<Mass>(&measure))
        return shortest(mass->nano()) + " g";
    return shortest(std::get<Volume>(measure).nano()) + " mL";
}

Result<ServingsPerContainer> parse_servings(std::string_view text)
{
    using Kind = ServingsPerContainer::Kind;
    constexpr std::int64_t most = 1000;
    const std::string small = lower(trimmed(text));
    if (small == "varied")
        return ServingsPerContainer{Kind::Varied, {}};
    if (small == "single")
        return ServingsPerContainer{Kind::Single, Count::whole(1)};
    std::string_view rest = small;
    const bool about = rest.starts_with("about ");
    if (about)
        rest = trimmed(rest.substr(6));
    const auto number = parse_decimal(rest);
    if (!number || number->nano == 0 || number->nano > most * 1'000'000'000)
        return refuse(Error::Kind::BadValue, "servings",
                      Place{"", 0, "", std::string(text.substr(0, 40)), "8, about 9, 2.5, varied or single"});
    return ServingsPerContainer{about ? Kind::About : Kind::Number, Count::from_nano(number->nano)};
}

std::string servings_text(const ServingsPerContainer& servings)
{
    switch (servings.kind) {
    case ServingsPerContainer::Kind::NotPrinted:
        return "";
    case ServingsPerContainer::Kind::Varied:
        return "varied";
    case ServingsPerContainer::Kind::Single:
        return "single";
    case ServingsPerContainer::Kind::About:
        return "about " + shortest(servings.count.nano());
    case ServingsPerContainer::Kind::Number:
        break;
    }
    return shortest(servings.count.nano());
}

bool same_dimension(const Measure& a, const Measure& b)
{
    return a.index() == b.index();
}

} // namespace core
