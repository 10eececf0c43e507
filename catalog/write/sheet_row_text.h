// One product as one row of a sheet: what each column says of it. The way back is catalog/read/sheet_row.
#pragma once

#include "catalog/read/sheet_columns.h"
#include "core/error.h"
#include "core/product.h"

#include <string>
#include <vector>

namespace catalog {

/// What the cell of this column says of a product, before it is made harmless; empty where it says nothing.
[[nodiscard]] std::string cell_of(const core::Product& product, const SheetColumn& column);

/// The columns that say something of a product, found one product after the other.
class UsedColumns {
public:
    UsedColumns();
    /// Takes the columns that say something of this product.
    void add(const core::Product& product);
    /// Those of all products, and those that every sheet must have, in the order of the guide.
    [[nodiscard]] std::vector<const SheetColumn*> all() const;

private:
    std::vector<bool> used_; ///< by place in sheet_columns()
};

/// "gtin,name,...", without a line end.
[[nodiscard]] std::string header_text(const std::vector<const SheetColumn*>& columns);

/// The row of a product, without a line end: quoted where CSV needs it (RFC 4180), harmless where a spreadsheet would
/// run it. It was read back and gave the same product. Error: NotCarried, with the product's number as what was found,
/// when no sheet can say it (a text that is not tidy, a figure beyond what labels print).
[[nodiscard]] core::Result<std::string> row_text(const core::Product& product,
                                                 const std::vector<const SheetColumn*>& columns);

/// The cell quoted, where it has to be.
[[nodiscard]] std::string quoted(const std::string& cell);

} // namespace catalog
