// States of the screens of seeing, hearing and reaching.
#include "tests/ui/samples.h"

namespace test {

using ui::ScreenId;

std::vector<NamedState> access_states(const ui::Language& language)
{
    std::vector<NamedState> states;
    for (const bool there : {true, false}) {
        auto ways = state_of(ScreenId::Ways, language);
        ways.voice.there = there;
        ways.may_measure = there;
        ways.idle_seconds = there ? 300 : 90;
        states.push_back({there ? "ways" : "ways without a voice", ways});
    }
    auto measure = state_of(ScreenId::Measure, language);
    for (const int px : {80, 344, 508}) {
        measure.card_px = px;
        states.push_back({"measure " + std::to_string(px), measure});
    }
    auto there = state_of(ScreenId::StillThere, language);
    there.seconds_left = 30;
    states.push_back({"still there", there});
    const auto& left = demo_products().front();
    const auto& right = demo_products().back();
    for (const auto mode : {ui::VoiceMode::Reading, ui::VoiceMode::Only}) {
        auto welcome = state_of(ScreenId::Welcome, language);
        auto pair = pair_state(left, right, core::Basis::Serving, language);
        auto find = found_state("A", "Snack bars", language);
        for (auto* state : {&welcome, &pair, &find}) {
            state->voice = {true, mode};
            states.push_back({"speaking", *state});
        }
    }
    return states;
}

std::vector<NamedState> group_states(const ui::Language& language)
{
    std::vector<NamedState> states;
    for (const auto basis : {core::Basis::Serving, core::Basis::Package}) {
        auto state = pair_state(demo_products().front(), demo_products().back(), basis, language);
        state.screen = ScreenId::GroupView;
        states.push_back({"group", state});
        state = pair_state(demo_products().at(1), product_with_long_list(), basis, language);
        state.screen = ScreenId::GroupView;
        states.push_back({"group with a long name", state});
    }
    return states;
}

} // namespace test
