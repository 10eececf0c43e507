#include "kiosk/camera/even_out.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace {

constexpr std::size_t pieces = 15;

std::vector<double> centres()
{
    std::vector<double> all;
    for (std::size_t i = 0; i < pieces; ++i)
        all.push_back(7.0 * static_cast<double>(i));
    return all;
}

/// Where a code on a can is seen that goes `around` it to both sides and is turned away by `turned`, in radians.
std::vector<double> seen_on_can(double around, double turned)
{
    std::vector<double> all;
    for (const double centre : centres())
        all.push_back(300 * std::sin(turned + around * (centre / 49 - 1)));
    return all;
}

double farthest(const std::vector<double>& a, const std::vector<double>& b)
{
    double most = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        most = std::max(most, std::abs(a[i] - b[i]));
    return most;
}

} // namespace

// The truth is trigonometry: what is printed round a can is seen at the sine of its angle.
TEST_CASE("even out: what lies on bent print stays where it is")
{
    const kiosk::EvenOut even_out(centres());
    for (const double around : {0.1, 0.5, 0.8})
        for (const double turned : {-0.5, 0.0, 0.5}) {
            CAPTURE(around);
            CAPTURE(turned);
            const auto seen = seen_on_can(around, turned);
            const double module = (seen.back() - seen.front()) / 98;
            auto evened = seen;
            even_out.apply(evened, 0.1 * module);
            CHECK(farthest(evened, seen) < 0.15 * module);
        }
}

TEST_CASE("even out: three neighbours half a module off are drawn back, the others hardly move")
{
    const kiosk::EvenOut even_out(centres());
    for (std::size_t first = 2; first + 5 <= pieces; ++first) { // at the ends nothing holds against them
        CAPTURE(first);
        auto places = centres();
        for (std::size_t i = first; i < first + 3; ++i)
            places[i] += 0.5;
        const auto off = places;
        even_out.apply(places, 0.1);
        for (std::size_t i = 0; i < pieces; ++i)
            CHECK(std::abs(places[i] - centres()[i]) < (i < first || i > first + 2 ? 0.2 : 0.25));
        CHECK(farthest(places, off) > 0.2);
    }
}
