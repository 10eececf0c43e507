// What the name search of an open catalog holds in memory: its words, its kinds of food, and the products that are in
// no list. Read once, a portion at a time.
#pragma once

#include "catalog/store/product_bits.h"
#include "catalog/store/search_words.h"

#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace catalog {

/// A product that is in no list: put in later, or of a catalog of version 1 or 2.
struct LooseProduct {
    std::int64_t key;
    std::string name;  ///< folded
    std::string brand; ///< folded
    std::string aisle; ///< as printed
    std::string category;
    std::size_t aisle_kind; ///< its number among the kinds; SearchMemory::no_kind
    std::size_t category_kind;
};

/// Filled by `step`; complete when that returns false. Throws std::runtime_error where a table is torn.
class SearchMemory {
public:
    static constexpr std::size_t no_kind = SIZE_MAX;

    SearchMemory(SQLite::Database& database, int version);

    /// Reads one portion. Returns whether there is more to read.
    bool step();

    [[nodiscard]] std::size_t products() const { return products_; }
    [[nodiscard]] const SearchWords& words() const { return words_; }

    /// Kinds of food, folded; the first `listed_kinds` have lists.
    [[nodiscard]] const std::vector<std::string>& kinds() const { return kinds_; }
    [[nodiscard]] std::size_t listed_kinds() const { return listed_kinds_; }

    /// The numbers of the lists: of a word its own number, of a kind `kind_list`, of a beginning of one or two bytes
    /// from first to last.
    [[nodiscard]] std::size_t kind_list(std::size_t kind) const
    {
        return words_.size() + beginnings_.size() / 2 + kind;
    }
    [[nodiscard]] std::pair<std::size_t, std::size_t> beginning_lists(std::string_view letters) const;

    [[nodiscard]] const std::vector<LooseProduct>& loose() const { return loose_; }
    /// The listed products that are loose as well: what their lists say is out of date.
    [[nodiscard]] const ProductBits& out_of_date() const { return out_of_date_; }

private:
    void read_head(SQLite::Database& database);
    void read_word_row();
    void read_loose_row();
    void read_number_row();
    std::size_t kind_of(const std::string& text);

    SearchWords words_;
    std::string beginnings_;
    std::vector<std::string> kinds_;
    std::unordered_map<std::string, std::size_t> kind_numbers_; // by their text as printed
    std::size_t listed_kinds_ = 0;
    std::vector<LooseProduct> loose_;
    ProductBits out_of_date_;
    std::size_t products_ = 0;
    std::size_t word_count_ = 0;
    std::optional<SQLite::Statement> word_rows_; // those that are still to be read
    std::optional<SQLite::Statement> loose_rows_;
    std::optional<SQLite::Statement> number_rows_;
};

/// The GTIN at a place of a row of search_number. Throws std::runtime_error when the row is shorter.
[[nodiscard]] std::int64_t key_at(std::string_view numbers, std::size_t place);

} // namespace catalog
