// Says what the screen shows: decides which words come next, and goes on when they were heard. Knows no sound card.
#pragma once

#include "ui/access/focus.h"
#include "ui/access/voice_state.h"
#include "ui/notes.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ui {

/// Words on their way to the voice.
struct Utterance {
    unsigned id = 0;
    std::string words; ///< as people say them
    bool operator==(const Utterance&) const = default;
};

/// What the voice is to do now.
struct VoiceOrder {
    enum class What { Say, Hush, Pause, GoOn };
    What what;
    Utterance utterance{}; ///< for Say
    bool operator==(const VoiceOrder&) const = default;
};

/// Whether a heading is told as one: to who cannot see it, not to who is read to.
enum class Headings { Plain, Said };

/// What a place says, in one utterance a sentence: its words, those of what stands in it, and that it can be pressed.
[[nodiscard]] std::vector<std::string> sentences_of(const Stop& stop, const Notes& notes, const Language& language,
                                                    Headings headings = Headings::Plain);

/// What is to be heard of a screen that has just come up.
struct Heard {
    const Notes& notes;
    const Language& language;
    std::string_view notice; ///< the answer to the last scan or touch
    unsigned notice_number;
    int screen; ///< another number for another screen or page
};

/// Reads aloud, or speaks for those who do not see the screen. One for a station; lives on the screen's thread.
class Narrator {
public:
    /// After a frame that changed something was drawn. The focus moves along with what is read, so that people see
    /// which part is spoken, and is followed where the voice is all there is.
    void follow(const VoiceState& voice, const Heard& heard, Focus& focus);
    /// After keys moved the focus: the place it came to is spoken, what was being spoken stops.
    void moved(const VoiceState& voice, const Heard& heard, const Focus& focus);
    /// The words with that number were heard to their end.
    void spoken(unsigned id);
    /// What the voice is to do since the last call, in order.
    [[nodiscard]] std::vector<VoiceOrder> orders();
    /// Whether reading from top to bottom has come to its end.
    [[nodiscard]] bool read_to_the_end() const { return ended_; }
    /// The place whose words are spoken now, for a mark beside it; nothing while it is silent.
    [[nodiscard]] std::optional<std::size_t> note_spoken() const;

private:
    struct Piece {
        std::string words;
        std::optional<std::size_t> note;
    };
    void add(const Stop& stop, const Heard& heard, std::vector<Piece>& pieces) const;
    [[nodiscard]] Headings headings() const;
    /// Why a screen is told from its beginning.
    struct Because {
        bool asked = false;    ///< somebody wants to be read to
        bool another = false;  ///< another screen or page came up
        bool answered = false; ///< something new is to be said of a scan or a touch
    };
    void begin_screen(const Heard& heard, Focus& focus, Because because);
    void remember(const Heard& heard, const Focus& focus);
    void say_what_changed(const Heard& heard, const Focus& focus);
    void begin(std::vector<Piece> pieces);
    void hush();
    void say_next();
    void say_again();

    std::vector<Piece> pieces_; ///< what is read, from `next_` on still to come
    std::size_t next_ = 0;
    unsigned id_ = 0; ///< of what was said last
    bool speaking_ = false;
    bool ended_ = false;
    std::vector<std::string> at_; ///< what the place with the focus said
    std::string all_;             ///< and all that the screen said
    VoiceState voice_;            ///< as it was followed last
    int screen_ = -1;
    unsigned notice_ = 0;
    std::vector<VoiceOrder> orders_;
};

} // namespace ui
