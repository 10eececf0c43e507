// What the audit found in many labels: counted in full by rule, with a few samples of each, in bounded memory.
#pragma once

#include "core/audit/audit.h"
#include "core/product.h"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace catalog {

/// One doubt with the label that it is about.
struct DoubtSample {
    core::Gtin gtin;
    std::string name;
    std::string brand;
    std::string source; ///< sheet or release
    std::size_t row;
    core::Doubt doubt;
    std::vector<core::Gtin> others = {}; ///< of DuplicateName: another number of the same name
};

/// What was found by one rule.
struct DoubtCount {
    std::size_t count = 0;
    std::vector<DoubtSample> samples; ///< the first ones
};

/// Counts doubts.
class AuditTally {
public:
    /// Keeps so many samples of each rule.
    explicit AuditTally(std::size_t most_samples = 5) : most_samples_(most_samples) {}

    /// Counts one label with its doubts, none of them too.
    void add(const core::Product& product, std::span<const core::Doubt> doubts);

    /// Counts a doubt that came of many labels; `doubted` says whether the label had none of its own.
    void add(DoubtSample sample, bool newly_doubted);

    /// Whether the next doubt of this rule is kept as a sample.
    [[nodiscard]] bool takes_samples(core::DoubtRule rule) const { return of(rule).count < most_samples_; }

    /// Counts doubts that a leader approved (catalog/store/doubts.h): they are told by number only.
    void add_approved(std::size_t count) { approved_ += count; }

    [[nodiscard]] std::size_t approved() const { return approved_; }
    [[nodiscard]] std::size_t labels() const { return labels_; }
    [[nodiscard]] std::size_t doubted() const { return doubted_; } ///< labels with a doubt
    [[nodiscard]] const DoubtCount& of(core::DoubtRule rule) const { return found_[static_cast<std::size_t>(rule)]; }

private:
    std::size_t most_samples_;
    std::size_t labels_ = 0;
    std::size_t doubted_ = 0;
    std::size_t approved_ = 0;
    std::array<DoubtCount, core::doubt_rule_count> found_;
};

} // namespace catalog
