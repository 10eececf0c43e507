#include "kiosk/files/glass.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <numeric>
#include <string>
#include <vector>

namespace {

/// An EDID block of a panel of that size. Source of the places: VESA E-EDID Standard Release A2, 3.4, 3.6.2 and 3.10.2.
std::vector<std::uint8_t> edid_of(int width_mm, int height_mm, int width_cm, int height_cm)
{
    std::vector<std::uint8_t> bytes(128);
    const std::vector<std::uint8_t> head{0x00, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00};
    std::ranges::copy(head, bytes.begin());
    bytes[21] = static_cast<std::uint8_t>(width_cm);
    bytes[22] = static_cast<std::uint8_t>(height_cm);
    if (width_mm > 0) {
        bytes[54] = 0x64; // a pixel clock: this is a timing
        bytes[66] = static_cast<std::uint8_t>(width_mm & 0xFF);
        bytes[67] = static_cast<std::uint8_t>(height_mm & 0xFF);
        bytes[68] = static_cast<std::uint8_t>((width_mm >> 8 << 4) | (height_mm >> 8));
    }
    const auto sum = std::accumulate(bytes.begin(), bytes.end(), 0U);
    bytes[127] = static_cast<std::uint8_t>(256 - sum % 256);
    return bytes;
}

void write(const std::filesystem::path& file, const std::vector<std::uint8_t>& bytes)
{
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
}

void plug(const std::filesystem::path& panels, const std::string& name, const std::vector<std::uint8_t>& edid,
          const std::string& status = "connected\n")
{
    write(panels / name / "edid", edid);
    std::ofstream(panels / name / "status") << status;
}

} // namespace

TEST_CASE("edid: the size of the first timing, else whole centimetres, else nothing")
{
    struct Case {
        std::string why;
        std::vector<std::uint8_t> bytes;
        std::optional<kiosk::PictureSizeMm> size;
    };
    auto torn = edid_of(344, 194, 34, 19);
    torn[60] ^= 1;
    auto short_one = edid_of(344, 194, 34, 19);
    short_one.resize(100);
    const Case cases[] = {{"a laptop's panel of 15.6 inches", edid_of(344, 194, 34, 19), {{344, 194}}},
                          {"a wide one: more than 255 mm", edid_of(598, 336, 60, 34), {{598, 336}}},
                          {"centimetres alone", edid_of(0, 0, 22, 14), {{220, 140}}},
                          {"the form of the picture in place of its size", edid_of(160, 90, 16, 9), std::nullopt},
                          {"a projector knows no size", edid_of(0, 0, 0, 0), std::nullopt},
                          {"a broken checksum", torn, std::nullopt},
                          {"cut off", short_one, std::nullopt},
                          {"nothing", {}, std::nullopt}};
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(kiosk::size_in_edid(c.bytes) == c.size);
    }
}

TEST_CASE("glass: set, else measured, else as the one panel says, whichever way it stands")
{
    const test::TempFolder folder;
    const std::filesystem::path own = folder.file("own");
    const std::filesystem::path panels = folder.file("drm");
    CHECK_FALSE(kiosk::glass_width(own, 0, false, panels));
    plug(panels, "card0-HDMI-A-1", edid_of(476, 268, 48, 27));
    plug(panels, "card0-DP-1", {}, "disconnected\n");
    CHECK(kiosk::glass_width(own, 0, false, panels) == 476.0F);
    CHECK(kiosk::glass_width(own, 0, true, panels) == 268.0F);
    CHECK(kiosk::keep_glass_width(own, 470.4F));
    CHECK(kiosk::glass_width(own, 0, false, panels) == 470.4F);
    CHECK(kiosk::glass_width(own, 216, false, panels) == 216.0F);
    plug(panels, "card0-DP-2", edid_of(344, 194, 34, 19));
    CHECK_FALSE(kiosk::panel_size(panels));
}

TEST_CASE("glass: a damaged file counts as none, and a folder that cannot be written is told")
{
    const test::TempFolder folder;
    const std::filesystem::path own = folder.file("own");
    std::filesystem::create_directories(own);
    for (const std::string text : {"", "glass_width_tenth_mm = ", "glass_width_tenth_mm = 2160", "rubbish\n",
                                   "glass_width_tenth_mm = 9\n", "glass_width_tenth_mm = 99999999999\n"}) {
        std::ofstream(own / "glass.conf") << text;
        CAPTURE(text);
        CHECK_FALSE(kiosk::kept_glass_width(own));
    }
    CHECK_FALSE(kiosk::keep_glass_width("", 216));
    std::ofstream(folder.file("file")) << "no folder";
    CHECK_FALSE(kiosk::keep_glass_width(folder.file("file"), 216));
}
