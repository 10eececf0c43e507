#include "ui/parts/voice_strip.h"

#include "ui/widgets/button.h"

#include <algorithm>
#include <vector>

namespace ui {
namespace {

struct Key {
    TextId id;
    AskAccess action;
};

std::vector<Key> keys_of(const VoiceState& voice)
{
    const bool only = voice.mode == VoiceMode::Only;
    std::vector<Key> keys;
    keys.push_back({voice.paused ? TextId::voice_go_on : TextId::voice_pause, PauseVoice{}});
    keys.push_back({TextId::voice_again, SayAgain{}});
    keys.push_back({TextId::voice_slower, ChangeRate{-1}});
    keys.push_back({TextId::voice_faster, ChangeRate{1}});
    keys.push_back({TextId::voice_quieter, ChangeVolume{-1}});
    keys.push_back({TextId::voice_louder, ChangeVolume{1}});
    if (only)
        keys.push_back({TextId::voice_only_off, ToggleVoiceOnly{}});
    else
        keys.push_back({TextId::voice_stop, StopVoice{}});
    return keys;
}

float key_width(const Ui& ui, TextId id, float width)
{
    return std::min(width, std::max(ui.look.sizes.target,
                                    text_width(ui, ui.language.text(id), Style::Bar) + 2.5F * ui.look.sizes.unit));
}

float key_height(const Ui& ui)
{
    return std::max(ui.look.sizes.target, line_height(ui, Style::Bar) + ui.look.sizes.unit);
}

/// Where each key stands in a strip of that width, from its top left.
std::vector<ImVec2> places_of(const Ui& ui, const std::vector<Key>& keys, float width)
{
    const float gap = ui.look.sizes.unit;
    std::vector<ImVec2> places;
    ImVec2 at{0, 0};
    for (const Key& key : keys) {
        const float wide = key_width(ui, key.id, width);
        if (at.x > 0 && at.x + wide > width)
            at = {0, at.y + key_height(ui) + gap};
        places.push_back(at);
        at.x += wide + gap;
    }
    return places;
}

} // namespace

float voice_strip_height(const Ui& ui, const State& state, float width)
{
    if (state.voice.mode == VoiceMode::Off)
        return 0;
    return places_of(ui, keys_of(state.voice), width).back().y + key_height(ui);
}

void voice_strip(const Ui& ui, const State& state, const Area& area, Actions& asked)
{
    if (state.voice.mode == VoiceMode::Off)
        return;
    const auto keys = keys_of(state.voice);
    const auto places = places_of(ui, keys, area.width());
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const ImVec2 low{area.low.x + places[i].x, area.low.y + places[i].y};
        const Area place{low, {low.x + key_width(ui, keys[i].id, area.width()), low.y + key_height(ui)}};
        if (button(ui, keys[i].id, place, {Style::Bar, false, false, Align::Centre, true}))
            asked.push_back(keys[i].action);
    }
}

} // namespace ui
