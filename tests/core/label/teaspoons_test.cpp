#include "core/label/teaspoons.h"

#include <doctest/doctest.h>

using core::Content;
using core::quarter_teaspoons;

TEST_CASE("teaspoons: four grams are one, to the nearest quarter")
{
    CHECK(quarter_teaspoons(Content::whole(12)) == 12); // 3 teaspoons
    CHECK(quarter_teaspoons(Content::whole(4)) == 4);
    CHECK(quarter_teaspoons(Content::whole(0)) == 0);
    CHECK(quarter_teaspoons(Content::milli(499)) == 0);
    CHECK(quarter_teaspoons(Content::milli(500)) == 1);
    CHECK(quarter_teaspoons(Content::milli(39'499)) == 39);
    CHECK(quarter_teaspoons(Content::milli(39'500)) == 40);
}
