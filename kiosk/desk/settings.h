// What the leader chose for this station, from station.conf: a plain "key = value" file. Keys: settings_table.cpp.
#pragma once

#include "core/compare/choices.h"
#include "core/error.h"
#include "core/rules/price_unit.h"
#include "core/rules/rule_sets.h"
#include "kiosk/camera/camera_choices.h"
#include "kiosk/input/key_names.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// All choices. Without a file each has its default.
struct Settings {
    core::Choices choices;               ///< aims and what comes first
    core::PriceChoices prices;           ///< units and rounding of the unit price
    std::vector<core::RuleSet> rules;    ///< published rules to hold labels against; none unless switched on
    int viewing_distance_mm = 500;       ///< from which one person reads the screen
    int group_distance_mm = 2500;        ///< from which a group reads the view for groups
    int screen_width_mm = 0;             ///< of the glass; 0: as measured, or as the panel says of itself
    ScannerKeys scanner;                 ///< what the scanner puts before and behind each code
    std::string scanner_serial = "auto"; ///< "auto", "off" or the path of a serial port
    int idle_seconds = 300;    ///< without a touch, before the station asks whether somebody is there; 0: never
    int switch_pace_ms = 1500; ///< how long each line stays lit for one switch
    CameraChoices camera;      ///< which one, and how its picture is put right
    bool operator==(const Settings&) const = default;
};

/// One setting: a new one is a new row of settings_table.cpp, a line in config/station.conf and one in
/// docs/settings.md.
struct SettingRow {
    std::string_view key;
    std::string_view by_default; ///< its value where the file has none
    std::string expected;        ///< what it takes, in words
    /// Takes the value over. False: it is none, and the settings are as they were.
    bool (*take)(std::string_view value, Settings& settings);
};

/// All settings, in the order of config/station.conf.
[[nodiscard]] std::span<const SettingRow> settings_table();

/// Settings, and every line that could not be taken. The key of such a line keeps its default.
struct SettingsRead {
    Settings settings;
    std::vector<core::Error> faults; ///< in the order of the lines, with file, line, key, found and expected
};

/// A longer file is no file of settings.
inline constexpr std::size_t largest_settings = std::size_t{64} * 1024;
/// No more faults than these are kept.
inline constexpr std::size_t most_setting_faults = 100;

/// What is read of a file of that many bytes, where it is too large.
[[nodiscard]] SettingsRead too_large_settings(const std::string& source, std::uintmax_t bytes);

/// Reads the text of a station.conf; `source` is its name in errors. Faults: BadValue (a line without "=", an unknown
/// key, a value that the key does not take), DoubledValue (a key that stands twice: its first line counts), TooLarge.
[[nodiscard]] SettingsRead read_settings(std::string_view text, const std::string& source);

} // namespace kiosk
