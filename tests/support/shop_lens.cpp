#include "tests/support/shop_lens.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <numbers>
#include <random>
#include <stdexcept>

// jpeglib.h needs size_t and FILE before it.
#include <jpeglib.h>

namespace test {
namespace {

/// About a bell curve with standard deviation 1, from four even throws out of one number of the engine.
class Grain {
public:
    explicit Grain(std::uint64_t seed) : engine_(seed) {}
    float next()
    {
        const std::uint64_t bits = engine_();
        std::int64_t sum = 0;
        for (int k = 0; k < 4; ++k)
            sum += static_cast<std::int64_t>((bits >> (16 * k)) & 0xFFFF);
        constexpr float deviation = 37837.2F; // of such a sum: 65536 * sqrt(4 / 12)
        return (static_cast<float>(sum) - 131070.0F) / deviation;
    }

private:
    std::mt19937_64 engine_;
};

int clamped(int at, int size)
{
    return std::clamp(at, 0, size - 1);
}

/// Mixes each pixel with its neighbours in its row (step 1) or column (step `width`).
void bell(Light& light, double deviation)
{
    if (deviation <= 0)
        return;
    const int reach = static_cast<int>(std::ceil(3 * deviation));
    std::vector<float> weights;
    float sum = 0;
    for (int k = -reach; k <= reach; ++k)
        sum += weights.emplace_back(static_cast<float>(std::exp(-k * k / (2 * deviation * deviation))));
    Light before = light;
    const auto weight = [&](int k) { return weights[static_cast<std::size_t>(k + reach)] / sum; };
    for (int y = 0; y < light.height; ++y)
        for (int x = 0; x < light.width; ++x) {
            float mixed = 0;
            for (int k = -reach; k <= reach; ++k)
                mixed += weight(k) * before.at(clamped(x + k, light.width), y);
            light.at(x, y) = mixed;
        }
    std::fill(before.grey.begin(), before.grey.end(), 0.0F);
    for (int y = 0; y < light.height; ++y)
        for (int k = -reach; k <= reach; ++k) {
            const float part = weight(k);
            const float* from = &light.at(0, clamped(y + k, light.height));
            float* to = &before.at(0, y);
            for (int x = 0; x < light.width; ++x)
                to[x] += part * from[x];
        }
    light = std::move(before);
}

/// Spreads every point into a disc: sums of spans of rows, from sums that run along each row.
void disc(Light& light, double radius)
{
    if (radius <= 0.3)
        return;
    const Light before = light;
    const int reach = static_cast<int>(std::ceil(radius));
    std::vector<float> area(light.grey.size(), 0.0F);
    double total = 0;
    for (int dy = -reach; dy <= reach; ++dy) {
        const double inside = radius * radius - dy * dy;
        if (inside <= 0)
            continue;
        const double half = std::sqrt(inside);
        const int whole = static_cast<int>(std::floor(half));
        const auto rest = static_cast<float>(half - whole);
        total += 2 * half + 1;
        for (int y = 0; y < light.height; ++y) {
            const float* from =
                before.grey.data() + static_cast<std::ptrdiff_t>(clamped(y + dy, light.height)) * light.width;
            float* to = area.data() + static_cast<std::ptrdiff_t>(y) * light.width;
            for (int x = 0; x < light.width; ++x) {
                float sum =
                    rest * (from[clamped(x - whole - 1, light.width)] + from[clamped(x + whole + 1, light.width)]);
                for (int k = -whole; k <= whole; ++k)
                    sum += from[clamped(x + k, light.width)];
                to[x] += sum;
            }
        }
    }
    for (float& grey : area)
        grey /= static_cast<float>(total);
    light.grey = std::move(area);
}

float between(const Light& light, double x, double y)
{
    const double left = std::floor(x);
    const double top = std::floor(y);
    const auto right_part = static_cast<float>(x - left);
    const auto low_part = static_cast<float>(y - top);
    const auto at = [&light](double column, double row) {
        return light.grey[static_cast<std::size_t>(clamped(static_cast<int>(row), light.height)) *
                              static_cast<std::size_t>(light.width) +
                          static_cast<std::size_t>(clamped(static_cast<int>(column), light.width))];
    };
    const float upper = at(left, top) * (1 - right_part) + at(left + 1, top) * right_part;
    const float lower = at(left, top + 1) * (1 - right_part) + at(left + 1, top + 1) * right_part;
    return upper * (1 - low_part) + lower * low_part;
}

void move(Light& light, double length, double turn)
{
    if (length <= 0.3)
        return;
    const Light before = light;
    const int points = static_cast<int>(std::ceil(length * 2)) + 1;
    const double step_x = std::cos(turn * std::numbers::pi / 180) * length / (points - 1);
    const double step_y = std::sin(turn * std::numbers::pi / 180) * length / (points - 1);
    std::fill(light.grey.begin(), light.grey.end(), 0.0F);
    for (int k = 0; k < points; ++k) {
        const double away = k - (points - 1) / 2.0;
        for (int y = 0; y < light.height; ++y)
            for (int x = 0; x < light.width; ++x)
                light.at(x, y) += between(before, x + away * step_x, y + away * step_y) / static_cast<float>(points);
    }
}

float stored(float light, double gamma)
{
    const float inside = std::clamp(light, 0.0F, 1.0F);
    return gamma == 1 ? inside : static_cast<float>(std::pow(inside, 1 / gamma));
}

/// Exposure, lamps, grain and the driver's curve, in the same light: grey levels, not yet whole.
void expose(Light& light, const Lens& lens)
{
    Grain grain(lens.seed);
    for (int y = 0; y < light.height; ++y) {
        const double swing =
            1 + lens.banding * std::sin(2 * std::numbers::pi * (y / lens.banding_rows + lens.banding_begins));
        for (int x = 0; x < light.width; ++x) {
            auto falls = static_cast<float>(light.at(x, y) * lens.exposure * swing);
            const double shot = lens.shot_grain * std::sqrt(std::max(0.0F, falls));
            falls += static_cast<float>(std::hypot(lens.grain, shot) / 255) * grain.next();
            light.at(x, y) = 255 * stored(falls, lens.gamma);
        }
    }
}

void sharpen(Light& light, double strength)
{
    if (strength <= 0)
        return;
    Light soft = light;
    bell(soft, 1);
    for (std::size_t i = 0; i < light.grey.size(); ++i)
        light.grey[i] += static_cast<float>(strength) * (light.grey[i] - soft.grey[i]);
}

[[noreturn]] void refuse(j_common_ptr)
{
    throw std::runtime_error("the JPEG library refused a frame");
}

using Packed = std::unique_ptr<unsigned char, void (*)(void*)>;

Packed packed(kiosk::Frame& frame, int quality, unsigned long& size)
{
    jpeg_error_mgr errors{};
    jpeg_compress_struct writer{};
    writer.err = jpeg_std_error(&errors);
    errors.error_exit = refuse;
    jpeg_create_compress(&writer);
    unsigned char* bytes = nullptr;
    jpeg_mem_dest(&writer, &bytes, &size);
    writer.image_width = static_cast<JDIMENSION>(frame.width);
    writer.image_height = static_cast<JDIMENSION>(frame.height);
    writer.input_components = 1;
    writer.in_color_space = JCS_GRAYSCALE;
    jpeg_set_defaults(&writer);
    jpeg_set_quality(&writer, quality, TRUE);
    jpeg_start_compress(&writer, TRUE);
    for (int y = 0; y < frame.height; ++y) {
        JSAMPROW row = frame.pixels.data() + static_cast<std::ptrdiff_t>(y) * frame.width;
        jpeg_write_scanlines(&writer, &row, 1);
    }
    jpeg_finish_compress(&writer);
    jpeg_destroy_compress(&writer);
    return {bytes, std::free};
}

void pack_and_unpack(kiosk::Frame& frame, int quality)
{
    unsigned long size = 0;
    const Packed bytes = packed(frame, quality, size);
    jpeg_error_mgr errors{};
    jpeg_decompress_struct reader{};
    reader.err = jpeg_std_error(&errors);
    errors.error_exit = refuse;
    jpeg_create_decompress(&reader);
    jpeg_mem_src(&reader, bytes.get(), size);
    jpeg_read_header(&reader, TRUE);
    jpeg_start_decompress(&reader);
    while (reader.output_scanline < reader.output_height) {
        JSAMPROW row = frame.pixels.data() + static_cast<std::ptrdiff_t>(reader.output_scanline) * frame.width;
        jpeg_read_scanlines(&reader, &row, 1);
    }
    jpeg_finish_decompress(&reader);
    jpeg_destroy_decompress(&reader);
}

} // namespace

kiosk::Frame picture_of(Light light, const Lens& lens)
{
    disc(light, lens.disc);
    bell(light, lens.softness);
    move(light, lens.motion, lens.motion_turn);
    expose(light, lens);
    sharpen(light, lens.sharpening);
    kiosk::Frame frame;
    frame.width = light.width;
    frame.height = light.height;
    frame.pixels.reserve(light.grey.size());
    for (const float grey : light.grey)
        frame.pixels.push_back(static_cast<std::uint8_t>(std::clamp(std::lround(grey), 0L, 255L)));
    if (lens.jpeg > 0)
        pack_and_unpack(frame, lens.jpeg);
    return frame;
}

} // namespace test
