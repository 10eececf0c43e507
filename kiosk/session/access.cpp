// Seeing, hearing and reaching: sizes, colours, voice, the measured glass, and what happens when nobody is there.
#include "kiosk/session/session.h"
#include "ui/screens/shown.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace kiosk {

using ui::Notice;
using ui::ScreenId;
using ui::TextId;
using ui::VoiceMode;

namespace {

/// ISO/IEC 7810, ID-1.
constexpr float card_width_mm = 85.60F;
/// Panels from large televisions (1 px/mm) to small tablets (16 px/mm): a card of another size is a slip.
constexpr int least_card_px = 80;
constexpr int most_card_px = 1400;

int next_rate(int rate, int by)
{
    const auto* const first = std::begin(ui::voice_rates);
    const auto at = std::find(first, std::end(ui::voice_rates), rate) - first;
    const auto last = static_cast<std::ptrdiff_t>(std::size(ui::voice_rates)) - 1;
    return ui::voice_rates[std::clamp<std::ptrdiff_t>(at + by, 0, last)];
}

} // namespace

void Session::begin_with(const Defaults& defaults)
{
    defaults_ = defaults;
    state_.theme = defaults.theme;
    set_text_percent(defaults.text_percent);
    set_language(defaults.language);
}

void Session::glass_is(float px_per_mm, float width_px)
{
    constexpr float usual_part = 0.4F; // of the width of a window: a card on a panel of 10 inches
    state_.px_per_mm = px_per_mm;
    state_.distance_mm = settings_.viewing_distance_mm;
    state_.group_distance_mm = settings_.group_distance_mm;
    const float card = px_per_mm > 0 ? px_per_mm * card_width_mm : width_px * usual_part;
    state_.card_px = std::clamp(static_cast<int>(std::lround(card)), least_card_px, most_card_px);
}

void Session::may_measure(std::function<bool(float)> keep)
{
    keep_measure_ = std::move(keep);
    state_.may_measure = true;
}

void Session::asks_after(std::chrono::seconds patience)
{
    state_.idle_seconds = std::max(0, static_cast<int>(patience.count()));
}

void Session::voice_is(bool there)
{
    state_.voice.there = there;
    if (!there)
        stop_voice();
}

void Session::voice_ended()
{
    if (state_.voice.mode == VoiceMode::Reading)
        stop_voice();
}

void Session::stop_voice()
{
    state_.voice.mode = VoiceMode::Off;
    state_.voice.paused = false;
}

bool Session::in_use() const
{
    const bool chosen = language().code() != defaults_.language || state_.text_percent != defaults_.text_percent ||
                        state_.theme != defaults_.theme;
    return state_.sides[0] || state_.sides[1] || before_ || chosen || state_.voice.mode != VoiceMode::Off ||
           state_.voice.volume != ui::usual_volume || state_.voice.rate_percent != ui::usual_rate ||
           state_.screen != ScreenId::Welcome;
}

bool Session::occupied() const
{
    const bool listens = state_.voice.mode == VoiceMode::Reading && !state_.voice.paused;
    return listens || (desk_ && desk_->busy());
}

void Session::ask_whether_there(int seconds_left)
{
    state_.seconds_left = seconds_left;
    if (state_.screen == ScreenId::StillThere)
        return;
    const bool was_likely = state_.screen == ScreenId::LikelyProduct;
    put_away_likely();
    if (was_likely && !in_use()) { // nothing else stood there
        state_.notice.words.clear();
        refresh();
        return;
    }
    go(ScreenId::StillThere);
    say(Notice::Tone::Found, ""); // whoever looks elsewhere hears it
    refresh();                    // no draft is asked in
}

void Session::forget()
{
    perform(ui::StartOver{});
    before_.reset();
    state_.notice.words.clear();
    const bool there = state_.voice.there;
    state_.voice = {};
    state_.voice.there = there;
    begin_with(defaults_);
    refresh();
}

void Session::perform(const ui::AskAccess& asked)
{
    std::visit([this](const auto& one) { perform(one); }, asked);
}

void Session::perform(const ui::OpenWays&)
{
    go(ScreenId::Ways);
}

void Session::perform(const ui::ChooseTheme& asked)
{
    state_.theme = asked.theme;
}

void Session::perform(const ui::ChooseTextSize& asked)
{
    const int page = state_.page;
    set_text_percent(asked.percent);
    state_.page = page; // the buttons stay under the finger as far as they can
}

void Session::perform(const ui::ReadAloud&)
{
    if (!state_.voice.there)
        return;
    ++state_.voice.begun;
    state_.voice.paused = false;
    if (state_.voice.mode != VoiceMode::Only)
        state_.voice.mode = VoiceMode::Reading;
}

void Session::perform(const ui::ToggleVoiceOnly&)
{
    if (!state_.voice.there) {
        say(Notice::Tone::Refused, TextId::ways_no_voice);
        return;
    }
    const bool ends = state_.voice.mode == VoiceMode::Only;
    stop_voice();
    if (!ends)
        state_.voice.mode = VoiceMode::Only;
}

void Session::perform(const ui::StopVoice&)
{
    stop_voice();
}

void Session::perform(const ui::PauseVoice&)
{
    if (state_.voice.mode != VoiceMode::Off)
        state_.voice.paused = !state_.voice.paused;
}

void Session::perform(const ui::SayAgain&)
{
    ++state_.voice.again;
    state_.voice.paused = false;
}

void Session::perform(const ui::ChangeRate& asked)
{
    state_.voice.rate_percent = next_rate(state_.voice.rate_percent, asked.by);
}

void Session::perform(const ui::ChangeVolume& asked)
{
    state_.voice.volume = std::clamp(state_.voice.volume + asked.by, ui::least_volume, ui::most_volume);
}

void Session::perform(const ui::OpenGroupView&)
{
    if (state_.pair)
        go(ScreenId::GroupView);
}

void Session::perform(const ui::OpenWords&)
{
    if (state_.screen != ScreenId::Words)
        state_.words_of = state_.screen;
    go(ScreenId::Words);
}

void Session::refresh_words()
{
    state_.words.clear();
    if (state_.screen == ScreenId::Words)
        state_.words = ui::meanings_for(state_, state_.words_of, language());
}

void Session::perform(const ui::KeepGoing&)
{
    if (state_.screen != ScreenId::StillThere || trail_.empty())
        return;
    state_.screen = trail_.back().screen;
    state_.page = trail_.back().page;
    trail_.pop_back();
}

void Session::perform(const ui::OpenMeasure&)
{
    if (keep_measure_)
        go(ScreenId::Measure);
}

void Session::perform(const ui::SetCardWidth& asked)
{
    state_.card_px = std::clamp(asked.px, least_card_px, most_card_px);
}

void Session::perform(const ui::KeepMeasure&)
{
    if (!keep_measure_ || state_.screen != ScreenId::Measure)
        return;
    state_.px_per_mm = static_cast<float>(state_.card_px) / card_width_mm;
    const bool kept = keep_measure_(state_.px_per_mm);
    perform(ui::GoBack{});
    say(kept ? Notice::Tone::Quiet : Notice::Tone::Refused,
        kept ? TextId::notice_measured : TextId::notice_not_measured);
}

} // namespace kiosk
