#include "core/code/gtin.h"
#include "core/code/upc_e.h"

#include <doctest/doctest.h>

using core::Error;
using core::Gtin;

// Source: GS1, "How to calculate a check digit manually" (worked example 629104150021 and its 3).
TEST_CASE("gtin: the check digit of the published worked example")
{
    CHECK(core::check_digit("629104150021") == '3');
}

TEST_CASE("gtin: every refusal says which kind it is")
{
    struct Case {
        const char* why;
        const char* text;
        Error::Kind kind;
    };
    const Case cases[] = {
        {"nothing", "", Error::Kind::WrongLength},
        {"a letter", "952123454321X", Error::Kind::NotDigits},
        {"a blank in front", " 9521234543213", Error::Kind::NotDigits},
        {"nine digits", "123456789", Error::Kind::WrongLength},
        {"fifteen digits", "095212345432130", Error::Kind::WrongLength},
        {"the last digit is one too high", "9521234543214", Error::Kind::WrongCheckDigit},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto gtin = Gtin::parse(c.text);
        REQUIRE_FALSE(gtin);
        CHECK(gtin.error().kind == c.kind);
    }
    CHECK(Gtin::parse(std::string(1'000'000, 'x')).error().detail.size() == 40); // a hostile code is cut, not copied
}

TEST_CASE("gtin: one item has one number, however it was read")
{
    CHECK(Gtin::parse("614141007349")->digits() == "00614141007349");
    CHECK(*Gtin::parse("614141007349") == *Gtin::parse("0614141007349"));
    CHECK(*Gtin::parse("614141007349") == *Gtin::parse("00614141007349"));
}

TEST_CASE("upc-e: shortening undoes expanding for every printable form")
{
    int printable = 0;
    for (int n = 0; n < 1'000'000; n += 7) { // every seventh: all endings come up
        std::string six = std::to_string(n);
        six.insert(0, 6 - six.size(), '0');
        if (!core::is_printable_upc_e(six))
            continue;
        ++printable;
        std::string eight = "0" + six;
        bool found = false;
        for (char check = '0'; check <= '9' && !found; ++check) {
            const auto twelve = core::expand_upc_e(eight + check);
            if (!twelve)
                continue;
            found = true;
            CAPTURE(six);
            CHECK(core::shorten_to_upc_e(*twelve).value_or("refused") == six);
        }
        CHECK(found);
    }
    CHECK(printable > 100'000);
}
