// Leads people who use keys, one switch or the voice through the screens: between keyboard, session, notes and sound.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/session/session.h"
#include "kiosk/sound/sound.h"
#include "ui/access/access.h"
#include "ui/access/narrator.h"
#include "ui/actions.h"
#include "ui/notes.h"

#include <SDL_keyboard.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// What speaks. In the program the station's Sound; in tests whatever writes down what reached it.
struct Speaker {
    std::function<void(Utterance)> say;
    std::function<void()> hush;
    std::function<void(bool)> pause;
    std::function<void(int)> set_volume;
};

/// The way of a Sound as a Speaker; it must outlive it.
[[nodiscard]] Speaker speaker_of(Sound& sound);

/// One for a station. Lives on the screen's thread.
class Guide {
public:
    /// `session` and `notes` (of the last frame) must outlive the guide.
    Guide(const Session& session, const ui::Notes& notes, Speaker speaker, Milliseconds switch_pace);

    /// For what draws: where keys, switch and voice are.
    [[nodiscard]] ui::Access& access() { return access_; }

    /// A key that a person pressed and no scanner; `repeated`: it is held down. False when it is none of ours.
    bool press(const SDL_Keysym& key, bool repeated, TimePoint now);
    /// What keys have asked for since this was called last.
    [[nodiscard]] ui::Actions asked();
    /// A finger touched the glass, or the station forgot who was there: no ring is needed.
    void finger();
    /// A frame was drawn. True when another one must be, because the place that is read aloud changed.
    bool drawn(TimePoint now);
    /// What became of what was said. True when a frame must be drawn.
    bool heard(const std::vector<SpeechNews>& news);
    /// Goes on with the switch when its time has come. True when a frame must be drawn.
    bool tick(TimePoint now);
    /// When to tick next; nothing while nothing moves by itself.
    [[nodiscard]] std::optional<TimePoint> due() const;
    /// Whether reading from top to bottom came to its end since this was asked last.
    [[nodiscard]] bool read_to_the_end();

private:
    bool moves(SDL_Keycode key, bool shift);
    bool speaks(SDL_Keycode key);
    bool turns(SDL_Keycode key);
    void choose(TimePoint now);
    void move(ui::Move move);
    void obey();
    bool mark();
    void tell_hint(TimePoint now);
    [[nodiscard]] ui::Heard news();

    const Session* session_;
    const ui::Notes* notes_;
    Speaker speaker_;
    ui::Access access_;
    ui::Narrator narrator_;
    ui::Actions asked_;
    std::string answer_;   ///< what is said of the last touch or scan
    unsigned answers_ = 0; ///< counts up with each
    unsigned notice_ = 0;  ///< the session's last
    std::string hint_;     ///< the camera's, as it was told last
    TimePoint hinted_{};
    int screen_ = -1;
    int volume_ = ui::usual_volume;
    bool reading_ = false;
};

} // namespace kiosk
