// From what speaks for each digit to the likeliest code with a right check digit, and how far the next one is behind.
#pragma once

#include "kiosk/camera/digit_fit.h"
#include "kiosk/camera/reader.h"

#include <vector>

namespace kiosk {

/// The likeliest code, and the next. `text` as in Reading: a leading 0 of an EAN-13 makes it a UPC-A.
struct Choice {
    Reading best;
    Reading next;
    double ahead = 0; ///< logarithm: how much likelier the best is than the next
    double lost = 0;  ///< and than it would be if each digit could be the likeliest one: what the check digit overruled
};

/// Weighs every code of the layout that has a right check digit: EAN-13 with the ten patterns of number sets that give
/// its first digit, UPC-E with the twenty that give number system and check digit. Source: GS1 General Specifications,
/// sections 5.2.1 and 7.9. `evidence` has an entry for each digit of the layout.
[[nodiscard]] Choice choose(const Evidence& evidence, const Layout& layout);

/// A code and what speaks for it: a logarithm, of use beside another one of the same evidence.
struct Weighed {
    Reading reading{};
    double weight = -1e30;
};

/// The twenty likeliest codes, weighed as choose() does, likeliest first; none where `evidence` has another length.
[[nodiscard]] std::vector<Weighed> likeliest(const Evidence& evidence, const Layout& layout);

} // namespace kiosk
