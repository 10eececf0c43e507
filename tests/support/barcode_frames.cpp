#include "tests/support/barcode_frames.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "tests/support/throws.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <memory>
#include <numbers>
#include <random>
#include <stdexcept>
#include <zint.h>

namespace test {
namespace {

using core::Symbology;

int zint_kind(Symbology symbology)
{
    switch (symbology) {
    case Symbology::Ean13:
    case Symbology::Ean8:
        return BARCODE_EANX;
    case Symbology::UpcA:
        return BARCODE_UPCA;
    case Symbology::UpcE:
        return BARCODE_UPCE;
    case Symbology::Itf14:
        return BARCODE_ITF14;
    case Symbology::Unknown:
    case Symbology::Other:
        break;
    }
    throw std::invalid_argument("no bars for this symbology");
}

/// Noise that is the same with every standard library: mt19937_64 is fixed by the standard, distributions are not.
class Noise {
public:
    explicit Noise(std::uint64_t seed) : engine_(seed) {}
    /// About a bell curve with standard deviation 1: twelve even throws, added up.
    double next()
    {
        double sum = -6;
        for (int i = 0; i < 3; ++i)
            for (std::uint64_t bits = engine_(), k = 0; k < 4; ++k, bits >>= 16)
                sum += static_cast<double>(bits & 0xFFFF) / 65536.0;
        return sum;
    }

private:
    std::mt19937_64 engine_;
};

/// A picture in the making, in grey levels that need not be whole.
struct Canvas {
    int width;
    int height;
    std::vector<float> grey;
    float& at(int x, int y)
    {
        return grey[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
    }
};

/// A place on the label, in modules from its middle.
struct Place {
    double x;
    double y;
};

/// From points of the frame to places on the label.
class View {
public:
    explicit View(const Picture& picture)
        : middle_x_(picture.width / 2.0), middle_y_(picture.height / 2.0),
          across_(std::cos(picture.degrees * std::numbers::pi / 180) / picture.module),
          down_(std::sin(picture.degrees * std::numbers::pi / 180) / picture.module), slant_(picture.slant)
    {
    }
    Place on_label(double x, double y) const
    {
        const double dx = x - middle_x_;
        const double dy = y - middle_y_;
        const Place place{dx * across_ + dy * down_, dy * across_ - dx * down_};
        // Seen from the side: what is farther right is smaller. `slant` over the 120 modules that a code is wide.
        const double farther = 1 + slant_ * place.x / 120;
        return {place.x * farther, place.y * farther};
    }

private:
    double middle_x_;
    double middle_y_;
    double across_;
    double down_;
    double slant_;
};

double grey_at(const Picture& picture, const std::vector<bool>& modules, Place place)
{
    constexpr double margin = 12; // light margin; GS1 asks for 11 modules left of an EAN-13
    const double half_width = static_cast<double>(modules.size()) / 2;
    const double half_height = picture.bar_height / 2;
    if (std::abs(place.x) > half_width + margin || std::abs(place.y) > half_height + margin)
        return picture.around;
    if (std::abs(place.x) >= half_width || std::abs(place.y) >= half_height)
        return picture.paper;
    const auto index = static_cast<std::size_t>(place.x + half_width);
    return modules[std::min(index, modules.size() - 1)] ? picture.ink : picture.paper;
}

Canvas label_on_canvas(const Picture& picture, const std::vector<bool>& modules)
{
    constexpr int parts = 3; // each pixel gathers the light of 3 x 3 points
    const View view(picture);
    Canvas canvas{picture.width, picture.height, {}};
    canvas.grey.resize(static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height));
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x) {
            double sum = 0;
            for (int i = 0; i < parts * parts; ++i)
                sum += grey_at(picture, modules,
                               view.on_label(x + (i % parts + 0.5) / parts, y + (i / parts + 0.5) / parts));
            canvas.at(x, y) = static_cast<float>(sum / (parts * parts));
        }
    return canvas;
}

/// Mixes each pixel with its neighbours along one direction.
void spread(Canvas& canvas, const std::vector<float>& weights, int step_x, int step_y)
{
    const int reach = static_cast<int>(weights.size() / 2);
    Canvas before = canvas;
    for (int y = 0; y < canvas.height; ++y)
        for (int x = 0; x < canvas.width; ++x) {
            float sum = 0;
            for (int k = -reach; k <= reach; ++k)
                sum += weights[static_cast<std::size_t>(k + reach)] *
                       before.at(std::clamp(x + k * step_x, 0, canvas.width - 1),
                                 std::clamp(y + k * step_y, 0, canvas.height - 1));
            canvas.at(x, y) = sum;
        }
}

std::vector<float> normalised(std::vector<float> weights)
{
    float sum = 0;
    for (const float w : weights)
        sum += w;
    for (float& w : weights)
        w /= sum;
    return weights;
}

void take_out_of_focus(Canvas& canvas, double blur)
{
    if (blur <= 0)
        return;
    std::vector<float> bell;
    const int reach = static_cast<int>(std::ceil(3 * blur));
    for (int k = -reach; k <= reach; ++k)
        bell.push_back(static_cast<float>(std::exp(-k * k / (2 * blur * blur))));
    bell = normalised(bell);
    spread(canvas, bell, 1, 0);
    spread(canvas, bell, 0, 1);
}

void move(Canvas& canvas, double smear)
{
    if (smear <= 0)
        return;
    std::vector<float> box;
    const int reach = static_cast<int>(std::ceil(smear / 2));
    for (int k = -reach; k <= reach; ++k)
        box.push_back(static_cast<float>(std::clamp(smear / 2 - std::abs(k) + 0.5, 0.0, 1.0)));
    spread(canvas, normalised(box), 1, 0);
}

kiosk::Frame develop(Canvas& canvas, const Picture& picture)
{
    Noise noise(picture.seed);
    kiosk::Frame frame;
    frame.width = canvas.width;
    frame.height = canvas.height;
    frame.pixels.reserve(canvas.grey.size());
    for (int y = 0; y < canvas.height; ++y)
        for (int x = 0; x < canvas.width; ++x) {
            double grey = static_cast<double>(canvas.at(x, y)) * (1 - picture.shade * x / canvas.width);
            if (picture.noise > 0)
                grey += picture.noise * noise.next();
            frame.pixels.push_back(static_cast<std::uint8_t>(std::clamp(std::lround(grey), 0L, 255L)));
        }
    return frame;
}

using Symbol = std::unique_ptr<zint_symbol, void (*)(zint_symbol*)>;

Symbol encoded(int kind, const std::string& text)
{
    Symbol symbol(ZBarcode_Create(), ZBarcode_Delete);
    symbol->symbology = kind;
    if (ZBarcode_Encode(symbol.get(), reinterpret_cast<const unsigned char*>(text.c_str()),
                        static_cast<int>(text.size())) >= ZINT_ERROR)
        throw std::invalid_argument(symbol->errtxt);
    return symbol;
}

std::vector<bool> row_of(const zint_symbol& symbol, int row)
{
    std::vector<bool> modules;
    for (int i = 0; i < symbol.width; ++i)
        modules.push_back(((symbol.encoded_data[row][i / 8] >> (i % 8)) & 1) != 0);
    return modules;
}

} // namespace

