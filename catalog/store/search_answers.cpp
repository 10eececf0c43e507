#include "catalog/store/search_answers.h"

#include "catalog/store/fold.h"
#include "catalog/store/row.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace catalog {
namespace {

bool in_order(const LooseProduct* a, const LooseProduct* b)
{
    return a->name != b->name ? a->name < b->name : a->key < b->key;
}

} // namespace

void SearchAnswers::clear()
{
    tiers_.clear();
    count_ = 0;
    found_.clear();
}

void SearchAnswers::add_tier(ProductBits listed, std::vector<const LooseProduct*> loose)
{
    for (const auto& better : tiers_)
        listed.drop(better.listed);
    std::sort(loose.begin(), loose.end(), in_order);
    count_ += listed.count() + loose.size();
    tiers_.push_back({std::move(listed), std::move(loose)});
}

bool SearchAnswers::tell_one(std::size_t wanted)
{
    while (found_.size() < wanted && told_tiers() < tiers_.size())
        if (tell_from(tiers_[told_tiers()]))
            return true;
    return false;
}

std::size_t SearchAnswers::told_tiers() const
{
    std::size_t told = 0;
    while (told < tiers_.size() && tiers_[told].next_listed >= tiers_[told].listed.products() &&
           tiers_[told].next_loose >= tiers_[told].loose.size())
        ++told;
    return told;
}

bool SearchAnswers::tell_from(Tier& tier)
{
    tier.next_listed = tier.listed.next_from(tier.next_listed);
    std::optional<FoundProduct> listed;
    if (tier.next_listed < tier.listed.products()) {
        listed = rows_.product(rows_.key_at_place(tier.next_listed));
        if (!listed) { // taken out of the catalog
            ++tier.next_listed;
            return false;
        }
    }
    if (tier.next_loose < tier.loose.size()) {
        const auto& loose = *tier.loose[tier.next_loose];
        if (!listed || std::pair(loose.name, loose.key) < std::pair(fold(listed->name), key_of(listed->gtin))) {
            ++tier.next_loose;
            if (auto known = rows_.product(loose.key))
                found_.push_back(*std::move(known));
            return true;
        }
    }
    if (!listed)
        return false;
    ++tier.next_listed;
    found_.push_back(*std::move(listed));
    return true;
}

} // namespace catalog
