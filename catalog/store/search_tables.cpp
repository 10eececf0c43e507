#include "catalog/store/search_tables.h"

#include "catalog/store/search_writer.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <stdexcept>

namespace catalog {

void make_search_tables(SQLite::Database& database)
{
    database.exec(R"(
CREATE TABLE search_head (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    products INTEGER NOT NULL,
    words INTEGER NOT NULL,
    beginnings BLOB NOT NULL
) STRICT;
CREATE TABLE search_word (first INTEGER PRIMARY KEY, words BLOB NOT NULL) STRICT;
CREATE TABLE search_kind (number INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT;
CREATE TABLE search_list (first INTEGER PRIMARY KEY, lists BLOB NOT NULL) STRICT;
CREATE TABLE search_number (first INTEGER PRIMARY KEY, numbers BLOB NOT NULL) STRICT;
CREATE TABLE search_loose (gtin INTEGER PRIMARY KEY) STRICT;
)");
}

bool has_search_tables(const SQLite::Database& database)
{
    return database.tableExists("search_head");
}

void clear_search(SQLite::Database& database)
{
    for (const char* table :
         {"search_head", "search_word", "search_kind", "search_list", "search_number", "search_loose"})
        database.exec(std::string("DELETE FROM ") + table);
}

void index_names(SQLite::Database& database)
{
    clear_search(database);
    SearchWriter writer;
    SQLite::Statement all(database, "SELECT gtin, name, brand, aisle, text FROM product "
                                    "LEFT JOIN shared_text ON number = category ORDER BY gtin");
    while (all.executeStep())
        writer.add(all.getColumn(0).getInt64(), all.getColumn(1).getString(), all.getColumn(2).getString(),
                   all.getColumn(3).getString(), all.getColumn(4).getString());
    all.reset();
    writer.write(database);
}

void note_loose(SQLite::Database& database, std::int64_t key)
{
    SQLite::Statement note(database, "INSERT OR IGNORE INTO search_loose (gtin) VALUES (?)");
    note.bind(1, key);
    note.exec();
}

void index_names_if_many_loose(SQLite::Database& database)
{
    if (database.execAndGet("SELECT count(*) FROM search_loose").getInt64() > most_loose)
        index_names(database);
}

std::uint64_t take_number(std::string_view& bytes)
{
    std::uint64_t number = 0;
    for (unsigned shift = 0; shift < 64 && !bytes.empty(); shift += 7) {
        const auto byte = static_cast<std::uint8_t>(bytes.front());
        bytes.remove_prefix(1);
        number |= static_cast<std::uint64_t>(byte & 0x7FU) << shift;
        if (byte < 0x80)
            return number;
    }
    throw std::runtime_error("catalog: the lists of the name search are torn");
}

} // namespace catalog
