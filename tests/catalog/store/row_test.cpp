#include "catalog/store/row.h"
#include "catalog/store/store.h"
#include "tests/catalog/odd_products.h"

#include <doctest/doctest.h>

#include <stdexcept>

TEST_CASE("row: every odd form of a product comes back as it was put")
{
    catalog::Store store(":memory:");
    for (const auto& odd : test::odd_products()) {
        CAPTURE(odd.why);
        store.put(odd.product);
        CHECK(store.find(odd.product.gtin) == odd.product);
    }
}

TEST_CASE("row: what was never written is a broken catalog, not a product")
{
    CHECK_THROWS_AS((void)catalog::gtin_of(9521234543214), std::runtime_error); // a wrong check digit
    CHECK_THROWS_AS((void)catalog::gtin_of(-1), std::runtime_error);
    CHECK_THROWS_AS((void)catalog::gtin_of(9'223'372'036'854'775'807), std::runtime_error);
}

TEST_CASE("row: a number keeps its zeros in front")
{
    const auto eight = core::Gtin::parse("00012348").value();
    CHECK(catalog::gtin_of(catalog::key_of(eight)) == eight);
}
