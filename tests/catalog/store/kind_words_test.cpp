#include "catalog/store/fold.h"
#include "catalog/store/kind_words.h"
#include "catalog/store/search.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>

TEST_CASE("every row of the Spanish words is folded, in order, and names a category that there is")
{
    std::vector<std::string> categories;
    for (const auto& row : test::reference_rows("category_words.csv"))
        categories.push_back(catalog::fold(row["category"]));
    const catalog::KindWord* before = nullptr;
    for (const auto& row : catalog::kind_words()) {
        CAPTURE(row.spanish);
        CAPTURE(row.english);
        CHECK(catalog::fold(row.spanish) == row.spanish);
        CHECK(catalog::fold(row.english) == row.english);
        CHECK(std::any_of(categories.begin(), categories.end(),
                          [&](const auto& category) { return catalog::has_words(category, row.english); }));
        if (before)
            CHECK(std::pair(before->spanish, before->english) < std::pair(row.spanish, row.english));
        before = &row;
    }
}

TEST_CASE("Spanish words find the categories of the release")
{
    for (const auto& row : test::reference_rows("category_words.csv")) {
        if (row["spanish"].empty())
            continue;
        CAPTURE(row.place());
        CAPTURE(row["spanish"]);
        auto product = test::product(1, "Zzz");
        product.aisle.clear();
        product.brand.clear();
        product.category = row["category"];
        catalog::Store store(":memory:");
        store.put(product);
        auto search = store.search();
        search.ask(row["spanish"]);
        while (!search.step([] { return true; }))
            continue;
        CHECK(search.found().size() == 1);
    }
}
