#include "core/figure/trade_unit.h"

#include <doctest/doctest.h>

#include <set>

using U = core::TradeUnit;

namespace {

std::int64_t size(U unit)
{
    return core::info(unit).size;
}

} // namespace

TEST_CASE("trade units: every unit has one row, in order, with a key of its own")
{
    std::set<std::string_view> keys;
    int next = 0;
    for (const auto& row : core::trade_units()) {
        CHECK(static_cast<int>(row.unit) == next++);
        CHECK(&core::info(row.unit) == &row);
        CHECK(keys.insert(row.key).second);
    }
    CHECK(next == static_cast<int>(U::SquareYard) + 1);
}

TEST_CASE("trade units: the sizes hang together as NIST Handbook 44, Appendix C, defines them")
{
    CHECK(size(U::Pound) == 16 * size(U::Ounce));
    CHECK(size(U::Kilogram) == 1000 * size(U::Gram));
    CHECK(size(U::Gallon) == 4 * size(U::Quart));
    CHECK(size(U::Quart) == 2 * size(U::Pint));
    CHECK(size(U::Pint) == 16 * size(U::FluidOunce));
    CHECK(size(U::DryQuart) == 2 * size(U::DryPint));
    CHECK(size(U::SquareFoot) == 144 * size(U::SquareInch));
    CHECK(size(U::SquareYard) == 9 * size(U::SquareFoot));
    CHECK(size(U::Dozen) == 12 * size(U::Piece));
    // 1 in = 2.54 cm: a cubic inch is 16.387064 cubic centimetres, a gallon 231 of them, a bushel (64 dry pints)
    // 2150.42.
    constexpr std::int64_t cubic_inch = 163'870'640'000;
    CHECK(size(U::Gallon) == 231 * cubic_inch);
    CHECK(64 * size(U::DryPint) == 215'042 * (cubic_inch / 100));
    // 1 lb = 7000 grains of 64.79891 mg.
    CHECK(size(U::Pound) == 7'000 * 647'989'100LL);
}
