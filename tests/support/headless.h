// Draws screens with no window and no graphics card, hands out what they say, and taps them.
#pragma once

#include "ui/actions.h"
#include "ui/look/look.h"
#include "ui/notes.h"
#include "ui/state.h"
#include "ui/ui.h"

#include <functional>
#include <string>
#include <string_view>

namespace test {

/// The language files of the checkout, read once.
[[nodiscard]] const ui::Language& language(std::string_view code);

/// An ImGui context of its own, with the station's letters.
class Headless {
public:
    /// Draws something into a window that fills the display; its actions are what it asked for.
    using Drawing = std::function<void(const ui::Ui&, ui::Actions&)>;

    explicit Headless(ImVec2 size = {1280, 800}, int text_percent = 100, std::string_view language_code = "en");
    /// A glass that was measured, or from which a group reads.
    struct On {
        explicit On(const ui::Glass& which) : glass(which) {}
        ui::Glass glass;
    };
    Headless(const On& on, int text_percent, std::string_view language_code = "en");
    ~Headless();
    Headless(const Headless&) = delete;
    Headless& operator=(const Headless&) = delete;

    /// Draws one frame of the screen that the state names and hands back what it asked for.
    ui::Actions frame(const ui::State& state);
    /// Draws one frame of anything else, such as a single widget.
    ui::Actions frame(const Drawing& drawing);

    /// What the last frame showed, in reading order.
    [[nodiscard]] const ui::Notes& notes() const { return notes_; }
    /// The words of the notes, one line each.
    [[nodiscard]] std::string words() const;
    /// Whether one of the notes has these words somewhere in it.
    [[nodiscard]] bool says(std::string_view words) const;

    /// Puts a finger on the nth (from 0) touchable thing with that fixed text, and lifts it. Returns what was asked
    /// for. Throws std::out_of_range when there is none.
    ui::Actions tap(const ui::State& state, ui::TextId id, std::size_t nth = 0);
    /// The same for a thing with these very words.
    ui::Actions tap(const ui::State& state, std::string_view words, std::size_t nth = 0);

    [[nodiscard]] const ui::Look& look() const { return look_; }

private:
    ui::Actions tap(const ui::State& state, const std::function<bool(const ui::Note&)>& is_it, std::size_t nth);

    ImGuiContext* context_;
    const ui::Language& language_;
    ui::Look look_;
    ui::Notes notes_;
};

} // namespace test
