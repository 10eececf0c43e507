#include "kiosk/loop.h"

#include "kiosk/input/letter_keys.h"
#include "ui/parts/camera_corner.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace kiosk {
namespace {

/// So many frames after a change: ImGui settles sizes in the second and lets a pressed thing go in the third.
constexpr int frames_to_settle = 3;

/// How often an idle station looks whether a new catalog was put in place.
constexpr Milliseconds catalog_every{5000};

bool is_key(const SDL_Event& event)
{
    return event.type == SDL_KEYDOWN || event.type == SDL_KEYUP;
}

/// Events after which the screen may look different, keys apart.
bool changes_the_screen(const SDL_Event& event)
{
    switch (event.type) {
    case SDL_MOUSEMOTION:
    case SDL_MOUSEBUTTONDOWN:
    case SDL_MOUSEBUTTONUP:
    case SDL_MOUSEWHEEL:
    case SDL_FINGERDOWN:
    case SDL_FINGERUP:
    case SDL_WINDOWEVENT:
        return true;
    default:
        return false;
    }
}

/// The station's sound, told to the trace as well; without one nothing is said.
Speaker speaker_for(const LoopParts& parts)
{
    if (!parts.sound)
        return {};
    Speaker speaker = speaker_of(*parts.sound);
    if (Trace* trace = parts.trace)
        speaker.say = [say = speaker.say, trace, session = &parts.session](Utterance utterance) {
            trace->spoken(utterance, session->state(), Clock::now());
            say(std::move(utterance));
        };
    return speaker;
}

} // namespace

Loop::Loop(const LoopParts& parts)
    : parts_(parts), keyboard_([this](const SDL_Event& event) { person_pressed(event); }, parts.scanner),
      looked_(Clock::now()), catalog_looked_(looked_),
      guide_(parts.session, notes_, speaker_for(parts), parts.switch_pace), idle_(parts.patience, looked_),
      camera_news_(parts.camera_expected), sounded_(parts.session.state().notice.number), frames_due_(frames_to_settle)
{
    parts_.catalog.on_leaving([&session = parts_.session] { session.leave_catalog(); });
}

void Loop::run()
{
    while (running_) {
        gather();
        search();
        if (frames_due_ > 0)
            draw();
        else if (running_ && !parts_.session.searching())
            wait();
    }
}

/// Takes everything that has happened by now, without waiting; but after a finger came down or was lifted a frame is
/// drawn first, so that one that is lifted and comes down again before it is two touches and not none.
void Loop::gather()
{
    while (!touched_) {
        const auto event = parts_.window.poll();
        if (!event) {
            looked_ = Clock::now();
            break;
        }
        look_at(*event, std::chrono::ceil<Milliseconds>(Clock::now() - looked_));
    }
    take(keyboard_.idle(looked_));
    take(parts_.scans.take_all());
    apply(std::exchange(pressed_, {}));
    apply(guide_.asked());
    follow_camera();
    follow_serial();
    follow_desk();
    follow_sound();
    follow_idle();
    if (guide_.tick(looked_))
        frames_due_ = frames_to_settle;
    if (looked_ - catalog_looked_ >= catalog_every)
        follow_catalog();
}

/// Lets the search by name work for half a frame, so that fingers and scanners never wait for it.
void Loop::search()
{
    if (!parts_.session.searching())
        return;
    constexpr Milliseconds half_a_frame{8};
    const auto until = Clock::now() + half_a_frame;
    const auto before = parts_.session.state().found.size();
    guarded([&] { parts_.session.search_on([until] { return Clock::now() < until; }); });
    if (parts_.session.state().found.size() != before || !parts_.session.searching())
        frames_due_ = frames_to_settle;
}

void Loop::wait()
{
    if (const auto event = parts_.window.wait(next_look()))
        look_at(*event, Milliseconds{0}); // it came while we were looking
    looked_ = Clock::now();
}

/// When something happens by itself, if nothing else does before.
TimePoint Loop::next_look() const
{
    TimePoint until = catalog_looked_ + catalog_every;
    for (const auto& due : {keyboard_.decides_at(), guide_.due(), idle_.due()})
        if (due)
            until = std::min(until, *due);
    return until;
}

