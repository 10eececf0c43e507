// What a leader has looked at: for one product and one rule of the audit "I looked, the package says so", with the day.
#pragma once

#include "core/origin.h"
#include "core/product.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace catalog {

/// One such word of a leader.
struct Approval {
    core::Gtin gtin;
    std::string rule;       ///< the stable name of a rule: "off_the_grid"
    core::Date on;          ///< when the package was looked at
    std::uint64_t label{0}; ///< label_fingerprint of what was approved
    bool operator==(const Approval&) const = default;
};

/// A number that changes whenever a figure, a percent, a size or the kind of a label does: an approval lapses then.
/// Ingredients, names and where the entry comes from do not count. The same on every machine (FNV-1a, 64 bits).
[[nodiscard]] std::uint64_t label_fingerprint(const core::Label& label);

/// Approvals by product, to ask for each of many.
class Approvals {
public:
    Approvals() = default;
    explicit Approvals(std::vector<Approval> all);
    /// The day on which this rule was approved for this product as its label stands now; nothing where it was not, or
    /// where the label has changed since.
    [[nodiscard]] std::optional<core::Date> find(const core::Product& product, std::string_view rule) const;
    /// All of them, by number and rule; those that have lapsed too.
    [[nodiscard]] const std::vector<Approval>& all() const { return all_; }

private:
    std::vector<Approval> all_; ///< by number, then rule
};

/// Makes the table of approvals where there is none.
void make_doubt_tables(SQLite::Database& database);

/// Puts an approval in, in place of an earlier one of this product and rule.
void put_approval(SQLite::Database& database, const Approval& approval);

/// Takes out the approvals of products that are gone.
void remove_orphaned_approvals(SQLite::Database& database);

/// All approvals, by number and rule; none in a catalog without the table. Throws std::runtime_error when a row holds
/// what this program never writes.
[[nodiscard]] Approvals read_approvals(SQLite::Database& database);

} // namespace catalog
