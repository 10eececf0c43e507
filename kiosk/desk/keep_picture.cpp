#include "kiosk/desk/keep_picture.h"

#include "catalog/file/new_file.h"

#include <string>

namespace kiosk {
namespace {

constexpr std::uint32_t greys = 256;
constexpr std::uint32_t head_bytes = 14 + 40 + 4 * greys;

/// Least byte first.
void put(std::vector<std::uint8_t>& bytes, std::uint32_t value, int count)
{
    for (int i = 0; i < count; ++i)
        bytes.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
}

void put_head(std::vector<std::uint8_t>& bytes, const Frame& picture, std::uint32_t pixel_bytes)
{
    bytes.push_back('B');
    bytes.push_back('M');
    put(bytes, head_bytes + pixel_bytes, 4);
    put(bytes, 0, 4);
    put(bytes, head_bytes, 4);
    put(bytes, 40, 4); // of what follows
    put(bytes, static_cast<std::uint32_t>(picture.width), 4);
    put(bytes, static_cast<std::uint32_t>(picture.height), 4); // positive: from bottom to top
    put(bytes, 1, 2);                                          // planes
    put(bytes, 8, 2);                                          // bits a pixel
    put(bytes, 0, 4);                                          // not packed
    put(bytes, pixel_bytes, 4);
    put(bytes, 0, 8); // no size on paper
    put(bytes, greys, 4);
    put(bytes, greys, 4);
    for (std::uint32_t grey = 0; grey < greys; ++grey)
        put(bytes, grey * 0x10101, 4);
}

bool has_pixels(const Frame& picture)
{
    return picture.width > 0 && picture.height > 0 &&
           picture.pixels.size() == static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
}

} // namespace

std::vector<std::uint8_t> bmp_of(const Frame& picture)
{
    if (!has_pixels(picture))
        return {};
    const auto width = static_cast<std::size_t>(picture.width);
    const std::size_t row_bytes = (width + 3) / 4 * 4;
    const auto pixel_bytes = row_bytes * static_cast<std::size_t>(picture.height);
    std::vector<std::uint8_t> bytes;
    bytes.reserve(head_bytes + pixel_bytes);
    put_head(bytes, picture, static_cast<std::uint32_t>(pixel_bytes));
    for (int y = picture.height - 1; y >= 0; --y) {
        const auto row = picture.pixels.begin() + static_cast<std::ptrdiff_t>(picture.width) * y;
        bytes.insert(bytes.end(), row, row + picture.width);
        bytes.resize(bytes.size() + row_bytes - width);
    }
    return bytes;
}

core::Result<std::filesystem::path> keep_picture(const Frame& picture, const std::filesystem::path& folder)
{
    constexpr int most_pictures = 999;
    std::error_code unknown;
    std::filesystem::path path;
    for (int number = 1; number <= most_pictures; ++number) {
        path = folder / ("pairstand-picture-" + std::to_string(number) + ".bmp");
        if (!std::filesystem::exists(path, unknown))
            break;
    }
    const auto bytes = bmp_of(picture);
    if (bytes.empty())
        return core::refuse(core::Error::Kind::CannotWrite, path.string());
    auto file = catalog::NewFile::make(path, catalog::real_disk());
    if (!file)
        return tl::make_unexpected(file.error());
    if (const auto added = file->add(bytes); !added)
        return tl::make_unexpected(added.error());
    if (const auto done = file->finish(); !done)
        return tl::make_unexpected(done.error());
    return path;
}

} // namespace kiosk
