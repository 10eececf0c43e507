// A product as a row of the table and back: the one place that knows both.
#pragma once

#include "core/product.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace SQLite {
class Statement;
}

namespace catalog {

/// "INSERT OR REPLACE ..." with a place for every column.
[[nodiscard]] std::string put_sql();

/// "SELECT ... WHERE gtin = ?" with every column in the order that product_in reads; what a catalog of an older
/// `version` (schema.h) does not have is NULL.
[[nodiscard]] std::string find_sql(int version);

/// Binds every column of put_sql.
void bind(SQLite::Statement& put, const core::Product& product);

/// The product in the row at which a statement of find_sql stands.
/// Throws std::runtime_error when the row holds what this program never writes.
[[nodiscard]] core::Product product_in(SQLite::Statement& found);

/// The number as the table keeps it.
[[nodiscard]] std::int64_t key_of(const core::Gtin& gtin);

/// The number behind a key. Throws std::runtime_error when it is none.
[[nodiscard]] core::Gtin gtin_of(std::int64_t key);

/// A column of figures in one text: "sodium=<140000000/0,6;iron=,10" is less than 140 mg of sodium with 6 %, and iron
/// with nothing but 10 %. Amounts are in billionths, behind "/" stands the number of decimals printed.
[[nodiscard]] std::string figures_text(const core::Column& column);

/// Reads figures_text back into `column.lines`. Throws std::runtime_error for what figures_text never writes.
void read_figures(std::string_view text, core::Column& column);

} // namespace catalog
