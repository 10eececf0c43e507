// Tells what a scanner types from what a person types; both come as keys of one keyboard (a "keyboard wedge").
// Source: common practice. The limits are in WedgeLimits, each with its reason.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/key_names.h"
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
        Other,     ///< arrows, Escape, Ctrl and a letter, ...: a person's, or of a code that is no product's
    };
    Kind kind = Kind::Other;
    char character = 0; ///< by place on the keyboard, so right on every layout; for keys that type nothing: key_names.h
    TimePoint at{};     ///< when the program read it
    /// How long nobody had looked before this key was read: the time since the last look at the queue, 0 while waiting
    /// for keys. The key may really have been pressed at any time from `at - blind` to `at`.
    Milliseconds blind{0};
    std::uint64_t tag = 0; ///< the caller's own, handed back unchanged
    /// For a digit of the digit row that came with Shift: the sign that a US keyboard types so, such as "(". Scanners
    /// that imitate a French keyboard type digits with Shift; which is meant, only the whole code tells.
    char sign = 0;
    bool repeat = false; ///< the keyboard says that it is held down; a scanner's doubled key looks like that, too
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
    /// The same for keys that type nothing, and for a letter and Enter: no fingers roll over those as they do over
    /// letters.
    Milliseconds person_command{80};
    /// So long such a key is held back when it comes alone, until it is clear that no other follows at once.
    Milliseconds command_pause{50};
    /// Who presses Ctrl and a letter needs longer than this from one to the other; a scanner sends both at once.
    Milliseconds chord{20};
    /// A key that is held down repeats no faster than this (50 a second; keyboards come set to 25 or 30).
    Milliseconds held_key{20};
    /// Fewer characters than this, with nothing else among or behind them, are never an unreadable code: a person's
    /// fingers do fall together.
    std::size_t fewest = 6;
    /// More than this in one go is refused as one unreadable scan: no product code is that long.
    std::size_t most = 512;
};

/// Collects keys until they are a scan or a person's. Knows no screen and no clock. Feed every key that is waiting
/// before calling `idle`, or a code that came in two parts is cut.
///
/// What a scanner types never comes out as keys: a code may hold control characters, which scanners type as Escape,
/// arrows or Ctrl and a letter, and none of them may work the screen. Such a code is one unreadable scan. What cannot
/// be told from a person is a single key alone, and fewer than six characters with nothing behind them.
class Wedge {
public:
    explicit Wedge(ScannerKeys around = {}, WedgeLimits limits = {});

    /// Takes a key; returns what is now decided, in the order it was typed. Often nothing: keys are held until what
    /// follows them tells, at most `limits.pause` after the last of them.
    [[nodiscard]] std::vector<Heard> press(const Key& key);

    /// Decides about held keys when nothing has come for long enough.
    [[nodiscard]] std::vector<Heard> idle(TimePoint now);

    /// When `idle` will have something to decide; nothing while no key is held.
    [[nodiscard]] std::optional<TimePoint> decides_at() const;

private:
    /// The keys of a code, without those that the scanner puts around it.
    struct Code {
        std::size_t begin = 0, end = 0; ///< places in held_
        bool ended = false;             ///< an end key, or the suffix, stands behind it
        bool marked = false;            ///< the prefix or the suffix is there
        bool commands = false;          ///< keys among it that type nothing
        bool characters = false;        ///< keys among it that type something
    };

    [[nodiscard]] Code code() const;
    [[nodiscard]] bool belongs_to_held(const Key& key) const;
    [[nodiscard]] bool follows_scan(const Key& key) const;
    [[nodiscard]] bool is_held_down(const Key& key) const;
    [[nodiscard]] TimePoint::duration most_time() const;
    [[nodiscard]] bool may_repeat_one_character() const;
    [[nodiscard]] bool ends_code() const;
    [[nodiscard]] bool stalled() const;
    [[nodiscard]] bool is_scanners(const Code& code) const;
    [[nodiscard]] std::string text_of(const Code& code, bool signs) const;
    [[nodiscard]] std::optional<std::string> readable(const Code& code) const;
    [[nodiscard]] std::optional<std::vector<Scan>> scans() const;
    void hold(const Key& key, std::vector<Heard>& out);
    void decide(std::vector<Heard>& out);
    void decide_after_pause(std::vector<Heard>& out);
    void hand_on(std::vector<Heard>& out);
    void refuse_overlong(std::vector<Heard>& out);

    ScannerKeys around_;
    WedgeLimits limits_;
    std::vector<Key> held_;
    std::optional<Key> last_;             ///< the last key that was no modifier
    std::optional<TimePoint> modifier_;   ///< when the last modifier came
    std::optional<TimePoint> after_scan_; ///< the last key of a scan that ended with one: more may come behind it
    bool held_follows_scan_ = false;      ///< what is held came right behind such a scan
    bool chord_ = false;                  ///< the first of what is held came together with a modifier
    bool swallowing_ = false;             ///< inside a burst that was already answered as too long
};

} // namespace kiosk
