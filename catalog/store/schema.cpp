#include "catalog/store/schema.h"

#include "catalog/store/doubts.h"
#include "catalog/store/row.h"
#include "catalog/store/search_tables.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <sqlite3.h>
#include <string>

namespace catalog {
namespace {

constexpr int application = 0x50725374; // "PrSt" in the file's header says that the file is ours
constexpr int oldest_version = 1;
constexpr std::uintmax_t read_through = 64U << 20U; // bytes: under half a second to read on a small board

// Amounts are whole billionths. What is empty in a label is NULL here, never 0. Ingredients are text, or packed
// (ingredient_text.h); how a column of figures is written stands in figures.h, what the small numbers mean in
// row_words.h.
constexpr const char* product_table = R"(
CREATE TABLE product (
    gtin INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    brand TEXT NOT NULL,
    aisle TEXT NOT NULL,
    note TEXT NOT NULL,
    panel INTEGER NOT NULL,
    audience INTEGER NOT NULL,
    household TEXT NOT NULL,
    serving_nano INTEGER,
    serving_unit INTEGER,
    servings INTEGER NOT NULL,
    servings_nano INTEGER NOT NULL,
    figures BLOB NOT NULL,
    not_significant BLOB NOT NULL,
    second_kind INTEGER,
    second_figures BLOB,
    second_not_significant BLOB,
    contains_statement TEXT,
    net_printed TEXT,
    net_nano INTEGER,
    net_unit INTEGER,
    source INTEGER NOT NULL,
    source_row INTEGER NOT NULL,
    entered_on INTEGER NOT NULL,
    reference_food TEXT,
    origin_kind INTEGER NOT NULL,
    category INTEGER,
    this_place_only INTEGER NOT NULL,
    ingredients ANY
) STRICT;
)";

// The order of the lists to pick from. A release is searched by name, not leafed through: it stays out of the index.
constexpr const char* product_order =
    "CREATE INDEX product_in_order ON product (aisle COLLATE NOCASE, name COLLATE NOCASE, gtin) "
    "WHERE origin_kind <> 1;";

/// The tables of version 3 that a catalog of version 1 or 2 lacks.
void make_newer_tables(SQLite::Database& database)
{
    database.exec(product_table);
    database.exec(product_order);
    database.exec(shared_texts_table());
    make_doubt_tables(database);
    make_search_tables(database);
}

/// Writes every product of an older catalog as rows of version 3.
void rewrite(SQLite::Database& database, int version)
{
    database.exec("DROP INDEX product_in_order");
    database.exec("ALTER TABLE product RENAME TO older_product");
    make_newer_tables(database);
    RowTexts texts{SharedTexts(database, newest_version), {}};
    SQLite::Statement all(database, all_sql(version, "older_product"));
    SQLite::Statement put(database, put_sql());
    while (all.executeStep()) {
        const auto product = product_in(all, texts);
        bind(put, product, texts);
        put.exec();
        put.reset();
    }
    all.reset();
    database.exec("DROP TABLE older_product");
    index_names(database);
}

int pragma(SQLite::Database& database, const char* name)
{
    return database.execAndGet(std::string("PRAGMA ") + name).getInt();
}

std::int64_t pragma64(SQLite::Database& database, const char* name)
{
    return database.execAndGet(std::string("PRAGMA ") + name).getInt64();
}

using Kind = core::Error::Kind;

auto refuse(Kind kind, const std::filesystem::path& path, const char* detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

auto no_catalog(const std::filesystem::path& path)
{
    return refuse(Kind::NoCatalog, path, "it is no Pairstand catalog");
}

auto torn(const std::filesystem::path& path)
{
    return refuse(Kind::TornCatalog, path, "it is torn");
}

/// Whether nothing is missing or torn: all of it is read once. A nation's catalog would keep people waiting for that at
/// every start: of a large one only the length is looked at here, every page when it is read (cell_size_check), and all
/// of it when it is loaded or installed.
bool is_whole(SQLite::Database& database, const std::filesystem::path& path)
{
    std::error_code in_memory;
    const auto size = std::filesystem::file_size(path, in_memory);
    if (!in_memory && size > read_through)
        return pragma64(database, "page_count") * pragma64(database, "page_size") == static_cast<std::int64_t>(size);
    return database.execAndGet("PRAGMA integrity_check(1)").getString() == "ok";
}

} // namespace

void make_tables(SQLite::Database& database)
{
    SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
    make_newer_tables(database);
    database.exec("PRAGMA application_id = " + std::to_string(application));
    database.exec("PRAGMA user_version = " + std::to_string(newest_version));
    all.commit();
}

int version_of(SQLite::Database& database)
{
    return pragma(database, "user_version");
}

void bring_up(SQLite::Database& database)
{
    if (version_of(database) == newest_version && has_search_tables(database))
        return;
    SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (const int version = version_of(database); version < 3) // asked again: another writer may have been faster
        rewrite(database, version);
    if (!has_search_tables(database)) {
        make_search_tables(database);
        index_names(database);
    }
    database.exec("PRAGMA user_version = " + std::to_string(newest_version));
    all.commit();
}

core::Result<void> check_tables(SQLite::Database& database, const std::filesystem::path& path)
{
    try {
        if (pragma(database, "application_id") != application)
            return no_catalog(path);
        const int version = version_of(database);
        if (version > newest_version)
            return refuse(Kind::NewerCatalog, path, "it was made by a newer version of Pairstand");
        if (version < oldest_version)
            return no_catalog(path);
        if (!is_whole(database, path))
            return torn(path);
        return {};
    } catch (const SQLite::Exception& error) {
        return tl::make_unexpected(why_unreadable(error, path));
    }
}

core::Error why_unreadable(const SQLite::Exception& error, const std::filesystem::path& path)
{
    switch (error.getErrorCode()) {
    case SQLITE_NOTADB:
        return no_catalog(path).value();
    case SQLITE_CORRUPT:
        return torn(path).value();
    default:
        return refuse(Kind::CannotRead, path, error.what()).value();
    }
}

} // namespace catalog
