#include "catalog/read/release_code.h"

#include <doctest/doctest.h>

using catalog::read_release_code;
using Kind = catalog::ReleaseCode::Kind;

// Forms: counted in 1,909 rows of the FoodData Central release of October 2023. Numbers: GS1 General Specifications,
// section 7.9 (check digit) and 5.2.2.4.2 (UPC-E, with its example 0 0783491 ... opened by the rule of the last digit);
// prefix 952 is for demonstrations.
TEST_CASE("release code: every form that releases write")
{
    struct Case {
        const char* why;
        const char* written;
        Kind kind;
        const char* gtin;
        bool completed;
    };
    const Case cases[] = {
        {"UPC-A", "036000291452", Kind::Product, "00036000291452", false},
        {"the same in fourteen digits", "00036000291452", Kind::Product, "00036000291452", false},
        {"the same with one zero", "0036000291452", Kind::Product, "00036000291452", false},
        {"EAN-13", "9521234543213", Kind::Product, "09521234543213", false},
        {"UPC-A without its check digit", "61414121022", Kind::Product, "00614141210220", true},
        {"its zero lost", "36000291452", Kind::Product, "00036000291452", true},
        {"zero and check digit lost", "3600029145", Kind::Product, "00036000291452", true},
        {"a case", "10036000291459", Kind::Case, "10036000291459", false},
        {"a measured case", "90036000291455", Kind::Case, "90036000291455", false},
        {"UPC-E", "01234565", Kind::Product, "00012345000065", false},
        {"UPC-E without its zero", "1234565", Kind::Product, "00012345000065", true},
        {"EAN-8", "95200002", Kind::Product, "00000095200002", false},
        {"blanks around it", " 036000291452 ", Kind::Product, "00036000291452", false},
        {"a wrong check digit", "036000291453", Kind::WrongDigits, "", false},
        {"a wrong check digit in fourteen", "10036000291453", Kind::WrongDigits, "", false},
        {"neither UPC-E nor EAN-8", "01234567", Kind::WrongDigits, "", false},
        {"a store's own number", "2000000000008", Kind::NotAProduct, "", false},
        {"letters", "11G5060137", Kind::Unreadable, "", false},
        {"nothing", "", Kind::Missing, "", false},
        {"blanks alone", "  ", Kind::Missing, "", false},
        {"six digits", "946407", Kind::Unreadable, "", false},
        {"fifteen digits", "003600029145200", Kind::Unreadable, "", false},
        {"a long text", "0360002914520360002914520360002914520360002914520", Kind::Unreadable, "", false},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto code = read_release_code(c.written);
        CHECK(code.kind == c.kind);
        CHECK((code.gtin ? code.gtin->digits() : "") == c.gtin);
        CHECK(code.completed == c.completed);
    }
}
