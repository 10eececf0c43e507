// Tells what a scanner types from what a person types; both come as keys of one keyboard (a "keyboard wedge").
// Source: common practice. The limits are in WedgeLimits, each with its reason.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/scan.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace kiosk {

/// One key that went down. A held key that repeats is a key going down again: scanners that type a digit twice look
/// like that, so pass repeats on. Keys going up are of no interest: at full speed some go missing.
struct Key {
    enum class Kind {
        Character, ///< types something that may be part of a code
        End,       ///< Enter or Tab: what scanners put behind a code
        Modifier,  ///< Shift, Ctrl, ...: comes in the middle of a code without ending it
        Other,     ///< arrows, Escape, ...: only a person does that
    };
    Kind kind = Kind::Other;
    char character = 0; ///< for Character: by place on the keyboard, so right on every layout
    TimePoint at{};     ///< when the program read it
    /// How long nobody had looked before this key was read: the time since the last look at the queue, 0 while waiting
    /// for keys. The key may really have been pressed at any time from `at - blind` to `at`.
    Milliseconds blind{0};
    std::uint64_t tag = 0; ///< the caller's own, handed back unchanged
    bool operator==(const Key&) const = default;
};

/// What came out: a scan, or a key that a person pressed (to hand on to the screen as it was).
using Heard = std::variant<Scan, Key>;

/// What tells a scanner from a person.
struct WedgeLimits {
    /// A longer pause ends what was typed. Wireless scanners stutter up to 50 ms (common practice).
    Milliseconds pause{100};
    /// A person needs longer than this for each key, over some keys: 50 ms is 240 words a minute.
    Milliseconds person_key{50};
    /// A key that is held down repeats no faster than this (50 a second; keyboards come set to 25 or 30).
    Milliseconds held_key{20};
    /// Fewer characters than this are never an unreadable code: a person's fingers do fall together.
    std::size_t fewest = 6;
    /// More than this in one go is refused as one unreadable scan: no product code is that long.
    std::size_t most = 512;
};

/// Collects keys until they are a scan or a person's. Knows no screen and no clock. Feed every key that is waiting
/// before calling `idle`, or a code that came in two parts is cut.
class Wedge {
public:
    explicit Wedge(WedgeLimits limits = {}) : limits_(limits) {}

    /// Takes a key; returns what is now decided, in the order it was typed. Often nothing: digits are held until what
    /// follows them tells, at most `limits.pause` after the last of them.
    [[nodiscard]] std::vector<Heard> press(const Key& key);

    /// Decides about held keys when nothing has come for long enough.
    [[nodiscard]] std::vector<Heard> idle(TimePoint now);

    /// When `idle` will have something to decide; nothing while no key is held.
    [[nodiscard]] std::optional<TimePoint> decides_at() const;

private:
    [[nodiscard]] bool belongs_to_held(const Key& key) const;
    [[nodiscard]] bool person_could_have_typed(const Key& last) const;
    [[nodiscard]] bool may_be_held_down(const Key& last) const;
    [[nodiscard]] std::string held_text() const;
    void decide(const Key* end, std::vector<Heard>& out);
    void hand_on(const Key* end, std::vector<Heard>& out);
    void refuse_overlong(const Key& key, std::vector<Heard>& out);

    WedgeLimits limits_;
    std::vector<Key> held_;
    std::optional<TimePoint>
        after_scan_;          ///< when a scan was ended by a key: a second end key right behind it is its own
    bool swallowing_ = false; ///< inside a burst that was already answered as too long
};

} // namespace kiosk
