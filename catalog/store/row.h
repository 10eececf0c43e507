// A product as a row of the table and back: the one place that knows both.
#pragma once

#include "catalog/store/ingredient_text.h"
#include "catalog/store/shared_texts.h"
#include "core/product.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

namespace catalog {

/// What the rows of one open catalog share.
struct RowTexts {
    SharedTexts shared;
    IngredientText ingredients;
};

/// "INSERT OR REPLACE ..." with a place for every column.
[[nodiscard]] std::string put_sql();

/// "SELECT ... WHERE gtin = ?" with every column in the order that product_in reads; what a catalog of an older
/// `version` (schema.h) does not have is NULL.
[[nodiscard]] std::string find_sql(int version);

/// The same for the product with the next higher number.
[[nodiscard]] std::string next_sql(int version);

/// The same for all products, by number.
[[nodiscard]] std::string all_sql(int version, std::string_view table = "product");

/// Binds every column of put_sql.
void bind(SQLite::Statement& put, const core::Product& product, RowTexts& texts);

/// The product in the row at which a statement of find_sql or all_sql stands.
/// Throws std::runtime_error when the row holds what this program never writes.
[[nodiscard]] core::Product product_in(SQLite::Statement& found, RowTexts& texts);

/// The number as the table keeps it.
[[nodiscard]] std::int64_t key_of(const core::Gtin& gtin);

/// The number behind a key. Throws std::runtime_error when it is none.
[[nodiscard]] core::Gtin gtin_of(std::int64_t key);

} // namespace catalog
