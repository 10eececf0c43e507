// Types on a wedge like a scanner or like a person, on a clock of its own.
#pragma once

#include "kiosk/input/wedge.h"

#include <string>
#include <string_view>
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
            press({kiosk::Key::Kind::Character, c, {}, blind, 0}, gap);
    }
    void enter(kiosk::Milliseconds gap, kiosk::Milliseconds blind = {})
    {
        press({kiosk::Key::Kind::End, 0, {}, blind, 0}, gap);
    }
    void wait(kiosk::Milliseconds time)
    {
        now += time;
        keep(wedge.idle(now));
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
