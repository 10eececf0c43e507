#include "core/code/digital_link.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace core {
namespace {

constexpr std::size_t enough_to_show = 40; // a hostile code may be very long

using Segments = std::span<const std::string>;

char small(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::optional<std::size_t> scheme_length(std::string_view text)
{
    for (const std::string_view scheme : {"https://", "http://"}) {
        const auto same = [](char a, char b) { return small(a) == b; };
        const auto head = text.substr(0, scheme.size());
        if (std::equal(head.begin(), head.end(), scheme.begin(), scheme.end(), same))
            return scheme.size();
    }
    return std::nullopt;
}

int hex(char c)
{
    constexpr std::string_view digits = "0123456789abcdef";
    const auto place = digits.find(small(c));
    return place == std::string_view::npos ? -1 : static_cast<int>(place);
}

/// "%2F" is "/"; a "%" that begins no such thing stays.
std::string decoded(std::string_view text)
{
    std::string out;
    while (!text.empty()) {
        const bool escaped = text.size() >= 3 && text[0] == '%' && hex(text[1]) >= 0 && hex(text[2]) >= 0;
        out += escaped ? static_cast<char>(hex(text[1]) * 16 + hex(text[2])) : text[0];
        text.remove_prefix(escaped ? 3 : 1);
    }
    return out;
}

/// The path's parts between "/", decoded. Empty where a path is missing.
std::vector<std::string> segments_of(std::string_view path)
{
    std::vector<std::string> segments;
    while (!path.empty()) {
        path.remove_prefix(1); // its "/"
        const auto end = std::min(path.find('/'), path.size());
        segments.push_back(decoded(path.substr(0, end)));
        path.remove_prefix(end);
    }
    if (!segments.empty() && segments.back().empty()) // a "/" at the end means nothing
        segments.pop_back();
    return segments;
}

bool is_gtin_key(std::string_view key)
{
    return key == "01" || key == "gtin";
}

/// Whether these are what may follow a number: variant, lot, serial number, each at most once, in this order.
bool are_qualifiers(Segments rest)
{
    struct Names {
        std::string_view digits, word;
    };
    constexpr Names in_order[] = {{"22", "cpv"}, {"10", "lot"}, {"21", "ser"}};
    if (rest.size() % 2 != 0)
        return false;
    if (rest.size() == 2 && rest[0] == "235")
        return !rest[1].empty();
    const auto* next = std::begin(in_order);
    for (; !rest.empty(); rest = rest.subspan(2)) {
        next = std::find_if(next, std::end(in_order),
                            [&rest](const Names& names) { return rest[0] == names.digits || rest[0] == names.word; });
        if (next == std::end(in_order) || rest[1].empty())
            return false;
        ++next;
    }
    return true;
}

/// The number behind the key at this place of the path.
std::optional<Gtin> gtin_at(Segments path, std::size_t place)
{
    constexpr std::size_t short_number = 8;
    if (!is_gtin_key(path[place]) || place + 1 >= path.size())
        return std::nullopt;
    const std::string& number = path[place + 1];
    const auto gtin = Gtin::parse(number);
    const bool may_be_day = number.size() == short_number && place > 0;
    return gtin && !may_be_day ? std::optional(*gtin) : std::nullopt;
}

/// Whether what stands behind "?" names a product too: then it is not clear which one is meant.
bool names_product(std::string_view query)
{
    while (!query.empty()) {
        const auto end = std::min(query.find('&'), query.size());
        const auto part = query.substr(0, end);
        if (is_gtin_key(decoded(part.substr(0, part.find('=')))))
            return true;
        query.remove_prefix(std::min(end + 1, query.size()));
    }
    return false;
}

std::optional<Gtin> gtin_of(std::string_view address)
{
    address = address.substr(0, address.find('#'));
    const auto mark = std::min(address.find('?'), address.size());
    const auto before = address.substr(0, mark);
    // Not find(): GCC 12 believes that it may look behind the end, and warns.
    const auto slash = static_cast<std::size_t>(std::ranges::find(before, '/') - before.begin());
    if (slash == 0 || names_product(address.substr(std::min(mark + 1, address.size()))))
        return std::nullopt; // no domain, or two numbers
    const auto path = segments_of(before.substr(slash));
    std::optional<Gtin> found;
    bool ends = false; // whether all behind it belongs to it
    for (std::size_t place = 0; place < path.size(); ++place) {
        const auto gtin = gtin_at(path, place);
        if (gtin && found && *found != *gtin)
            return std::nullopt;
        if (gtin) {
            found = gtin;
            ends = are_qualifiers(Segments(path).subspan(place + 2));
        }
    }
    return ends ? found : std::nullopt;
}

} // namespace

bool is_web_address(std::string_view text)
{
    return scheme_length(text).has_value();
}

Result<Gtin> read_link(std::string_view uri)
{
    const auto scheme = scheme_length(uri);
    const bool sound = std::all_of(uri.begin(), uri.end(), [](char c) { return c > ' ' && c < '\x7f'; });
    if (scheme && sound)
        if (const auto gtin = gtin_of(uri.substr(*scheme)))
            return *gtin;
    return refuse(Error::Kind::NotAProductCode, uri.substr(0, enough_to_show));
}

} // namespace core
