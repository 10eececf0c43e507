// Codes that hold control characters or more than any product code: scanners type them as keys that work a screen, and
// none of those may come out. And what a scanner is set to put around its codes.
#include "kiosk/input/product_text.h"
#include "tests/kiosk/input/typist.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <string>

using kiosk::Key;
using kiosk::Milliseconds;
using kiosk::ScannerKeys;
using test::Typist;

namespace {

constexpr Milliseconds none{0};
constexpr Milliseconds scanner{1};
constexpr Milliseconds slow_scanner{20};
constexpr Milliseconds long_after{2000};

bool any_key(const Typist& typist)
{
    return std::ranges::any_of(typist.heard, [](const auto& one) { return std::holds_alternative<Key>(one); });
}

std::string four_kilobytes_of(const std::string& piece)
{
    std::string text;
    while (text.size() < 4096)
        text += piece;
    return text + "\n";
}

/// Whether all that came out is scans without a number in them, and at least one.
bool is_refused(const Typist& typist)
{
    const auto scans = typist.scans();
    return !any_key(typist) && !scans.empty() && std::ranges::none_of(scans, kiosk::holds_number);
}

} // namespace

// Code 128 holds all of ASCII (ISO/IEC 15417); how scanners type the control characters is common practice.
TEST_CASE("hostile keys: a code with control characters is one unreadable scan, and no key comes out of it")
{
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"Escape and letters", "\x1b[A\n"},
        {"Escape alone", "\x1b\n"},
        {"two of them, nothing behind", "\x1b\x1b"},
        {"Tab, Tab, Enter: two buttons on, and press", "\t\t\n"},
        {"Enter twice", "\n\n"},
        {"a blank: the one switch", " \n"},
        {"a letter", "q\n"},
        {"Ctrl+Q", "\x11\n"},
        {"Ctrl+Q in the middle", "95205\x11"
                                 "88008010\n"},
        {"a right number behind Escape", "\x1b"
                                         "9521234543213\n"},
        {"a right number before Escape", "9521234543213\x1b\n"},
        {"a right number, Escape, nothing behind", "9521234543213\x1b"},
        {"an identifier and a command", "]C1\x11"
                                        "0109521234543213\n"},
        {"a link with a control character", "https://example.com/01/09521234543213\x1b\n"},
        {"an element string with one", "\x1d"
                                       "010952123454321310A\x0e\n"},
        {"all control characters",
         "\x01\x02\x03\x04\x05\x06\x07\x08\x0b\x0c\x0e\x0f\x10\x11\x12\x13\x14\x1b\x1c\x1e\n"},
        {"line ends among letters", "ab\ncd\nef\n"},
        {"four kilobytes of commands", four_kilobytes_of("\x1b\x1b")},
        {"four kilobytes of letters", four_kilobytes_of("xy")},
        {"four kilobytes of both", four_kilobytes_of("x\x1b\x11y")},
        {"four kilobytes of lines", four_kilobytes_of("xyz\n\t\x1b")},
    };
    for (const auto gap : {none, scanner, slow_scanner})
        for (const auto& c : cases) {
            CAPTURE(c.why);
            CAPTURE(gap.count());
            Typist typist;
            typist.type_code(c.text, gap);
            typist.wait(long_after);
            CHECK(is_refused(typist));
            const auto ends = std::ranges::count_if(c.text, [](char key) { return key == '\n' || key == '\t'; });
            CHECK(typist.scans().size() <= static_cast<std::size_t>(std::max<std::ptrdiff_t>(ends, 1)));
            typist.type_code("9521234543213\n", scanner); // and the next code is read
            CHECK(typist.scans().back().text == "9521234543213");
        }
}

TEST_CASE("hostile keys: behind a right number and Enter nothing comes out either")
{
    for (const std::string behind : {"\x1b", "\x11\x1b", "\t", "\n\n\n", "\x1b\n", "\x11\n\t\n"}) {
        CAPTURE(behind);
        Typist typist;
        typist.type_code("9521234543213\n" + behind, scanner);
        typist.wait(long_after);
        CHECK_FALSE(any_key(typist));
        CHECK(typist.story() == "9521234543213"); // a scanner may be set to send such keys: that is no second scan
    }
    Typist typist;
    typist.type_code("9521234543213\n\x1bxy\n", scanner);
    typist.wait(long_after);
    CHECK(typist.story() == "9521234543213 \x1bxy");
}

TEST_CASE("hostile keys: a code of commands right behind another is answered, too")
{
    Typist typist;
    typist.type_code("\x11\n", scanner);
    typist.wait(Milliseconds{50});
    typist.type_code("\x1b\t\n", scanner);
    typist.wait(long_after);
    CHECK(typist.story() == "\x11 \x1b\t");
}

