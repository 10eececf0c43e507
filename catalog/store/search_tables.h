// The tables of the name search, and how numbers stand in them.
//
// Products are numbered anew for the search, by their names (all words folded, catalog/store/fold.h; then by GTIN): so
// the first bits of a list are the first answers. A list holds the products that have one word, one beginning of two
// bytes, or one kind (a category or an aisle), as rising numbers, each as its distance from the one before.
// What is put in later, one at a time, stays loose: few products, which a search reads through.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace SQLite {
class Database;
} // namespace SQLite

namespace catalog {

/// How many loose products there may be before the lists are made anew.
inline constexpr std::int64_t most_loose = 2000;

/// How many GTINs stand in a row of search_number, and how many bytes each takes.
inline constexpr std::size_t numbers_in_row = 512;
inline constexpr std::size_t number_bytes = 6;

/// Makes the tables, empty.
void make_search_tables(SQLite::Database& database);

/// Whether they are there: the first catalogs of version 3 had none.
[[nodiscard]] bool has_search_tables(const SQLite::Database& database);

/// Empties them.
void clear_search(SQLite::Database& database);

/// Makes the lists anew from all products of the catalog: none is loose then. For the caller's transaction.
void index_names(SQLite::Database& database);

/// Notes that a product was put in: it is loose. For the caller's transaction.
void note_loose(SQLite::Database& database, std::int64_t key);

/// Makes the lists anew when too many are loose. For the caller's transaction.
void index_names_if_many_loose(SQLite::Database& database);

/// Appends a number, seven bits a byte, the low ones first; the eighth bit says that more follow.
inline void append_number(std::string& bytes, std::uint64_t number)
{
    for (; number >= 0x80; number >>= 7U)
        bytes += static_cast<char>(number | 0x80U);
    bytes += static_cast<char>(number);
}

/// Takes such a number off the front. Throws std::runtime_error where there is none.
[[nodiscard]] std::uint64_t take_number(std::string_view& bytes);

} // namespace catalog
