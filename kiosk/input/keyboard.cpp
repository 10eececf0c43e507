#include "kiosk/input/keyboard.h"

#include "kiosk/input/key_digits.h"

#include <algorithm>
#include <utility>

namespace kiosk {

std::vector<Scan> Keyboard::take(const SDL_Event& event, TimePoint at, Milliseconds blind)
{
    if (event.type == SDL_KEYUP) {
        key_up(event);
        return {};
    }
    Key key = key_from(event.key.keysym.scancode, event.key.keysym.mod);
    key.at = at;
    key.blind = blind;
    key.tag = ++keys_;
    key.repeat = event.key.repeat != 0;
    held_.push_back({key.tag, event, std::nullopt});
    return sort_out(wedge_.press(key));
}

std::vector<Scan> Keyboard::idle(TimePoint now)
{
    return sort_out(wedge_.idle(now));
}

bool Keyboard::frame_drawn()
{
    const auto ups = std::exchange(waiting_up_, {});
    for (const SDL_Event& up : ups) {
        down_.at(static_cast<std::size_t>(up.key.keysym.scancode)) = false;
        hand_on_(up);
    }
    return !ups.empty();
}

/// A scan swallows every key that was held for it; a person's key is handed on.
std::vector<Scan> Keyboard::sort_out(const std::vector<Heard>& heard)
{
    std::vector<Scan> scans;
    for (const Heard& one : heard) {
        if (const auto* scan = std::get_if<Scan>(&one)) {
            scans.push_back(*scan);
            continue;
        }
        const auto is_it = [tag = std::get<Key>(one).tag](const Held& held) { return held.tag == tag; };
        const auto held = std::ranges::find_if(held_, is_it);
        if (held == held_.end())
            continue;
        down_.at(static_cast<std::size_t>(held->down.key.keysym.scancode)) = true;
        hand_on_(held->down);
        if (held->up)
            waiting_up_.push_back(*held->up);
        held_.erase(held);
    }
    if (!wedge_.decides_at()) // nothing is undecided: what is left became scans
        held_.clear();
    return scans;
}

void Keyboard::key_up(const SDL_Event& event)
{
    const SDL_Scancode code = event.key.keysym.scancode;
    const auto undecided = std::ranges::find_if(held_.rbegin(), held_.rend(), [code](const Held& held) {
        return held.down.key.keysym.scancode == code && !held.up;
    });
    if (undecided != held_.rend())
        undecided->up = event;
    else if (down_.at(static_cast<std::size_t>(code)))
        waiting_up_.push_back(event);
}

} // namespace kiosk
