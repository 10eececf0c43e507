// What a picture costs: wording a pair, drawing its screen, making the letters, painting the pixels, writing the file.
#include "kiosk/command/picture.h"
#include "kiosk/command/reach.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "tests/bench/timing.h"
#include "tests/support/headless.h"
#include "tests/support/temp_folder.h"

#include <cstdio>
#include <string>

namespace {

constexpr int repeats = 31;

/// A scan that is answered, and a frame that shows it, without window and graphics card.
void bench_frame(kiosk::Session& session, int width, int height)
{
    test::Headless screen({static_cast<float>(width), static_cast<float>(height)});
    const double frame = bench::median_ms(repeats, [&] { bench::keep(screen.frame(session.state())); });
    const ui::Actions other_basis{ui::ChooseBasis{core::Basis::Package}};
    const double answer = bench::median_ms(repeats, [&] { session.apply(other_basis); });
    std::printf("%d x %d\n", width, height);
    bench::row("one frame of the pair (ImGui's part)", frame, frame);
    bench::row("compare and word the pair anew", answer, frame);
}

void bench_picture(const kiosk::Session& session, const kiosk::FontBytes& fonts, int width, int height)
{
    const kiosk::PictureLook look{ui::paper(), fonts.files(), width, height};
    const test::TempFolder folder;
    kiosk::Picture picture;
    const double drawn =
        bench::median_ms(repeats, [&] { picture = kiosk::draw_picture(session.state(), session.language(), look); });
    const double letters = bench::median_ms(repeats, [&] {
        ImFontAtlas atlas;
        bench::keep(ui::build_fonts(atlas, fonts.files(),
                                    ui::sizes_for(static_cast<float>(width), static_cast<float>(height), 100)));
        unsigned char* pixels = nullptr;
        int atlas_width = 0;
        int atlas_height = 0;
        atlas.GetTexDataAsAlpha8(&pixels, &atlas_width, &atlas_height);
    });
    const double written = bench::median_ms(5, [&] { kiosk::write_png(picture, folder.file("picture.png")); });
    bench::row("a picture off screen, letters and all", drawn, drawn);
    bench::row("of it, making the letters", letters, drawn);
    bench::row("writing it as PNG", written, drawn);
}

} // namespace

int main()
{
    const auto languages = kiosk::read_languages(kiosk::data_folder());
    const auto fonts = kiosk::read_fonts();
    kiosk::StationCatalog catalog("", kiosk::data_folder());
    kiosk::Session session(catalog.store(), languages);
    if (const auto trouble = kiosk::reach(session, catalog.store(), {ui::ScreenId::Pair, "", "", {}, 1})) {
        std::fprintf(stderr, "%s\n", trouble->c_str());
        return 2;
    }
    for (const auto& [width, height] : {std::pair(1280, 800), std::pair(1920, 1080)}) {
        bench_frame(session, width, height);
        bench_picture(session, fonts, width, height);
    }
    return 0;
}
