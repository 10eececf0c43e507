// Makes the lists of the name search from all products at once, by one sort in memory: about 50 bytes a product.
#pragma once

#include <cstdint>
#include <memory>
#include <string_view>

namespace SQLite {
class Database;
} // namespace SQLite

namespace catalog {

/// The name search of a catalog that is being written.
class SearchWriter {
public:
    SearchWriter();
    SearchWriter(SearchWriter&&) noexcept;
    SearchWriter& operator=(SearchWriter&&) noexcept;
    ~SearchWriter();

    /// Takes a product; its key (GTIN) is above all earlier ones. Aisle and category may be empty.
    void add(std::int64_t key, std::string_view name, std::string_view brand, std::string_view aisle,
             std::string_view category);

    /// Writes all lists into tables that are empty, within the caller's transaction. Once.
    void write(SQLite::Database& database);

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
