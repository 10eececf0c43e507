// The tables of a catalog file, their version, and how a file is told to be one of ours and whole.
#pragma once

#include "core/error.h"

#include <filesystem>

namespace SQLite {
class Database;
class Exception;
} // namespace SQLite

namespace catalog {

/// The version of the tables that this program writes. Older ones are read as they are, and brought up by whoever may
/// write there: 1 the first; 2 brought product.reference_food; 3 has rows of few
/// bytes, and says where each comes from.
inline constexpr int newest_version = 3;

/// Makes the tables in an empty database, all or none.
void make_tables(SQLite::Database& database);

/// The version of a catalog's tables.
[[nodiscard]] int version_of(SQLite::Database& database);

/// Brings the tables of an older version up to the newest, all or none; every product stays. A newest one is left
/// alone.
void bring_up(SQLite::Database& database);

/// Whether this is a catalog that this program can read, with nothing missing or torn: reads all of it once when it is
/// no larger than 64 MiB, and looks at the length of a larger one.
/// Errors: NoCatalog, NewerCatalog, TornCatalog, CannotRead, with `path` as their source.
[[nodiscard]] core::Result<void> check_tables(SQLite::Database& database, const std::filesystem::path& path);

/// What an exception says about a file that is being opened: NoCatalog, TornCatalog or CannotRead, with `path` as
/// its source.
[[nodiscard]] core::Error why_unreadable(const SQLite::Exception& error, const std::filesystem::path& path);

} // namespace catalog
