// ZXing-cpp as this program needs it: the only place that knows how 1.4 (Debian 12) and 2.3 (Debian 13) differ.
#pragma once

#include "kiosk/camera/reader.h"

#include <optional>

namespace kiosk {

/// How hard to look. The defaults are what the station uses; the benchmark turns them one by one.
struct ZxingSettings {
    bool product_codes_only = true; ///< false: every kind of code the library knows
    bool cases_too = true;          ///< also ITF, the bars on cartons, where only product codes are looked for
    bool try_harder = true;         ///< more lines of the picture
    bool try_rotate = true;         ///< codes that stand upright or on their head
    bool try_downscale = true;      ///< also a smaller copy: for codes that fill the picture and for blurred ones
    int agreeing_lines = 4;         ///< so many lines of the picture must read the same; the library is content with 2
};

/// The first code the library finds, as it was printed: 12 digits for UPC-A, 8 for UPC-E; Other for bars that are no
/// product code. The check digit of an ITF code is not looked at. Needs a picture of at least 1 x 1.
[[nodiscard]] std::optional<Reading> zxing_read(const GreyView& picture, const ZxingSettings& settings = {});

} // namespace kiosk