void Loop::look_at(const SDL_Event& event, Milliseconds blind)
{
    if (event.type == SDL_QUIT)
        running_ = false;
    else if (is_key(event))
        take(keyboard_.take(event, Clock::now(), blind));
    else
        parts_.window.hand_on(event);
    const bool finger = event.type == SDL_MOUSEBUTTONDOWN || event.type == SDL_MOUSEBUTTONUP;
    touched_ = touched_ || finger;
    if (event.type == SDL_MOUSEBUTTONDOWN)
        guide_.finger();
    if (finger || event.type == SDL_KEYDOWN)
        idle_.touched(Clock::now());
    lifted_ = lifted_ || event.type == SDL_MOUSEBUTTONUP;
    if (changes_the_screen(event))
        frames_due_ = frames_to_settle;
}

/// A key that no scanner typed: ours, or the screen's.
void Loop::person_pressed(const SDL_Event& event)
{
    frames_due_ = frames_to_settle;
    const bool down = event.type == SDL_KEYDOWN && event.key.repeat == 0;
    const SDL_Keycode key = event.key.keysym.sym;
    if (down && key == SDLK_F11)
        parts_.window.toggle_fullscreen();
    else if (down && key == SDLK_q && (event.key.keysym.mod & KMOD_CTRL) != 0)
        running_ = false;
    else if (down && parts_.session.state().screen == ui::ScreenId::StillThere)
        somebody_is_there();
    else if (down && key == SDLK_ESCAPE)
        pressed_.emplace_back(ui::GoBack{});
    else if (event.type == SDL_KEYDOWN && guide_.press(event.key.keysym, event.key.repeat != 0, Clock::now()))
        return;
    else if (parts_.session.state().screen != ui::ScreenId::FindByName || !name_pressed(event))
        parts_.window.hand_on(event);
}

/// A key that a person pressed where a name is asked for; whether it was one of the name's.
bool Loop::name_pressed(const SDL_Event& event)
{
    const auto letter = letter_of(event.key.keysym);
    const bool erases = event.key.keysym.sym == SDLK_BACKSPACE;
    if (event.type == SDL_KEYDOWN && erases)
        pressed_.emplace_back(ui::EraseLetter{});
    else if (event.type == SDL_KEYDOWN && letter && event.key.repeat == 0)
        pressed_.emplace_back(ui::TypeLetters{*letter});
    return erases || letter.has_value();
}

/// Every scan is answered, once, in the order they came.
void Loop::take(const std::vector<Scan>& scans)
{
    if (!scans.empty()) {
        idle_.touched(Clock::now());
        somebody_is_there();
    }
    for (const Scan& scan : scans) {
        guarded([&] { parts_.session.take(scan); });
        if (parts_.trace)
            parts_.trace->answered(scan, parts_.session.state());
        sound_notice(false);
        frames_due_ = frames_to_settle;
    }
}

/// A product that was touched where the station asked which one the camera saw: answered as a scan of it.
void Loop::trace_chosen(const ui::Actions& asked)
{
    for (const auto& action : asked)
        if (const auto* chosen = std::get_if<ui::TakeProduct>(&action))
            parts_.trace->answered({chosen->gtin.digits(), core::Symbology::Unknown, Scan::From::Finger, Clock::now()},
                                   parts_.session.state());
}

void Loop::apply(const ui::Actions& asked)
{
    if (asked.empty())
        return;
    const bool was_likely = parts_.session.state().screen == ui::ScreenId::LikelyProduct;
    guarded([&] { parts_.session.apply(asked); });
    if (was_likely && parts_.trace)
        trace_chosen(asked);
    sound_notice(true);
    frames_due_ = frames_to_settle;
}

/// Does what may ask the catalog, the newest one. When its file or disk breaks, the screen says so and goes on.
void Loop::guarded(const std::function<void()>& work)
{
    follow_catalog();
    try {
        work();
    } catch (const std::runtime_error& broken) {
        if (parts_.complain)
            parts_.complain(broken.what());
        parts_.session.say_catalog_broken();
    }
}

/// Opens a catalog that was put in the place of the one in use.
void Loop::follow_catalog()
{
    catalog_looked_ = Clock::now();
    const auto news = parts_.catalog.look_again();
    if (news == StationCatalog::News::None)
        return;
    if (news == StationCatalog::News::Another) {
        try {
            parts_.session.shows(parts_.catalog.bundle());
            parts_.session.use(parts_.catalog.store());
        } catch (const std::runtime_error& broken) { // good a moment ago, and broken under us
            if (parts_.complain)
                parts_.complain(broken.what());
            parts_.session.say_catalog_broken();
        }
    } else
        parts_.session.say_catalog_broken();
    frames_due_ = frames_to_settle;
}

