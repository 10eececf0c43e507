#include "core/code/gtin.h"
#include "kiosk/input/wedge.h"
#include "tests/kiosk/input/typist.h"

#include <doctest/doctest.h>

#include <string>

using kiosk::Key;
using kiosk::Milliseconds;
using test::Typist;

namespace {

constexpr Milliseconds none{0};
constexpr Milliseconds scanner{1};  // a thousand characters a second
constexpr Milliseconds person{130}; // some ninety words a minute
constexpr Milliseconds long_after{2000};

} // namespace

// Numbers: 9521234543213 and 614141007349 from the GS1 General Specifications, 01234565 passes as EAN-8 and as UPC-E.
// Speeds: common practice, no source.
TEST_CASE("wedge: a burst with a right check digit is one scan, however it comes")
{
    struct Case {
        std::string why;
        const char* text;
        Milliseconds gap, blind;
    };
    const Case cases[] = {
        {"full speed", "9521234543213", scanner, none},
        {"all in one look at the queue", "9521234543213", none, none},
        {"all in one look after a stalled frame", "9521234543213", none, Milliseconds{900}},
        {"a wireless scanner that stutters", "9521234543213", Milliseconds{50}, none},
        {"at the edge of what still belongs together", "9521234543213", Milliseconds{100}, none},
        {"twelve digits", "614141007349", scanner, none},
        {"eight digits, EAN-8 or UPC-E", "01234565", scanner, none},
        {"eight digits that pass only as UPC-E", "04252614", scanner, none},
        {"fourteen digits", "15400141288763", scanner, none},
        {"DataBar without identifiers", "0109521234543213", scanner, none},
        {"a link", "https://example.com/01/09521234543213/10/A?17=271231", scanner, none},
        {"doubled digits at the speed of a scanner", "2222222222222", scanner, none},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Typist ended;
        ended.type(c.text, c.gap, c.blind);
        ended.enter(c.gap, c.blind);
        CHECK(ended.story() == c.text);
        CHECK(ended.scans().at(0).symbology == core::Symbology::Unknown);
        CHECK(ended.scans().at(0).from == kiosk::Scan::From::Scanner);
        CHECK(ended.scans().at(0).when == ended.now);

        Typist open; // a scanner that is set to put nothing behind the code
        open.type(c.text, c.gap, c.blind);
        CHECK(open.story().empty());
        open.wait(Milliseconds{100});
        CHECK(open.story() == c.text);
    }
}

