// Frames in which there is no product code, or two: what must not turn into one that is not there.
#pragma once

#include "tests/support/shop_shots.h"

#include <array>
#include <string>
#include <vector>

namespace test {

/// What is in view in place of one product code.
enum class Other {
    Nothing, ///< letters and edges
    Stripes, ///< bars of chance, as many and as wide as those of a code
    Digits,  ///< bars of a code whose check digit is wrong
    Code128,
    Code39,
    Itf, ///< with another number of digits than a case has
    DataBar,
    Qr,
    DataMatrix,
    TwoProducts,
};

inline constexpr std::array all_others{Other::Nothing,    Other::Stripes,    Other::Digits,  Other::Code128,
                                       Other::Code39,     Other::Itf,        Other::DataBar, Other::Qr,
                                       Other::DataMatrix, Other::TwoProducts};

/// For messages.
[[nodiscard]] const char* name_of(Other other);

/// A frame of a level (1 to 4) with something else in view, and the codes that may be read from it: none, or two.
struct OtherSetting {
    Setting setting{};
    std::vector<kiosk::Reading> truths{};
};

/// The same number gives the same frame.
[[nodiscard]] OtherSetting other_setting_of(Other other, int level, std::uint64_t number, FrameSize size = {});

} // namespace test
