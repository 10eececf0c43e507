#include "core/code/element_string.h"

#include <doctest/doctest.h>

#include <string>

namespace {

using core::Error;

/// "^" stands for the separator.
std::string with_separators(std::string text)
{
    for (char& c : text)
        if (c == '^')
            c = core::element_separator;
    return text;
}

/// The 14 digits, or nothing.
std::string number_in(const std::string& text)
{
    const auto gtin = core::gtin_within(with_separators(text));
    return gtin ? gtin->digits() : "";
}

} // namespace

// Numbers and strings from the GS1 General Specifications (figures 5.11.8, 7.8.5 and 4.15.1) and from the tests of the
// barcode syntax library that GS1 publishes; rows marked "memory" are put together by its rules from memory.
TEST_CASE("element string: the number behind (01), wherever it stands")
{
    struct Case {
        std::string why;
        const char* text;
        const char* number;
    };
    const Case cases[] = {
        {"DataBar sends nothing else", "0109521234543213", "09521234543213"},
        {"the same with the mark in front", "^0112312312312333", "12312312312333"},
        {"a batch behind it", "^011231231231233310ABC123", "12312312312333"},
        {"a separator between batch and another key", "^011231231231233310ABC123^99XYZ", "12312312312333"},
        {"a date needs no separator behind it", "^01095201234567881718042610ABC1^2112345", "09520123456788"},
        {"and may have one (memory)", "^0109520123456788^17180426^10ABC1", "09520123456788"},
        {"a separator at the end (memory)", "010952012345678810ABC1^", "09520123456788"},
        {"weight, price and date", "^0195012345678903310300019539220299^17201225", "95012345678903"},
        {"of a single item", "^01095201234567883103000195", "09520123456788"},
        {"behind a date", "^171804260109520123456788", "09520123456788"},
        {"behind a batch and a separator", "^10ABC123^0109520123456788", "09520123456788"},
        {"twice the same", "^01123123123123260112312312312326", "12312312312326"},
        {"no mark, but a date and a batch behind it", "01095212345432131725123110LOT-7", "09521234543213"},
        {"GTIN-8 with six zeros", "0100000012345670", "00000012345670"},
        {"in brackets", "(01)09521234543213", "09521234543213"},
        {"in brackets, with a date and a batch", "(01)12312312312326(17)251231(10)ABC", "12312312312326"},
        {"in brackets, behind others", "(21)XYZ(01)12312312312333(10)ABC123(99)XYZ", "12312312312333"},
        {"a bracket that belongs to a value (memory)", "(10)A(B)C(01)12312312312333", "12312312312333"},
        {"three digits of key (memory)", "(01)12312312312326(235)TPX9526064", "12312312312326"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(number_in(c.text) == c.number);
    }
}

TEST_CASE("element string: what is no product's own number, or not whole, is none")
{
    struct Case {
        std::string why;
        const char* text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"the mark alone", "^"},
        {"two marks", "^^0109521234543213"},
        {"plain digits", "9521234543213"},
        {"plain digits behind the mark", "^09521234543213"},
        {"a wrong check digit", "0109521234543214"},
        {"a digit is missing", "010952123454321"},
        {"a digit too many", "01095212345432130"},
        {"a letter", "01095212345432X3"},
        {"what is in a case", "^02095212345432133712"},
        {"what is in a case, beside a number", "^01095212345432130209521234543213"},
        {"a shipping unit", "^00106141412345678908"},
        {"two numbers", "^01123123123123260112312312312333"},
        {"two numbers in brackets", "(01)12312312312326(01)12312312312333"},
        {"a number inside a batch, for lack of a separator", "^10ABC1230109520123456788"},
        {"no mark, and another key first", "171804260109520123456788"},
        {"a key that nobody has", "^010952123454321305ABC"},
        {"a word behind the number", "0109521234543213-ABCDE"},
        {"an empty batch", "010952123454321310"},
        {"an empty batch before another key", "^010952123454321310^2112345"},
        {"a torn key", "01095212345432131"},
        {"a torn key of four digits", "^0109521234543213310"},
        {"a torn date", "^010952123454321317251"},
        {"a date with letters", "^01095212345432131725ABCD"},
        {"a blank in a batch", "010952123454321310A B"},
        {"a control character in a batch", "010952123454321310A\x1b[A"},
        {"letters beyond ASCII", "010952123454321310\xC3\xA9"},
        {"a line end", "0109521234543213\r"},
        {"brackets: a key alone", "(01)"},
        {"brackets: a digit is missing", "(01)0952123454321"},
        {"brackets: not closed", "(0109521234543213"},
        {"brackets: not opened", "01)09521234543213"},
        {"brackets: words behind", "(01)09521234543213 and more"},
        {"brackets: a key of the wrong length", "(01)12312312312326(31)000195"},
        {"brackets: 13 digits", "(01)9521234543213"},
        {"brackets: what is in a case", "(02)09521234543213(37)12"},
        {"a telephone number", "(01) 555 0100"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(number_in(c.text).empty());
    }
    CHECK(number_in("010952123454321310" + std::string(90, 'A')) == "09521234543213");
    CHECK(number_in("010952123454321310" + std::string(91, 'A')).empty()); // no value is so long
}

TEST_CASE("element string: a refusal says which kind it is, and shows no more than people read")
{
    CHECK(core::gtin_within("0109521234543214").error().kind == Error::Kind::WrongCheckDigit);
    CHECK(core::gtin_within("(01)0952123454321X").error().kind == Error::Kind::NotAProductCode);
    CHECK(core::gtin_within("HELLO").error() == Error{Error::Kind::NotAProductCode, "HELLO", {}});
    CHECK(core::gtin_within(std::string(100'000, '(')).error().detail.size() == 40);
}
