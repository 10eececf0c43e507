// What is read of shop frames, and at what cost: our reader, plain ZXing-cpp and zbar side by side, frame by frame.
// reader_bench [FIRST COUNT]: other frames than the 60 a level that the tests read.
// reader_bench soft: small frames, softer and softer.
#include "core/code/upc_e.h"
#include "kiosk/camera/reader.h"
#include "kiosk/camera/zxing_compat.h"
#include "tests/support/shop_shots.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <string>
#include <vector>
#include <zbar.h>

namespace {

using core::Symbology;

/// What a reader says of a frame: the digits of each product code it believes to see.
using Readings = std::vector<std::string>;

/// 01234565 and 012345000065 are one number: zbar expands what a UPC-E holds.
std::string without_zeros(const std::string& digits)
{
    const auto first = digits.find_first_not_of('0');
    return first == std::string::npos ? std::string() : digits.substr(first);
}

Readings by_zbar(const kiosk::Frame& frame)
{
    using namespace zbar;
    constexpr int density = 2;
    zbar_image_scanner_t* scanner = zbar_image_scanner_create();
    for (const auto setting : {ZBAR_CFG_X_DENSITY, ZBAR_CFG_Y_DENSITY})
        zbar_image_scanner_set_config(scanner, ZBAR_NONE, setting, density);
    zbar_image_scanner_set_config(scanner, ZBAR_UPCE, ZBAR_CFG_ENABLE, 1);
    zbar_image_t* image = zbar_image_create();
    zbar_image_set_format(image, zbar_fourcc('Y', '8', '0', '0'));
    zbar_image_set_size(image, static_cast<unsigned>(frame.width), static_cast<unsigned>(frame.height));
    zbar_image_set_data(image, frame.pixels.data(), frame.pixels.size(), nullptr);
    zbar_scan_image(scanner, image);
    Readings readings;
    for (const auto* symbol = zbar_image_first_symbol(image); symbol; symbol = zbar_symbol_next(symbol)) {
        const auto kind = zbar_symbol_get_type(symbol);
        if (kind == ZBAR_EAN13 || kind == ZBAR_UPCA || kind == ZBAR_EAN8 || kind == ZBAR_UPCE)
            readings.emplace_back(zbar_symbol_get_data(symbol));
    }
    zbar_image_destroy(image);
    zbar_image_scanner_destroy(scanner);
    return readings;
}

Readings only(const std::optional<kiosk::Reading>& reading)
{
    return reading ? Readings{reading->text} : Readings{};
}

struct Reader {
    const char* name;
    std::function<Readings(const kiosk::Frame&)> read;
    std::array<int, test::levels> right{};
    int wrong = 0;
    std::vector<double> ms{};
};

double cpu_ms()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

void try_reader(Reader& reader, const test::Shot& shot, int level)
{
    const double began = cpu_ms();
    const Readings readings = reader.read(shot.frame);
    reader.ms.push_back(cpu_ms() - began);
    std::vector<std::string> right{without_zeros(shot.truth.text)};
    if (shot.truth.symbology == Symbology::UpcE)
        right.push_back(without_zeros(*core::expand_upc_e(shot.truth.text)));
    const auto is_right = [&](const std::string& one) {
        return std::ranges::find(right, without_zeros(one)) != right.end();
    };
    if (std::ranges::any_of(readings, is_right))
        ++reader.right[static_cast<std::size_t>(level - 1)];
    else if (!readings.empty())
        ++reader.wrong;
}

void print(Reader& reader)
{
    std::ranges::sort(reader.ms);
    const auto& r = reader.right;
    std::printf("%-36s %4d %4d %4d %4d %6d %6d %9.2f %9.2f\n", reader.name, r[0], r[1], r[2], r[3],
                r[0] + r[1] + r[2] + r[3], reader.wrong, reader.ms[reader.ms.size() / 2],
                reader.ms[reader.ms.size() * 95 / 100]);
}

std::vector<Reader> all_readers()
{
    static constexpr kiosk::ZxingSettings defaults{.cases_too = false, .agreeing_lines = 2};
    return {{"ours", [](const kiosk::Frame& frame) { return only(kiosk::read(frame.view())); }},
            {"ZXing-cpp, its defaults",
             [](const kiosk::Frame& frame) { return only(kiosk::zxing_read(frame.view(), defaults)); }},
            {"zbar, density 2", by_zbar}};
}

/// A frame of the first level, straight before a lens that is out of focus by that much.
test::Shot soft_shot(double module, double blur, std::uint64_t number)
{
    auto setting = test::setting_of(1, number, {640, 480});
    setting.scene.module = module;
    setting.scene.off_x = 0;
    setting.scene.off_y = 0;
    setting.lens.motion = 0;
    setting.lens.disc = 0;
    setting.lens.softness = blur * module;
    return test::shot_of(setting);
}

/// Modules in pixels, and softness (standard deviation) in modules: readers mind how both are to each other.
void read_soft_frames()
{
    constexpr std::uint64_t first = 9000;
    constexpr std::uint64_t count = 20;
    std::printf("%6s %6s  read of %d (wrong)\n", "pixels", "blur", static_cast<int>(count));
    for (const double module : {1.0, 1.3, 1.6, 2.0, 2.5})
        for (const double blur : {0.3, 0.5, 0.7, 0.9}) {
            std::printf("%6.1f %6.1f", module, blur);
            for (Reader& reader : all_readers()) {
                for (std::uint64_t number = first; number < first + count; ++number)
                    try_reader(reader, soft_shot(module, blur, number), 1);
                std::printf("  %s: %d (%d)", reader.name, reader.right[0], reader.wrong);
            }
            std::printf("\n");
        }
}

} // namespace

int main(int count, char** arguments)
{
    if (count == 2 && std::string(arguments[1]) == "soft") {
        read_soft_frames();
        return 0;
    }
    const std::uint64_t first = count > 2 ? std::strtoull(arguments[1], nullptr, 10) : test::first_frame;
    const std::uint64_t frames = count > 2 ? std::strtoull(arguments[2], nullptr, 10) : test::frames_a_level;
    auto readers = all_readers();
    std::printf("%-36s %4s %4s %4s %4s %6s %6s %9s %9s\n", "read, of each level", "1", "2", "3", "4", "all", "wrong",
                "ms median", "ms 95 %");
    for (int level = 1; level <= test::levels; ++level)
        for (std::uint64_t number = first; number < first + frames; ++number) {
            const test::Shot shot = test::shot_of(test::setting_of(level, number));
            for (Reader& reader : readers)
                try_reader(reader, shot, level);
        }
    for (Reader& reader : readers)
        print(reader);
}
