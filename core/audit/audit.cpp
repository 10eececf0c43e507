#include "core/audit/audit.h"

#include "core/audit/families.h"

#include <algorithm>

namespace core {
namespace {

/// The figures of one column against one another.
std::vector<Doubt> doubts_of_column(const audited::Facts& facts)
{
    std::vector<Doubt> doubts;
    audited::doubt_lines(facts, doubts);
    audited::doubt_sums(facts, doubts);
    audited::doubt_energy(facts, doubts);
    return doubts;
}

void sort_out(std::vector<Doubt>& doubts)
{
    if (doubts.size() < 2)
        return;
    audited::leave_out_what_follows(doubts);
    std::stable_sort(doubts.begin(), doubts.end(),
                     [](const Doubt& a, const Doubt& b) { return info(a.rule).severity < info(b.rule).severity; });
}

/// The second column as one of its own. How much it stands for is not printed in so many words: no serving size.
std::vector<Doubt> doubts_of_second(const Product& product)
{
    const auto& second = *product.label.second;
    Product alone = product;
    alone.label.per_serving = second.column;
    alone.label.second.reset();
    alone.label.serving = {};
    auto doubts = doubts_of_column(audited::facts_of(alone));
    sort_out(doubts);
    for (auto& doubt : doubts)
        doubt.column = second.kind;
    return doubts;
}

} // namespace

std::vector<Doubt> audit(const Product& product)
{
    const audited::Facts facts = audited::facts_of(product);
    auto doubts = doubts_of_column(facts);
    audited::doubt_sizes(facts, doubts);
    sort_out(doubts);
    if (!product.label.second)
        return doubts;
    for (auto& doubt : doubts_of_second(product)) {
        // Whoever took the older Daily Values took them for both columns: once is enough.
        const bool of_label = doubt.rule == DoubtRule::OtherPanel || doubt.rule == DoubtRule::OtherAudience;
        if (!of_label || !std::ranges::count(doubts, doubt.rule, &Doubt::rule))
            doubts.push_back(std::move(doubt));
    }
    std::stable_sort(doubts.begin(), doubts.end(),
                     [](const Doubt& a, const Doubt& b) { return info(a.rule).severity < info(b.rule).severity; });
    return doubts;
}

} // namespace core
