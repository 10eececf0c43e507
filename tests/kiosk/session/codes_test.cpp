// Scans that name no product here: each is answered in words, and the screen stays where it helps.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using ui::ScreenId;
using ui::Side;
using Tone = ui::Notice::Tone;

} // namespace

TEST_CASE("codes: a good number that the catalog does not have leads to Not found")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::nobody);
    CHECK(station.state().screen == ScreenId::NotFound);
    CHECK(station.state().code == shelf::nobody);
    CHECK(station.notice() == "This station has no label for " + shelf::nobody + ".");
    CHECK(station.state().notice.tone == Tone::Refused);
    CHECK(station.on(Side::Left) == "Oat rounds"); // nothing is lost
    station.scan(shelf::wheat);                    // and the next scan goes on
    CHECK(station.state().screen == ScreenId::Pair);
}

// Classes of codes: GS1 General Specifications, section 1.4, as in tests/data/reference/gtin.csv.
TEST_CASE("codes: numbers that name no product are told apart, and the screen stays")
{
    struct Case {
        std::string why, text, words;
    };
    const Case cases[] = {
        {"a store's own number, prefix 20 to 29", "2101234567890",
         "2101234567890 is a store's own number: it names a different food in another store."},
        {"a company's own number, UPC number system 4", "406602301468",
         "406602301468 is a store's own number: it names a different food in another store."},
        {"a store's own short number", "20045678",
         "20045678 is a store's own number: it names a different food in another store."},
        {"a coupon, prefix 981", "9811234567891", "9811234567891 is a coupon or a receipt, not a product."},
        {"a book, prefix 978", "9780306406157", "9780306406157 is a book, a magazine or music."},
        {"a case: indicator 1", "19520000000018",
         "19520000000018 is the number of a case. Scan the package inside it."},
        {"a wrong check digit", "9520000000012", "That was no product code. Please scan once more."},
        {"letters", "HELLO", "That was no product code. Scan the bars with a number below them."},
        {"nothing", "", "That was no product code. Scan the bars with a number below them."},
        {"a web address of a QR code", "https://example.org/?g=9520000000011",
         "That was no product code. Scan the bars with a number below them."},
        {"a thousand digits", std::string(1'000, '7'), "That was no product code. Please scan once more."},
    };
    for (const auto screen : {ScreenId::Welcome, ScreenId::Pair, ScreenId::PickAisle})
        for (const auto& c : cases) {
            CAPTURE(c.why);
            Station station;
            if (screen == ScreenId::Pair) {
                station.scan(shelf::oats);
                station.scan(shelf::wheat);
            } else if (screen == ScreenId::PickAisle) {
                station.ask(ui::ChooseAisle{});
            }
            const unsigned number = station.state().notice.number;
            station.scan(c.text);
            CHECK(station.notice() == c.words);
            CHECK(station.state().notice.tone == Tone::Refused);
            CHECK(station.state().notice.number == number + 1);
            CHECK(station.state().screen == screen);
            CHECK(station.state().sides[0].has_value() == (screen == ScreenId::Pair));
        }
}

TEST_CASE("codes: a refused scan after an unknown one does not leave the earlier code standing large")
{
    for (const std::string text : {"9520000000012", "2101234567890", "19520000000018", "HELLO"}) {
        CAPTURE(text);
        Station station;
        station.scan(shelf::oats);
        station.scan(shelf::nobody);
        REQUIRE(station.state().screen == ScreenId::NotFound);
        station.scan(text);
        CHECK(station.state().screen == ScreenId::OneLabel); // where it was before the unknown code
        CHECK(station.state().notice.tone == Tone::Refused);
    }
}

// Eight digits whose bars nobody told may be an EAN-8 or a UPC-E; docs/demo-catalog.md has such a pair.
TEST_CASE("codes: eight digits that are two products ask which one, and a touch answers")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::cookies_ean8);
    CHECK(station.state().screen == ScreenId::WhichProduct);
    CHECK(station.notice() == "Two products have this number. Which one is it?");
    REQUIRE(station.state().picks.size() == 2);
    CHECK(station.state().picks[0].name == "Cocoa bar");
    CHECK(station.state().picks[1].name == "Apple juice");
    CHECK(station.on(Side::Right).empty()); // nothing is taken before the answer
    station.ask(ui::TakeProduct{station.state().picks[1].gtin});
    CHECK(station.on(Side::Right) == "Apple juice");
    CHECK(station.state().screen == ScreenId::Pair);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::OneLabel); // a question that was answered is not asked again
}