TEST_CASE("wedge: a burst that is no product code is a scan too, so that the station can answer")
{
    struct Case {
        std::string why;
        const char* text;
    };
    const Case cases[] = {
        {"wrong check digit", "9521234543214"},
        {"a web address from a QR code", "https://example.com/offers"},
        {"six digits", "425261"},
        {"letters of a membership card", "MEMBER-0042"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Typist typist;
        typist.type(c.text, scanner);
        typist.enter(scanner);
        CHECK(typist.story() == c.text);
    }
}

TEST_CASE("wedge: a person's keys are handed on in order, none kept")
{
    Typist typist;
    typist.type("0425", person);
    typist.enter(person);
    typist.wait(person);
    CHECK(typist.story() == "<0> <4> <2> <5> <End>");

    Typist
        eight; // even a whole number with a right check digit: typed slowly, it belongs to the field it was typed into
    eight.type("01234565", person);
    eight.enter(person);
    eight.wait(person);
    CHECK(eight.scans().empty());
    CHECK(eight.heard.size() == 9);
    CHECK(std::get<Key>(eight.heard.back()).tag == 9);

    Typist fast; // 80 ms a key, and a wrong check digit: in doubt the check digit decides
    fast.type("9521234543214", Milliseconds{80});
    fast.enter(Milliseconds{80});
    fast.wait(person);
    CHECK(fast.scans().empty());
    CHECK(fast.heard.size() == 14);

    Typist two_fingers; // fingers that fall together
    two_fingers.type("12345", none);
    two_fingers.wait(person);
    CHECK(two_fingers.story() == "<1> <2> <3> <4> <5>");

    Typist quick; // a short word and Enter behind it, some 200 words a minute
    quick.type("oat", Milliseconds{60});
    quick.enter(Milliseconds{60});
    quick.wait(person);
    CHECK(quick.story() == "<o> <a> <t> <End>");
}

TEST_CASE("wedge: Enter, Tab, arrows and the like of a person are handed on after a twentieth of a second, in order")
{
    Typist typist;
    typist.enter(long_after);
    CHECK(typist.wedge.decides_at() == typist.now + Milliseconds{50});
    typist.wait(Milliseconds{49});
    CHECK(typist.story().empty());
    typist.wait(Milliseconds{1});
    CHECK(typist.story() == "<End>");
    typist.press({}, long_after);
    typist.press({}, Milliseconds{90}); // as fast as fingers are
    CHECK(typist.story() == "<End> <Other>");
    typist.type("7", long_after);
    typist.press({}, Milliseconds{90}); // what is held comes first
    typist.wait(person);
    CHECK(typist.story() == "<End> <Other> <Other> <7> <Other>");
    CHECK_FALSE(typist.wedge.decides_at());
}

TEST_CASE("wedge: an arrow that is held down acts as long as it is")
{
    for (const int gap : {20, 33, 40}) {
        CAPTURE(gap);
        Typist typist;
        Key arrow{Key::Kind::Other, 'v'};
        typist.press(arrow, long_after);
        arrow.repeat = true;
        typist.press(arrow, Milliseconds{300}); // the pause before a key repeats
        CHECK(typist.story() == "<Other> <Other>");
        for (int i = 0; i < 10; ++i)
            typist.press(arrow, Milliseconds{gap});
        CHECK(typist.heard.size() == 12); // at once, and not when it is let go
        CHECK(typist.scans().empty());
    }
}

TEST_CASE("wedge: a held key is a person's, also while it repeats fast")
{
    for (const int gap : {20, 33, 40}) {
        CAPTURE(gap);
        Typist typist;
        typist.type("2", long_after);
        typist.type("222222222222", Milliseconds{gap});
        typist.enter(long_after);
        typist.wait(person);
        CHECK(typist.scans().empty());
        CHECK(typist.heard.size() == 14);
    }
}

TEST_CASE("wedge: after a stalled frame a person does not look like a scanner")
{
    // Eight keys lay in the queue for 900 ms and are read at one time: enough for a person to have typed them.
    Typist typist;
    typist.type("12345678", none, Milliseconds{900});
    typist.enter(none, Milliseconds{900});
    typist.wait(person);
    CHECK(typist.scans().empty());
    CHECK(typist.heard.size() == 9);

    Typist both; // a person's digits, and a scan behind them
    both.type("12345678", none, Milliseconds{900});
    both.enter(none, Milliseconds{900});
    both.type("9521234543213", none, Milliseconds{900});
    both.enter(none, Milliseconds{900});
    both.wait(person);
    CHECK(both.story() == "<1> <2> <3> <4> <5> <6> <7> <8> <End> 9521234543213");

    Typist short_frame; // 16 ms are not enough: that was a scanner
    short_frame.type("12345678", none, Milliseconds{16});
    short_frame.enter(none, Milliseconds{16});
    CHECK(short_frame.story() == "12345678");
}

TEST_CASE("wedge: a scan that a stalled frame cut in two is one scan")
{
    Typist typist;
    typist.type("952123", scanner);
    typist.press({Key::Kind::Character, '4', {}, Milliseconds{500}, 0}, Milliseconds{500});
    typist.type("543213", none, Milliseconds{500});
    typist.enter(none, Milliseconds{500});
    CHECK(typist.story() == "9521234543213");
}

TEST_CASE("wedge: a thousand scans in one look at the queue are a thousand scans")
{
    for (const bool timed : {false, true}) {
        Typist typist;
        for (int i = 0; i < 1000; ++i) {
            std::string body = std::to_string(952'000'000'000 + i * 37);
            typist.type(body + core::check_digit(body), timed ? scanner : none);
            typist.enter(timed ? scanner : none);
        }
        REQUIRE(typist.scans().size() == 1000);
        CHECK(typist.heard.size() == 1000);
        for (std::size_t i = 0; i < 1000; ++i)
            CHECK(typist.scans()[i].text.substr(0, 12) == std::to_string(952'000'000'000 + static_cast<long>(i) * 37));
    }
}

TEST_CASE("wedge: scans without a suffix that lay in the queue together are taken apart, never guessed")
{
    Typist typist;
    typist.type("9521234543213614141007349", none, Milliseconds{2000});
    typist.wait(Milliseconds{100});
    CHECK(typist.story() == "9521234543213 614141007349");

    Typist not_stalled; // without a stall it is one long code
    not_stalled.type("9521234543213614141007349", scanner);
    not_stalled.wait(Milliseconds{100});
    CHECK(not_stalled.story() == "9521234543213614141007349");
}

TEST_CASE("wedge: a scanner that ends with two end keys presses no button")
{
    Typist typist;
    typist.type("9521234543213", scanner);
    typist.enter(scanner);
    typist.enter(scanner);
    CHECK(typist.story() == "9521234543213");
    typist.enter(Milliseconds{101}); // a person
    typist.wait(person);
    CHECK(typist.story() == "9521234543213 <End>");
}

TEST_CASE("wedge: Shift in the middle of a code does not end it")
{
    Typist typist;
    typist.type("]", scanner);
    typist.press({Key::Kind::Modifier, 0, {}, none, 0}, scanner);
    typist.type("E09521234543213", scanner);
    typist.enter(scanner);
    REQUIRE(typist.scans().size() == 1);
    CHECK(typist.scans()[0].text == "9521234543213");
    CHECK(typist.scans()[0].symbology == core::Symbology::Ean13);
}

TEST_CASE("wedge: a burst without end is answered once and costs no more memory")
{
    Typist typist;
    for (int i = 0; i < 20'000; ++i)
        typist.type(i % 2 == 0 ? "1" : "7", scanner);
    typist.enter(scanner);
    CHECK(typist.heard.size() == 1);
    CHECK(typist.scans().at(0).text.size() == 513);
    typist.type("9521234543213", scanner); // the next scan is read
    typist.enter(scanner);
    CHECK(typist.scans().size() == 2);
    CHECK(typist.scans().back().text == "9521234543213");
}

TEST_CASE("wedge: when it will decide is told, so that nobody needs to ask all the time")
{
    Typist typist;
    CHECK_FALSE(typist.wedge.decides_at());
    typist.type("5", long_after);
    CHECK(typist.wedge.decides_at() == typist.now + Milliseconds{100});
    typist.wait(Milliseconds{99});
    CHECK(typist.heard.empty());
    typist.wait(Milliseconds{1});
    CHECK(typist.story() == "<5>");
    CHECK_FALSE(typist.wedge.decides_at());
}
