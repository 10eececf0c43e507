// The glass: window, graphics and letters. The only file pair that knows SDL's video, OpenGL and ImGui's backends.
#pragma once

#include "kiosk/clock.h"
#include "ui/access/access.h"
#include "ui/actions.h"
#include "ui/look/look.h"
#include "ui/notes.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <SDL_events.h>

#include <memory>
#include <optional>
#include <stdexcept>
#include <string>

namespace kiosk {

/// There is nothing to show a window on. What it says is a whole sentence.
class NoDisplay : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// How the window begins.
struct WindowOptions {
    int width = 1280;
    int height = 800;
    bool fullscreen = false;
    ui::FontFiles fonts; ///< must outlive the window
};

/// The station's one window. For the thread that made it, but for `wake`.
class Window {
public:
    /// Throws NoDisplay, or std::runtime_error when the display cannot draw.
    explicit Window(const WindowOptions& options);
    ~Window();
    Window(const Window&) = delete;
    Window& operator=(const Window&) = delete;

    /// Waits for the next event until that time (nothing: for as long as it takes); nothing when none came.
    [[nodiscard]] std::optional<SDL_Event> wait(std::optional<TimePoint> until);
    /// The next event that is there by now.
    [[nodiscard]] std::optional<SDL_Event> poll();
    /// Ends `wait` of the station's window, from any thread; harmless when there is none.
    static void wake();

    /// Lets ImGui see an event: fingers, mouse, and keys that a person pressed. A frame must be drawn between two
    /// events of a mouse button: ImGui sees how it stands once a frame.
    void hand_on(const SDL_Event& event);
    /// Draws a frame and shows it; returns what it asked for. `notes` gets what it said.
    /// `access` tells where keys, switch and voice are.
    [[nodiscard]] ui::Actions draw(const ui::State& state, const ui::Language& language, ui::Notes& notes,
                                   ui::Access& access);

    /// The width in pixels of the whole screen that the window is on; 0 when nobody knows.
    [[nodiscard]] int screen_width() const;
    [[nodiscard]] int screen_height() const;
    /// The width of the window in pixels.
    [[nodiscard]] int width() const;

    /// Fills the screen, or gives the window the place back that it had.
    void toggle_fullscreen();

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace kiosk
