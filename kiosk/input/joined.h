// Takes apart scans that came in one go with nothing between them, as from a scanner without a suffix while nobody
// looked.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// The product codes that stand in `digits` one behind the other, if there is exactly one way to cut it: each part 8,
/// 12, 13 or 14 digits with a right check digit, and at least two parts. Empty otherwise: an ambiguous row is never
/// guessed.
[[nodiscard]] std::vector<std::string> take_apart(std::string_view digits);

} // namespace kiosk
