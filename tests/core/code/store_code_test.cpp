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
