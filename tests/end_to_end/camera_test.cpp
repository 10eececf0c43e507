// The camera from outside: what is held before it comes to the screen, or a question does.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/twin.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <thread>

namespace {

namespace fs = std::filesystem;

void put_tape(kiosk::Frame& frame, int module)
{
    const int left = frame.width / 2 - 95 * module / 2 + module * (3 + 7 * 3);
    for (int y = 0; y < frame.height; ++y)
        std::fill_n(frame.pixels.begin() + y * frame.width + left, 7 * module, std::uint8_t{200});
}

/// A film of one product's bars, as a camera would see them, and the beginning of a pipeline that plays it. With `tape`
/// a strip of it hides the fifth digit behind the first.
std::string film_of(const test::DemoProduct& product, const fs::path& folder, bool tape = false)
{
    test::Picture picture;
    picture.digits = product.digits;
    picture.blur = 0.8;
    picture.noise = 6;
    picture.degrees = tape ? 0 : 4;
    fs::create_directories(folder);
    for (int i = 0; i < 10; ++i) {
        picture.seed = static_cast<std::uint64_t>(i) + 1;
        auto frame = test::draw(picture);
        if (tape)
            put_tape(frame, static_cast<int>(picture.module));
        test::write_raw(frame, (folder / ("0" + std::to_string(i) + ".grey")).string());
    }
    return "multifilesrc location=\"" + (folder / "%02d.grey").string() +
           "\" index=0 stop-index=9 loop=true caps=\"video/x-raw,format=GRAY8,width=640,height=480,framerate=20/1\" ! "
           "identity sleep-time=50000";
}

/// The first of the catalog whose bars are an EAN-13.
test::DemoProduct some_ean_13()
{
    const auto products = test::demo_products();
    const auto found = std::ranges::find_if(products, [](const auto& product) { return product.digits.size() == 13; });
    REQUIRE(found != products.end());
    return *found;
}

} // namespace

TEST_CASE("end to end: bars before the camera come to the screen through the real pipeline, once")
{
    const auto product = some_ean_13();
    const test::TempFolder film;
    test::Station station({"--camera-source", film_of(product, film.file("film"))});
    const auto answer = station.answer(1);
    REQUIRE(answer);
    CHECK(answer->left == product.gtin);
    const auto frame = station.frame_of_notice(answer->notice);
    REQUIRE(frame);
    CHECK(frame->words.find(product.name) != std::string::npos);
    std::this_thread::sleep_for(std::chrono::seconds(2)); // held still: no second scan
    CHECK(std::ranges::count(station.trace(), "answer", &test::TraceLine::kind) == 1);
    CHECK(station.program().end() == 0);
    // No picture is kept: in its home lie the trace, what it said, GStreamer's list of plugins, and on Debian 13 what
    // the graphics driver has compiled, in a folder of the driver's own.
    for (const auto& entry : fs::recursive_directory_iterator(station.folder().file(""))) {
        const auto name = entry.path().filename().string();
        CAPTURE(entry.path().string());
        const bool of_driver = std::ranges::any_of(
            entry.path(), [](const fs::path& part) { return part.string().starts_with("mesa_shader_cache"); });
        CHECK((!entry.is_regular_file() || name == "trace" || name == "err" || name.starts_with("registry.") ||
               of_driver));
    }
}

TEST_CASE("end to end: bars with a digit hidden bring a question, and a touch answers it")
{
    const auto product = some_ean_13();
    const test::TempFolder film;
    test::Station station({"--camera-source", film_of(product, film.file("film"), true)});
    test::Twin twin;
    twin.suspect(product.digits);
    REQUIRE(twin.state().screen == ui::ScreenId::LikelyProduct);
    CHECK(test::becomes_true(
        [&] {
            return std::ranges::any_of(station.trace(), [&](const auto& line) {
                return line.screen == "likely_product" && line.words.find(product.name) != std::string::npos;
            });
        },
        std::chrono::seconds(30)));
    CHECK(std::ranges::count(station.trace(), "answer", &test::TraceLine::kind) == 0); // nobody answered yet
    station.touch(twin.place_of(test::named(product.name)), std::chrono::milliseconds(40));
    const auto answer = station.answer(1);
    REQUIRE(answer);
    CHECK(answer->left == product.gtin);
    CHECK(answer->screen == "one_label");
    std::this_thread::sleep_for(std::chrono::seconds(4)); // still there: it was answered, so nothing is asked again
    CHECK(std::ranges::find_if(station.trace().rbegin(), station.trace().rend(), [](const auto& line) {
              return line.kind == "frame";
          })->screen == "one_label");
    CHECK(station.program().end() == 0);
}
