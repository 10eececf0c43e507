// Which place of the screen the keys are at. Moved between frames, shown as a ring, pressed in the frame that follows.
#pragma once

#include "ui/access/stops.h"
#include "ui/words/text.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ui {

/// Where a key leads. Next and Previous follow reading order and go round; the others follow the eye.
enum class Move { Next, Previous, Up, Down, Left, Right, First, Last };

/// What a move stops at.
enum class StopsAt {
    Touchable, ///< what can be pressed: for people who see the screen
    Everything ///< texts too: for people who hear it
};

/// The focus of the one screen that is shown. It belongs to a place, not to a position: after a new frame it is where
/// the same words are, else as near as can be; on another screen it begins anew.
class Focus {
public:
    /// Whether it is to be seen. It begins hidden, and is hidden again when a finger touches the glass.
    [[nodiscard]] bool shown() const { return shown_; }
    void hide() { shown_ = false; }

    /// One step. A focus that was hidden is shown first: at the place where it was, or at the first.
    void move(Move move, StopsAt at);
    /// The place that has the focus is pressed in the next frame that is drawn. Nothing where none is shown, or where
    /// it is a text.
    void press();
    /// Presses a place of the last frame whether or not it has the focus: for a switch.
    void press(const Stop& stop);

    /// For what can be touched, while it is drawn: whether this note is pressed now. True once.
    [[nodiscard]] bool takes_press(std::size_t note, std::string_view words);
    /// Takes over what a frame has shown. `screen` tells one screen and page from another.
    void settle(const Notes& notes, int screen);

    /// The places of the last frame.
    [[nodiscard]] std::span<const Stop> stops() const { return stops_; }
    /// The one that has the focus, also while it is hidden; nothing on a screen without any.
    [[nodiscard]] const Stop* at() const;

private:
    struct Name {
        std::optional<TextId> id;
        std::string words;
        bool operator==(const Name&) const = default;
    };
    [[nodiscard]] std::optional<std::size_t> nearest(const Notes& notes) const;
    [[nodiscard]] std::optional<std::size_t> towards(Move move, StopsAt at) const;
    [[nodiscard]] std::optional<std::size_t> first(StopsAt at) const;
    [[nodiscard]] bool stops_here(std::size_t index, StopsAt at) const;

    std::vector<Stop> stops_;
    std::vector<Name> names_; ///< of the stops
    std::optional<std::size_t> at_;
    std::optional<Name> pressed_;
    std::size_t pressed_note_ = 0;
    int screen_ = -1;
    bool shown_ = false;
};

} // namespace ui
