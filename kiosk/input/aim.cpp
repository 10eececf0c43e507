#include "kiosk/input/aim.h"

#include "core/code/element_string.h"

#include <algorithm>

namespace kiosk {
namespace {

using core::Symbology;

struct Row {
    std::string_view identifier;
    Symbology symbology;
    std::size_t sent;  ///< so many digits stand behind the identifier
    std::size_t taken; ///< so many of them are the code
};

constexpr Row rows[] = {
    {"]E0", Symbology::Ean13, 13, 13},
    {"]E3", Symbology::Ean13, 15, 13}, // and an add-on of two digits
    {"]E3", Symbology::Ean13, 18, 13}, // and one of five
    {"]E4", Symbology::Ean8, 8, 8},
    {"]I0", Symbology::Itf14, 14, 14}, // the reader did not check the last digit; whoever parses the code does
    {"]I1", Symbology::Itf14, 14, 14},
};

/// GS1-128, GS1 DataBar, GS1 DataMatrix, GS1 QR Code, GS1 DotCode.
constexpr std::string_view element_strings[] = {"]C1", "]e0", "]d2", "]Q3", "]J1"};

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

} // namespace

std::optional<Identified> identify(std::string_view typed)
{
    if (typed.size() < 3 || typed[0] != ']' || !is_letter(typed[1]) || !(is_digit(typed[2]) || is_letter(typed[2])))
        return std::nullopt;
    const std::string_view data = typed.substr(3);
    const bool digits = std::ranges::all_of(data, is_digit);
    for (const Row& row : rows)
        if (digits && typed.starts_with(row.identifier) && data.size() == row.sent)
            return Identified{std::string(data.substr(0, row.taken)), row.symbology};
    const bool elements = std::ranges::find(element_strings, typed.substr(0, 3)) != std::end(element_strings);
    const bool marked = data.starts_with(core::element_separator);
    return Identified{std::string(elements && !marked ? 1 : 0, core::element_separator).append(data), Symbology::Other};
}

} // namespace kiosk
