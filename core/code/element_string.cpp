#include "core/code/element_string.h"

#include "core/code/digital_link.h"

#include <algorithm>
#include <optional>

namespace core {
namespace {

constexpr std::size_t enough_to_show = 40; // a hostile code may be very long

struct Element {
    std::string_view key, value;
};

/// Keys by their first two digits: how long they are, and how long their value is where that is fixed.
struct KeyRow {
    std::string_view from, to; ///< both included
    std::size_t key_digits;
    std::size_t value_digits; ///< 0: up to a separator or the end
};

/// Source: GS1 General Specifications, figure 3.2-1 (keys) and figure 7.8.5-2 (element strings with predefined length,
/// which no separator needs to end). Pairs that are not here begin no key.
constexpr KeyRow key_rows[] = {
    {"00", "00", 2, 18}, {"01", "03", 2, 14}, {"04", "04", 2, 16}, {"10", "10", 2, 0},  {"11", "19", 2, 6},
    {"20", "20", 2, 2},  {"21", "22", 2, 0},  {"23", "25", 3, 0},  {"30", "30", 2, 0},  {"31", "36", 4, 6},
    {"37", "37", 2, 0},  {"39", "39", 4, 0},  {"40", "40", 3, 0},  {"41", "41", 3, 13}, {"42", "42", 3, 0},
    {"43", "43", 4, 0},  {"70", "70", 4, 0},  {"71", "71", 3, 0},  {"72", "72", 4, 0},  {"80", "82", 4, 0},
    {"90", "99", 2, 0},
};

/// No value of any key is longer.
constexpr std::size_t longest_value = 90;

bool all_digits(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

const KeyRow* row_of(std::string_view text)
{
    const std::string_view pair = text.substr(0, 2);
    if (pair.size() < 2 || !all_digits(pair))
        return nullptr;
    const auto* const row = std::find_if(std::begin(key_rows), std::end(key_rows),
                                         [pair](const KeyRow& r) { return r.from <= pair && pair <= r.to; });
    return row == std::end(key_rows) ? nullptr : row;
}

bool may_be_value(std::string_view value, const KeyRow& row)
{
    if (row.value_digits > 0)
        return value.size() == row.value_digits && all_digits(value);
    const auto printable = [](char c) { return c > ' ' && c < '\x7f'; };
    return !value.empty() && value.size() <= longest_value && std::all_of(value.begin(), value.end(), printable);
}

std::optional<Element> element_of(std::string_view key, std::string_view value, const KeyRow* row)
{
    if (row == nullptr || key.size() != row->key_digits || !all_digits(key) || !may_be_value(value, *row))
        return std::nullopt;
    return Element{key, value};
}

/// Takes the first element off, and the separator behind it.
std::optional<Element> take_plain(std::string_view& rest)
{
    const KeyRow* const row = row_of(rest);
    if (row == nullptr)
        return std::nullopt;
    const auto key = rest.substr(0, row->key_digits);
    rest.remove_prefix(key.size());
    const auto end = std::min(rest.find(element_separator), rest.size());
    const auto value = rest.substr(0, row->value_digits > 0 ? row->value_digits : end);
    rest.remove_prefix(value.size());
    if (!rest.empty() && rest.front() == element_separator)
        rest.remove_prefix(1);
    return element_of(key, value, row);
}

/// Where the next key in brackets begins: "(", two to four digits, ")". The end where there is none: a bracket may also
/// be part of a value.
std::size_t next_bracketed_key(std::string_view text)
{
    for (auto open = text.find('('); open != std::string_view::npos; open = text.find('(', open + 1)) {
        const auto close = text.find(')', open);
        const auto key = text.substr(open + 1, close == std::string_view::npos ? 0 : close - open - 1);
        if (key.size() >= 2 && key.size() <= 4 && all_digits(key))
            return open;
    }
    return text.size();
}

std::optional<Element> take_bracketed(std::string_view& rest)
{
    if (rest.empty() || next_bracketed_key(rest) != 0)
        return std::nullopt;
    const auto close = rest.find(')');
    const auto key = rest.substr(1, close - 1);
    rest.remove_prefix(close + 1);
    const auto value = rest.substr(0, next_bracketed_key(rest));
    rest.remove_prefix(value.size());
    return element_of(key, value, row_of(key));
}

Result<Gtin> no_product(std::string_view text)
{
    return refuse(Error::Kind::NotAProductCode, text.substr(0, enough_to_show));
}

} // namespace

Result<Gtin> read_elements(std::string_view text)
{
    const bool bracketed = text.starts_with('(');
    const bool vouched = text.starts_with(element_separator);
    if (!bracketed && !vouched && !text.starts_with("01")) // nobody says what this is: only what is most likely counts
        return no_product(text);
    std::optional<Gtin> found;
    for (auto rest = text.substr(vouched ? 1 : 0); !rest.empty();) {
        const auto element = bracketed ? take_bracketed(rest) : take_plain(rest);
        if (!element || element->key == "02") // (02) names what is in a case
            return no_product(text);
        if (element->key != "01")
            continue;
        auto gtin = Gtin::parse(element->value);
        if (!gtin)
            return gtin;
        if (found && *found != *gtin)
            return no_product(text);
        found = *std::move(gtin);
    }
    if (!found)
        return no_product(text);
    return *found;
}

Result<Gtin> gtin_within(std::string_view text)
{
    return is_web_address(text) ? read_link(text) : read_elements(text);
}

} // namespace core
