// Scanners before the real program: keyboards of other countries, codes that are meant to do harm, a serial port.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/support/pseudo_port.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace {

/// What an answer says behind the text that was scanned.
std::string notice_of(const test::TraceLine& answer)
{
    return answer.words.substr(answer.words.rfind(" | ") + 3);
}

/// Waits until the station has drawn what it draws of a notice, for while it draws it looks at no key; and a little
/// more, because keys right behind a code belong to it and are not answered a second time.
void settle(test::Station& station, long notice)
{
    constexpr int frames_of_a_change = 3;
    CHECK(test::becomes_true([&] {
        return std::ranges::count_if(station.trace(), [notice](const auto& line) {
                   return line.kind == "frame" && line.notice == notice;
               }) >= frames_of_a_change;
    }));
    std::this_thread::sleep_for(std::chrono::milliseconds(110));
}

std::string without(std::string words, const std::string& part)
{
    const auto place = words.find(part);
    return place == std::string::npos ? words : words.erase(place, part.size());
}

/// Lets the scanner press keys by their place, as X numbers them: whatever is printed on them in this country. Source
/// of the numbers: those of the kernel's keys (linux/input-event-codes.h) and 8.
class PlacesOfKeys {
public:
    PlacesOfKeys()
    {
        row(10, "1234567890-=", "!@#$%^&*()_+");
        row(24, "qwertyuiop[]", "QWERTYUIOP{}");
        row(38, "asdfghjkl;'`", "ASDFGHJKL:\"~");
        row(51, "\\zxcvbnm,./", "|ZXCVBNM<>?");
        row(65, " ", " ");
    }

    /// Words for xdotool: what a US keyboard types there, and Enter. Shift that goes up and down within two
    /// milliseconds SDL takes for held down; no USB scanner is as fast as that, but xdotool is.
    [[nodiscard]] std::vector<std::string> keys_of(const std::string& text) const
    {
        std::vector<std::string> keys;
        bool let_go = false;
        bool held = false;
        for (const char c : text) {
            const auto& [place, shift] = places_.at(c);
            let_go = let_go || (held && !shift);
            if (shift && !held && let_go)
                keys.insert(keys.end(), {"sleep", "0.005", "key", "--delay", "0"});
            held = shift;
            keys.push_back((shift ? "shift+" : "") + std::to_string(place));
        }
        keys.emplace_back("36"); // Enter
        return keys;
    }

private:
    void row(int first, const std::string& plain, const std::string& shifted)
    {
        for (std::size_t i = 0; i < plain.size(); ++i) {
            places_[shifted[i]] = {first + static_cast<int>(i), true};
            places_[plain[i]] = {first + static_cast<int>(i), false};
        }
    }

    std::map<char, std::pair<int, bool>> places_;
};

} // namespace

TEST_CASE("end to end: letters, brackets and signs come right by their place, whatever the keyboard of the country")
{
    const auto products = test::demo_products();
    const PlacesOfKeys places;
    test::Station station;
    const std::map<std::string, std::string> there{{"DISPLAY", station.display().name()}};
    long nth = 0;
    for (const std::string layout : {"fr", "de"}) {
        REQUIRE(test::run({"setxkbmap", layout}, there).status == 0);
        REQUIRE(test::run({"setxkbmap", "-query"}, there).out.find(layout) != std::string::npos);
        for (const std::string before : {"https://example.org/q-a;b=[,]'/~_%Q&@!+*^|:/01/", "(01)", "]e001"}) {
            CAPTURE(layout);
            CAPTURE(before);
            const auto& product = products[static_cast<std::size_t>(nth) % products.size()];
            station.press(places.keys_of(before + product.gtin));
            const auto answer = station.answer(++nth);
            REQUIRE(answer);
            CAPTURE(answer->words);
            CHECK((answer->left == product.gtin || answer->right == product.gtin));
        }
    }
}

