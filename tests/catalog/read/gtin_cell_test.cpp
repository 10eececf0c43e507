#include "catalog/read/gtin_cell.h"

#include <doctest/doctest.h>

using Kind = core::Error::Kind;

// Source of the classes: GS1 General Specifications, section 1.4. What spreadsheets do to numbers is common practice.
TEST_CASE("gtin cell: good numbers are taken, in every length")
{
    for (const char* cell :
         {"9521234543213", "09521234543213", "012345000065", "0012345000065", "95201238", "00000095201238"}) {
        CAPTURE(cell);
        const auto gtin = catalog::read_gtin(cell);
        CHECK(gtin.has_value());
    }
}

TEST_CASE("gtin cell: every slip has its own words")
{
    struct Case {
        const char* why;
        const char* cell;
        Kind kind;
        const char* expected; ///< words that must be in what was expected
    };
    const Case cases[] = {
        {"a letter", "95212345X3213", Kind::NotDigits, "8, 12, 13 or 14 digits"},
        {"blanks as on the package", "0 12345 00006 5", Kind::NotDigits, "8, 12, 13 or 14 digits"},
        {"a number with a point", "9521234543213.0", Kind::NotDigits, "8, 12, 13 or 14 digits"},
        {"shortened", "9.52E+12", Kind::BadValue, "spreadsheet has shortened it"},
        {"shortened with a comma", "9,52123E+12", Kind::BadValue, "spreadsheet has shortened it"},
        {"shortened, small e", "9e12", Kind::BadValue, "spreadsheet has shortened it"},
        {"no shortened number", "E12", Kind::NotDigits, "8, 12, 13 or 14 digits"},
        {"a lost zero", "12345000065", Kind::WrongLength, "012345000065 (a spreadsheet takes zeros"},
        {"two lost zeros", "1234500007", Kind::WrongLength, "001234500007 (a spreadsheet takes zeros"},
        {"a lost zero of eight digits", "1234565", Kind::WrongLength, "01234565 (a spreadsheet takes zeros"},
        {"eleven digits that no zero makes right", "12345000066", Kind::WrongLength, "8, 12, 13 or 14 digits"},
        {"five digits", "12348", Kind::WrongLength, "8, 12, 13 or 14 digits"},
        {"nothing that fits", "9521234543214", Kind::WrongCheckDigit, "compare it with the package"},
        {"the short form", "01234505", Kind::WrongCheckDigit, "012000003455 (the eight digits are its short form"},
        {"a store's own number", "200123456788", Kind::NotAProductCode, "a store's own"},
        {"a coupon", "9901234567899", Kind::NotAProductCode, "coupon"},
        {"a book", "9783161484100", Kind::NotAProductCode, "a book"},
        {"a case", "19521234543210", Kind::NotAProductCode, "a case"},
        {"a store's own in eight digits", "00012348", Kind::NotAProductCode, "a store's own"},
        {"the same, with zeros in front", "00000000012348", Kind::NotAProductCode, "a store's own"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto gtin = catalog::read_gtin(c.cell);
        REQUIRE_FALSE(gtin);
        CHECK(gtin.error().kind == c.kind);
        CAPTURE(gtin.error().place.expected);
        CHECK(gtin.error().place.expected.find(c.expected) != std::string::npos);
        CHECK(gtin.error().place.found == c.cell);
    }
    CHECK(catalog::read_gtin(std::string(1'000'000, '1')).error().place.found.size() <= 40);
}

TEST_CASE("gtin cell: a number of this place is taken only where it is said to be one")
{
    for (const auto* own : {"212345000007", "406602301468", "2112345000008", "0406602301468"}) {
        CAPTURE(own);
        CHECK(catalog::read_own_number(own).has_value());
        const auto refused = catalog::read_gtin(own);
        REQUIRE_FALSE(refused.has_value());
        CHECK(refused.error().kind == Kind::NotAProductCode);
        CHECK(refused.error().place.expected ==
              "a product's number; this one is a store's own and means something else in the next store: with yes in "
              "the column this_place_only it gets a label for this place alone");
    }
    const auto everywhere = catalog::read_own_number("9521234543213");
    REQUIRE_FALSE(everywhere.has_value());
    CHECK(everywhere.error().place.expected ==
          "a number that a store gives itself (2, 4, 02, 04 or 20 to 29 in front); this one names its product "
          "everywhere: leave this_place_only empty");
    CHECK(catalog::read_own_number("9811234567891").error().place.expected ==
          "a product's number; this one is of a coupon or a refund");
    // The check digit of an item whose price is written as zeros can be told: no package prints it.
    CHECK(catalog::read_own_number("212345000008").error().place.expected.starts_with("212345000007 ("));
}
