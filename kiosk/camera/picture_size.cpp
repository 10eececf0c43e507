#include "kiosk/camera/picture_size.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace kiosk {
namespace {

using Bytes = std::span<const std::uint8_t>;
using Kind = PictureSize::Kind;

bool stands_at(Bytes bytes, std::size_t at, std::string_view text)
{
    if (bytes.size() < at + text.size())
        return false;
    return std::ranges::equal(bytes.subspan(at, text.size()), text, {}, {},
                              [](char c) { return static_cast<std::uint8_t>(c); });
}

/// A number of `count` bytes, the lowest first.
std::uint32_t low_first(Bytes bytes, std::size_t at, std::size_t count)
{
    std::uint32_t value = 0;
    for (std::size_t i = count; i > 0; --i)
        value = value << 8 | bytes[at + i - 1];
    return value;
}

/// A number of `count` bytes, the highest first.
std::uint32_t high_first(Bytes bytes, std::size_t at, std::size_t count)
{
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i)
        value = value << 8 | bytes[at + i];
    return value;
}

std::optional<PictureSize> png(Bytes bytes)
{
    if (bytes.size() < 24 || !stands_at(bytes, 12, "IHDR"))
        return std::nullopt;
    return PictureSize{Kind::Png, high_first(bytes, 16, 4), high_first(bytes, 20, 4)};
}

/// Steps from segment to segment to the one that begins the frame.
std::optional<PictureSize> jpeg(Bytes bytes)
{
    for (std::size_t at = 2; at + 9 <= bytes.size();) {
        const std::uint8_t marker = bytes[at + 1];
        if (bytes[at] != 0xFF)
            return std::nullopt;
        if (marker == 0xFF) { // filling
            ++at;
            continue;
        }
        const bool no_frame = marker == 0xC4 || marker == 0xC8 || marker == 0xCC;
        if (marker >= 0xC0 && marker <= 0xCF && !no_frame)
            return PictureSize{Kind::Jpeg, high_first(bytes, at + 7, 2), high_first(bytes, at + 5, 2)};
        const bool alone = marker == 0x01 || (marker >= 0xD0 && marker <= 0xD7);
        at += 2 + (alone ? 0 : high_first(bytes, at + 2, 2));
    }
    return std::nullopt;
}

std::optional<PictureSize> bmp(Bytes bytes)
{
    if (bytes.size() < 26)
        return std::nullopt;
    if (low_first(bytes, 14, 4) == 12) // the oldest header
        return PictureSize{Kind::Bmp, low_first(bytes, 18, 2), low_first(bytes, 20, 2)};
    const std::uint32_t height = low_first(bytes, 22, 4); // negative: rows from the top down
    return PictureSize{Kind::Bmp, low_first(bytes, 18, 4), (height & 0x8000'0000U) != 0 ? 0U - height : height};
}

/// "P5", then width and height in digits, blanks and comments between.
std::optional<PictureSize> pnm(Bytes bytes)
{
    constexpr std::uint32_t absurd = 100'000'000;
    std::uint32_t numbers[2] = {0, 0};
    std::size_t at = 2;
    for (std::uint32_t& number : numbers) {
        for (bool comment = false; at < bytes.size() && (comment || bytes[at] < '0' || bytes[at] > '9'); ++at)
            comment = bytes[at] == '#' || (comment && bytes[at] != '\n');
        for (; at < bytes.size() && bytes[at] >= '0' && bytes[at] <= '9'; ++at)
            number = std::min(absurd, number * 10 + (bytes[at] - '0'));
    }
    if (at >= bytes.size())
        return std::nullopt;
    return PictureSize{Kind::Pnm, numbers[0], numbers[1]};
}

std::optional<PictureSize> webp(Bytes bytes)
{
    if (bytes.size() < 30)
        return std::nullopt;
    if (stands_at(bytes, 12, "VP8X"))
        return PictureSize{Kind::WebP, low_first(bytes, 24, 3) + 1, low_first(bytes, 27, 3) + 1};
    if (stands_at(bytes, 12, "VP8L")) {
        const std::uint32_t bits = low_first(bytes, 21, 4);
        return PictureSize{Kind::WebP, (bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1};
    }
    if (stands_at(bytes, 12, "VP8 "))
        return PictureSize{Kind::WebP, low_first(bytes, 26, 2) & 0x3FFF, low_first(bytes, 28, 2) & 0x3FFF};
    return std::nullopt;
}

} // namespace

std::optional<PictureSize> picture_size(Bytes bytes)
{
    if (stands_at(bytes, 0, "\x89PNG\r\n\x1a\n"))
        return png(bytes);
    if (stands_at(bytes, 0, "\xFF\xD8\xFF"))
        return jpeg(bytes);
    if ((stands_at(bytes, 0, "GIF87a") || stands_at(bytes, 0, "GIF89a")) && bytes.size() >= 10)
        return PictureSize{Kind::Gif, low_first(bytes, 6, 2), low_first(bytes, 8, 2)};
    if (stands_at(bytes, 0, "BM"))
        return bmp(bytes);
    if (bytes.size() >= 2 && bytes[0] == 'P' && bytes[1] >= '1' && bytes[1] <= '6')
        return pnm(bytes);
    if (stands_at(bytes, 0, "RIFF") && stands_at(bytes, 8, "WEBP"))
        return webp(bytes);
    return std::nullopt;
}

} // namespace kiosk
