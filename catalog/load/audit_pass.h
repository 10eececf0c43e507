// The audit of many labels, one after the other: each label for itself, and then the names that stand twice.
#pragma once

#include "catalog/load/audit_tally.h"
#include "catalog/load/duplicates.h"
#include "catalog/store/doubts.h"
#include "core/product.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace catalog {

/// Looks labels through and counts what is doubtful. Memory grows by 16 bytes a label (catalog/load/duplicates.h).
class AuditPass {
public:
    /// Keeps so many samples of each rule; what is approved (catalog/store/doubts.h) is told by number only.
    explicit AuditPass(std::size_t samples, Approvals approvals = {});

    /// Looks through one label; each number once.
    void look(const core::Product& product) { take(product, core::audit(product)); }

    /// The same for one whose doubts (core::audit) were looked for elsewhere.
    void take(const core::Product& product, std::vector<core::Doubt> doubts);

    /// What was found in all. `find` gives a product that was looked at, to name the samples of what stands twice.
    [[nodiscard]] AuditTally finish(const std::function<std::optional<core::Product>(const core::Gtin&)>& find);

private:
    std::size_t leave_out_approved(const core::Product& product, std::vector<core::Doubt>& doubts) const;

    Approvals approvals_;
    AuditTally tally_;
    Duplicates names_;
};

} // namespace catalog