TEST_CASE("codes: a reader that tells the bars is believed")
{
    Station station;
    station.scan(shelf::cookies_ean8, core::Symbology::Ean8);
    CHECK(station.on(Side::Left) == "Cocoa bar");
    station.scan(shelf::cookies_ean8, core::Symbology::UpcE);
    CHECK(station.on(Side::Right) == "Apple juice");
    station.scan(shelf::juice_upca, core::Symbology::UpcA);
    CHECK(station.notice() == "Apple juice is already on the right.");
}

TEST_CASE("codes: only one of the two in the catalog is no question")
{
    catalog::Store store(":memory:");
    store.put(*small_store().find(core::Gtin::parse(shelf::juice_upca).value()));
    kiosk::Session session(store, station_languages());
    session.take({shelf::cookies_ean8, core::Symbology::Unknown, kiosk::Scan::From::Scanner, {}});
    REQUIRE(session.state().sides[0]);
    CHECK(session.state().sides[0]->product.name == "Apple juice");
}

TEST_CASE("codes: a store's own number is not looked up, even when a catalog has it")
{
    // Another store's number must not find this store's food.
    auto product = *small_store().find(core::Gtin::parse(shelf::oats).value());
    product.gtin = core::Gtin::parse("2101234567890").value();
    Station station;
    station.store.put(product);
    station.scan("2101234567890");
    CHECK_FALSE(station.state().sides[0]);
}

namespace {

/// A label that the leader gave to a number of this place.
core::Product own_label(const std::string& digits, const std::string& name, bool this_place_only = true)
{
    auto product = *small_store().find(core::Gtin::parse(shelf::oats).value());
    product.gtin = core::Gtin::parse(digits).value();
    product.name = name;
    product.this_place_only = this_place_only;
    return product;
}

} // namespace

TEST_CASE("codes: a number of this place finds the label that it was given here, and says whose it is")
{
    Station station;
    station.store.put(own_label("406602301468", "Rice, repacked"));
    station.scan("406602301468");
    CHECK(station.on(Side::Left) == "Rice, repacked");
    CHECK(station.state().screen == ScreenId::OneLabel);
    CHECK(station.state().label->pieces.at(0).name ==
          "This label is for this place only. Its number was given here, and names a different food elsewhere.");
    station.scan(shelf::wheat);
    CHECK(station.state().pair->first.at(0) ==
          "Left: a label for this place only. Its number was given here, and names a different food elsewhere.");
}

TEST_CASE("codes: packages with their price in the number find the label of their item, a whole number goes first")
{
    Station station;
    station.store.put(own_label("212345000007", "Bean salad"));
    station.scan("212345704998");
    CHECK(station.on(Side::Left) == "Bean salad");
    station.store.put(own_label("212345704998", "Bean salad, large"));
    station.scan("212345704998");
    CHECK(station.on(Side::Right) == "Bean salad, large");
    station.scan("212346704997");
    CHECK(station.notice() == "212346704997 is a store's own number: it names a different food in another store.");
}

TEST_CASE("codes: a store's own number finds nothing that was not meant for this place")
{
    Station station;
    station.store.put(own_label("406602301468", "Somebody's food", false));
    station.scan("406602301468");
    CHECK(station.on(Side::Left).empty());
    CHECK(station.notice() == "406602301468 is a store's own number: it names a different food in another store.");
}

} // namespace test
