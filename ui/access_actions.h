// What people can ask for to see, hear and reach the station: one struct each.
#pragma once

#include "ui/look/theme.h"

#include <variant>

namespace ui {

/// Open the screen of ways to see and hear.
struct OpenWays {
    bool operator==(const OpenWays&) const = default;
};
/// Other colours.
struct ChooseTheme {
    ThemeName theme;
    bool operator==(const ChooseTheme&) const = default;
};
/// This size of the letters.
struct ChooseTextSize {
    int percent;
    bool operator==(const ChooseTextSize&) const = default;
};
/// Read this screen aloud from its top.
struct ReadAloud {
    bool operator==(const ReadAloud&) const = default;
};
/// The voice alone from now on, or no longer.
struct ToggleVoiceOnly {
    bool operator==(const ToggleVoiceOnly&) const = default;
};
/// No more words.
struct StopVoice {
    bool operator==(const StopVoice&) const = default;
};
/// Stay silent in the middle of the words, or go on with them.
struct PauseVoice {
    bool operator==(const PauseVoice&) const = default;
};
/// The last sentence once more.
struct SayAgain {
    bool operator==(const SayAgain&) const = default;
};
/// Faster (+1) or slower (-1).
struct ChangeRate {
    int by;
    bool operator==(const ChangeRate&) const = default;
};
/// Louder (+1) or quieter (-1).
struct ChangeVolume {
    int by;
    bool operator==(const ChangeVolume&) const = default;
};
/// One nutrient a page, for people who stand two or three metres away.
struct OpenGroupView {
    bool operator==(const OpenGroupView&) const = default;
};
/// Open what the words of this screen mean.
struct OpenWords {
    bool operator==(const OpenWords&) const = default;
};
/// Somebody is still here.
struct KeepGoing {
    bool operator==(const KeepGoing&) const = default;
};
/// Open the screen that measures the glass.
struct OpenMeasure {
    bool operator==(const OpenMeasure&) const = default;
};
/// The drawn card is that wide, in pixels.
struct SetCardWidth {
    int px;
    bool operator==(const SetCardWidth&) const = default;
};
/// The drawn card is as large as the one on the glass.
struct KeepMeasure {
    bool operator==(const KeepMeasure&) const = default;
};

using AskAccess =
    std::variant<OpenWays, ChooseTheme, ChooseTextSize, ReadAloud, ToggleVoiceOnly, StopVoice, PauseVoice, SayAgain,
                 ChangeRate, ChangeVolume, OpenGroupView, OpenWords, KeepGoing, OpenMeasure, SetCardWidth, KeepMeasure>;

} // namespace ui
