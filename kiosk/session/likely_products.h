// From what the camera may see to the products of this catalog that it may be.
#pragma once

#include "core/code/gtin.h"
#include "core/product.h"
#include "kiosk/camera/likely.h"
#include "kiosk/session/scanning.h"

#include <vector>

namespace kiosk {

/// All numbers that these codes can stand for, whatever the catalog has.
[[nodiscard]] std::vector<core::Gtin> numbers_of(const Likely& likely);

/// The products that scans of these codes would find, each once, in that order. Throws what `lookup` throws.
[[nodiscard]] std::vector<core::Product> products_of(const Likely& likely, const Lookup& lookup);

} // namespace kiosk
