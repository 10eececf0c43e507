#include "catalog/load/names_there.h"

#include "catalog/read/sheet_columns.h"

#include <algorithm>
#include <tuple>

namespace catalog {
namespace {

constexpr std::size_t most_names = 2'000; // releases have some four hundred categories
constexpr std::size_t longest_name = 120; // of a name that is kept; theirs have at most eighty
constexpr std::size_t most_told = 5;

/// How far two names in small letters are apart: 0 where one is part of the other, `far` where no slip explains it.
constexpr std::size_t far = 1'000;
std::size_t distance(const std::string& asked, const std::string& name)
{
    constexpr std::size_t least_part = 3;
    if (asked.size() >= least_part && name.find(asked) != std::string::npos)
        return 0;
    if (name.size() >= least_part && asked.find(name) != std::string::npos)
        return 0;
    const auto enough = std::max<std::size_t>(2, asked.size() / 3) + 1;
    const auto edits = edits_between(asked, name, enough);
    return edits < enough ? edits : far;
}

} // namespace

void NamesThere::add(std::string_view name)
{
    if (name.empty() || name.size() > longest_name)
        return;
    auto small = in_small_letters(name);
    if (const auto found = records_.find(small); found != records_.end()) {
        ++found->second.records;
        return;
    }
    if (records_.size() < most_names)
        records_.emplace(std::move(small), Name{std::string(name), 1});
}

bool NamesThere::may_have(std::string_view name) const
{
    return name.size() > longest_name || records_.size() >= most_names || records_.contains(in_small_letters(name));
}

std::vector<std::string> NamesThere::like(std::string_view asked) const
{
    const auto wanted = in_small_letters(asked.substr(0, longest_name));
    struct Ranked {
        std::size_t distance;
        const Name* name;
    };
    std::vector<Ranked> ranked;
    for (const auto& [small, name] : records_)
        ranked.push_back({distance(wanted, small), &name});
    std::sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) {
        return std::tie(a.distance, b.name->records, a.name->written) <
               std::tie(b.distance, a.name->records, b.name->written);
    });
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(ranked.size(), most_told); ++i)
        names.push_back(ranked[i].name->written);
    return names;
}

} // namespace catalog
