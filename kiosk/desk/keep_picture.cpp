#include "kiosk/desk/keep_picture.h"

#include "catalog/file/new_file.h"

#include <SDL_image.h>

#include <array>
#include <memory>
#include <string>

namespace kiosk {
namespace {

bool has_pixels(const Frame& picture)
{
    return picture.width > 0 && picture.height > 0 &&
           picture.pixels.size() == static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
}

using Surface = std::unique_ptr<SDL_Surface, decltype(&SDL_FreeSurface)>;

Surface surface_of(const Frame& picture)
{
    // SDL reads the pixels and never writes them, but has no const for that.
    auto* pixels = const_cast<std::uint8_t*>(picture.pixels.data());
    Surface surface(SDL_CreateRGBSurfaceWithFormatFrom(pixels, picture.width, picture.height, 8, picture.width,
                                                       SDL_PIXELFORMAT_INDEX8),
                    &SDL_FreeSurface);
    std::array<SDL_Color, 256> greys{};
    for (std::size_t i = 0; i < greys.size(); ++i) {
        const auto grey = static_cast<std::uint8_t>(i);
        greys[i] = {grey, grey, grey, 255};
    }
    if (surface)
        SDL_SetPaletteColors(surface->format->palette, greys.data(), 0, static_cast<int>(greys.size()));
    return surface;
}

} // namespace

std::vector<std::uint8_t> png_of(const Frame& picture)
{
    if (!has_pixels(picture))
        return {};
    const Surface surface = surface_of(picture);
    // Room for four bytes a pixel that cannot be packed, and for what PNG puts around them.
    std::vector<std::uint8_t> bytes(5 * picture.pixels.size() + (std::size_t{1} << 16));
    SDL_RWops* const through = surface ? SDL_RWFromMem(bytes.data(), static_cast<int>(bytes.size())) : nullptr;
    if (!through)
        return {};
    const bool written = IMG_SavePNG_RW(surface.get(), through, 0) == 0;
    const auto size = SDL_RWtell(through);
    SDL_RWclose(through);
    bytes.resize(written && size > 0 ? static_cast<std::size_t>(size) : 0);
    return bytes;
}

core::Result<std::filesystem::path> keep_picture(const Frame& picture, const std::filesystem::path& folder)
{
    constexpr int most_pictures = 999;
    std::error_code unknown;
    std::filesystem::path path;
    for (int number = 1; number <= most_pictures; ++number) {
        path = folder / ("pairstand-picture-" + std::to_string(number) + ".png");
        if (!std::filesystem::exists(path, unknown))
            break;
    }
    const auto bytes = png_of(picture);
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
