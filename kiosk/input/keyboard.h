// Parts the keys of one keyboard: a scanner's become scans, a person's go on to the screen as they were.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/scan.h"
#include "kiosk/input/wedge.h"

#include <SDL_events.h>

#include <array>
#include <cstdint>
#include <deque>
#include <functional>
#include <optional>
#include <vector>

namespace kiosk {

/// Sits between SDL's key events and the screen. Every key going down that it takes is either part of a scan or handed
/// on, once, in order; a key going up is handed on only behind its own going down, and a frame later where both came
/// at once, because a screen that is told of both between two frames sees neither.
class Keyboard {
public:
    explicit Keyboard(std::function<void(const SDL_Event&)> hand_on, ScannerKeys around = {})
        : hand_on_(std::move(hand_on)), wedge_(std::move(around))
    {
    }

    /// Takes a key event. `blind` as in Key. Returns the scans that are complete now.
    [[nodiscard]] std::vector<Scan> take(const SDL_Event& event, TimePoint at, Milliseconds blind);
    /// Decides about held keys when nothing has come for long enough. Ask when every waiting key was taken.
    [[nodiscard]] std::vector<Scan> idle(TimePoint now);
    /// When to ask `idle`; nothing while no key is held.
    [[nodiscard]] std::optional<TimePoint> decides_at() const { return wedge_.decides_at(); }

    /// A frame was drawn: hands on the keys going up that waited for it. True when there were some: draw again.
    bool frame_drawn();

private:
    std::vector<Scan> sort_out(const std::vector<Heard>& heard);
    void key_up(const SDL_Event& event);

    struct Held {
        std::uint64_t tag;
        SDL_Event down;
        std::optional<SDL_Event> up; ///< came while it was not decided yet
    };

    std::function<void(const SDL_Event&)> hand_on_;
    Wedge wedge_;
    std::deque<Held> held_;                      ///< in the order typed
    std::array<bool, SDL_NUM_SCANCODES> down_{}; ///< what the screen believes to be down
    std::vector<SDL_Event> waiting_up_;
    std::uint64_t keys_ = 0;
};

} // namespace kiosk
