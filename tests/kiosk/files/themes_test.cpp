#include "kiosk/files/themes.h"

#include <doctest/doctest.h>

TEST_CASE("themes: each by its name, nothing for another")
{
    CHECK(kiosk::theme_named("paper") == &ui::paper());
    CHECK(kiosk::theme_named("night") == &ui::night());
    CHECK(kiosk::theme_named("plain") == &ui::plain());
    CHECK(kiosk::theme_named("Paper") == nullptr);
    CHECK(kiosk::theme_named("") == nullptr);
}
