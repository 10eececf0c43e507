#include "kiosk/files/themes.h"

namespace kiosk {

ui::ThemeName theme_named(std::string_view name)
{
    if (name == "night")
        return ui::ThemeName::Night;
    return name == "plain" ? ui::ThemeName::Plain : ui::ThemeName::Paper;
}

} // namespace kiosk
