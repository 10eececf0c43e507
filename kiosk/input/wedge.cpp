#include "kiosk/input/wedge.h"

#include "kiosk/input/aim.h"
#include "kiosk/input/joined.h"
#include "kiosk/input/product_text.h"

#include <algorithm>

namespace kiosk {
namespace {

/// What stands in an unreadable text for a key that has no character.
constexpr char no_character = '\x1a';

/// The least time that can have passed since then: with a blind time a key may have been pressed long before it was
/// read.
TimePoint::duration least_time(const Key& key, TimePoint since)
{
    return key.at - key.blind - since;
}

/// Whether the characters alone show that a scanner typed them: an identifier, or a right check digit.
bool is_readable(const std::string& text)
{
    return identify(text) || holds_number(scan_of(text, {}));
}

char character_of(const Key& key, bool signs)
{
    if (signs && key.sign != 0)
        return key.sign;
    const bool ascii = key.character > 0; // beyond ASCII are keys that type nothing
    return ascii ? key.character : no_character;
}

bool is_line_end(char c)
{
    return c == '\r' || c == '\n' || c == '\t';
}

} // namespace

Wedge::Wedge(ScannerKeys around, WedgeLimits limits) : around_(std::move(around)), limits_(limits)
{
    while (!around_.suffix.empty() && is_line_end(around_.suffix.back()))
        around_.suffix.pop_back(); // every code may end with those
}

std::vector<Heard> Wedge::press(const Key& key)
{
    std::vector<Heard> out;
    if (key.kind == Key::Kind::Modifier) {
        modifier_ = key.at;
        out.emplace_back(key);
        return out;
    }
    if (swallowing_) {
        const bool same_burst = follows_scan(key);
        swallowing_ = same_burst && key.kind != Key::Kind::End;
        if (same_burst) {
            last_ = key;
            after_scan_ = key.at;
            return out;
        }
    }
    if (!held_.empty() && !belongs_to_held(key))
        decide_after_pause(out);
    const bool repeats = is_held_down(key);
    last_ = key;
    if (repeats) {
        if (!held_.empty())
            hand_on(out);
        out.emplace_back(key);
    } else {
        hold(key, out);
    }
    return out;
}

/// Takes a key to the others, and decides where it ends a scan.
void Wedge::hold(const Key& key, std::vector<Heard>& out)
{
    if (held_.empty()) {
        held_follows_scan_ = follows_scan(key);
        chord_ = key.kind == Key::Kind::Other && modifier_ && least_time(key, *modifier_) <= limits_.chord;
        if (key.kind == Key::Kind::End && held_follows_scan_) { // the second half of "carriage return, line feed"
            after_scan_ = key.at;
            return;
        }
    }
    held_.push_back(key);
    if (ends_code())
        decide(out);
    else if (held_.size() > limits_.most)
        refuse_overlong(out);
}

/// Whether the key held last ends a code, and what it is can be said now. Else what follows tells: a line end may also
/// stand in the middle of a code that is no product's.
bool Wedge::ends_code() const
{
    if (held_.back().kind == Key::Kind::Character) // a letter of the suffix may be one of the code as well
        return false;
    const Code code = this->code();
    if (!code.ended || !code.characters || code.commands)
        return false;
    return held_.back().kind == Key::Kind::End ? stalled() || scans() : readable(code).has_value();
}

/// Nobody looked for a while: what lies in the queue may be a person's, or more than one scan.
bool Wedge::stalled() const
{
    return std::ranges::any_of(held_, [this](const Key& key) { return key.blind >= limits_.pause; });
}

std::vector<Heard> Wedge::idle(TimePoint now)
{
    std::vector<Heard> out;
    if (!held_.empty() && now >= *decides_at())
        decide_after_pause(out);
    return out;
}

std::optional<TimePoint> Wedge::decides_at() const
{
    if (held_.empty())
        return std::nullopt;
    const bool types = std::ranges::find(held_, Key::Kind::Character, &Key::kind) != held_.end();
    return held_.back().at + (types ? limits_.pause : limits_.command_pause);
}

bool Wedge::belongs_to_held(const Key& key) const
{
    return key.at - key.blind <= *decides_at();
}

bool Wedge::follows_scan(const Key& key) const
{
    return after_scan_ && least_time(key, *after_scan_) <= limits_.pause;
}

/// A key that types nothing and is held down acts as long as it is. A scanner's doubled key may look like that, but it
/// comes faster, or among others.
bool Wedge::is_held_down(const Key& key) const
{
    if (!key.repeat || key.kind == Key::Kind::Character || !last_ || held_.size() > 1)
        return false;
    return last_->kind == key.kind && last_->character == key.character &&
           key.at - last_->at + last_->blind >= limits_.held_key;
}

/// The most time that can have passed from the first key held to the last.
TimePoint::duration Wedge::most_time() const
{
    return held_.back().at - held_.front().at + held_.front().blind;
}

bool Wedge::may_repeat_one_character() const
{
    const auto end = held_.end() - (held_.back().kind == Key::Kind::End ? 1 : 0);
    const auto differs = [this](const Key& key) {
        return key.kind != Key::Kind::Character || key.character != held_.front().character;
    };
    const auto presses = std::distance(held_.begin(), end);
    return presses > 1 && std::none_of(held_.begin(), end, differs) && most_time() >= limits_.held_key * (presses - 1);
}

Wedge::Code Wedge::code() const
{
    const auto is = [this](std::size_t place, char c) { return held_[place].character == c; };
    Code code{0, held_.size()};
    if (code.end > 0 && held_.back().kind == Key::Kind::End) {
        --code.end;
        code.ended = true;
    }
    const auto& [prefix, suffix] = around_;
    bool starts = !prefix.empty() && prefix.size() <= code.end;
    for (std::size_t i = 0; starts && i < prefix.size(); ++i)
        starts = is(i, prefix[i]);
    code.begin = starts ? prefix.size() : 0;
    bool ends = !suffix.empty() && suffix.size() <= code.end - code.begin;
    for (std::size_t i = 0; ends && i < suffix.size(); ++i)
        ends = is(code.end - suffix.size() + i, suffix[i]);
    code.end -= ends ? suffix.size() : 0;
    code.ended = code.ended || ends;
    code.marked = starts || ends;
    for (std::size_t i = code.begin; i < code.end; ++i)
        (held_[i].kind == Key::Kind::Character ? code.characters : code.commands) = true;
    return code;
}

/// Whether no person can have typed what is held.
bool Wedge::is_scanners(const Code& code) const
{
    const bool told = code.commands || code.ended || code.marked;
    if (held_.size() < (told ? 2 : limits_.fewest))
        return held_follows_scan_ || chord_;
    const auto steps = static_cast<Milliseconds::rep>(held_.size() - 1);
    const auto least = code.characters ? limits_.person_key * steps : limits_.person_command * steps;
    return (held_follows_scan_ && code.commands) || most_time() < std::max(least, limits_.person_command);
}

/// `signs`: what a US keyboard types with Shift; else digits are digits whatever Shift does.
std::string Wedge::text_of(const Code& code, bool signs) const
{
    std::string text;
    for (std::size_t i = code.begin; i < code.end; ++i)
        text += character_of(held_[i], signs);
    return text;
}

/// The text of a code that is a scan whatever its speed.
std::optional<std::string> Wedge::readable(const Code& code) const
{
    if (code.commands || may_repeat_one_character())
        return std::nullopt;
    for (const bool signs : {true, false})
        if (auto text = text_of(code, signs); is_readable(text))
            return text;
    return std::nullopt;
}

/// What is held as one scan, or several; nothing when a person typed it.
std::optional<std::vector<Scan>> Wedge::scans() const
{
    const Code code = this->code();
    const TimePoint when = held_.back().at;
    if (const auto text = readable(code))
        return std::vector{scan_of(*text, when)};
    std::vector<Scan> parts;
    if (stalled())
        for (const auto& part : take_apart(text_of(code, false)))
            parts.push_back(scan_of(part, when));
    if (!parts.empty())
        return parts;
    if (may_repeat_one_character() || !is_scanners(code))
        return std::nullopt;
    if (held_follows_scan_ && !code.characters) // what a scanner puts behind each code
        return parts;
    return std::vector{Scan{text_of(code, true), core::Symbology::Unknown, Scan::From::Scanner, when}};
}

/// Empties `held_`: into scans, or back to the person who typed it.
void Wedge::decide(std::vector<Heard>& out)
{
    while (!held_.empty()) {
        if (const auto decided = scans()) {
            out.insert(out.end(), decided->begin(), decided->end());
            after_scan_ = code().ended ? std::optional(held_.back().at) : std::nullopt;
            held_.clear();
        } else {
            hand_on(out);
        }
    }
}

/// What comes now is another's: the pause is over.
void Wedge::decide_after_pause(std::vector<Heard>& out)
{
    decide(out);
    after_scan_.reset();
}

/// Hands on up to the first end key: what was typed behind it may be a scan.
void Wedge::hand_on(std::vector<Heard>& out)
{
    auto end = std::ranges::find(held_, Key::Kind::End, &Key::kind);
    end += end == held_.end() ? 0 : 1;
    out.insert(out.end(), held_.begin(), end);
    held_.erase(held_.begin(), end);
    held_follows_scan_ = false;
    chord_ = false;
}

/// A row of keys that does not end: one answer, then silence until it does. A key that lies under something repeats
/// too, but slower; that is handed on, because a screen may want to show it.
void Wedge::refuse_overlong(std::vector<Heard>& out)
{
    if (may_repeat_one_character()) {
        hand_on(out);
        return;
    }
    out.emplace_back(Scan{text_of(code(), true), core::Symbology::Unknown, Scan::From::Scanner, held_.back().at});
    after_scan_ = held_.back().at;
    held_.clear();
    swallowing_ = true;
}

} // namespace kiosk
