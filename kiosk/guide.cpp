#include "kiosk/guide.h"

#include "ui/parts/camera_corner.h"
#include "ui/screens/screens.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace kiosk {
namespace {

ui::SwitchScan::Time since_start(TimePoint now)
{
    return std::chrono::duration_cast<ui::SwitchScan::Time>(now.time_since_epoch());
}

} // namespace

Speaker speaker_of(Sound& sound)
{
    return {[&sound](Utterance utterance) { sound.say(std::move(utterance)); }, [&sound] { sound.hush(); },
            [&sound](bool paused) { sound.pause(paused); }, [&sound](int step) { sound.set_volume(step); }};
}

Guide::Guide(const Session& session, const ui::Notes& notes, Speaker speaker, Milliseconds switch_pace)
    : session_(&session), notes_(&notes), speaker_(std::move(speaker))
{
    access_.scan.set_pace(switch_pace);
}

bool Guide::press(const SDL_Keysym& key, bool repeated, TimePoint now)
{
    const bool typing = session_->state().screen == ui::ScreenId::FindByName;
    const bool shift = (key.mod & KMOD_SHIFT) != 0;
    if (moves(key.sym, shift))
        return true;
    const bool blank = key.sym == SDLK_SPACE && (!typing || access_.scan.on());
    const bool enter = key.sym == SDLK_RETURN || key.sym == SDLK_KP_ENTER;
    if (repeated) // who holds a key down means one press
        return blank || enter;
    if (blank || (enter && access_.scan.on()))
        choose(now);
    else if (enter)
        access_.focus.press();
    else
        return turns(key.sym) || speaks(key.sym);
    return true;
}

/// Pages, as far as there are any.
bool Guide::turns(SDL_Keycode key)
{
    if (key != SDLK_PAGEUP && key != SDLK_PAGEDOWN)
        return false;
    const auto id = key == SDLK_PAGEUP ? ui::TextId::button_page_before : ui::TextId::button_page_next;
    if (std::ranges::find(*notes_, std::optional(id), &ui::Note::id) != notes_->end())
        asked_.emplace_back(ui::TurnPage{key == SDLK_PAGEUP ? -1 : 1});
    return true;
}

bool Guide::moves(SDL_Keycode key, bool shift)
{
    // Who does not see the screen goes through it in reading order, whichever arrow they take.
    const bool heard = session_->state().voice.mode == ui::VoiceMode::Only;
    switch (key) {
    case SDLK_TAB:
        move(shift ? ui::Move::Previous : ui::Move::Next);
        return true;
    case SDLK_DOWN:
        move(heard ? ui::Move::Next : ui::Move::Down);
        return true;
    case SDLK_RIGHT:
        move(heard ? ui::Move::Next : ui::Move::Right);
        return true;
    case SDLK_UP:
        move(heard ? ui::Move::Previous : ui::Move::Up);
        return true;
    case SDLK_LEFT:
        move(heard ? ui::Move::Previous : ui::Move::Left);
        return true;
    case SDLK_HOME:
        move(ui::Move::First);
        return true;
    case SDLK_END:
        move(ui::Move::Last);
        return true;
    default:
        return false;
    }
}

/// Keys that work the voice from anywhere: for people who do not see its buttons.
bool Guide::speaks(SDL_Keycode key)
{
    switch (key) {
    case SDLK_F2:
        asked_.emplace_back(ui::AskAccess{ui::ToggleVoiceOnly{}});
        return true;
    case SDLK_F3:
        asked_.emplace_back(ui::AskAccess{ui::SayAgain{}});
        return true;
    case SDLK_F4:
        asked_.emplace_back(ui::AskAccess{ui::PauseVoice{}});
        return true;
    case SDLK_F5:
        asked_.emplace_back(ui::AskAccess{ui::ChangeRate{-1}});
        return true;
    case SDLK_F6:
        asked_.emplace_back(ui::AskAccess{ui::ChangeRate{1}});
        return true;
    case SDLK_F7:
        asked_.emplace_back(ui::AskAccess{ui::ChangeVolume{-1}});
        return true;
    case SDLK_F8:
        asked_.emplace_back(ui::AskAccess{ui::ChangeVolume{1}});
        return true;
    default:
        return false;
    }
}

/// The one switch, which types a blank: begins to go through the screen, then chooses. Where keys lead, a blank presses
/// as Enter does.
void Guide::choose(TimePoint now)
{
    if (access_.scan.on()) {
        const auto stops = access_.focus.stops();
        if (const auto chosen = access_.scan.choose(stops, since_start(now)))
            access_.focus.press(stops[*chosen]);
    } else if (access_.focus.shown())
        access_.focus.press();
    else
        access_.scan.start(since_start(now));
}