TEST_CASE("end to end: a hostile code changes nothing but what is said of it")
{
    const auto products = test::demo_products();
    test::Station station;
    station.scan(products[0].digits);
    const auto first = station.answer(1);
    REQUIRE(first);
    const auto before = station.frame_of_notice(first->notice);
    REQUIRE(before);
    const auto rest_of_screen = without(before->words, notice_of(*first));
    REQUIRE(rest_of_screen.size() < before->words.size());
    const auto digits = [&] {
        std::vector<std::string> keys;
        for (const char digit : products[1].digits)
            keys.emplace_back(1, digit);
        return keys;
    }();
    struct Code {
        std::string why;
        std::vector<std::string> keys;
    };
    std::vector<Code> codes = {
        {"Ctrl+Q, with nothing behind", {"ctrl+q"}},
        {"Ctrl+Q and Enter", {"ctrl+q", "Return"}},
        {"Escape, then on and press", {"Escape", "Tab", "Tab", "Return", "Return"}},
        {"keys of the voice", {"F2", "F3", "F5", "F8", "Return"}},
        {"the whole screen and other keys of windows", {"F11", "alt+F4", "alt+Tab", "super+l", "Return"}},
        {"pages and places", {"Page_Down", "Page_Up", "Home", "End", "Delete", "BackSpace", "Return"}},
        {"the one switch", {"space", "Return"}},
        {"commands of copying", {"ctrl+a", "ctrl+c", "ctrl+v", "ctrl+x", "ctrl+z", "Return"}},
        {"an escape sequence among letters", {"a", "Escape", "bracketleft", "B", "ctrl+m", "ctrl+j"}},
        {"a right number between commands", digits},
        {"a right number before a command", digits},
        {"four kilobytes", std::vector<std::string>(4096, "x")},
    };
    codes[9].keys.insert(codes[9].keys.begin(), "F2");
    codes[9].keys.emplace_back("Return");
    codes[10].keys.insert(codes[10].keys.end(), {"Escape", "Return"});
    for (std::size_t i = 0; i < 4096; i += 5)
        codes[11].keys[i] = i % 2 == 0 ? "ctrl+q" : "F2";
    codes[11].keys.emplace_back("Return");
    long nth = 1;
    settle(station, first->notice);
    for (const auto& code : codes) {
        CAPTURE(code.why);
        station.press(code.keys);
        const auto answer = station.answer(++nth);
        REQUIRE(answer);
        CHECK(notice_of(*answer).starts_with("That was no product code."));
        const auto frame = station.frame_of_notice(answer->notice);
        REQUIRE(frame);
        CHECK(frame->screen == before->screen);
        CHECK(frame->left == products[0].gtin);
        CHECK(frame->right == "-");
        CHECK(without(frame->words, notice_of(*answer)) == rest_of_screen); // language, page, voice and all
        settle(station, answer->notice);
    }
    CHECK(std::ranges::none_of(station.trace(), [](const auto& line) { return line.kind == "spoken"; }));
    station.scan(products[1].digits); // and the next package is scanned as ever
    const auto is_it = [&](const auto& line) { return line.kind == "answer" && line.right == products[1].gtin; };
    CHECK(test::becomes_true([&] { return std::ranges::any_of(station.trace(), is_it); }, std::chrono::seconds(20)));
    CHECK(station.program().end() == 0);
}

TEST_CASE("end to end: a scanner on a serial port is read, and the one that types beside it")
{
    const auto products = test::demo_products();
    const test::TempFolder desk;
    const auto port = desk.file("ttyACM0");
    std::optional<test::PseudoPort> scanner(std::in_place, desk.file("hidden"));
    // A setting takes ports of /dev alone, so it names the pseudo terminal itself.
    const auto terminal = std::filesystem::read_symlink(desk.file("hidden")).string();
    const auto settings = desk.write("station.conf", "scanner_serial = " + terminal + "\nscanner_prefix = STX\n");
    test::Station station({"--settings", settings});
    scanner->send("\x02"
                  "01" +
                  products[0].gtin + "\r");
    const auto first = station.answer(1);
    REQUIRE(first);
    CHECK(first->left == products[0].gtin);
    scanner->send("\x1b[2J\x11 F2\r");
    REQUIRE(station.answer(2));
    CHECK(station.answer(2)->words.find("no product code") != std::string::npos);
    scanner.reset(); // pulled out
    station.scan(products[1].digits);
    const auto second = station.answer(3);
    REQUIRE(second);
    CHECK(second->right == products[1].gtin);
    CHECK(station.said().empty());
}
