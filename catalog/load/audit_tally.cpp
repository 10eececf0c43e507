#include "catalog/load/audit_tally.h"

#include <utility>

namespace catalog {

void AuditTally::add(const core::Product& product, std::span<const core::Doubt> doubts)
{
    ++labels_;
    doubted_ += doubts.empty() ? 0U : 1U;
    for (const auto& doubt : doubts) {
        auto& found = found_[static_cast<std::size_t>(doubt.rule)];
        if (++found.count <= most_samples_)
            found.samples.push_back(
                {product.gtin, product.name, product.brand, product.origin.source, product.origin.row, doubt});
    }
}

void AuditTally::add(DoubtSample sample, bool newly_doubted)
{
    doubted_ += newly_doubted ? 1U : 0U;
    auto& found = found_[static_cast<std::size_t>(sample.doubt.rule)];
    if (++found.count <= most_samples_)
        found.samples.push_back(std::move(sample));
}

} // namespace catalog
