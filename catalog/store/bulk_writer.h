// Writes a whole catalog from its first product to its last, by rising numbers: the quickest way that SQLite has.
#pragma once

#include "catalog/store/doubts.h"
#include "core/product.h"

#include <cstddef>
#include <filesystem>
#include <memory>

namespace catalog {

/// A new catalog under way. Throws std::runtime_error when the disk refuses. For one thread at a time.
class BulkWriter {
public:
    /// Makes the file, where none may lie.
    explicit BulkWriter(const std::filesystem::path& path);
    BulkWriter(BulkWriter&&) noexcept;
    BulkWriter& operator=(BulkWriter&&) noexcept;
    ~BulkWriter(); ///< without `finish` what was written is no catalog

    /// Writes a product; its number is above all earlier ones.
    void add(const core::Product& product);

    /// Writes what a leader has approved.
    void add(const Approvals& approvals);

    /// Closes the file: it is a catalog now. It is not synced: SafeWrite does that.
    void finish();

    [[nodiscard]] std::size_t count() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
