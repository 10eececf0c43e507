// Types on a wedge like a scanner or like a person, on a clock of its own.
#pragma once

#include "kiosk/input/wedge.h"

#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace test {

/// Presses keys with a set time between them and keeps all that the wedge answers.
class Typist {
public:
    /// Presses one key `gap` after the one before.
    void press(kiosk::Key key, kiosk::Milliseconds gap)
    {
        now += gap;
        key.at = now;
        key.tag = ++pressed;
        keep(wedge.press(key));
    }
    void type(std::string_view text, kiosk::Milliseconds gap, kiosk::Milliseconds blind = {})
    {
        for (const char c : text)
            press({kiosk::Key::Kind::Character, c, {}, blind}, gap);
    }
    void enter(kiosk::Milliseconds gap, kiosk::Milliseconds blind = {})
    {
        press({kiosk::Key::Kind::End, '\r', {}, blind}, gap);
    }
    void wait(kiosk::Milliseconds time)
    {
        now += time;
        keep(wedge.idle(now));
    }

    /// Presses the keys of what a scanner types for this text: characters, "\n" for Enter, other control characters as
    /// keys that type nothing.
    void type_code(std::string_view text, kiosk::Milliseconds gap, kiosk::Milliseconds blind = {})
    {
        for (const char c : text) {
            const bool ends = c == '\n' || c == '\t';
            const bool types = c >= ' ' || c == '\x1d';
            const auto kind = ends    ? kiosk::Key::Kind::End
                              : types ? kiosk::Key::Kind::Character
                                      : kiosk::Key::Kind::Other;
            press({kind, c, {}, blind}, gap);
        }
    }

    /// The scans heard, oldest first.
    [[nodiscard]] std::vector<kiosk::Scan> scans() const
    {
        std::vector<kiosk::Scan> out;
        for (const auto& one : heard)
            if (const auto* scan = std::get_if<kiosk::Scan>(&one))
                out.push_back(*scan);
        return out;
    }
    /// The texts of the scans with a blank between, and a person's keys as "<1>", "<End>", "<Other>".
    [[nodiscard]] std::string story() const
    {
        std::string out;
        for (const auto& one : heard) {
            if (!out.empty())
                out += ' ';
            if (const auto* scan = std::get_if<kiosk::Scan>(&one))
                out += scan->text;
            else
                out += name_of(std::get<kiosk::Key>(one));
        }
        return out;
    }

    explicit Typist(kiosk::ScannerKeys around = {}) : wedge(std::move(around)) {}

    kiosk::Wedge wedge;
    kiosk::TimePoint now{};
    std::uint64_t pressed = 0;
    std::vector<kiosk::Heard> heard;

private:
    void keep(const std::vector<kiosk::Heard>& more) { heard.insert(heard.end(), more.begin(), more.end()); }
    static std::string name_of(const kiosk::Key& key)
    {
        switch (key.kind) {
        case kiosk::Key::Kind::Character:
            return std::string("<") + key.character + ">";
        case kiosk::Key::Kind::End:
            return "<End>";
        case kiosk::Key::Kind::Modifier:
            return "<Modifier>";
        case kiosk::Key::Kind::Other:
            return "<Other>";
        }
        return "?";
    }
};

} // namespace test
