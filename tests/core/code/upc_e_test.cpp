// UPC-E: what is refused and why; the published pairs are tried in tests/reference/gtin_test.cpp.
#include "core/code/gtin.h"
#include "core/code/upc_e.h"

#include <doctest/doctest.h>

#include <string>

namespace test {

using core::Error;

TEST_CASE("upc-e: every refusal to expand says which kind it is")
{
    struct Case {
        std::string why, eight;
        Error::Kind kind;
    };
    const Case cases[] = {
        {"nothing", "", Error::Kind::WrongLength},
        {"six digits", "123456", Error::Kind::WrongLength},
        {"nine digits", "012345650", Error::Kind::WrongLength},
        {"a letter", "0123456x", Error::Kind::NotDigits},
        {"a NUL byte", std::string("0123456\0", 8), Error::Kind::NotDigits},
        {"full-width digits", "\xEF\xBC\x90\xEF\xBC\x91\xEF\xBC", Error::Kind::NotDigits},
        {"number system 2", "21234565", Error::Kind::NotAProductCode},
        {"number system 9", "91234565", Error::Kind::NotAProductCode},
        {"a wrong check digit", "01234566", Error::Kind::WrongCheckDigit},
        {"a GTIN-8 that is no UPC-E", "12345678", Error::Kind::WrongCheckDigit},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto twelve = core::expand_upc_e(c.eight);
        REQUIRE_FALSE(twelve);
        CHECK(twelve.error().kind == c.kind);
    }
    CHECK(core::expand_upc_e(std::string(1'000'000, 'x')).error().detail.size() <= 40);
    CHECK(core::expand_upc_e(std::string(1'000'000, '0')).error().detail.size() <= 40);
}

TEST_CASE("upc-e: every refusal to shorten says which kind it is")
{
    struct Case {
        std::string why, twelve;
        Error::Kind kind;
    };
    const Case cases[] = {
        {"no zeros to leave out", "614141007349", Error::Kind::NotAProductCode},
        {"number system 2", "201234000050", Error::Kind::WrongCheckDigit},
        {"thirteen digits", "0012345000065", Error::Kind::WrongLength},
        {"eight digits", "01234565", Error::Kind::WrongLength},
        {"eleven digits", "01234500006", Error::Kind::WrongLength},
        {"letters", "01234500006x", Error::Kind::NotDigits},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto six = core::shorten_to_upc_e(c.twelve);
        REQUIRE_FALSE(six);
        CHECK(six.error().kind == c.kind);
    }
    const std::string system_two = "212345000067"; // zeros enough, but only systems 0 and 1 have a short form
    const std::string body = system_two.substr(0, 11);
    const auto six = core::shorten_to_upc_e(body + core::check_digit(body));
    REQUIRE_FALSE(six);
    CHECK(six.error().kind == Error::Kind::NotAProductCode);
}

TEST_CASE("upc-e: only six digits can be printable")
{
    for (const std::string& six : {std::string{}, std::string("12345"), std::string("1234567"), std::string("12345x"),
                                   std::string("12345\0", 6), std::string(1'000'000, '1')}) {
        CAPTURE(six.size());
        CHECK_FALSE(core::is_printable_upc_e(six));
    }
    CHECK(core::is_printable_upc_e("123456"));
}

} // namespace test
