#include "catalog/load/audit_pass.h"

#include <algorithm>
#include <utility>

namespace catalog {

AuditPass::AuditPass(std::size_t samples, Approvals approvals) : approvals_(std::move(approvals)), tally_(samples) {}

/// Takes out the doubts that a leader approved for this label as it stands; returns how many.
std::size_t AuditPass::leave_out_approved(const core::Product& product, std::vector<core::Doubt>& doubts) const
{
    return std::erase_if(doubts, [&](const core::Doubt& doubt) {
        return approvals_.find(product, core::info(doubt.rule).name).has_value();
    });
}

void AuditPass::take(const core::Product& product, std::vector<core::Doubt> doubts)
{
    if (!doubts.empty() && !approvals_.all().empty())
        tally_.add_approved(leave_out_approved(product, doubts));
    tally_.add(product, doubts);
    names_.add(product, !doubts.empty());
}

AuditTally AuditPass::finish(const std::function<std::optional<core::Product>(const core::Gtin&)>& find)
{
    constexpr auto rule = core::DoubtRule::DuplicateName;
    names_.each_group([&](const SameName& group) {
        for (const auto& one : group) {
            const auto& other = &one == &group.front() ? group[1] : group.front();
            DoubtSample sample{one.gtin, "", "", "", 0, {rule}, {other.gtin}};
            if (tally_.takes_samples(rule) || !approvals_.all().empty())
                if (const auto product = find(one.gtin)) {
                    if (approvals_.find(*product, core::info(rule).name)) {
                        tally_.add_approved(1);
                        continue;
                    }
                    sample.name = product->name;
                    sample.brand = product->brand;
                    sample.source = product->origin.source;
                    sample.row = product->origin.row;
                }
            tally_.add(std::move(sample), !one.doubted);
        }
    });
    return std::move(tally_);
}

} // namespace catalog
