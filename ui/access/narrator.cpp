#include "ui/access/narrator.h"

#include "ui/words/spoken.h"

#include <utility>

namespace ui {
namespace {

/// Parts words into sentences: at a full stop, question mark or exclamation mark before a blank.
std::vector<std::string> sentences(const std::string& words)
{
    std::vector<std::string> all;
    std::size_t begin = 0;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool ends = words[at] == '.' || words[at] == '?' || words[at] == '!';
        if (!ends || at + 1 >= words.size() || (words[at + 1] != ' ' && words[at + 1] != '\n'))
            continue;
        all.push_back(words.substr(begin, at + 1 - begin));
        begin = at + 2;
    }
    if (begin < words.size())
        all.push_back(words.substr(begin));
    return all;
}

const std::string& said_by(const Note& note)
{
    return note.said.empty() ? note.words : note.said;
}

} // namespace

std::vector<std::string> sentences_of(const Stop& stop, const Notes& notes, const Language& language, Headings headings)
{
    std::string words = said_by(notes[stop.note]);
    for (const std::size_t inside : stop.with)
        if (notes[inside].words != notes[stop.note].words)
            words += (words.empty() ? "" : ", ") + said_by(notes[inside]);
    if (stop.touchable)
        words = language.fill(notes[stop.note].chosen ? TextId::voice_button_chosen : TextId::voice_button,
                              {{"words", words}});
    else if (headings == Headings::Said && notes[stop.note].role == Role::Heading)
        words = language.fill(TextId::voice_heading, {{"words", words}});
    std::vector<std::string> all;
    for (const auto& sentence : sentences(words))
        if (auto said = spoken(sentence, language); !said.empty())
            all.push_back(std::move(said));
    return all;
}

Headings Narrator::headings() const
{
    return voice_.mode == VoiceMode::Only ? Headings::Said : Headings::Plain;
}

void Narrator::follow(const VoiceState& voice, const Heard& heard, Focus& focus)
{
    const VoiceState before = std::exchange(voice_, voice);
    if (voice.paused != before.paused) // also when it is stopped in a pause: the next words must be heard
        orders_.push_back({voice.paused ? VoiceOrder::What::Pause : VoiceOrder::What::GoOn});
    if (voice.mode == VoiceMode::Off) {
        screen_ = heard.screen;
        notice_ = heard.notice_number;
        if (before.mode != VoiceMode::Off)
            hush();
        return;
    }
    if (voice.paused) // what happens meanwhile is said afterwards
        return;
    const bool another = std::exchange(screen_, heard.screen) != heard.screen;
    const bool answered = std::exchange(notice_, heard.notice_number) != heard.notice_number;
    if (voice.again != before.again)
        say_again();
    const bool asked = voice.begun != before.begun || voice.mode != before.mode;
    if (asked || another || answered)
        begin_screen(heard, focus, {asked, another, answered});
    else
        say_what_changed(heard, focus);
}

/// Who cannot see the screen hears its first words and goes on by keys; who is read to hears all of it.
void Narrator::begin_screen(const Heard& heard, Focus& focus, Because because)
{
    const auto [asked, another, answered] = because;
    const bool only = voice_.mode == VoiceMode::Only;
    std::vector<Piece> pieces;
    if (only && asked)
        for (const auto& sentence : sentences(heard.language.text(TextId::voice_only_how)))
            pieces.push_back({sentence, std::nullopt});
    else if (!heard.notice.empty() && answered && !asked)
        pieces.push_back({ui::spoken(heard.notice, heard.language), std::nullopt});
    if (only && (asked || another))
        focus.move(Move::First, StopsAt::Everything);
    for (const Stop& stop : focus.stops()) {
        if (only && !asked && !another)
            break;
        if (only && stop.touchable && &stop != focus.at())
            break;
        add(stop, heard, pieces);
    }
    remember(heard, focus);
    begin(std::move(pieces));
}

/// What stood on the screen, so that a change of it is noticed.
void Narrator::remember(const Heard& heard, const Focus& focus)
{
    at_ = focus.at() ? sentences_of(*focus.at(), heard.notes, heard.language, headings()) : std::vector<std::string>{};
    all_.clear();
    for (const Note& note : heard.notes)
        all_ += note.words + '\n';
}

/// A button that was pressed may say something else now (chosen, or another size); so may all that is being read, in
/// another language or for another amount.
void Narrator::say_what_changed(const Heard& heard, const Focus& focus)
{
    const auto at = std::exchange(at_, {});
    const auto all = std::exchange(all_, {});
    remember(heard, focus);
    std::vector<Piece> pieces;
    if (voice_.mode == VoiceMode::Only && focus.at() && at_ != at)
        add(*focus.at(), heard, pieces);
    else if (voice_.mode == VoiceMode::Reading && speaking_ && all_ != all)
        for (const Stop& stop : focus.stops())
            add(stop, heard, pieces);
    if (!pieces.empty())
        begin(std::move(pieces));
}

void Narrator::add(const Stop& stop, const Heard& heard, std::vector<Piece>& pieces) const
{
    for (auto& sentence : sentences_of(stop, heard.notes, heard.language, headings()))
        pieces.push_back({std::move(sentence), stop.note});
}

void Narrator::moved(const VoiceState& voice, const Heard& heard, const Focus& focus)
{
    if (voice.mode != VoiceMode::Only || !focus.at())
        return;
    std::vector<Piece> pieces;
    add(*focus.at(), heard, pieces);
    remember(heard, focus);
    begin(std::move(pieces));
}

void Narrator::begin(std::vector<Piece> pieces)
{
    hush();
    pieces_ = std::move(pieces);
    next_ = 0;
    ended_ = pieces_.empty();
    say_next();
}

void Narrator::hush()
{
    if (speaking_)
        orders_.push_back({VoiceOrder::What::Hush});
    speaking_ = false;
    pieces_.clear();
    next_ = 0;
    ended_ = true;
}

void Narrator::say_next()
{
    if (next_ >= pieces_.size()) {
        speaking_ = false;
        ended_ = true;
        return;
    }
    speaking_ = true;
    orders_.push_back({VoiceOrder::What::Say, {++id_, pieces_[next_].words}});
    ++next_;
}

void Narrator::say_again()
{
    if (pieces_.empty())
        return;
    next_ = next_ > 0 ? next_ - 1 : 0;
    ended_ = false;
    say_next();
}

void Narrator::spoken(unsigned id)
{
    if (id == id_ && speaking_)
        say_next();
}

std::vector<VoiceOrder> Narrator::orders()
{
    return std::exchange(orders_, {});
}

std::optional<std::size_t> Narrator::note_spoken() const
{
    return speaking_ && next_ > 0 && next_ <= pieces_.size() ? pieces_[next_ - 1].note : std::nullopt;
}

} // namespace ui
