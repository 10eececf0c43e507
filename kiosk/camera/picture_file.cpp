#include "kiosk/camera/picture_file.h"

#include "kiosk/camera/picture_size.h"

#include <SDL_image.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <memory>
#include <utility>
#include <vector>

namespace kiosk {
namespace {

using core::Error;

constexpr std::uintmax_t most_bytes = 64U << 20;
constexpr std::uint64_t most_pixels = 64'000'000;
constexpr std::uint32_t most_in_line = 1U << 15;

struct FreeSurface {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
using Surface = std::unique_ptr<SDL_Surface, FreeSurface>;

auto refuse_file(Error::Kind kind, const std::string& path, std::string found)
{
    core::Place place;
    place.source = path;
    place.found = found;
    return core::refuse(kind, found, std::move(place));
}

core::Result<std::vector<std::uint8_t>> bytes_of(const std::string& path)
{
    std::error_code error;
    if (std::filesystem::is_directory(path, error))
        return refuse_file(Error::Kind::CannotRead, path, "a folder");
    errno = 0;
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return refuse_file(Error::Kind::CannotRead, path, std::strerror(errno));
    std::vector<std::uint8_t> bytes;
    char piece[65536];
    while (file.read(piece, sizeof piece), file.gcount() > 0) {
        if (bytes.size() + static_cast<std::size_t>(file.gcount()) > most_bytes)
            return refuse_file(Error::Kind::TooLarge, path, "more than 64 MiB");
        bytes.insert(bytes.end(), piece, piece + file.gcount());
    }
    if (file.bad())
        return refuse_file(Error::Kind::CannotRead, path, std::strerror(errno));
    if (bytes.empty())
        return refuse_file(Error::Kind::Empty, path, "0 bytes");
    return bytes;
}

/// The name under which SDL_image keeps the reader of this kind: so that no other reader of its many is ever asked.
const char* reader_for(PictureSize::Kind kind)
{
    switch (kind) {
    case PictureSize::Kind::Png:
        return "PNG";
    case PictureSize::Kind::Jpeg:
        return "JPG";
    case PictureSize::Kind::Gif:
        return "GIF";
    case PictureSize::Kind::Bmp:
        return "BMP";
    case PictureSize::Kind::Pnm:
        return "PNM";
    case PictureSize::Kind::WebP:
        return "WEBP";
    }
    return "";
}

/// Brightness as ITU-R BT.601 weighs it, over white where the picture lets it through.
std::uint8_t grey_of(SDL_Color color)
{
    const unsigned grey = (299U * color.r + 587U * color.g + 114U * color.b + 500U) / 1000U;
    return static_cast<std::uint8_t>((grey * color.a + 255U * (255U - color.a) + 127U) / 255U);
}

Frame grey_copy(SDL_Surface* surface)
{
    Frame frame;
    frame.width = surface->w;
    frame.height = surface->h;
    frame.pixels.reserve(static_cast<std::size_t>(surface->w) * static_cast<std::size_t>(surface->h));
    const std::size_t pixel_bytes = surface->format->BytesPerPixel;
    for (int y = 0; y < surface->h; ++y) {
        const auto* at =
            static_cast<const std::uint8_t*>(surface->pixels) + static_cast<std::ptrdiff_t>(y) * surface->pitch;
        for (int x = 0; x < surface->w; ++x, at += pixel_bytes) {
            Uint32 pixel = 0;
            std::memcpy(&pixel, at, pixel_bytes); // 1 to 4 bytes, the low ones first
            SDL_Color color{};
            SDL_GetRGBA(pixel, surface->format, &color.r, &color.g, &color.b, &color.a);
            frame.pixels.push_back(grey_of(color));
        }
    }
    return frame;
}

} // namespace

static_assert(SDL_BYTEORDER == SDL_LIL_ENDIAN, "pixels are copied with their low bytes first");

core::Result<Frame> load_picture(const std::string& path)
{
    const auto bytes = bytes_of(path);
    if (!bytes)
        return tl::make_unexpected(bytes.error());
    const auto size = picture_size(*bytes);
    if (!size || size->width == 0 || size->height == 0)
        return refuse_file(Error::Kind::BadEncoding, path, "no PNG, JPEG, GIF, BMP, PNM or WebP picture");
    if (size->width > most_in_line || size->height > most_in_line ||
        std::uint64_t{size->width} * size->height > most_pixels)
        return refuse_file(Error::Kind::TooLarge, path,
                           std::to_string(size->width) + " x " + std::to_string(size->height) + " pixels");
    SDL_RWops* memory = SDL_RWFromConstMem(bytes->data(), static_cast<int>(bytes->size()));
    Surface surface(IMG_LoadTyped_RW(memory, 1, reader_for(size->kind)));
    if (surface && surface->format->BitsPerPixel < 8) // bits in bytes: to a byte each
        surface.reset(SDL_ConvertSurfaceFormat(surface.get(), SDL_PIXELFORMAT_RGBA32, 0));
    if (!surface)
        return refuse_file(Error::Kind::BadEncoding, path, SDL_GetError());
    return grey_copy(surface.get());
}

} // namespace kiosk
