#include "ui/look/theme.h"

namespace ui {
namespace {

constexpr ImU32 rgb(unsigned hex)
{
    return IM_COL32((hex >> 16) & 0xFFU, (hex >> 8) & 0xFFU, hex & 0xFFU, 255U);
}

constexpr Theme paper_theme{rgb(0xFAF7F0),
                            rgb(0x1B1F24),
                            rgb(0x454A52),
                            rgb(0x7A808A),
                            {rgb(0x0A4A6E), rgb(0xE1EDF4)},
                            {rgb(0x641C48), rgb(0xF4E6EF)}};

constexpr Theme night_theme{rgb(0x15181C),
                            rgb(0xF5F2EA),
                            rgb(0xC4C7CC),
                            rgb(0x7F868F),
                            {rgb(0x8CC6F0), rgb(0x1D2A33)},
                            {rgb(0xE9B0CE), rgb(0x2F2030)}};

constexpr Theme plain_theme{rgb(0xFFFFFF),
                            rgb(0x000000),
                            rgb(0x000000),
                            rgb(0x000000),
                            {rgb(0x000000), rgb(0xFFFFFF)},
                            {rgb(0x000000), rgb(0xFFFFFF)}};

} // namespace

const Theme& paper()
{
    return paper_theme;
}
const Theme& night()
{
    return night_theme;
}
const Theme& plain()
{
    return plain_theme;
}
const Theme& theme_of(ThemeName name)
{
    switch (name) {
    case ThemeName::Paper:
        return paper_theme;
    case ThemeName::Night:
        return night_theme;
    case ThemeName::Plain:
        break;
    }
    return plain_theme;
}

} // namespace ui
