// Scans that say more than a number, or the number with other zeros in front: the same product, or the same answer.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using ui::Side;

const std::string torn = "That was no product code. Please scan once more.";
const std::string other = "That was no product code. Scan the bars with a number below them.";

} // namespace

// Zeros: GS1 General Specifications, section 3.3.2 (a GTIN-8, -12 or -13 fills 14 digits up with zeros in front).
// Forms: core/code/element_string.h and core/code/digital_link.h, whose tests name their sources.
TEST_CASE("more than digits: one product, however its number is wrapped")
{
    struct Case {
        std::string why, text, name;
    };
    const Case cases[] = {
        {"as printed", "9520000000011", "Oat rounds"},
        {"with 14 digits", "09520000000011", "Oat rounds"},
        {"DataBar", "0109520000000011", "Oat rounds"},
        {"GS1-128 with its mark",
         "\x1d"
         "0109520000000011"
         "17271231"
         "10A",
         "Oat rounds"},
        {"in brackets", "(01)09520000000011(10)A", "Oat rounds"},
        {"a link", "https://example.org/01/09520000000011", "Oat rounds"},
        {"a link with 13 digits and a batch", "https://example.org/oats/01/9520000000011/10/A7?17=271231",
         "Oat rounds"},
        {"12 digits", "163002000055", "Apple juice"},
        {"12 digits as 13", "0163002000055", "Apple juice"},
        {"12 digits as 14", "00163002000055", "Apple juice"},
        {"12 digits in a link", "https://example.org/01/163002000055", "Apple juice"},
        {"eight digits as 13 are no UPC-E", "0000016300255", "Cocoa bar"},
        {"eight digits as 14", "00000016300255", "Cocoa bar"},
        {"eight digits in an element string", "0100000016300255", "Cocoa bar"},
        {"eight digits in a link", "https://example.org/01/16300255", "Cocoa bar"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Station station;
        station.scan(c.text, core::Symbology::Other);
        CHECK(station.on(Side::Left) == c.name);
        CHECK(station.state().sides[1] == std::nullopt);
    }
}

TEST_CASE("more than digits: what names no product says so, whatever it is wrapped in")
{
    struct Case {
        std::string why, text, words;
    };
    const Case cases[] = {
        {"a store's own number in an element string", "0102101234567890",
         "2101234567890 is a store's own number: it names a different food in another store."},
        {"a store's own number in a link", "https://example.org/01/02101234567890",
         "2101234567890 is a store's own number: it names a different food in another store."},
        {"a store's own short number with 14 digits", "00000020045678",
         "00000020045678 is a store's own number: it names a different food in another store."},
        {"a store's own short number in a link", "https://example.org/01/00000020045678",
         "20045678 is a store's own number: it names a different food in another store."},
        {"a coupon in a link", "https://example.org/01/9811234567891",
         "9811234567891 is a coupon or a receipt, not a product."},
        {"a case",
         "\x1d"
         "0119520000000018",
         "19520000000018 is the number of a case. Scan the package inside it."},
        {"nobody's number, as the package shows it", "https://example.org/01/09520000000998",
         "This station has no label for 9520000000998."},
        {"nobody's number of 12 digits", "0100614141007349", "This station has no label for 614141007349."},
        {"what is in a case",
         "\x1d"
         "0209520000000011"
         "3712",
         other},
        {"a page", "https://example.org/oats", other},
        {"a page with a number in it", "https://example.org/?g=9520000000011", other},
        {"a date that a reader vouched for is no short number",
         "\x1d"
         "12345670",
         other},
        // 11 digits: without the first one or without the check digit. One in ten of the second kind passes as the
        // first.
        {"UPC-A without its first digit", "63002000055", torn},
        {"UPC-A without its zero", "12345678905", torn},
        {"UPC-A without its check digit", "16300200005", torn},
        {"UPC-E without its first digit", "6300255", torn},
        {"UPC-E without first and check digit", "630025", torn},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Station station;
        station.scan(c.text);
        CHECK(station.notice() == c.words);
        CHECK_FALSE(station.state().sides[0]);
    }
}

// What scanners hand on of such codes: tests/kiosk/input/hostile_keys_test.cpp and serial_text_test.cpp.
TEST_CASE("more than digits: a hostile code changes nothing but what is said of it")
{
    std::string all;
    for (int c = 0; c < 256; ++c)
        all += static_cast<char>(c);
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"every byte there is", all},
        {"a number behind a command", "\x1b"
                                      "9520000000011"},
        {"a number before a line end", "9520000000011\r"},
        {"a number with a zero byte", std::string("9520000000011\0", 14)},
        {"an identifier and a command", "]E0\x11"
                                        "9520000000011"},
        {"an element string with a command", "\x1d"
                                             "010952000000001110A\x1b"},
        {"a link with a command", "https://example.org/01/9520000000011\x7f"},
        {"a link to the leader desk", "https://example.org/desk?quit"},
        {"four kilobytes of digits", std::string(4096, '0')},
        {"four kilobytes of brackets", std::string(4096, '(')},
        {"four kilobytes of separators", std::string(4096, '\x1d')},
        {"four kilobytes of link", "https://e/" + std::string(4096, '/')},
        {"placeholders of texts", "{code}{name}%s%n"},
        {"a query of the catalog", "'; DROP TABLE product; --"},
    };
    Station station;
    station.scan(shelf::oats);
    station.ask(ui::NextLanguage{});
    const ui::State before = station.state();
    for (const auto& c : cases) {
        CAPTURE(c.why);
        station.scan(c.text);
        CHECK(station.notice().starts_with("Eso no era un código de producto."));
        CHECK(station.state().notice.tone == ui::Notice::Tone::Refused);
        CHECK(station.state().screen == before.screen);
        CHECK(station.session.language().code() == "es");
        CHECK(station.on(Side::Left) == "Oat rounds");
        CHECK_FALSE(station.state().sides[1]);
        CHECK(station.state().voice.mode == before.voice.mode);
        CHECK(station.state().text_percent == before.text_percent);
        CHECK(station.state().page == before.page);
    }
}

TEST_CASE("more than digits: a scanner that cannot be listened to is told in one sentence that says what to do")
{
    struct Case {
        kiosk::PortTrouble what;
        std::string begins, asks;
    };
    const Case cases[] = {
        {kiosk::PortTrouble::Refused, "The scanner at /dev/ttyACM0 may not be read.", "group dialout"},
        {kiosk::PortTrouble::Busy, "Another program uses the scanner at /dev/ttyACM0.", "Close that program"},
        {kiosk::PortTrouble::Absent, "There is no scanner at /dev/ttyACM0.", "Plug it in"},
        {kiosk::PortTrouble::Pulled, "The scanner is unplugged", "plug it in again"},
        {kiosk::PortTrouble::NoSerialPort, "There is no scanner at /dev/ttyACM0.", "scanner_serial"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.begins);
        Station station;
        station.session.say_scanner_trouble(c.what, "/dev/ttyACM0");
        CHECK(station.notice().starts_with(c.begins));
        CHECK(station.notice().find(c.asks) != std::string::npos);
        station.session.say_scanner_ready();
        CHECK(station.notice() == "The scanner is ready: scan a package.");
        station.scan(shelf::oats); // the one that types works all the same
        CHECK(station.on(Side::Left) == "Oat rounds");
    }
}

} // namespace test
