#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/camera/digit_choice.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using core::Symbology;
using kiosk::Evidence;

namespace {

/// Evidence for each digit of a row, in the sets named by A and B (C is written A: the first ten).
Evidence for_digits(const std::string& digits, const std::string& sets, float weight)
{
    Evidence evidence(digits.size());
    for (std::size_t i = 0; i < digits.size(); ++i)
        evidence[i][static_cast<std::size_t>(digits[i] - '0') + (sets[i] == 'B' ? 10 : 0)] = weight;
    return evidence;
}

} // namespace

// Source of the number sets: GS1 General Specifications, 5.2.1.2 (EAN-13) and 5.2.2.4 (UPC-E); memory of the tables,
// and the bars that zint draws hold the same ones in shop_reader_test.
TEST_CASE("digit choice: number sets give the first digit of an EAN-13")
{
    const struct {
        const char* digits; ///< behind the first
        const char* sets;
        const char* code;
        Symbology symbology;
    } rows[] = {
        {"006381333931", "ABAABBAAAAAA", "4006381333931", Symbology::Ean13},
        {"614141007349", "AAAAAAAAAAAA", "614141007349", Symbology::UpcA},
        {"521234543213", "ABBABAAAAAAA", "9521234543213", Symbology::Ean13},
    };
    for (const auto& row : rows) {
        CAPTURE(row.code);
        const auto choice = kiosk::choose(for_digits(row.digits, row.sets, 10), kiosk::ean_13);
        CHECK(choice.best == kiosk::Reading{row.code, row.symbology});
        CHECK(choice.ahead > 5);
        CHECK(choice.next.text != choice.best.text);
    }
}

TEST_CASE("digit choice: a digit that nothing speaks for follows from the check digit")
{
    Evidence evidence = for_digits("614141007349", "AAAAAAAAAAAA", 10);
    evidence[4] = {};
    CHECK(kiosk::choose(evidence, kiosk::ean_13).best.text == "614141007349");
    // Two of them do not: then some other code is as likely.
    evidence[7] = {};
    CHECK(kiosk::choose(evidence, kiosk::ean_13).ahead < 1e-3);
}

// Two digits that nothing speaks for leave ten codes: each value of one asks for one value of the other (GS1 General
// Specifications, section 7.9: weights 3 and 1, both without a common divisor with 10).
TEST_CASE("digit choice: the likeliest codes are those that what is not seen leaves")
{
    Evidence evidence = for_digits("614141007349", "AAAAAAAAAAAA", 10);
    evidence[4] = evidence[7] = {};
    const auto codes = kiosk::likeliest(evidence, kiosk::ean_13);
    REQUIRE(codes.size() == 20);
    std::set<std::string> as_likely;
    for (std::size_t i = 0; i < codes.size(); ++i) {
        CHECK(core::Gtin::parse(codes[i].reading.text));
        if (i > 0)
            CHECK(codes[i].weight <= codes[i - 1].weight);
        if (codes[i].weight == codes[0].weight)
            as_likely.insert(codes[i].reading.text);
    }
    CHECK(as_likely.size() == 10);
    CHECK(as_likely.count("614141007349") == 1);
    for (const auto& code : as_likely) {
        CHECK(code.substr(0, 4) == "6141");
        CHECK(code.substr(5, 2) == "10");
        CHECK(code.substr(8) == "7349");
    }
    CHECK(kiosk::likeliest(Evidence(8), kiosk::ean_13).empty());
}

TEST_CASE("digit choice: the first two of the likeliest are the best one and the next")
{
    for (const auto* layout : {&kiosk::ean_13, &kiosk::ean_8, &kiosk::upc_e}) {
        Evidence evidence(layout->digits());
        std::uint64_t bits = 7;
        for (auto& place : evidence)
            for (float& value : place)
                value = static_cast<float>((bits = bits * 6364136223846793005ULL + 1442695040888963407ULL) >> 40);
        const auto choice = kiosk::choose(evidence, *layout);
        const auto codes = kiosk::likeliest(evidence, *layout);
        REQUIRE(codes.size() == 20);
        CHECK(codes[0].reading == choice.best);
        CHECK(codes[1].reading == choice.next);
        CHECK(codes[0].weight - codes[1].weight == doctest::Approx(choice.ahead));
    }
}

TEST_CASE("digit choice: every number that is chosen has a right check digit")
{
    Evidence evidence(12);
    std::uint64_t bits = 1;
    for (int round = 0; round < 50; ++round) {
        for (auto& place : evidence)
            for (float& value : place)
                value = static_cast<float>((bits = bits * 6364136223846793005ULL + 1442695040888963407ULL) >> 40);
        const auto thirteen = kiosk::choose(evidence, kiosk::ean_13);
        CHECK(core::Gtin::parse(thirteen.best.text));
        CHECK(core::Gtin::parse(thirteen.next.text));
        CHECK(thirteen.ahead >= 0);
        const Evidence eight(evidence.begin(), evidence.begin() + 8);
        CHECK(core::Gtin::parse(kiosk::choose(eight, kiosk::ean_8).best.text));
        const Evidence six(evidence.begin(), evidence.begin() + 6);
        CHECK(core::expand_upc_e(kiosk::choose(six, kiosk::upc_e).best.text));
    }
}

TEST_CASE("digit choice: the number sets of a UPC-E are its number system and check digit")
{
    // 01234565 is the example of GS1 General Specifications, 5.2.2.4: number system 0, check digit 5 has B A A B B A.
    const auto choice = kiosk::choose(for_digits("123456", "BAABBA", 10), kiosk::upc_e);
    CHECK(choice.best == kiosk::Reading{"01234565", Symbology::UpcE});
}

TEST_CASE("digit choice: evidence of another length chooses nothing")
{
    CHECK(kiosk::choose({}, kiosk::ean_13).best.text.empty());
    CHECK(kiosk::choose(Evidence(8), kiosk::ean_13).best.text.empty());
}
