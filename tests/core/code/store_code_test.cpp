// What a code is for, where its length decides; the published prefixes are tried in tests/reference/gtin_test.cpp.
#include "core/code/store_code.h"

#include <doctest/doctest.h>

#include <string>

namespace test {
namespace {

using core::CodeClass;
using core::Gtin;

Gtin gtin(const std::string& digits)
{
    const auto parsed = Gtin::parse(digits);
    REQUIRE(parsed);
    return *parsed;
}

} // namespace

// Source: GS1 General Specifications, section 1.4 (GS1-8 prefixes differ from GS1 prefixes).
TEST_CASE("store code: eight digits have prefixes of their own")
{
    CHECK(core::class_of(gtin("20045678"), 8) == CodeClass::RestrictedCompany);
    CHECK(core::class_of(gtin("30045675"), 8) == CodeClass::Product);
    // The same number read with its zeros is one of those kept free, so that it is never mistaken for a GTIN-8.
    CHECK(core::class_of(gtin("00000030045675")) == CodeClass::Unused);
}

TEST_CASE("store code: a case is classed as what is in it")
{
    CHECK(core::is_case(gtin("10614141000415")));
    CHECK_FALSE(core::is_case(gtin("00614141000418")));
    CHECK_FALSE(core::is_case(gtin("614141000418")));
    CHECK(core::is_case(gtin("95012345678903"))); // 9 in front: a measured quantity
    CHECK(core::class_of(gtin("10614141000415"), 14) == core::class_of(gtin("00614141000418"), 14));
}

TEST_CASE("store code: what is in a store's own number is found nowhere else")
{
    for (const auto named : {CodeClass::Product, CodeClass::Demo, CodeClass::Reserved, CodeClass::Unassigned})
        CHECK(core::names_one_product(named));
    for (const auto other : {CodeClass::RestrictedRegion, CodeClass::RestrictedCompany, CodeClass::Unused,
                             CodeClass::Coupon, CodeClass::Refund, CodeClass::Isbn, CodeClass::Ismn, CodeClass::Issn})
        CHECK_FALSE(core::names_one_product(other));
}

} // namespace test

TEST_CASE("store code: numbers that a place gives itself are told from all others")
{
    // GS1 General Specifications, release 18: 2.1.13 and 2.1.14 (restricted circulation), 1.4.2 (prefixes).
    using core::CodeClass;
    for (const auto own : {CodeClass::RestrictedRegion, CodeClass::RestrictedCompany})
        CHECK(core::is_stores_own(own));
    for (const auto other : {CodeClass::Product, CodeClass::Demo, CodeClass::Coupon, CodeClass::Refund, CodeClass::Isbn,
                             CodeClass::Reserved, CodeClass::Unassigned, CodeClass::Unused})
        CHECK_FALSE(core::is_stores_own(other));
}

TEST_CASE("store code: the number of an item is found in numbers with a price or a weight")
{
    // GS1 General Specifications, release 18, 2.1.14.2; five digits of item behind the 2: common practice.
    const auto item = [](const char* digits) { return core::without_measure(core::Gtin::parse(digits).value()); };
    CHECK(item("212345704998") == core::Gtin::parse("212345000007").value());
    CHECK(item("0212345704998") == core::Gtin::parse("212345000007").value());
    CHECK(item("212345000007") == core::Gtin::parse("212345000007").value());
    CHECK(item("212346704997") != item("212345704998"));
    CHECK_FALSE(item("406602301468").has_value());  // U.P.C. prefix 4: divided as its company likes
    CHECK_FALSE(item("2112345000008").has_value()); // 20 to 29: each country divides them otherwise
    CHECK_FALSE(item("9520000000011").has_value());
}
