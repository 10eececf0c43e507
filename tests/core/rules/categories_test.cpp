#include "core/rules/categories.h"

#include <doctest/doctest.h>

#include <algorithm>

using core::reference_of_category;

TEST_CASE("categories: every row names a reference amount, in order")
{
    const auto rows = core::category_rows();
    CHECK(std::ranges::is_sorted(rows, std::ranges::less_equal{}, &core::CategoryRow::category));
    for (const auto& row : rows) {
        CAPTURE(row.category);
        REQUIRE(core::reference_amount(row.reference_food) != nullptr);
        CHECK(reference_of_category(row.category)->key == row.reference_food);
    }
}

TEST_CASE("categories: amounts of 21 CFR 101.12(b) Table 2")
{
    CHECK(reference_of_category("Cookies & Biscuits")->nano == 30'000'000'000);
    CHECK(reference_of_category("Yogurt")->nano == 170'000'000'000);
    CHECK(reference_of_category("Soda")->nano == 360'000'000'000);
    CHECK(reference_of_category("") == nullptr);
    CHECK(reference_of_category("cookies") == nullptr);
    CHECK(reference_of_category("Zwieback") == nullptr);
}
