#include "kiosk/input/wedge.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/input/aim.h"
#include "kiosk/input/joined.h"

#include <algorithm>

namespace kiosk {
namespace {

Scan scan_of(std::string text, core::Symbology symbology, TimePoint when)
{
    return {std::move(text), symbology, Scan::From::Scanner, when};
}

/// Whether the characters alone show that a scanner typed them: an identifier, or a right check digit.
bool is_readable(const std::string& text)
{
    return identify(text) || core::Gtin::parse(text) || core::expand_upc_e(text);
}

} // namespace

std::vector<Heard> Wedge::press(const Key& key)
{
    std::vector<Heard> out;
    if (key.kind == Key::Kind::Modifier) {
        out.emplace_back(key);
        return out;
    }
    if (swallowing_) {
        const bool same_burst = key.at - key.blind - *after_scan_ <= limits_.pause && key.kind != Key::Kind::Other;
        swallowing_ = same_burst && key.kind == Key::Kind::Character;
        if (same_burst) {
            after_scan_ = key.at;
            return out;
        }
    }
    if (!held_.empty() && (key.kind == Key::Kind::Other || !belongs_to_held(key)))
        decide(nullptr, out);
    if (key.kind == Key::Kind::Character) {
        held_.push_back(key);
        if (held_.size() > limits_.most)
            refuse_overlong(key, out);
    } else if (key.kind == Key::Kind::End && !held_.empty()) {
        decide(&key, out);
    } else if (key.kind == Key::Kind::End && after_scan_ && key.at - *after_scan_ <= limits_.pause) {
        after_scan_.reset(); // the second half of "carriage return, line feed"
    } else {
        out.emplace_back(key);
    }
    return out;
}

std::vector<Heard> Wedge::idle(TimePoint now)
{
    std::vector<Heard> out;
    if (!held_.empty() && now >= *decides_at())
        decide(nullptr, out);
    return out;
}

std::optional<TimePoint> Wedge::decides_at() const
{
    if (held_.empty())
        return std::nullopt;
    return held_.back().at + limits_.pause;
}

/// The least time that can have passed since the key before: with a blind time it may have been pressed long before it
/// was read.
bool Wedge::belongs_to_held(const Key& key) const
{
    return key.at - key.blind - held_.back().at <= limits_.pause;
}

bool Wedge::person_could_have_typed(const Key& last) const
{
    const auto most_time = last.at - held_.front().at + held_.front().blind;
    return most_time >= limits_.person_key * (held_.size() - 1);
}

bool Wedge::may_be_held_down(const Key& last) const
{
    const auto differs = [this](const Key& key) { return key.character != held_.front().character; };
    if (std::ranges::any_of(held_, differs))
        return false;
    const auto most_time = last.at - held_.front().at + held_.front().blind;
    return most_time >= limits_.held_key * (held_.size() - 1);
}

std::string Wedge::held_text() const
{
    std::string text;
    for (const Key& key : held_)
        text += key.character;
    return text;
}

/// Empties `held_`: into one scan, into several, or back to the person who typed it.
void Wedge::decide(const Key* end, std::vector<Heard>& out)
{
    const std::string text = held_text();
    const Key last = held_.back();
    const TimePoint when = end ? end->at : last.at;
    const bool held_down = may_be_held_down(last);
    const bool readable = is_readable(text) && !held_down;
    // Nobody looked for a while: what lies in the queue may be more than one scan.
    const auto stalled = [this](const Key& key) { return key.blind >= limits_.pause; };
    const bool may_be_joined = !readable && std::ranges::any_of(held_, stalled);
    const auto parts = may_be_joined ? take_apart(text) : std::vector<std::string>{};
    if (readable) {
        auto identified = identify(text).value_or(Identified{text, core::Symbology::Unknown});
        out.emplace_back(scan_of(std::move(identified.text), identified.symbology, when));
    } else if (!parts.empty()) {
        for (const auto& part : parts)
            out.emplace_back(scan_of(part, core::Symbology::Unknown, when));
    } else if (held_.size() >= limits_.fewest && !held_down && !person_could_have_typed(last)) {
        out.emplace_back(scan_of(text, core::Symbology::Unknown, when));
    } else {
        hand_on(end, out);
        return;
    }
    held_.clear();
    after_scan_ = end ? std::optional(when) : std::nullopt;
}

void Wedge::hand_on(const Key* end, std::vector<Heard>& out)
{
    out.insert(out.end(), held_.begin(), held_.end());
    if (end)
        out.emplace_back(*end);
    held_.clear();
}

/// A row of keys that does not end: one answer, then silence until it does. A key that lies under something repeats
/// too, but slower; that is handed on, because a screen may want to show it.
void Wedge::refuse_overlong(const Key& key, std::vector<Heard>& out)
{
    if (may_be_held_down(key)) {
        hand_on(nullptr, out);
        return;
    }
    out.emplace_back(scan_of(held_text(), core::Symbology::Unknown, key.at));
    held_.clear();
    after_scan_ = key.at;
    swallowing_ = true;
}

} // namespace kiosk
