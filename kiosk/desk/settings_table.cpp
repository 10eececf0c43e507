// Every setting of station.conf: its key, its default, what it takes and where that goes.
#include "kiosk/desk/settings.h"
#include "kiosk/desk/settings_camera.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <system_error>
#include <utility>

namespace kiosk {
namespace {

using core::Goods;

/// A word into one of several values.
template<class Value, std::size_t N>
bool pick(std::string_view word, const std::pair<std::string_view, Value> (&words)[N], Value& into)
{
    const auto* const found = std::ranges::find(words, word, &std::pair<std::string_view, Value>::first);
    if (found == std::ranges::end(words))
        return false;
    into = found->second;
    return true;
}

bool take_aims(std::string_view value, Settings& settings)
{
    static constexpr std::pair<std::string_view, core::AimList> words[] = {{"class", core::AimList::Class},
                                                                           {"label_2016", core::AimList::Label2016},
                                                                           {"label_older", core::AimList::LabelOlder}};
    return pick(value, words, settings.choices.aims);
}

bool take_rounding(std::string_view value, Settings& settings)
{
    static constexpr std::pair<std::string_view, core::PriceRounding> words[] = {
        {"tenth_cent", core::PriceRounding::TenthCent}, {"whole_cent", core::PriceRounding::WholeCent}};
    return pick(value, words, settings.prices.rounding);
}

/// "total_carbohydrate, protein": keys of nutrients with commas between; nothing at all is an answer, too.
bool take_first(std::string_view value, Settings& settings)
{
    std::vector<core::Nutrient> first;
    while (!value.empty()) {
        const auto comma = std::min(value.find(','), value.size());
        auto key = value.substr(0, comma);
        key.remove_prefix(std::min(key.find_first_not_of(" \t"), key.size()));
        key = key.substr(0, key.find_last_not_of(" \t") + 1);
        const auto nutrient = core::nutrient_by_key(key);
        if (!nutrient || *nutrient == core::Nutrient::Calories || std::ranges::count(first, *nutrient) > 0)
            return false;
        first.push_back(*nutrient);
        const bool more = comma < value.size();
        value.remove_prefix(comma + (more ? 1 : 0));
        if (more && value.empty()) // a comma with nothing behind it
            return false;
    }
    if (first.size() > core::most_first)
        return false;
    settings.choices.first = std::move(first);
    return true;
}

template<Goods goods, core::PriceUnit core::PriceChoices::*choice>
bool take_unit(std::string_view value, Settings& settings)
{
    const auto unit = core::allowed_unit(goods, value);
    if (unit)
        settings.prices.*choice = *unit;
    return unit.has_value();
}

bool take_rules(std::string_view value, Settings& settings)
{
    auto rules = core::rule_sets_named(value);
    if (rules)
        settings.rules = *std::move(rules);
    return rules.has_value();
}

/// A whole number from `least` to `most`, without a sign.
template<int least, int most, int Settings::*choice>
bool take_number(std::string_view value, Settings& settings)
{
    int number = 0;
    const auto [stop, error] = std::from_chars(value.data(), value.data() + value.size(), number);
    if (error != std::errc{} || stop != value.data() + value.size() || number < least || number > most)
        return false;
    settings.*choice = number;
    return true;
}

bool take_screen_width(std::string_view value, Settings& settings)
{
    if (value != "auto")
        return take_number<100, 3000, &Settings::screen_width_mm>(value, settings);
    settings.screen_width_mm = 0;
    return true;
}

bool take_idle(std::string_view value, Settings& settings)
{
    if (value != "never")
        return take_number<60, 3600, &Settings::idle_seconds>(value, settings);
    settings.idle_seconds = 0;
    return true;
}

template<std::string ScannerKeys::*choice>
bool take_keys(std::string_view value, Settings& settings)
{
    auto keys = keys_named(value);
    if (keys)
        settings.scanner.*choice = *std::move(keys);
    return keys.has_value();
}

bool take_serial(std::string_view value, Settings& settings)
{
    if (value != "auto" && value != "off" && !value.starts_with("/dev/"))
        return false;
    settings.scanner_serial = value;
    return true;
}

/// "oz, lb, 100_g or kg".
std::string units_of(Goods goods)
{
    std::vector<std::string_view> keys;
    for (const auto& unit : core::allowed_units())
        if (unit.goods == goods)
            keys.push_back(unit.key);
    std::string words;
    for (std::size_t i = 0; i < keys.size(); ++i)
        words.append(i == 0 ? "" : i + 1 == keys.size() ? " or " : ", ").append(keys[i]);
    return words;
}

std::vector<SettingRow> rows()
{
    using P = core::PriceChoices;
    using S = Settings;
    const std::string keys_wanted = "up to eight keys with blanks between, such as STX or F8, and letters and signs in "
                                    "double quotes, such as \"~A\"";
    return {
        {"aims", "class", "class, label_2016 or label_older", take_aims},
        {"first_nutrients", "",
         "up to four nutrients with commas between, such as total_carbohydrate, protein; none twice, and not calories",
         take_first},
        {"rules", "", "sets of published rules with commas between, none twice: " + core::rule_set_keys(), take_rules},
        {"unit_price_rounding", "tenth_cent", "tenth_cent or whole_cent", take_rounding},
        {"unit_price_unit_weight", "oz", units_of(Goods::Weight), take_unit<Goods::Weight, &P::weight>},
        {"unit_price_unit_volume", "fl_oz", units_of(Goods::LiquidVolume), take_unit<Goods::LiquidVolume, &P::liquid>},
        {"unit_price_unit_dry", "dry_pt", units_of(Goods::DryMeasure), take_unit<Goods::DryMeasure, &P::dry>},
        {"unit_price_unit_count", "each", units_of(Goods::Pieces), take_unit<Goods::Pieces, &P::count>},
        {"viewing_distance_mm", "500", "millimetres from 250 to 3000", take_number<250, 3000, &S::viewing_distance_mm>},
        {"group_distance_mm", "2500", "millimetres from 1000 to 3000", take_number<1000, 3000, &S::group_distance_mm>},
        {"screen_width_mm", "auto", "auto, or millimetres from 100 to 3000", take_screen_width},
        {"scanner_prefix", "", keys_wanted, take_keys<&ScannerKeys::prefix>},
        {"scanner_suffix", "", keys_wanted, take_keys<&ScannerKeys::suffix>},
        {"scanner_serial", "auto", "auto, off, or a port such as /dev/ttyACM0", take_serial},
        {"idle_seconds", "300", "never, or seconds from 60 to 3600", take_idle},
        {"switch_pace_ms", "1500", "milliseconds from 500 to 10000", take_number<500, 10000, &S::switch_pace_ms>},
        {"camera", "auto", "auto, off or /dev/NAME", take_camera},
        {"camera_rotate", "0", "0, 90, 180 or 270", take_camera_rotate},
        {"camera_mirror", "picture", "no, picture or camera", take_camera_mirror},
        {"power_line_hz", "auto", "auto, 50 or 60", take_power_line},
    };
}

} // namespace

std::span<const SettingRow> settings_table()
{
    static const auto table = rows();
    return table;
}

} // namespace kiosk