void Guide::move(ui::Move move)
{
    access_.scan.stop();
    const bool heard = session_->state().voice.mode == ui::VoiceMode::Only;
    if (session_->state().voice.paused) // who goes on wants to hear where they are
        asked_.emplace_back(ui::AskAccess{ui::PauseVoice{}});
    access_.focus.move(move, heard ? ui::StopsAt::Everything : ui::StopsAt::Touchable);
    narrator_.moved(session_->state().voice, news(), access_.focus);
    obey();
}

ui::Actions Guide::asked()
{
    return std::exchange(asked_, {});
}

void Guide::finger()
{
    access_.focus.hide();
    access_.scan.stop();
}

/// What the session answered: its notice, or while a name is typed what was found.
ui::Heard Guide::news()
{
    const ui::State& state = session_->state();
    if (std::exchange(notice_, state.notice.number) != state.notice.number) {
        answer_ = state.notice.words;
        ++answers_;
    }
    if (state.screen == ui::ScreenId::FindByName && !state.typed.empty() && !session_->searching()) {
        std::string found = state.typed + ": " + state.found_words;
        if (found != answer_) {
            answer_ = std::move(found);
            ++answers_;
        }
    }
    return {*notes_, session_->language(), answer_, answers_, ui::screen_number(state)};
}

bool Guide::drawn(TimePoint now)
{
    const ui::State& state = session_->state();
    if (std::exchange(screen_, ui::screen_number(state)) != ui::screen_number(state))
        access_.scan.new_screen(since_start(now));
    if (std::exchange(volume_, state.voice.volume) != state.voice.volume && speaker_.set_volume)
        speaker_.set_volume(state.voice.volume);
    tell_hint(now);
    narrator_.follow(state.voice, news(), access_.focus);
    obey();
    return mark();
}

/// Who does not see the picture hears what to do with the package, now and then, while nothing else is said.
void Guide::tell_hint(TimePoint now)
{
    constexpr std::chrono::seconds between{4};
    const ui::State& state = session_->state();
    const bool heard = state.voice.mode == ui::VoiceMode::Only && !state.voice.paused;
    if (!heard || !state.camera || !ui::shows_camera(state) || state.camera->hint == hint_)
        return;
    const bool helps =
        !state.camera->hint.empty() && state.camera->hint != session_->language().text(ui::TextId::camera_aim);
    if (helps && (now - hinted_ < between || !narrator_.read_to_the_end()))
        return;
    hint_ = state.camera->hint;
    if (!helps) // nothing to do: the same words will be news again
        return;
    hinted_ = now;
    answer_ = hint_;
    ++answers_;
}

bool Guide::heard(const std::vector<SpeechNews>& news)
{
    for (const SpeechNews& one : news)
        if (one.what != SpeechNews::What::Begun)
            narrator_.spoken(one.id);
    obey();
    return mark();
}

void Guide::obey()
{
    for (const ui::VoiceOrder& order : narrator_.orders()) {
        switch (order.what) {
        case ui::VoiceOrder::What::Say:
            if (speaker_.say)
                speaker_.say({order.utterance.id, order.utterance.words,
                              session_->language().text(ui::TextId::voice_code), session_->state().voice.rate_percent});
            break;
        case ui::VoiceOrder::What::Hush:
            if (speaker_.hush)
                speaker_.hush();
            break;
        case ui::VoiceOrder::What::Pause:
        case ui::VoiceOrder::What::GoOn:
            if (speaker_.pause)
                speaker_.pause(order.what == ui::VoiceOrder::What::Pause);
            break;
        }
    }
}

/// Shows which part is read aloud; true when it is another one.
bool Guide::mark()
{
    const auto before = std::exchange(access_.spoken, narrator_.note_spoken());
    return before != access_.spoken;
}

bool Guide::tick(TimePoint now)
{
    return access_.scan.tick(access_.focus.stops(), since_start(now));
}

std::optional<TimePoint> Guide::due() const
{
    if (!access_.scan.on())
        return std::nullopt;
    return TimePoint{std::chrono::duration_cast<TimePoint::duration>(access_.scan.due())};
}

bool Guide::read_to_the_end()
{
    const bool reads = session_->state().voice.mode == ui::VoiceMode::Reading && !narrator_.read_to_the_end();
    return std::exchange(reading_, reads) && !reads;
}

} // namespace kiosk
