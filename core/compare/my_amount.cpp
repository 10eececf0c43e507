#include "core/compare/my_amount.h"

#include <numeric>

namespace core {
namespace {

using Of = MyAmount::Of;

std::optional<Of> of_household(const Household& read)
{
    switch (read.unit) {
    case Household::Unit::Cup:
        return Of::Cups;
    case Household::Unit::Tablespoon:
        return Of::Tablespoons;
    case Household::Unit::Package:
        return Of::Package;
    case Household::Unit::Piece:
        if (read.noun == "serving")
            return Of::Servings;
        if (read.noun == "piece")
            return Of::Pieces;
        break;
    case Household::Unit::Teaspoon:
    case Household::Unit::FluidOunce:
    case Household::Unit::Ounce:
        break;
    }
    return std::nullopt;
}

/// How many steps there are in one of it.
std::int64_t steps_in_one(Of of, bool below_one)
{
    if (of == Of::Cups || of == Of::Package)
        return 4;
    return below_one ? 2 : 1;
}

} // namespace

std::optional<MyAmount> parse_my_amount(std::string_view text)
{
    const auto read = parse_household(text);
    if (!read || read->about)
        return std::nullopt;
    const auto of = of_household(*read);
    if (!of || (*of != Of::Servings && *of != Of::Pieces && *of != Of::Package && !read->noun.empty()))
        return std::nullopt;
    const auto common = std::gcd(read->count.over, read->count.under);
    const MyAmount amount{*of, {read->count.over / common, read->count.under / common}};
    return is_sound(amount) ? std::optional(amount) : std::nullopt;
}

MyAmount stepped(const MyAmount& amount, int by)
{
    const auto [over, under] = amount.times;
    const bool below_one = over < under || (over == under && by < 0);
    const std::int64_t steps = steps_in_one(amount.of, below_one);
    // To the next step in that direction, also from an amount between two steps.
    const std::int64_t whole = over * steps / under;
    const bool on_step = over * steps % under == 0;
    std::int64_t next = whole + (by > 0 ? 1 : on_step ? -1 : 0);
    const auto common = std::gcd(next, steps);
    MyAmount moved{amount.of, {next / common, steps / common}};
    return next > 0 && is_sound(moved) ? moved : amount;
}

} // namespace core