std::vector<bool> modules_of(Symbology symbology, const std::string& digits)
{
    const std::string body = digits.substr(0, digits.size() - 1); // zint puts the check digit on, and so proves ours
    const Symbol symbol = encoded(zint_kind(symbology), body);
    if (reinterpret_cast<const char*>(symbol->text) != digits)
        throw std::invalid_argument("zint prints other digits than " + digits);
    return row_of(*symbol, symbol->rows - 1);
}

std::vector<std::vector<bool>> rows_of(int zint_kind, const std::string& text)
{
    const Symbol symbol = encoded(zint_kind, text);
    std::vector<std::vector<bool>> rows;
    for (int row = 0; row < symbol->rows; ++row)
        rows.push_back(row_of(*symbol, row));
    return rows;
}

kiosk::Frame draw(const Picture& picture)
{
    Canvas canvas = label_on_canvas(picture, modules_of(picture.symbology, picture.digits));
    take_out_of_focus(canvas, picture.blur);
    move(canvas, picture.smear);
    return develop(canvas, picture);
}

kiosk::Frame draw_empty(const Picture& picture)
{
    const auto pixels = static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
    Canvas canvas{picture.width, picture.height, std::vector<float>(pixels, static_cast<float>(picture.around))};
    return develop(canvas, picture);
}

void write_pgm(const kiosk::Frame& frame, const std::string& path)
{
    std::ofstream file(path, std::ios::binary);
    file << "P5\n" << frame.width << ' ' << frame.height << "\n255\n";
    file.write(reinterpret_cast<const char*>(frame.pixels.data()), static_cast<std::streamsize>(frame.pixels.size()));
}

void write_raw(const kiosk::Frame& frame, const std::string& path)
{
    std::ofstream file(path, std::ios::binary);
    const std::string padding(static_cast<std::size_t>(-frame.width & 3), '\0');
    for (int y = 0; y < frame.height; ++y) {
        const auto* row = frame.pixels.data() + static_cast<std::ptrdiff_t>(y) * frame.width;
        file.write(reinterpret_cast<const char*>(row), frame.width);
        file << padding;
    }
}

std::string some_digits(Symbology symbology, std::uint64_t seed)
{
    Throws throws(seed);
    std::string body;
    switch (symbology) {
    case Symbology::UpcA:
        body = "0" + throws.digits(10);
        break;
    case Symbology::Ean8:
        body = "952" + throws.digits(4);
        break;
    case Symbology::Itf14:
        body = "1952" + throws.digits(9);
        break;
    case Symbology::UpcE:
        for (std::string six = throws.digits(6);; six = throws.digits(6))
            if (core::is_printable_upc_e(six))
                for (char check = '0'; check <= '9'; ++check)
                    if (core::expand_upc_e("0" + six + check))
                        return "0" + six + check;
    case Symbology::Ean13:
    case Symbology::Unknown:
    case Symbology::Other:
        body = "952" + throws.digits(9);
        break;
    }
    return body + core::check_digit(body);
}

} // namespace test
