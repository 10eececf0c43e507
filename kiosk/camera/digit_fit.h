// Digits found by laying their known shapes over grey values: reads bars that are too soft, too fine or too grainy to
// be told from gaps one by one. After the idea of Gallo and Manduchi, Reading 1D Barcodes with Mobile Phones Using
// Deformable Templates (IEEE PAMI 2011): no threshold anywhere, and the code as a whole decides where its digits are.
#pragma once

#include "core/code/symbology.h"
#include "kiosk/camera/straighten.h"

#include <array>
#include <cstddef>
#include <vector>

namespace kiosk {

/// What speaks for each digit at each place: logarithms of likelihoods, larger is likelier. In a left half 0 to 9 are
/// set A and 10 to 19 set B; in a right half 0 to 9 are set C.
using Evidence = std::vector<std::array<float, 20>>;

/// The bars of one kind of code, without the digits.
struct Layout {
    core::Symbology symbology; ///< Ean13 stands for UPC-A too: it is the EAN-13 that begins with 0
    std::size_t left;          ///< digits before the middle
    std::size_t right;         ///< and behind it
    int middle;                ///< modules between the halves
    int end;                   ///< modules behind the last digit
    [[nodiscard]] constexpr int modules() const { return 3 + 7 * static_cast<int>(left + right) + middle + end; }
    [[nodiscard]] constexpr std::size_t digits() const { return left + right; }
    /// The first module of a digit.
    [[nodiscard]] constexpr int begin_of(std::size_t digit) const
    {
        return 3 + 7 * static_cast<int>(digit) + (digit >= left ? middle : 0);
    }
};

constexpr Layout ean_13{core::Symbology::Ean13, 6, 6, 5, 3};
constexpr Layout ean_8{core::Symbology::Ean8, 4, 4, 5, 3};
constexpr Layout upc_e{core::Symbology::UpcE, 6, 0, 0, 6};

/// Whether so few digits hold the code that other bars may look like it.
[[nodiscard]] constexpr bool is_short(const Layout& layout)
{
    return layout.digits() < ean_13.digits();
}

/// What the bands of a strip say together.
struct Fit {
    Evidence evidence;       ///< one entry a digit; empty: nothing that could be such a code
    std::vector<double> ink; ///< how dark each digit is as a whole: grey of all bands, turned round
    double likeness = 0;     ///< how well the best shapes fit, from 0 to 1: mean correlation
    double weakest = 0;      ///< the correlation of the piece that fits worst, but for the middle one
    std::size_t bands = 0;   ///< that took part
};

/// Where fitting begins: the band (0: first, 1: last) and the spread that is tried before the best one is known. Soft
/// bars hide from sharp shapes, and light that glares on one band leaves the next one alone.
struct Start {
    double band = 0.5;
    std::size_t spread = 2;
};

/// Fits the layout to the strip. Reads the strip from both ends and takes the better one.
[[nodiscard]] Fit fit_digits(const Strip& strip, const Layout& layout, const Start& start = {});

} // namespace kiosk
