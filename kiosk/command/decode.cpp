#include "kiosk/command/decode.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/camera/picture_file.h"
#include "kiosk/camera/reader.h"

#include <algorithm>
#include <ostream>
#include <string_view>

namespace kiosk {
namespace {

using core::Symbology;

/// The name as text without tabs, line ends and the like, so that a line of ours stays a line; UTF-8 stays as it is.
std::string in_one_line(std::string_view name)
{
    constexpr std::string_view hex = "0123456789abcdef";
    std::string out;
    for (const char c : name) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '\t')
            out += "\\t";
        else if (c == '\n')
            out += "\\n";
        else if (c == '\r')
            out += "\\r";
        else if (c == '\\')
            out += "\\\\";
        else if (byte < 0x20 || byte == 0x7F)
            out.append("\\x").append(1, hex[byte >> 4]).append(1, hex[byte & 0xF]);
        else
            out += c;
    }
    return out;
}

std::string_view name_of(Symbology symbology)
{
    switch (symbology) {
    case Symbology::Ean13:
        return "EAN-13";
    case Symbology::UpcA:
        return "UPC-A";
    case Symbology::UpcE:
        return "UPC-E";
    case Symbology::Ean8:
        return "EAN-8";
    case Symbology::Itf14:
        return "ITF-14";
    case Symbology::Unknown:
    case Symbology::Other:
        break;
    }
    return "-";
}

core::Result<core::Gtin> gtin_of(const Reading& reading)
{
    if (reading.symbology == Symbology::UpcE)
        return core::expand_upc_e(reading.text).and_then([](const std::string& twelve) {
            return core::Gtin::parse(twelve);
        });
    return core::Gtin::parse(reading.text);
}

/// What to do about a file that could not be opened.
std::string_view advice_for(core::Error::Kind kind)
{
    if (kind == core::Error::Kind::CannotRead)
        return "check the name and that you may read it";
    if (kind == core::Error::Kind::TooLarge)
        return "make it smaller, at most 64 MiB and 64 million pixels";
    return "save it again as PNG or JPEG";
}

} // namespace

int decode(std::span<const std::string> files, std::ostream& out, std::ostream& err)
{
    int status = 0;
    for (const std::string& file : files) {
        const std::string name = in_one_line(file);
        const auto picture = load_picture(file);
        const auto reading = picture ? read(picture->view()) : std::nullopt;
        const auto gtin = reading ? gtin_of(*reading) : core::refuse(core::Error::Kind::Empty, "unread");
        if (gtin)
            out << name << '\t' << name_of(reading->symbology) << '\t' << gtin->digits() << '\n';
        else
            out << name << "\t-\t-\n";
        if (!picture)
            err << "pairstand decode: " << name << " cannot be opened (" << in_one_line(picture.error().detail)
                << "): " << advice_for(picture.error().kind) << ".\n";
        status = std::max(status, !picture ? 2 : gtin ? 0 : 1);
    }
    return status;
}

} // namespace kiosk
