#include "core/figure/money.h"

#include <doctest/doctest.h>

TEST_CASE("money: a price is read in dollars, to the cent")
{
    struct Case {
        const char* text;
        std::int64_t cents; ///< 0: refused
    };
    const Case cases[] = {{"3.99", 399},       {"$3.99", 399},       {"4", 400}, {"0.01", 1},  {"3.5", 350},
                          {"9999.99", 999999}, {"10000", 0},         {"0", 0},   {"", 0},      {"$", 0},
                          {"3.999", 0},        {"3,99", 0},          {"-1", 0},  {"3.99 ", 0}, {"$$3", 0},
                          {"3.990", 0},        {"99999999999999", 0}};
    for (const auto& c : cases) {
        CAPTURE(c.text);
        const auto price = core::parse_price(c.text);
        CHECK(price.has_value() == (c.cents != 0));
        if (price)
            CHECK(*price == core::cents(c.cents));
        else
            CHECK(price.error().place.expected.starts_with("a price"));
    }
    CHECK(core::whole_cents(core::dearest) == 999'999);
}
