// A station without window, sound card and picture: keys go in, and what reaches the voice comes out.
#pragma once

#include "kiosk/guide.h"
#include "tests/kiosk/session/station.h"
#include "tests/support/headless.h"
#include "ui/screens/screens.h"

#include <string>
#include <vector>

namespace test {

/// Drives a session by keys alone, as the loop does; screens are laid out, for that is where words come from, and never
/// seen.
class Walk {
public:
    explicit Walk(const std::string& language_code = "en")
        : guide_(station.session, screen_.notes(), speaker(), kiosk::Milliseconds{1000})
    {
        station.session.begin_with({language_code});
        station.session.voice_is(true);
        settle();
    }

    /// A key goes down, and the station answers.
    void press(SDL_Keycode key, Uint16 mod = KMOD_NONE)
    {
        said_now.clear();
        SDL_Keysym sym{};
        sym.sym = key;
        sym.mod = mod;
        if (key == SDLK_ESCAPE)
            station.session.apply({ui::GoBack{}});
        else
            static_cast<void>(guide_.press(sym, false, now_));
        settle();
    }

    /// Goes on with one key until the voice has said these words; false when it does not come to them.
    bool go_to(const std::string& words, SDL_Keycode key = SDLK_DOWN)
    {
        constexpr int most = 200;
        for (int i = 0; i < most; ++i) {
            press(key);
            if (!said_now.empty() && said_now.back().find(words) != std::string::npos)
                return true;
        }
        return false;
    }

    /// A package is scanned.
    void scan(const std::string& digits)
    {
        said_now.clear();
        station.scan(digits);
        settle();
    }

    /// The camera sees bars, and is not sure between these codes.
    void doubt(const std::vector<std::string>& codes)
    {
        said_now.clear();
        kiosk::Likely likely;
        for (const auto& code : codes)
            likely.codes.push_back({code, core::Symbology::Ean13});
        (void)station.session.consider(likely);
        settle();
    }

    /// The camera sees something, so long after what was before.
    void camera(kiosk::Hint hint, kiosk::Milliseconds later)
    {
        said_now.clear();
        kiosk::Frame small;
        small.width = small.height = 4;
        small.pixels.assign(16, 99);
        station.session.camera_is(kiosk::Session::Camera::Ready);
        station.session.camera_sees({small, small, hint});
        now_ += later;
        settle();
    }

    /// Time passes, for the one switch.
    void wait_for_switch()
    {
        if (const auto due = guide_.due())
            now_ = *due;
        static_cast<void>(guide_.tick(now_));
        settle();
    }

    Station station;
    std::vector<std::string> said_now; ///< since the last key
    std::vector<std::string> voices;   ///< of all that was said
    std::vector<int> volumes;
    [[nodiscard]] kiosk::Guide& guide() { return guide_; }
    [[nodiscard]] const ui::Notes& notes() const { return screen_.notes(); }

private:
    kiosk::Speaker speaker()
    {
        return {[this](const kiosk::Utterance& utterance) {
                    said_now.push_back(utterance.words);
                    voices.push_back(utterance.voice);
                    heard_.push_back({utterance.id, kiosk::SpeechNews::What::Spoken});
                },
                {},
                {},
                [this](int step) { volumes.push_back(step); }};
    }

    void frame()
    {
        const auto asked = screen_.frame([this](const ui::Ui& ui, ui::Actions& actions) {
            const ui::Look look{ui::theme_of(station.state().theme), ui.look.sizes, ui.look.fonts};
            ui::draw({station.session.language(), look, ui.notes, &guide_.access()}, station.state(), actions);
        });
        static_cast<void>(guide_.drawn(now_));
        if (!asked.empty())
            station.session.apply(asked);
    }

    void settle()
    {
        if (const auto asked = guide_.asked(); !asked.empty())
            station.session.apply(asked);
        for (int i = 0; i < 4; ++i)
            frame();
        while (!heard_.empty()) // every word is heard to its end at once
            static_cast<void>(guide_.heard(std::exchange(heard_, {})));
    }

    Headless screen_;
    kiosk::TimePoint now_{};
    std::vector<kiosk::SpeechNews> heard_;
    kiosk::Guide guide_;
};

} // namespace test