/// Tells the session how the camera is, and what it sees; nothing is drawn for that where it is not shown.
void Loop::follow_camera()
{
    if (!parts_.camera)
        return;
    if (const auto news = camera_news_.look(parts_.camera->status())) {
        parts_.session.camera_is(*news);
        frames_due_ = frames_to_settle;
    }
    if (const auto sight = parts_.camera->sight()) {
        parts_.session.camera_sees(*sight);
        if (ui::shows_camera(parts_.session.state()))
            frames_due_ = std::max(frames_due_, 1);
    }
    if (const auto likely = parts_.camera->likely(); likely && parts_.session.consider(*likely)) {
        idle_.touched(Clock::now()); // somebody holds a package before it
        sound_notice(false);
        frames_due_ = frames_to_settle;
    }
}

/// Says, once, that a scanner cannot be listened to, on the screen and to whoever looks after the station; and that it
/// can again.
void Loop::follow_serial()
{
    if (!parts_.serial)
        return;
    for (const SerialTrouble& trouble : parts_.serial->troubles()) {
        if (trouble.over)
            parts_.session.say_scanner_ready();
        else
            parts_.session.say_scanner_trouble(trouble.what, trouble.port);
        if (parts_.complain && !trouble.over)
            parts_.complain(parts_.session.state().notice.words);
        sound_notice(false);
        frames_due_ = frames_to_settle;
    }
}

/// Shows how far the work at the desk is. When it is done another catalog may be in place: nobody waits for it.
void Loop::follow_desk()
{
    if (!parts_.session.follow_desk())
        return;
    follow_catalog();
    sound_notice(false);
    frames_due_ = frames_to_settle;
}

void Loop::follow_sound()
{
    if (!parts_.sound)
        return;
    const bool there = parts_.sound->state() == Sound::State::Playing;
    if (there != parts_.session.state().voice.there) {
        parts_.session.voice_is(there);
        frames_due_ = frames_to_settle;
    }
    if (guide_.heard(parts_.sound->speech_news()))
        frames_due_ = frames_to_settle;
    if (guide_.read_to_the_end()) {
        parts_.session.voice_ended();
        frames_due_ = frames_to_settle;
    }
}

/// Asks whether somebody is there, and forgets who is not.
void Loop::follow_idle()
{
    // Who listens touches nothing, and nobody has left who waits for work at the desk.
    if (parts_.session.occupied())
        idle_.touched(looked_);
    const auto step = idle_.look(looked_, parts_.session.in_use());
    if (step.what == Idle::What::Nothing)
        return;
    if (step.what == Idle::What::Ask)
        parts_.session.ask_whether_there(step.seconds_left);
    else
        forget();
    sound_notice(false);
    frames_due_ = frames_to_settle;
}

void Loop::forget()
{
    guarded([&] { parts_.session.forget(); });
    guide_.finger();
}

/// Whatever people touch or press where the station asks for them is the answer.
void Loop::somebody_is_there()
{
    if (parts_.session.state().screen == ui::ScreenId::StillThere)
        pressed_.emplace_back(ui::AskAccess{ui::KeepGoing{}});
}

void Loop::sound_notice(bool touched)
{
    const ui::Notice& notice = parts_.session.state().notice;
    const bool news = notice.number != sounded_;
    sounded_ = notice.number;
    if (!parts_.sound)
        return;
    if (news && notice.tone == ui::Notice::Tone::Found)
        parts_.sound->play(Tone::Found);
    else if (news && notice.tone == ui::Notice::Tone::Refused)
        parts_.sound->play(Tone::Refused);
    else if (touched)
        parts_.sound->play(Tone::Touched);
}

void Loop::draw()
{
    --frames_due_;
    touched_ = false;
    const auto asked = parts_.window.draw(parts_.session.state(), parts_.session.language(), notes_, guide_.access());
    if (guide_.drawn(Clock::now()))
        frames_due_ = frames_to_settle;
    if (parts_.trace)
        parts_.trace->drawn(parts_.session.state(), notes_, Clock::now());
    if (keyboard_.frame_drawn())
        frames_due_ = frames_to_settle;
    apply(asked);
    if (std::exchange(lifted_, false)) // only now: the finger must not press what comes back under it
        somebody_is_there();
}

} // namespace kiosk
