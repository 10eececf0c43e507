#include "kiosk/input/serial_text.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using kiosk::Milliseconds;
using kiosk::SerialText;
using kiosk::TimePoint;
using Texts = std::vector<std::string>;

namespace {

const TimePoint start{Milliseconds{1'000}};
const std::string number = "9521234543213";

} // namespace

// Line ends: what scanners can be set to send is common practice; names of control characters are those of ASCII.
TEST_CASE("serial text: bytes become texts, however they end and in whatever pieces they come")
{
    struct Case {
        std::string why, bytes;
        Texts texts;
    };
    const std::string page(4096, 'x');
    const Case cases[] = {
        {"carriage return", number + "\r", {number}},
        {"line feed", number + "\n", {number}},
        {"both", number + "\r\n", {number}},
        {"Tab", number + "\t", {number}},
        {"framed by STX and ETX", "\x02" + number + "\x03", {number}},
        {"framed, and a line end", "\x02" + number + "\x03\r\n", {number}},
        {"two codes", number + "\r" + "HELLO\r", {number, "HELLO"}},
        {"ends alone", "\r\n\t\x03\r\n", {}},
        {"an element string keeps its separators",
         "\x1d"
         "010952123454321310A\x1d"
         "99B\r",
         {"\x1d"
          "010952123454321310A\x1d"
          "99B"}},
        {"a control character stays, so that it is no number",
         "95212\x1b"
         "34543213\r",
         {"95212\x1b"
          "34543213"}},
        {"nothing among digits",
         std::string("95\0"
                     "21\r",
                     6),
         {std::string("95\0"
                      "21",
                      5)}},
        {"bytes beyond ASCII", "\xFF\xFE\x80\r", {"\xFF\xFE\x80"}},
        {"four kilobytes are one text, cut", page + "\r" + number + "\r", {page.substr(0, 513), number}},
        {"exactly as long as a text may be", page.substr(0, 512) + "\r", {page.substr(0, 512)}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        SerialText whole;
        CHECK(whole.take(c.bytes, start) == c.texts);
        CHECK_FALSE(whole.decides_at());
        SerialText pieces;
        Texts texts;
        for (const char byte : c.bytes)
            for (auto& text : pieces.take({&byte, 1}, start))
                texts.push_back(text);
        CHECK(texts == c.texts);
    }
}

TEST_CASE("serial text: a scanner that sends no end is understood by its pauses")
{
    SerialText text;
    CHECK(text.take(number, start).empty());
    CHECK(text.decides_at() == start + Milliseconds{100});
    CHECK(text.idle(start + Milliseconds{99}).empty());
    CHECK(text.idle(start + Milliseconds{100}) == Texts{number});
    CHECK_FALSE(text.decides_at());
    CHECK(text.take("95212", start).empty());
    CHECK(text.take("34543213", start + Milliseconds{99}).empty()); // torn, but not by a pause
    CHECK(text.take(number, start + Milliseconds{300}) == Texts{number});
    CHECK(text.idle(start + Milliseconds{400}) == Texts{number});
}

TEST_CASE("serial text: a text without end is answered once, until a pause ends it")
{
    SerialText text;
    std::size_t answered = 0;
    for (int i = 0; i < 1'000; ++i)
        answered += text.take(std::string(1'000, 'x'), start).size();
    CHECK(answered == 1);
    CHECK(text.idle(start + Milliseconds{100}).empty());
    CHECK(text.take(number + "\r", start + Milliseconds{101}) == Texts{number});
}

TEST_CASE("serial text: what a scanner is set to put around its codes is taken off")
{
    SerialText text({"~A", "\x1b$"});
    CHECK(text.take("~A" + number + "\x1b$\r", start) == Texts{number});
    CHECK(text.take(number + "\r", start) == Texts{number});
    CHECK(text.take("~A\x1b$\r", start).empty());
    CHECK(text.take("A" + number + "\x1b\r", start) == Texts{"A" + number + "\x1b"});
}
