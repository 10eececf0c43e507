// A session that nobody sees, asked for the same as a station: it knows where things stand and what must be said.
#pragma once

#include "kiosk/command/picture.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "kiosk/session/session.h"
#include "tests/end_to_end/station.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

namespace test {

/// Whether a thing on the screen is the one that is meant.
using IsIt = std::function<bool(const ui::Note&)>;

/// The twin of a station with the demo catalog.
class Twin {
public:
    Twin()
    {
        session_.say_demo();
        session_.voice_is(true); // stations of tests have the card that plays to nobody
    }

    void scan(const std::string& digits)
    {
        session_.take({digits, core::Symbology::Unknown, {}});
        ask({});
    }
    /// As though its camera were not sure of these digits.
    void suspect(const std::string& digits)
    {
        (void)session_.consider({{{digits, core::Symbology::Unknown}}, {}});
        ask({});
    }
    void ask(const ui::Actions& actions)
    {
        session_.apply(actions);
        while (session_.search_on([] { return true; })) {
        }
        notes_.clear();
        (void)kiosk::draw_picture(session_.state(), session_.language(), {ui::paper(), fonts_.files(), 1280, 800},
                                  &notes_);
    }

    /// The middle of the first thing to touch that is meant.
    [[nodiscard]] ImVec2 place_of(const IsIt& is_it) const
    {
        const auto found =
            std::ranges::find_if(notes_, [&](const ui::Note& note) { return note.touchable && is_it(note); });
        REQUIRE(found != notes_.end());
        return {(found->low.x + found->high.x) / 2, (found->low.y + found->high.y) / 2};
    }
    /// All that its screen says, as the trace writes it.
    [[nodiscard]] std::string words() const
    {
        std::string words;
        for (const auto& note : notes_)
            words += (words.empty() ? "" : " | ") + note.words;
        std::ranges::replace(words, '\n', ' ');
        return words;
    }

    [[nodiscard]] const ui::State& state() const { return session_.state(); }

private:
    kiosk::StationCatalog catalog_{"", kiosk::data_folder(), [](const std::string&) { return std::nullopt; }};
    std::vector<ui::Language> languages_ = kiosk::read_language_files(kiosk::data_folder()).languages;
    kiosk::FontBytes fonts_ = kiosk::read_fonts();
    kiosk::Session session_{catalog_.store(), languages_};
    ui::Notes notes_;
};

/// Whether the last frame that the station draws within a while says these very words.
[[nodiscard]] inline bool says(Station& station, const std::string& words)
{
    return becomes_true(
        [&] {
            const auto& trace = station.trace();
            const auto last =
                std::find_if(trace.rbegin(), trace.rend(), [](const auto& line) { return line.kind == "frame"; });
            return last != trace.rend() && last->words == words;
        },
        std::chrono::seconds(20));
}

/// A fixed text.
[[nodiscard]] inline IsIt text(ui::TextId id)
{
    return [id](const ui::Note& note) { return note.id == id; };
}

/// Words of its own.
[[nodiscard]] inline IsIt named(const std::string& words)
{
    return [words](const ui::Note& note) { return note.words == words; };
}

} // namespace test
