#include "kiosk/files/glass.h"

#include "catalog/file/safe_write.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace kiosk {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view key = "glass_width_tenth_mm = ";
constexpr int least_tenths = 500;
constexpr int most_tenths = 30'000;

fs::path file_in(const fs::path& own_data)
{
    return own_data / "glass.conf";
}

std::string bytes_of(const fs::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

std::optional<float> kept_glass_width(const fs::path& own_data)
{
    const std::string text = bytes_of(file_in(own_data));
    if (!text.starts_with(key))
        return std::nullopt;
    int tenths = 0;
    const char* const begin = text.data() + key.size();
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(begin, end, tenths);
    if (error != std::errc{} || stop == end || *stop != '\n' || tenths < least_tenths || tenths > most_tenths)
        return std::nullopt;
    return static_cast<float>(tenths) / 10;
}

bool keep_glass_width(const fs::path& own_data, float width_mm)
{
    std::error_code error;
    fs::create_directories(own_data, error);
    if (own_data.empty() || error)
        return false;
    auto writing = catalog::SafeWrite::begin(file_in(own_data));
    if (!writing)
        return false;
    {
        std::ofstream out(writing->aside(), std::ios::binary);
        out << key << std::lround(width_mm * 10) << '\n';
        if (!out.flush())
            return false;
    }
    return writing->commit().has_value();
}

std::optional<PictureSizeMm> panel_size(const fs::path& panels)
{
    std::optional<PictureSizeMm> found;
    std::error_code error;
    for (const auto& panel : fs::directory_iterator(panels, error)) {
        if (!bytes_of(panel.path() / "status").starts_with("connected"))
            continue;
        const std::string text = bytes_of(panel.path() / "edid");
        const std::vector<std::uint8_t> bytes(text.begin(), text.end());
        const auto size = size_in_edid(bytes);
        if (!size || found) // of several nobody knows which one the window is on
            return std::nullopt;
        found = size;
    }
    return found;
}

std::optional<float> glass_width(const fs::path& own_data, int set_mm, bool upright, const fs::path& panels)
{
    if (set_mm > 0)
        return static_cast<float>(set_mm);
    if (const auto kept = kept_glass_width(own_data))
        return kept;
    const auto panel = panel_size(panels);
    if (!panel)
        return std::nullopt;
    const auto [low, high] = std::minmax(panel->width, panel->height);
    return static_cast<float>(upright ? low : high);
}

} // namespace kiosk
