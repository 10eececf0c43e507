#include "kiosk/files/edid.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <numeric>

namespace kiosk {
namespace {

constexpr std::size_t block_length = 128;
constexpr std::array<std::uint8_t, 8> header{0x00, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00};
constexpr std::size_t width_cm_at = 21;
constexpr std::size_t height_cm_at = 22;
constexpr std::size_t timing_at = 54;

/// From small tablets to large televisions; the form of the picture (160 x 90, 16 x 9) lies below.
bool can_be(const PictureSizeMm& size)
{
    constexpr int least = 60;
    constexpr int most = 3000;
    const auto [low, high] = std::minmax(size.width, size.height);
    const bool is_form = (size.width == 160 && size.height == 90) || (size.width == 160 && size.height == 100);
    return low >= least && high <= most && high <= 4 * low && !is_form;
}

} // namespace

std::optional<PictureSizeMm> size_in_edid(std::span<const std::uint8_t> bytes)
{
    if (bytes.size() < block_length || !std::equal(header.begin(), header.end(), bytes.begin()))
        return std::nullopt;
    const auto block = bytes.first(block_length);
    if (std::accumulate(block.begin(), block.end(), 0U) % 256 != 0)
        return std::nullopt;
    const auto timing = block.subspan(timing_at);
    if (timing[0] != 0 || timing[1] != 0) { // a pixel clock: else it is no timing
        const PictureSizeMm size{timing[12] | ((timing[14] & 0xF0) << 4), timing[13] | ((timing[14] & 0x0F) << 8)};
        if (can_be(size))
            return size;
    }
    const PictureSizeMm size{block[width_cm_at] * 10, block[height_cm_at] * 10};
    return can_be(size) ? std::optional(size) : std::nullopt;
}

} // namespace kiosk