TEST_CASE("hostile keys: a frame that took long in the middle of a code lets none of its keys through")
{
    for (const auto& text : {"\x1b\n", "\t\t\n", " \n",
                             "\x11"
                             "12345\n"}) {
        Typist typist;
        typist.type_code(text, none, Milliseconds{60});
        typist.wait(long_after);
        CHECK_FALSE(any_key(typist));
    }
}

TEST_CASE("hostile keys: Ctrl and a letter that came at once is no person's, even with nothing behind")
{
    for (const bool person : {false, true}) {
        Typist typist;
        typist.press({Key::Kind::Modifier}, long_after);
        typist.press({Key::Kind::Other, '\x11'}, person ? Milliseconds{60} : Milliseconds{10});
        typist.wait(long_after);
        CHECK(typist.story() == (person ? "<Modifier> <Other>" : "<Modifier> \x11"));
    }
}

TEST_CASE("hostile keys: a sign and the digit on its key are told apart by the whole code")
{
    // By place: "(" is 9 with Shift on a US keyboard, and a French keyboard types every digit with Shift.
    const auto with_shift = [](const std::string& text) {
        Typist typist;
        const std::string signs = ")!@#$%^&*(";
        for (const char c : text) {
            Key key{Key::Kind::Character, c};
            if (const auto digit = signs.find(c); digit != std::string::npos) {
                key.character = static_cast<char>('0' + digit);
                key.sign = c;
            }
            typist.press(key, scanner);
        }
        typist.enter(scanner);
        return typist.story();
    };
    CHECK(with_shift("(01)09521234543213") == "(01)09521234543213");
    CHECK(with_shift("https://example.com/01/09521234543213/10/A%2F7?17=271231&99=X") ==
          "https://example.com/01/09521234543213/10/A%2F7?17=271231&99=X");
    CHECK(with_shift("(%@!@#$%$#@!#") == "9521234543213");
    CHECK(with_shift("]E)(%@!@#$%$#@!#") == "9521234543213");
    CHECK(with_shift("$50 OFF") == "$50 OFF");
}

TEST_CASE("hostile keys: what a scanner is set to put around its codes is taken off, by names and by characters")
{
    struct Case {
        std::string why;
        const char* prefix;
        const char* suffix;
        std::string typed, story;
    };
    const std::string number = "9521234543213";
    const Case cases[] = {
        {"a control character in front", "STX", "", "\x02" + number + "\n", number},
        {"and one behind, without Enter", "STX", "ETX", "\x02" + number + "\x03", number},
        {"and one behind, with Enter", "STX", "ETX", "\x02" + number + "\x03\n", number},
        {"one behind, then Tab", "", "ETX", number + "\x03\t", number},
        {"a word in front", "\"~A\"", "", "~A" + number + "\n", number},
        {"a word behind", "", "\"$\"", number + "$\n", number},
        {"a word behind, without Enter", "", "\"$\"", number + "$", number},
        {"both kinds", "DLE \"x\"", "Escape", "\x10x" + number + "\x1b\n", number},
        {"Enter named as suffix", "", "Enter", number + "\n", number},
        {"in front of an identifier", "STX", "", "\x02]C1010952123454321310A\n",
         "\x1d"
         "010952123454321310A"},
        {"a code that lacks them is read as well", "STX", "ETX", number + "\n", number},
        {"no number between them", "STX", "ETX", "\x02HELLO\x03", "HELLO"},
        {"nothing between them", "STX", "ETX", "\x02\x03\n", ""},
        {"another key in front", "STX", "", "\x01" + number + "\n", "\x01" + number},
        {"the prefix twice", "STX", "", "\x02\x02" + number + "\n", "\x02" + number},
        {"the suffix in the middle", "", "ETX",
         "95212\x03"
         "34543213\n",
         "95212\x03"
         "34543213"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Typist typist(ScannerKeys{kiosk::keys_named(c.prefix).value(), kiosk::keys_named(c.suffix).value()});
        typist.type_code(c.typed, scanner);
        typist.wait(long_after);
        CHECK(typist.story() == c.story);
    }
}

TEST_CASE("hostile keys: a person who presses the key of a prefix presses a key")
{
    Typist typist(ScannerKeys{"~", "\x1b"});
    typist.type("~", long_after);
    typist.press({Key::Kind::Other, '\x1b'}, long_after);
    typist.wait(long_after);
    CHECK(typist.story() == "<~> <Other>");
}
