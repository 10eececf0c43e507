// The audit of a catalog or a sheet, and what a leader approved of it: for the leader desk and for `pairstand audit`.
#pragma once

#include "catalog/load/audit_tally.h"
#include "catalog/read/faults.h"
#include "catalog/store/store.h"
#include "core/error.h"
#include "ui/words/language.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace kiosk {

/// A catalog, or a sheet as one that lives in memory.
struct AuditSource {
    catalog::Store store;
    catalog::Faults faults; ///< of a sheet: rows that could not be read
};

/// Opens it. Errors: those of catalog::Store::open, and the first fault of a sheet without a good row.
[[nodiscard]] core::Result<AuditSource> open_audit_source(const std::string& path);

/// Labels one after the other, then the names that stand twice. Memory grows by 16 bytes a product. `go_on` is told now
/// and then how many labels were looked at; false ends it, with nothing. Throws std::runtime_error when the catalog is
/// broken.
[[nodiscard]] std::optional<catalog::AuditTally> look_through(const catalog::Store& store, std::size_t samples,
                                                              const std::function<bool(std::uint64_t)>& go_on = {});

/// What came of "I looked, the package says so".
struct Approved {
    enum class What { Done, NoRule, NoCatalog, NoProduct, NoDoubt, Refused };
    What what = What::Done;
    std::string name;                 ///< of the product, where there is one
    std::optional<core::Error> error; ///< of Refused
};

/// Writes it down in the catalog, for one product and one rule, on this day ("2026-11-26").
[[nodiscard]] Approved approve(const std::string& catalog, const std::string& code, const std::string& rule,
                               const std::string& day);

/// The sentence for it, with its full stop.
[[nodiscard]] std::string approved_words(const Approved& approved, const std::string& catalog, const std::string& code,
                                         const std::string& rule, const ui::Language& language);

} // namespace kiosk
