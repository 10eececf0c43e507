// The rows behind the answers of a name search: from a place in the lists to a product.
#pragma once

#include "catalog/store/search.h"

#include <SQLiteCpp/Statement.h>

#include <cstddef>
#include <cstdint>
#include <optional>

namespace catalog {

/// Reads what a search shows of its answers. Throws std::runtime_error where a table is torn.
class SearchRows {
public:
    SearchRows(SQLite::Database& database, int version) : database_(&database), version_(version) {}

    /// The GTIN of the product at a place in the order of names.
    [[nodiscard]] std::int64_t key_at_place(std::size_t place);

    /// The product; nothing when it was taken out of the catalog.
    [[nodiscard]] std::optional<FoundProduct> product(std::int64_t key);

private:
    SQLite::Database* database_;
    int version_;
    std::optional<SQLite::Statement> numbers_; // both once they are needed
    std::optional<SQLite::Statement> products_;
};

} // namespace catalog
