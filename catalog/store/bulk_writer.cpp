#include "catalog/store/bulk_writer.h"

#include "catalog/store/row.h"
#include "catalog/store/schema.h"
#include "catalog/store/search_writer.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <optional>

namespace catalog {

struct BulkWriter::Inside {
    explicit Inside(const std::filesystem::path& path)
        : database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
    {
        database.exec("PRAGMA journal_mode = OFF"); // what breaks off is thrown away: nothing has to be rolled back
        database.exec("PRAGMA synchronous = OFF");  // synced once, at the end
        database.exec("PRAGMA locking_mode = EXCLUSIVE");
        database.exec("PRAGMA cache_size = -16384");
        make_tables(database);
        database.exec("BEGIN");
        texts.emplace(RowTexts{SharedTexts(database, newest_version), {}});
        put.emplace(database, put_sql());
    }

    SQLite::Database database;
    std::optional<RowTexts> texts;
    std::optional<SQLite::Statement> put;
    SearchWriter names;
    std::size_t count = 0;
};

BulkWriter::BulkWriter(const std::filesystem::path& path) : inside_(std::make_unique<Inside>(path)) {}
BulkWriter::BulkWriter(BulkWriter&&) noexcept = default;
BulkWriter& BulkWriter::operator=(BulkWriter&&) noexcept = default;
BulkWriter::~BulkWriter() = default;

void BulkWriter::add(const core::Product& product)
{
    bind(*inside_->put, product, *inside_->texts);
    inside_->put->exec();
    inside_->put->reset();
    inside_->names.add(key_of(product.gtin), product.name, product.brand, product.aisle, product.category);
    ++inside_->count;
}

void BulkWriter::add(const Approvals& approvals)
{
    for (const auto& approval : approvals.all())
        put_approval(inside_->database, approval);
}

void BulkWriter::finish()
{
    inside_->put.reset();
    inside_->names.write(inside_->database);
    inside_->database.exec("COMMIT");
    inside_->texts.reset();
    inside_ = nullptr;
}

std::size_t BulkWriter::count() const
{
    return inside_->count;
}

} // namespace catalog
