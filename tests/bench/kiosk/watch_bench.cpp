// What a camera of 1280 x 720 with 30 frames a second costs while nothing is in view, while a package lies there, and
// while one is moved: in percent of one core, all threads together. The frames are JPEG, as USB cameras send them.
#include "kiosk/camera/camera_source.h"
#include "tests/support/barcode_frames.h"
#include "tests/support/temp_folder.h"

#include <SDL_image.h>

#include <chrono>
#include <cstdio>
#include <string>
#include <sys/resource.h>
#include <thread>
#include <vector>

namespace {

double cpu_seconds()
{
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

void write_jpeg(const kiosk::Frame& frame, const std::string& path)
{
    SDL_Surface* surface = SDL_CreateRGBSurfaceWithFormat(0, frame.width, frame.height, 24, SDL_PIXELFORMAT_RGB24);
    for (int y = 0; y < frame.height; ++y)
        for (int x = 0; x < frame.width; ++x)
            for (int part = 0; part < 3; ++part)
                static_cast<std::uint8_t*>(surface->pixels)[y * surface->pitch + 3 * x + part] =
                    frame.pixels[static_cast<std::size_t>(y * frame.width + x)];
    IMG_SaveJPG(surface, path.c_str(), 85);
    SDL_FreeSurface(surface);
}

/// A film of JPEG pictures that begins again at its end, in its own time.
struct Film {
    explicit Film(const std::vector<kiosk::Frame>& frames)
    {
        for (std::size_t i = 0; i < frames.size(); ++i)
            write_jpeg(frames[i], folder.file(std::to_string(i) + ".jpg"));
        source = "multifilesrc location=\"" + folder.file("%d.jpg") +
                 "\" loop=true stop-index=" + std::to_string(frames.size() - 1) +
                 " caps=\"image/jpeg,width=1280,height=720,framerate=30/1\" ! identity sleep-time=33333";
    }
    test::TempFolder folder;
    std::string source;
};

void measure(const char* what, const std::vector<kiosk::Frame>& frames)
{
    const Film film(frames);
    kiosk::Every<kiosk::Scan> scans;
    kiosk::CaptureOptions options;
    options.source = film.source;
    kiosk::CameraSource camera(options, scans, {}, {}, {.most_pixels = 14'400});
    camera.start();
    std::this_thread::sleep_for(std::chrono::seconds(5)); // it looks hard first
    const auto before = camera.status();
    const double cpu = cpu_seconds();
    constexpr double seconds = 10;
    std::this_thread::sleep_for(std::chrono::duration<double>(seconds));
    const double used = cpu_seconds() - cpu;
    const auto after = camera.status();
    std::printf("%-34s %5.1f %% of a core; %4.1f frames a second compared, %4.1f read\n", what, 100 * used / seconds,
                static_cast<double>(after.frames - before.frames) / seconds,
                static_cast<double>(after.reads - before.reads) / seconds);
}

} // namespace

int main()
{
    std::vector<kiosk::Frame> empty;
    std::vector<kiosk::Frame> still;
    std::vector<kiosk::Frame> moving;
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        test::Picture picture{.symbology = core::Symbology::Ean13, .digits = "9521234543213", .noise = 5, .seed = seed};
        picture.width = 1280;
        picture.height = 720;
        empty.push_back(test::draw_empty(picture));
        still.push_back(test::draw(picture));
        picture.degrees = 3.0 * static_cast<double>(seed);
        moving.push_back(test::draw(picture));
    }
    measure("nothing in view", empty);
    measure("a package lies there", still);
    measure("a package is moved", moving);
}
