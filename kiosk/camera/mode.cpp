#include "kiosk/camera/mode.h"

#include <algorithm>
#include <compare>
#include <cstdint>
#include <tuple>

namespace kiosk {
namespace {

constexpr int least_width = 1280;
constexpr int least_height = 720;
constexpr std::int64_t most_pixels = std::int64_t{1920} * 1200;
constexpr int least_rate = 10;
constexpr int most_rate = 30;

std::int64_t pixels(const Mode& mode)
{
    return std::int64_t{mode.width} * mode.height;
}

/// Frames in a thousand seconds, as far as more of them are of use. A driver that does not say is believed to be fast.
std::int64_t pace(const Mode& mode)
{
    constexpr std::int64_t thousand = 1000;
    if (mode.frames <= 0 || mode.seconds <= 0)
        return most_rate * thousand;
    return std::min(most_rate * thousand, mode.frames * thousand / mode.seconds);
}

enum class Group { Right, Large, Small, Slow };

Group group_of(const Mode& mode)
{
    if (pace(mode) < std::int64_t{least_rate} * 1000)
        return Group::Slow;
    if (!has_enough_pixels(mode.width, mode.height))
        return Group::Small;
    return pixels(mode) <= most_pixels ? Group::Right : Group::Large;
}

/// Compares as "better comes first".
auto rank(const Mode& mode)
{
    const Group group = group_of(mode);
    const bool large_is_good = group == Group::Small || group == Group::Slow;
    const std::int64_t size = large_is_good ? -pixels(mode) : pixels(mode);
    const std::int64_t haste = -pace(mode);
    const bool haste_first = group == Group::Right;
    return std::tuple(group, haste_first ? haste : size, haste_first ? size : haste, mode.raw_format.empty());
}

} // namespace

bool has_enough_pixels(int width, int height)
{
    return std::max(width, height) >= least_width && std::min(width, height) >= least_height;
}

std::optional<Mode> best_mode(std::span<const Mode> modes)
{
    const auto best = std::ranges::min_element(modes, [](const Mode& a, const Mode& b) { return rank(a) < rank(b); });
    return best == modes.end() ? std::nullopt : std::optional(*best);
}

std::string caps_of(const Mode& mode)
{
    std::string caps = mode.raw_format.empty() ? "image/jpeg" : "video/x-raw,format=" + mode.raw_format;
    caps += ",width=" + std::to_string(mode.width) + ",height=" + std::to_string(mode.height);
    if (mode.frames > 0 && mode.seconds > 0)
        caps += ",framerate=" + std::to_string(mode.frames) + "/" + std::to_string(mode.seconds);
    return caps;
}

} // namespace kiosk
