#include "kiosk/files/font_bytes.h"

#include <stdexcept>

namespace kiosk {
namespace {

/// Source: the file lists of fonts-noto-core and fonts-dejavu-core in Debian 12 and 13.
const std::filesystem::path debian_fonts = "/usr/share/fonts/truetype";

std::string read_font(const Environment& environment, const char* shelf, const char* file, const char* package)
{
    const auto given = environment("PAIRSTAND_FONTS");
    const auto path = given ? std::filesystem::path(*given) / file : debian_fonts / shelf / file;
    if (!std::filesystem::exists(path))
        throw std::runtime_error("the font " + path.string() + " is missing; it comes with the package " + package);
    return read_file(path);
}

std::span<const unsigned char> bytes_of(const std::string& text)
{
    return {reinterpret_cast<const unsigned char*>(text.data()), text.size()};
}

} // namespace

ui::FontFiles FontBytes::files() const
{
    return {bytes_of(regular), bytes_of(bold), bytes_of(signs)};
}

FontBytes read_fonts(const Environment& environment)
{
    return {read_font(environment, "noto", "NotoSans-Regular.ttf", "fonts-noto-core"),
            read_font(environment, "noto", "NotoSans-Bold.ttf", "fonts-noto-core"),
            read_font(environment, "dejavu", "DejaVuSans.ttf", "fonts-dejavu-core")};
}

} // namespace kiosk
