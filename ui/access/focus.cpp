#include "ui/access/focus.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui {
namespace {

ImVec2 middle(const Stop& stop)
{
    return {(stop.low.x + stop.high.x) / 2, (stop.low.y + stop.high.y) / 2};
}

/// How far a place lies from another in a direction; nothing when it does not lie there. What is off to the side counts
/// three times as far, so that a column is followed before a diagonal.
std::optional<float> distance(const Stop& from, const Stop& to, Move move)
{
    const ImVec2 a = middle(from);
    const ImVec2 b = middle(to);
    const bool across = move == Move::Left || move == Move::Right;
    const float sign = move == Move::Left || move == Move::Up ? -1.0F : 1.0F;
    const float along = sign * (across ? b.x - a.x : b.y - a.y);
    // Behind the edge of where we are, not only behind its middle: beside is not below.
    const float half = across ? (from.high.x - from.low.x) / 2 : (from.high.y - from.low.y) / 2;
    if (along < half)
        return std::nullopt;
    const float low = across ? std::max(from.low.y, to.low.y) : std::max(from.low.x, to.low.x);
    const float high = across ? std::min(from.high.y, to.high.y) : std::min(from.high.x, to.high.x);
    const float aside = std::max(0.0F, low - high);
    if (across && aside > 0) // left and right stay in the line
        return std::nullopt;
    const float off = across ? std::abs(b.y - a.y) : std::abs(b.x - a.x);
    return along + 3 * aside + 0.1F * off;
}

} // namespace

bool Focus::stops_here(std::size_t index, StopsAt at) const
{
    return at == StopsAt::Everything || stops_[index].touchable;
}

std::optional<std::size_t> Focus::first(StopsAt at) const
{
    for (std::size_t i = 0; i < stops_.size(); ++i)
        if (stops_here(i, at))
            return i;
    return std::nullopt;
}

std::optional<std::size_t> Focus::towards(Move move, StopsAt at) const
{
    std::optional<std::size_t> best;
    float least = std::numeric_limits<float>::max();
    for (std::size_t i = 0; i < stops_.size(); ++i) {
        if (i == *at_ || !stops_here(i, at))
            continue;
        const auto far = distance(stops_[*at_], stops_[i], move);
        if (far && *far < least) {
            least = *far;
            best = i;
        }
    }
    return best;
}

void Focus::move(Move move, StopsAt at)
{
    const bool appears = !shown_;
    shown_ = true;
    if (stops_.empty())
        return;
    if (!at_ || move == Move::First) {
        at_ = first(at);
        return;
    }
    if (appears && stops_here(*at_, at))
        return;
    if (!first(at)) // nothing here can be stopped at
        return;
    const std::size_t count = stops_.size();
    if (move == Move::Next || move == Move::Previous || move == Move::Last) {
        const bool back = move != Move::Next;
        std::size_t index = move == Move::Last ? 0 : *at_;
        do {
            index = (index + (back ? count - 1 : 1)) % count;
        } while (!stops_here(index, at));
        at_ = index;
    } else if (const auto found = towards(move, at))
        at_ = found;
}

void Focus::press()
{
    if (const Stop* stop = at(); stop && shown_)
        press(*stop);
}

void Focus::press(const Stop& stop)
{
    const auto index = static_cast<std::size_t>(&stop - stops_.data());
    if (!stop.touchable || index >= names_.size())
        return;
    pressed_ = names_[index];
    pressed_note_ = stop.note;
}

bool Focus::takes_press(std::size_t note, std::string_view words)
{
    // The screen may be another since the key went down: what stands there now must be what was meant.
    if (!pressed_ || note != pressed_note_ || words != pressed_->words)
        return false;
    pressed_.reset();
    return true;
}

const Stop* Focus::at() const
{
    return at_ ? &stops_[*at_] : nullptr;
}

std::optional<std::size_t> Focus::nearest(const Notes& notes) const
{
    const auto fresh = stops_of(notes);
    const Name& wanted = names_[*at_];
    const auto old = static_cast<std::ptrdiff_t>(*at_);
    std::optional<std::size_t> best;
    std::ptrdiff_t least = std::numeric_limits<std::ptrdiff_t>::max();
    for (std::size_t i = 0; i < fresh.size(); ++i) {
        const Note& note = notes[fresh[i].note];
        const bool same_words = note.words == wanted.words && note.id == wanted.id;
        const bool same_thing = wanted.id && note.id == wanted.id; // the same button with other words on it
        if (!same_words && !same_thing)
            continue;
        const auto far = std::abs(static_cast<std::ptrdiff_t>(i) - old) * 2 + (same_words ? 0 : 1);
        if (far < least) {
            least = far;
            best = i;
        }
    }
    if (!best && !fresh.empty())
        best = std::min(*at_, fresh.size() - 1);
    return best;
}

void Focus::settle(const Notes& notes, int screen)
{
    const bool same_screen = screen == screen_;
    screen_ = screen;
    at_ = same_screen && at_ ? nearest(notes) : std::nullopt;
    stops_ = stops_of(notes);
    names_.clear();
    for (const Stop& stop : stops_)
        names_.push_back({notes[stop.note].id, notes[stop.note].words});
    pressed_.reset(); // what was pressed and is no longer there stays undone
    if (at_ && *at_ >= stops_.size())
        at_.reset();
    if (!at_)
        at_ = first(StopsAt::Touchable);
}

} // namespace ui
