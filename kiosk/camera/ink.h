// Tells digits apart whose bars are equally far from each other by how much ink they have.
#pragma once

#include "kiosk/camera/digit_fit.h"
#include "kiosk/camera/reader.h"

namespace kiosk {

/// Whether neighbouring digits of a fitted code may be others: 1 and 2 have the bars of 7 and 8 half a module away, and
/// in a soft picture several in a row draw each other there, past the check digit (three of them weigh 1 + 3 + 1 times
/// 6). Their shapes then fit as well, but 7 and 8 have two modules of ink more (of set A; two less of the others). True
/// where the ink of the digits does not clearly speak for the code as it was read.
[[nodiscard]] bool may_be_drawn_aside(const Reading& reading, const Fit& fit, const Layout& layout);

} // namespace kiosk
