#include "catalog/load/duplicates.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

namespace catalog {
namespace {

/// Letters without case, digits, and bytes of other letters; a blank for all that stands between.
std::string folded(std::string_view text)
{
    std::string plain;
    for (const char c : text) {
        const bool upper = c >= 'A' && c <= 'Z';
        const bool kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (upper)
            plain += static_cast<char>(c - 'A' + 'a');
        else if (kept)
            plain += c;
        else if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    while (plain.ends_with(' '))
        plain.pop_back();
    return plain;
}

/// FNV-1a, 64 bits (public domain): the same on every machine.
std::uint64_t hash_of(std::string_view text)
{
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char c : text)
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return hash;
}

std::string name_of(const core::Product& product)
{
    return folded(product.name) + '\n' + folded(product.brand);
}

core::Gtin gtin_of(std::uint64_t number)
{
    std::string digits(14, '0');
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, number /= 10)
        *digit = static_cast<char>('0' + number % 10);
    return core::Gtin::parse(digits).value();
}

} // namespace

void Duplicates::add(const core::Product& product, bool doubted)
{
    std::uint64_t number = 0;
    for (const char digit : product.gtin.digits())
        number = number * 10 + static_cast<std::uint64_t>(digit - '0');
    all_.push_back({hash_of(name_of(product)), number << 1U | (doubted ? 1U : 0U)});
}

void Duplicates::each_group(const std::function<void(const SameName&)>& visit)
{
    std::ranges::sort(all_, {}, [](const Named& named) { return std::pair(named.hash, named.number); });
    SameName group;
    for (auto first = all_.begin(); first != all_.end();) {
        const auto last =
            std::find_if(first, all_.end(), [&](const Named& other) { return other.hash != first->hash; });
        if (last - first > 1) {
            group.clear();
            for (auto one = first; one != last; ++one)
                group.push_back({gtin_of(one->number >> 1U), (one->number & 1U) != 0});
            visit(group);
        }
        first = last;
    }
}

bool same_name(const core::Product& a, const core::Product& b)
{
    return name_of(a) == name_of(b);
}

} // namespace catalog
