// Print is even: where the pieces of a code lie follows a smooth curve, however the package is bent or turned.
#pragma once

#include "kiosk/camera/orthonormal.h"

#include <span>

namespace kiosk {

/// Draws places towards the smooth curve that most of them follow: a cubic of where they stand in the code, which bent
/// (cans) and slanted (perspective) packages come close to. Few places that lie off it together do not bend it much.
///
/// Why: 1 and 7 (and 2 and 8) have their bars equally far apart. In a soft picture, half a module beside its place, one
/// looks like the other; three 1 in a row drew each other half a module along and were three 7.
class EvenOut {
public:
    /// `centres`: where the places stand on even print, at least four different ones.
    explicit EvenOut(std::span<const double> centres);

    /// `places`: one for each centre. `near`: how far off the curve a place still counts in full.
    void apply(std::span<double> places, double near) const;

private:
    Orthonormal curve_; ///< 1, t, t^2, t^3
};

} // namespace kiosk
