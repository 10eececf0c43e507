#include "kiosk/desk/settings_camera.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace kiosk {
namespace {

template<class Value, std::size_t N>
bool pick(std::string_view word, const std::pair<std::string_view, Value> (&words)[N], Value& into)
{
    const auto* const found = std::ranges::find(words, word, &std::pair<std::string_view, Value>::first);
    if (found == std::end(words))
        return false;
    into = found->second;
    return true;
}

} // namespace

bool take_camera(std::string_view value, Settings& settings)
{
    if (!says_which_camera(value))
        return false;
    settings.camera.which = value;
    return true;
}

bool take_camera_rotate(std::string_view value, Settings& settings)
{
    static constexpr std::pair<std::string_view, int> words[] = {{"0", 0}, {"90", 90}, {"180", 180}, {"270", 270}};
    return pick(value, words, settings.camera.rotate);
}

bool take_camera_mirror(std::string_view value, Settings& settings)
{
    static constexpr std::pair<std::string_view, Mirror> words[] = {
        {"no", Mirror::No}, {"picture", Mirror::Picture}, {"camera", Mirror::Camera}};
    return pick(value, words, settings.camera.mirror);
}

bool take_power_line(std::string_view value, Settings& settings)
{
    static constexpr std::pair<std::string_view, int> words[] = {{"auto", 0}, {"50", 50}, {"60", 60}};
    return pick(value, words, settings.camera.power_line_hz);
}

} // namespace kiosk
