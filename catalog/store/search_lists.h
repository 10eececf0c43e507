// Reads the lists of the name search (search_tables.h), a portion at a time.
#pragma once

#include "catalog/store/product_bits.h"

#include <SQLiteCpp/Statement.h>

#include <deque>
#include <optional>
#include <string>
#include <string_view>

namespace catalog {

/// Joins lists into sets of products. Throws std::runtime_error where a list is torn.
class SearchLists {
public:
    explicit SearchLists(SQLite::Database& database);

    /// Asks for the lists first .. last-1 to be joined into `into`, which must stay where it is.
    void ask(std::size_t first, std::size_t last, ProductBits& into);

    /// Forgets what was asked.
    void clear();

    /// Works on for one portion. Returns whether there is more to do.
    bool step();

private:
    struct Asked {
        std::size_t first;
        std::size_t last;
        ProductBits* into;
    };

    void next_row();
    void next_list();
    std::size_t read_on(ProductBits& into); ///< a portion of the open list; how many bytes of it

    SQLite::Database* database_;
    std::optional<SQLite::Statement> rows_; // once they are needed: a catalog may have no lists
    std::deque<Asked> asked_;
    bool in_rows_ = false;
    std::string row_;       // the lists that stand in one row
    std::string_view left_; // of it
    std::size_t list_ = 0;  // the number of the list that comes next in it
    std::string_view open_; // what is left of the list that is being read
    std::size_t place_ = 0;
    bool at_start_ = true;
};

} // namespace catalog
