#include "kiosk/command/picture.h"

#include "ui/look/sizes.h"
#include "ui/screens/screens.h"

#include <SDL_image.h>

#include <cerrno>
#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string>
#include <system_error>

namespace kiosk {
namespace {

/// An ImGui context that ends with its scope and puts back the one that was there.
class Context {
public:
    explicit Context(ImVec2 size) : before_(ImGui::GetCurrentContext()), own_(ImGui::CreateContext())
    {
        ImGui::SetCurrentContext(own_);
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.LogFilename = nullptr;
        io.DisplaySize = size;
        io.DeltaTime = 1.0F / 60.0F; // its own tick: the same picture whenever it is drawn
    }
    ~Context()
    {
        ImGui::DestroyContext(own_);
        ImGui::SetCurrentContext(before_);
    }
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;

private:
    ImGuiContext* before_;
    ImGuiContext* own_;
};

/// ImGui settles sizes in the first frame; the second is as on a station.
constexpr int frames_to_settle = 2;

[[noreturn]] void cannot_write(const std::filesystem::path& path, int why)
{
    throw std::runtime_error(path.string() + ": the picture cannot be written (" +
                             std::generic_category().message(why) +
                             "); give the name of a file in a folder that is there and has room");
}

} // namespace

Picture draw_picture(const ui::State& state, const ui::Language& language, const PictureLook& look, ui::Notes* notes)
{
    const auto width = static_cast<float>(look.width);
    const auto height = static_cast<float>(look.height);
    const Context context({width, height});
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    const ui::Sizes sizes = ui::sizes_of(state, width, height);
    const ui::Look drawn_with{look.theme, sizes, ui::build_fonts(atlas, look.fonts, sizes)};

    AtlasPixels pixels;
    unsigned char* opacity = nullptr;
    atlas.GetTexDataAsAlpha8(&opacity, &pixels.width, &pixels.height);
    pixels.opacity = opacity;

    ui::Notes said;
    for (int frame = 0; frame < frames_to_settle; ++frame) {
        said.clear();
        ui::Actions asked;
        ImGui::NewFrame();
        ui::draw({language, drawn_with, said}, state, asked);
        ImGui::Render();
    }
    if (notes)
        *notes = std::move(said);
    return rasterise(*ImGui::GetDrawData(), pixels, look.theme.ground);
}

void write_png(const Picture& picture, const std::filesystem::path& path)
{
    // SDL reads the pixels and never writes them, but has no const for that.
    auto* pixels = const_cast<std::uint8_t*>(picture.rgba.data());
    const std::unique_ptr<SDL_Surface, decltype(&SDL_FreeSurface)> surface(
        SDL_CreateRGBSurfaceWithFormatFrom(pixels, picture.width, picture.height, 32, picture.width * 4,
                                           SDL_PIXELFORMAT_RGBA32),
        &SDL_FreeSurface);
    if (!surface)
        throw std::runtime_error(SDL_GetError());
    std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wbe"), &std::fclose);
    if (!file)
        cannot_write(path, errno);
    // Saving under a name would lose what a full disk says when the last bytes go out.
    SDL_RWops* const through = SDL_RWFromFP(file.get(), SDL_FALSE);
    if (!through || IMG_SavePNG_RW(surface.get(), through, 1) != 0 || std::fflush(file.get()) != 0 ||
        std::ferror(file.get()) != 0) {
        const int why = errno;
        std::error_code stays;
        if (std::filesystem::is_regular_file(path, stays)) // half a picture is of no use
            std::filesystem::remove(path, stays);
        cannot_write(path, why);
    }
}

} // namespace kiosk
