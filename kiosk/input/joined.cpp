#include "kiosk/input/joined.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"

#include <algorithm>
#include <cstddef>

namespace kiosk {
namespace {

constexpr std::size_t lengths[] = {8, 12, 13, 14};

bool is_code(std::string_view part)
{
    return core::Gtin::parse(part).has_value() || core::expand_upc_e(part).has_value();
}

} // namespace

std::vector<std::string> take_apart(std::string_view digits)
{
    // ways[i]: in how many ways the first i digits can be cut, counted up to 2; last[i]: the part that ends there.
    std::vector<int> ways(digits.size() + 1, 0);
    std::vector<std::size_t> last(digits.size() + 1, 0);
    ways[0] = 1;
    for (std::size_t end = 1; end <= digits.size(); ++end)
        for (const std::size_t length : lengths)
            if (length <= end && ways[end - length] > 0 && is_code(digits.substr(end - length, length))) {
                ways[end] = std::min(2, ways[end] + ways[end - length]);
                last[end] = length;
            }
    std::vector<std::string> parts;
    if (digits.empty() || ways.back() != 1)
        return parts;
    for (std::size_t end = digits.size(); end > 0; end -= last[end])
        parts.emplace(parts.begin(), digits.substr(end - last[end], last[end]));
    if (parts.size() < 2)
        parts.clear();
    return parts;
}

} // namespace kiosk
