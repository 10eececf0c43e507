#include "kiosk/camera/shapes.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using core::Symbology;

namespace {

/// How well seven modules of a drawn code fit a shape: the correlation with the shape of the sharpest lens.
double fits(const std::vector<bool>& modules, std::size_t first, const kiosk::Shapes& shapes, std::size_t shape)
{
    double sum = 0;
    double mean = 0;
    for (std::size_t i = 0; i < kiosk::values_in_digit; ++i)
        mean += (modules[first + i / kiosk::values_in_module] ? 1.0 : 0.0) / kiosk::values_in_digit;
    double square = 0;
    for (std::size_t i = 0; i < kiosk::values_in_digit; ++i) {
        const double ink = (modules[first + i / kiosk::values_in_module] ? 1.0 : 0.0) - mean;
        sum += ink * static_cast<double>(shapes.at[i][shape]);
        square += ink * ink;
    }
    return sum / std::sqrt(square);
}

std::size_t best_of(const std::vector<bool>& modules, std::size_t first, bool right_half)
{
    std::size_t best = 0;
    const auto& shapes = kiosk::shapes_of(right_half, 0);
    for (std::size_t shape = 0; shape < (right_half ? 10U : 20U); ++shape)
        if (fits(modules, first, shapes, shape) > fits(modules, first, shapes, best))
            best = shape;
    return best;
}

} // namespace

// Source: the bars that zint draws (ISO/IEC 15420).
TEST_CASE("shapes: each digit of each number set is told from all others")
{
    // The first digit of an EAN-13 says which of the six left digits are of set B (GS1 General
    // Specifications, 5.2.1.2).
    const struct {
        const char* body;
        const char* sets;
    } codes[] = {{"401234567890", "ABAABB"}, {"567890123456", "ABBAAB"}, {"098765432109", "AAAAAA"}};
    for (const auto& code : codes) {
        std::string digits;
        for (char check = '0'; check <= '9'; ++check)
            try {
                digits = std::string(code.body) + check;
                (void)test::modules_of(Symbology::Ean13, digits);
                break;
            } catch (const std::invalid_argument&) {
                continue; // not the check digit
            }
        CAPTURE(digits);
        const auto modules = test::modules_of(Symbology::Ean13, digits);
        REQUIRE(modules.size() == 95);
        for (std::size_t i = 0; i < 6; ++i) {
            const auto digit = static_cast<std::size_t>(digits[i + 1] - '0');
            CHECK(best_of(modules, 3 + 7 * i, false) == digit + (code.sets[i] == 'B' ? 10 : 0));
            CHECK(best_of(modules, 50 + 7 * i, true) == static_cast<std::size_t>(digits[i + 7] - '0'));
        }
    }
}

TEST_CASE("shapes: a softer lens makes shapes more alike")
{
    const auto alike = [](std::size_t spread) {
        double sum = 0;
        const auto& shapes = kiosk::shapes_of(false, spread);
        for (const auto& value : shapes.at)
            sum += static_cast<double>(value[1] * value[7]); // two bars each, at other places
        return sum;
    };
    for (std::size_t spread = 1; spread < kiosk::spreads.size(); ++spread)
        CHECK(alike(spread) > alike(spread - 1));
}
