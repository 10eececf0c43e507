#include "kiosk/command/picture.h"

#include "ui/look/sizes.h"
#include "ui/screens/screens.h"

#include <SDL_image.h>

#include <memory>
#include <stdexcept>
#include <string>

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

} // namespace

Picture draw_picture(const ui::State& state, const ui::Language& language, const PictureLook& look, ui::Notes* notes)
{
    const auto width = static_cast<float>(look.width);
    const auto height = static_cast<float>(look.height);
    const Context context({width, height});
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    const ui::Sizes sizes = ui::sizes_for(width, height, state.text_percent);
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
    if (!surface || IMG_SavePNG(surface.get(), path.c_str()) != 0)
        throw std::runtime_error("the picture " + path.string() + " could not be written: " + SDL_GetError());
}

} // namespace kiosk
