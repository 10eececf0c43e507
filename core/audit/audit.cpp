#include "core/audit/audit.h"

#include "core/audit/families.h"

#include <algorithm>

namespace core {

std::vector<Doubt> audit(const Product& product)
{
    const audited::Facts facts = audited::facts_of(product);
    std::vector<Doubt> doubts;
    audited::doubt_lines(facts, doubts);
    audited::doubt_sums(facts, doubts);
    audited::doubt_energy(facts, doubts);
    audited::doubt_sizes(facts, doubts);
    if (doubts.size() > 1) {
        audited::leave_out_what_follows(doubts);
        std::stable_sort(doubts.begin(), doubts.end(),
                         [](const Doubt& a, const Doubt& b) { return info(a.rule).severity < info(b.rule).severity; });
    }
    return doubts;
}

} // namespace core
