// The real program on a display of its own that nobody sees: types scans, looks at its screen, reads its trace.
#pragma once

#include "tests/support/process.h"
#include "tests/support/temp_folder.h"

#include <imgui.h>

#include <chrono>
#include <fstream>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace test {

/// An X server without a screen, on a number that was free.
class Display {
public:
    explicit Display(const std::string& size = "1280x800");
    [[nodiscard]] const std::string& name() const { return name_; }

private:
    std::string name_; ///< ":99"
    std::unique_ptr<Running> server_;
};

/// One line of the trace, see kiosk/trace.h.
struct TraceLine {
    std::string kind;
    long number = 0;
    long microseconds = 0;
    std::string screen;
    std::string left;
    std::string right;
    long notice = 0;
    std::string words;
};

/// The program `pairstand` with a display, an empty home and thus the demo catalog, unless told otherwise.
class Station {
public:
    /// Starts it and waits for its first picture. Throws std::runtime_error, with what it said, when none comes.
    explicit Station(std::vector<std::string> arguments = {}, std::map<std::string, std::string> environment = {},
                     const std::string& display = "1280x800");

    /// Types keys as fast as the X server takes them: names of keys as xdotool has them.
    void press(std::vector<std::string> keys);
    /// Presses keys as a person does: one after the other, each with the time that fingers need.
    void press_as_person(std::vector<std::string> keys);
    /// Types the digits and Enter, as a scanner does.
    void scan(const std::string& digits);

    /// Puts a finger there, holds it for so long, and lifts it; there, or where it has slid to.
    void touch(ImVec2 at, std::chrono::milliseconds held, std::optional<ImVec2> lifted = std::nullopt);

    /// Touches one place after another, faster than a frame is drawn.
    void touch_at_once(const std::vector<ImVec2>& places);

    /// All lines of the trace so far.
    [[nodiscard]] const std::vector<TraceLine>& trace();
    /// The nth answer (from 1) and the first frame that shows it; nothing when it does not come.
    [[nodiscard]] std::optional<TraceLine> answer(long nth);
    [[nodiscard]] std::optional<TraceLine> frame_of_notice(long notice);

    /// Writes what the display shows into a PNG file in the station's folder; returns its path.
    [[nodiscard]] std::string screenshot(const std::string& name);

    [[nodiscard]] const Display& display() const { return display_; }
    [[nodiscard]] const TempFolder& folder() const { return folder_; }
    [[nodiscard]] Running& program() { return *program_; }
    /// What it wrote on its error output.
    [[nodiscard]] std::string said() const;

private:
    void xdotool(std::vector<std::string> words);

    TempFolder folder_; // first: everything else writes into it
    Display display_;
    std::unique_ptr<Running> program_;
    std::ifstream trace_file_;
    std::string unfinished_;
    std::vector<TraceLine> trace_;
};

/// Runs the program without any display: commands, or what it says when it finds none.
[[nodiscard]] Ended pairstand(std::vector<std::string> arguments, std::map<std::string, std::string> environment = {});

} // namespace test
