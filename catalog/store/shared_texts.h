// Texts that many products share (the name of a release, a category of food), kept once in the catalog.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <unordered_map>

namespace SQLite {
class Database;
}

namespace catalog {

/// The table for them, as SQL.
[[nodiscard]] const char* shared_texts_table();

/// The shared texts of one open catalog. For few texts: all of them are held in memory.
class SharedTexts {
public:
    /// Reads all of them, once. A catalog of version 1 or 2 has none.
    explicit SharedTexts(SQLite::Database& database, int version);

    /// The text behind a number. Throws std::runtime_error where there is none.
    [[nodiscard]] const std::string& text_of(std::int64_t number) const;

    /// The number of a text; a new one is written into the catalog.
    [[nodiscard]] std::int64_t number_of(const std::string& text);

    /// Reads all of them again: what was written may have been taken back with its transaction.
    void read_again();

private:
    SQLite::Database* database_;
    std::map<std::int64_t, std::string> texts_;
    std::unordered_map<std::string, std::int64_t> numbers_;
};

} // namespace catalog
