#include "core/label/sizes.h"

#include "core/figure/rounding.h"
#include "core/figure/wide.h"

#include <algorithm>
#include <string>

namespace core {
namespace {

constexpr std::int64_t one = 1'000'000'000;

std::int64_t nano_of(const Measure& measure)
{
    return std::visit([](auto amount) { return amount.nano(); }, measure);
}

Span serving_behind(const Measure& serving)
{
    return std::visit(
        [](auto printed) {
            const auto range = range_behind_serving_size(printed);
            return Span{range.low.nano(), range.high.nano()};
        },
        serving);
}

/// A net quantity is cut or rounded to three figures or to the gram (common practice; 21 CFR 101.7 asks for accuracy
/// only), so it is taken to be right to one of its last places, either way.
Span net_behind(std::int64_t nano)
{
    std::int64_t place = one;
    while (place > 1 && nano % place != 0)
        place /= 10;
    if (place == one)
        while (nano % (place * 10) == 0 && place * 10 <= nano / 100)
            place *= 10;
    return {std::max<std::int64_t>(nano - place, 1), nano + place};
}

bool says_drained(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text.find("drain") != std::string::npos || text.find("dr wt") != std::string::npos;
}

/// The net quantity, where it may be held against servings times serving size.
std::optional<Span> net_of(const Label& label)
{
    if (!label.net_quantity || !label.net_quantity->metric || !label.serving.metric)
        return std::nullopt;
    if (!same_dimension(*label.net_quantity->metric, *label.serving.metric) || nano_of(*label.serving.metric) <= 0 ||
        nano_of(*label.net_quantity->metric) <= 0)
        return std::nullopt;
    if (says_drained(label.net_quantity->printed) || says_drained(label.serving.household))
        return std::nullopt;
    return net_behind(nano_of(*label.net_quantity->metric));
}

std::optional<Span> printed_servings_of(const ServingsPerContainer& servings)
{
    using Kind = ServingsPerContainer::Kind;
    if (servings.count <= Count{})
        return std::nullopt;
    if (servings.kind == Kind::Number || servings.kind == Kind::Single)
        return Span{servings.count.nano(), servings.count.nano()};
    if (servings.kind != Kind::About)
        return std::nullopt;
    const auto range = range_behind_about(servings.count);
    if (!range)
        return std::nullopt;
    return Span{range->low.nano(), range->high.nano()};
}

/// What both allow; a single value where they only touch, as when a half was rounded down.
std::optional<Span> meeting(Span a, Span b)
{
    const Span both{std::max(a.low, b.low), std::min(a.high, b.high)};
    if (both.low > both.high)
        return std::nullopt;
    return both;
}

/// Everything that `whole` over `part` can be, edges outwards.
Span quotient(Span whole, Span part)
{
    return {rounded_down(Wide{whole.low} * one, part.high), rounded_up(Wide{whole.high} * one, part.low)};
}

/// The servings as printed, or as if "about" stood before them where the net quantity shows that they were rounded.
std::optional<Span> servings_against(Span printed, const ServingsPerContainer& servings, Span by_net)
{
    if (const auto both = meeting(printed, by_net))
        return both;
    if (!printed.exact())
        return std::nullopt;
    const auto about = range_behind_about(servings.count);
    return about ? meeting({about->low.nano(), about->high.nano()}, by_net) : std::nullopt;
}

} // namespace

Sizes sizes_of(const Label& label)
{
    Sizes sizes;
    if (label.serving.metric && nano_of(*label.serving.metric) > 0)
        sizes.serving = serving_behind(*label.serving.metric);
    sizes.servings = printed_servings_of(label.servings);
    sizes.net = net_of(label);
    if (!sizes.net || !sizes.servings || !sizes.serving)
        return sizes;
    const Span serving = *sizes.serving;
    const Span printed = *sizes.servings;
    const auto servings = servings_against(printed, label.servings, quotient(*sizes.net, serving));
    if (!servings) {
        sizes.contradict = true;
        sizes.servings.reset();
        return sizes;
    }
    const bool as_printed = meeting(printed, *servings).has_value();
    const auto narrower = meeting(serving, quotient(*sizes.net, as_printed ? printed : *servings));
    sizes.servings_narrowed = *servings != printed;
    sizes.servings = servings;
    sizes.serving_narrowed = narrower && *narrower != serving;
    if (narrower && narrower->low < narrower->high)
        sizes.serving = narrower;
    return sizes;
}

} // namespace core
