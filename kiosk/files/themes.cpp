#include "kiosk/files/themes.h"

namespace kiosk {

const ui::Theme* theme_named(std::string_view name)
{
    if (name == "paper")
        return &ui::paper();
    if (name == "night")
        return &ui::night();
    return name == "plain" ? &ui::plain() : nullptr;
}

} // namespace kiosk
