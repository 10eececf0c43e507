#include "tests/core/compare/witness.h"

#include "tests/core/compare/line_rules.h"

#include <algorithm>
#include <string>
#include <vector>

namespace test {
namespace {

using brute::one;
using brute::Wide;
using core::Basis;
using N = core::Nutrient;

/// From low to high, both included.
struct Bounds {
    std::int64_t low;
    std::int64_t high;
};

bool of_package(const Search& search)
{
    return search.basis == Basis::Package ||
           (search.basis == Basis::MyAmount && search.amount.of == core::MyAmount::Of::Package);
}

bool holds(N part, N whole)
{
    const auto all = core::parts_of_wholes();
    return std::any_of(all.begin(), all.end(),
                       [&](const core::PartOf& p) { return p.part == part && p.whole == whole; });
}

Bounds bounds_of(const core::Range<core::Content>& range)
{
    return {range.low.nano(), range.high.nano() - 1};
}

/// Where a vitamin lies that was counted in international units: by its percent of a Daily Value that no table holds.
Bounds hidden_bounds(const Search& search, N nutrient, bool prepared)
{
    const auto& column = prepared ? search.label.second->column : search.label.per_serving;
    const auto* line = column.find(nutrient);
    const std::int64_t value = hidden_daily_value(nutrient, search.label.panel, search.label.audience);
    if (!line || !line->percent)
        return {0, std::max<std::int64_t>(left_out_below(nutrient, search.label.panel) - 1, 0)};
    if (line->percent->percent == 0 || line->percent->less_than)
        return {0, std::max<std::int64_t>((value + 49) / 50 - 1, 0)};
    const std::int64_t doubled = 2 * line->percent->percent; // in halves of a percent
    const std::int64_t below = doubled <= 20 ? 2 : doubled <= 100 ? 5 : 10;
    const std::int64_t above = doubled < 20 ? 2 : doubled < 100 ? 5 : 10;
    return {(value * (doubled - below) + 199) / 200, (value * (doubled + above) + 199) / 200 - 1};
}

/// Where one nutrient may lie by one column and, for one number of servings, by the column per container.
Bounds bounds_for(const Search& search, N nutrient, bool prepared, std::int64_t servings, bool both_columns)
{
    constexpr Bounds unknown{0, 1'000 * one};
    const auto& column = prepared ? *search.sharp.second : search.sharp.serving;
    const auto& content = column.of(nutrient).content;
    Bounds bounds = content                                    ? bounds_of(*content)
                    : search.label.panel == core::Panel::Older ? hidden_bounds(search, nutrient, prepared)
                                                               : unknown;
    const bool container = search.label.second && search.label.second->kind == core::SecondColumn::Kind::PerContainer;
    if (!prepared && container && both_columns)
        if (const auto& all = search.sharp.second->of(nutrient).content) {
            const Wide low = (Wide{all->low.nano()} * one + servings - 1) / servings;
            const Wide high = (Wide{all->high.nano()} * one - 1) / servings;
            bounds.low = std::max(bounds.low, static_cast<std::int64_t>(low));
            bounds.high = std::min(bounds.high, static_cast<std::int64_t>(high));
        }
    return bounds;
}

/// From one end inwards: the first that prints is the witness.
std::vector<std::int64_t> inwards(Bounds bounds, bool most)
{
    std::vector<std::int64_t> all;
    const std::int64_t width = bounds.high - bounds.low;
    for (const std::int64_t step : {std::int64_t{0}, std::int64_t{1}, width / 1'000, width / 30, width / 5, width / 2})
        all.push_back(most ? bounds.high - step : bounds.low + step);
    return all;
}

/// Parts as low as may be and wholes high, so that the nutrient stands at either end as it likes.
Contents contents_for(const Search& search, bool prepared, std::int64_t servings, const Strictness& strictness)
{
    const auto& column = prepared ? search.label.second->column : search.label.per_serving;
    const bool both_columns = strictness.both_columns && !prepared;
    Contents contents{};
    const auto of = [&](N nutrient) -> std::int64_t& { return contents[static_cast<std::size_t>(nutrient)]; };
    for (const N nutrient : tested_nutrients()) {
        if (!column.find(nutrient) && !column.not_significant.contains(nutrient))
            continue;
        const bool high =
            nutrient == N::TotalFat || nutrient == N::TotalCarbohydrate || holds(search.nutrient, nutrient);
        const Bounds bounds = bounds_for(search, nutrient, prepared, servings, both_columns);
        of(nutrient) = high ? bounds.high : bounds.low;
        for (const std::int64_t amount : inwards(bounds, high)) // what prints lies not always in one piece
            if (line_may_print(search.label, column, nutrient, amount)) {
                of(nutrient) = amount;
                break;
            }
    }
    if (strictness.sums && column.find(N::DietaryFiber) && !holds(search.nutrient, N::DietaryFiber)) {
        const Bounds bounds = bounds_for(search, N::DietaryFiber, prepared, servings, both_columns);
        const std::int64_t parts = of(N::SolubleFiber) + of(N::InsolubleFiber);
        of(N::DietaryFiber) = std::min(std::max(of(N::DietaryFiber), parts), bounds.high);
    }
    return contents;
}

/// What is not printed holds what is printed of its parts.
void fill_unprinted(const Search& search, Contents& contents, bool prepared, bool sums)
{
    const auto& column = prepared ? search.label.second->column : search.label.per_serving;
    const auto of = [&](N nutrient) -> std::int64_t& { return contents[static_cast<std::size_t>(nutrient)]; };
    for (const N whole : {N::DietaryFiber, N::TotalSugars, N::TotalFat, N::TotalCarbohydrate}) {
        if (column.find(whole) || column.not_significant.contains(whole))
            continue;
        std::int64_t held = 0;
        const auto directly = [&](N part) {
            return holds(part, whole) &&
                   (whole != N::TotalCarbohydrate ||
                    (part != N::SolubleFiber && part != N::InsolubleFiber && part != N::AddedSugars));
        };
        for (const auto& known : core::nutrients())
            if (directly(known.nutrient))
                held = sums ? held + of(known.nutrient) : std::max(held, of(known.nutrient));
        of(whole) = held;
    }
}

std::vector<std::int64_t> inwards(const std::optional<core::Span>& span, std::int64_t otherwise, bool most)
{
    if (!span)
        return {otherwise};
    if (span->exact())
        return {span->low};
    return inwards({span->low, span->high}, most);
}

/// What one serving may weigh, and how many there may be.
struct Sizes {
    std::int64_t servings;
    std::int64_t size;
};

/// Sizes and servings, also such as come to the net quantity, the wanted end of what counts on the basis first.
std::vector<Sizes> sizes_for(const Search& search, bool most)
{
    const auto& known = search.sharp.sizes;
    const bool most_servings = of_package(search) == most;
    const bool most_size = (search.basis == Basis::SameAmount) != most;
    const auto from_both_ends = [](const std::optional<core::Span>& span, std::int64_t otherwise) {
        auto values = inwards(span, otherwise, false);
        const auto others = inwards(span, otherwise, true);
        values.insert(values.end(), others.begin(), others.end());
        return values;
    };
    const auto servings = from_both_ends(known.servings, search.printed_from.servings);
    const auto sizes = from_both_ends(known.serving, search.printed_from.size);
    std::vector<Sizes> all;
    for (const auto count : servings)
        for (const auto size : sizes)
            all.push_back({count, size});
    if (known.net)
        for (const std::int64_t net :
             {known.net->low + 1, known.net->low / 2 + known.net->high / 2, known.net->high - 1})
            for (const std::int64_t beside : {-1, 0, 1}) {
                for (const auto count : servings)
                    all.push_back(
                        {count,
                         static_cast<std::int64_t>(Wide{net} * one / std::max<std::int64_t>(count, 1)) + beside});
                if (!known.servings || !known.servings->exact())
                    for (const auto size : sizes)
                        all.push_back(
                            {static_cast<std::int64_t>(Wide{net} * one / std::max<std::int64_t>(size, 1)) + beside,
                             size});
            }
    const bool by_size = search.basis == Basis::SameAmount;
    std::stable_sort(all.begin(), all.end(), [&](const Sizes& a, const Sizes& b) {
        if (by_size)
            return most_size ? a.size > b.size : a.size < b.size;
        return of_package(search) && (most_servings ? a.servings > b.servings : a.servings < b.servings);
    });
    return all;
}

/// 11.5 to 12.5 chips behind "about 12 chips".
core::Ratio count_for(const Search& search, bool most)
{
    const std::string about = "about ";
    const auto& words = search.label.serving.household;
    if (!words.starts_with(about))
        return search.printed_from.count;
    const std::int64_t printed = std::stoll(words.substr(about.size()));
    constexpr std::int64_t fine = 1'000'000;
    const std::int64_t half = fine / 2;
    if (most) // in a given number of pieces: the fewest that make a serving
        return {std::max<std::int64_t>(printed * fine - half, 1), fine};
    return {printed * fine + half - 1, fine};
}

/// Sets the nutrient to one end and tries; sizes and servings stand.
bool try_contents(const Search& search, bool most, const Strictness& strictness, TrueFood& food)
{
    const bool prepared = search.basis == Basis::Prepared;
    const bool has_prepared = search.label.second && search.label.second->kind == core::SecondColumn::Kind::AsPrepared;
    food.serving = contents_for(search, false, food.servings, strictness);
    if (has_prepared)
        food.prepared = contents_for(search, true, food.servings, strictness);
    auto& target = (prepared ? food.prepared : food.serving)[static_cast<std::size_t>(search.nutrient)];
    for (const std::int64_t amount :
         inwards(bounds_for(search, search.nutrient, prepared, food.servings, strictness.both_columns), most)) {
        target = amount;
        fill_unprinted(search, food.serving, false, strictness.sums);
        if (has_prepared)
            fill_unprinted(search, food.prepared, true, strictness.sums);
        if (may_print(food, search.label, strictness))
            return true;
    }
    return false;
}

} // namespace

std::optional<TrueFood> extreme(const Search& search, bool most, const Strictness& strictness)
{
    TrueFood food = search.printed_from;
    food.count = count_for(search, most);
    for (const auto& [servings, size] : sizes_for(search, most)) {
        if (servings <= 0 || size <= 0)
            continue;
        food.servings = servings;
        food.size = size;
        if (sizes_may_print(food, search.label, strictness) && try_contents(search, most, strictness, food))
            return food;
    }
    return std::nullopt;
}

} // namespace test
