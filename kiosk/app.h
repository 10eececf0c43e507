// Opens the station: puts its parts together, and catches a broken one once, with one sentence.
#pragma once

#include <iosfwd>
#include <string>

namespace kiosk {

/// What the command line says about the station.
struct StationArguments {
    std::string catalog;  ///< empty: see catalog_place
    std::string settings; ///< empty: see settings_place
    std::string language = "en";
    std::string theme = "paper";
    int text_percent = 100;
    int width = 1280;
    int height = 800;
    bool fullscreen = false;
    bool silent = false;
    std::string camera;        ///< "auto", "off" or a device file; empty: as the settings say
    std::string camera_source; ///< the beginning of a GStreamer pipeline in place of a camera; empty: a camera
    std::string trace;         ///< a file for kiosk/trace.h; empty: none
    bool desk = false;         ///< whether touches reach the leader desk
    std::string files;         ///< a folder that the desk looks into beside the sticks; empty: none
};

/// Runs the station until it is closed. Returns the exit status: 0, or 2 with one sentence on `err`.
[[nodiscard]] int open_station(const StationArguments& arguments, std::ostream& err);

} // namespace kiosk
