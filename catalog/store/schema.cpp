#include "catalog/store/schema.h"

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

// Amounts are whole billionths. What is empty in a label is NULL here, never 0. How a column of figures is written
// stands in row.cpp.
constexpr const char* tables = R"(
CREATE TABLE product (
    gtin INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    brand TEXT NOT NULL,
    aisle TEXT NOT NULL,
    note TEXT NOT NULL,
    panel TEXT NOT NULL,
    audience TEXT NOT NULL,
    household TEXT NOT NULL,
    serving_nano INTEGER,
    serving_unit TEXT,
    servings TEXT NOT NULL,
    servings_nano INTEGER NOT NULL,
    figures TEXT NOT NULL,
    not_significant TEXT NOT NULL,
    second_kind TEXT,
    second_figures TEXT,
    second_not_significant TEXT,
    ingredients TEXT,
    contains_statement TEXT,
    net_printed TEXT,
    net_nano INTEGER,
    net_unit TEXT,
    source TEXT NOT NULL,
    source_row INTEGER NOT NULL,
    entered_on TEXT NOT NULL,
    reference_food TEXT
) STRICT;
CREATE INDEX product_in_order ON product (aisle COLLATE NOCASE, name COLLATE NOCASE, gtin);
)";

int pragma(SQLite::Database& database, const char* name)
{
    return database.execAndGet(std::string("PRAGMA ") + name).getInt();
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

} // namespace

void make_tables(SQLite::Database& database)
{
    SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
    database.exec(tables);
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
    if (version_of(database) == newest_version)
        return;
    SQLite::Transaction all(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (version_of(database) < 2) // asked again: another writer may have been faster
        database.exec("ALTER TABLE product ADD COLUMN reference_food TEXT");
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
        if (database.execAndGet("PRAGMA integrity_check(1)").getString() != "ok")
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
