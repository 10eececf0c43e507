// Writes what a release has and what the catalog had, by rising numbers, into a new catalog; on a thread of its own,
// since making and writing a nation's labels are equal work.
#pragma once

#include "catalog/load/audit_pass.h"
#include "catalog/load/release_report.h"
#include "catalog/read/handover.h"
#include "catalog/store/bulk_writer.h"
#include "catalog/store/store.h"
#include "core/product.h"

#include <exception>
#include <filesystem>
#include <optional>
#include <thread>
#include <vector>

namespace catalog {

/// The writing side of a load.
class MergingWriter {
public:
    /// Writes into `aside`, where no file lies; `old` is the catalog as it was, if there is one.
    MergingWriter(const std::filesystem::path& aside, std::optional<Store> old, ReleaseReport& report);
    MergingWriter(const MergingWriter&) = delete;
    MergingWriter& operator=(const MergingWriter&) = delete;
    ~MergingWriter(); ///< without `finish` what was written is no catalog

    /// A product of the release; its number is above all earlier ones.
    void add(core::Product product);

    /// Waits until all is written. Throws std::runtime_error when it could not be. Then the report is complete.
    void finish();

private:
    /// A product that was looked through where it was made: that thread has less to do than the one that writes.
    struct Audited {
        core::Product product;
        std::vector<core::Doubt> doubts;
    };
    using Batch = std::vector<Audited>;
    void write();
    void put_old();
    void put(const Audited& made);
    void merge(const Batch& batch);
    void take_old_below(const core::Gtin* number);
    void stop();

    Handover<Batch> line_;
    Batch batch_;
    std::filesystem::path aside_;
    BulkWriter writer_;
    std::optional<Store> old_;
    std::optional<core::Product> next_old_;
    AuditPass audit_;
    ReleaseReport* report_; ///< of the writing thread alone: replaced, kept, taken, audit and OwnEntryKept
    std::exception_ptr broken_;
    std::thread thread_;
};

} // namespace catalog
