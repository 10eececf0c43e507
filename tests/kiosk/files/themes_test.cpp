#include "kiosk/files/themes.h"

#include <doctest/doctest.h>

TEST_CASE("themes: each by its name, paper for another")
{
    using ui::ThemeName;
    CHECK(kiosk::theme_named("paper") == ThemeName::Paper);
    CHECK(kiosk::theme_named("night") == ThemeName::Night);
    CHECK(kiosk::theme_named("plain") == ThemeName::Plain);
    CHECK(kiosk::theme_named("") == ThemeName::Paper);
    CHECK(&ui::theme_of(ThemeName::Paper) == &ui::paper());
    CHECK(&ui::theme_of(ThemeName::Night) == &ui::night());
    CHECK(&ui::theme_of(ThemeName::Plain) == &ui::plain());
}
