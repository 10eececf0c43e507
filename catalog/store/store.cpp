#include "catalog/store/store.h"

#include "catalog/file/safe_write.h"
#include "catalog/store/row.h"
#include "catalog/store/schema.h"
#include "catalog/store/search.h"
#include "catalog/store/search_tables.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <cerrno>
#include <stdexcept>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using core::Error;

constexpr int patience_ms = 2000; // for a lock that another process holds while it commits

/// Which file lies at a path: a new file in the place of an old, still open one never has the old one's number.
struct FileIdentity {
    dev_t device = 0;
    ino_t number = 0;
    bool operator==(const FileIdentity&) const = default;
};

std::optional<FileIdentity> identity_of(const fs::path& path)
{
    struct stat found {};
    if (::stat(path.c_str(), &found) != 0)
        return std::nullopt;
    return FileIdentity{found.st_dev, found.st_ino};
}

auto refuse(Error::Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

/// Leaves a statement ready for the next question, and no read lock behind.
class ResetAtExit {
public:
    explicit ResetAtExit(SQLite::Statement& statement) : statement_(statement) {}
    ResetAtExit(const ResetAtExit&) = delete;
    ResetAtExit& operator=(const ResetAtExit&) = delete;
    ~ResetAtExit() { statement_.tryReset(); }

private:
    SQLite::Statement& statement_;
};

/// What SQLite is asked for before a file is looked at; nothing when it may be opened.
core::Result<void> look_at(const fs::path& path, Store::Mode mode)
{
    std::error_code error;
    const auto status = fs::status(path, error);
    if (fs::is_directory(status))
        return refuse(Error::Kind::IsFolder, path, "it is a folder");
    if (status.type() == fs::file_type::none)
        return refuse(Error::Kind::CannotRead, path, error.message());
    if (!fs::exists(status) && mode == Store::Mode::ReadOnly)
        return refuse(Error::Kind::NoSuchFile, path, "there is no such file");
    if (fs::exists(status) && !fs::is_regular_file(status))
        return refuse(Error::Kind::NoCatalog, path, "it is no file");
    if (fs::exists(status) && ::access(path.c_str(), R_OK) != 0)
        return refuse(Error::Kind::CannotRead, path, std::generic_category().message(errno));
    return {};
}

/// A writer that was cut off leaves its journal: only one who may write can play it back.
void play_back_journal(const fs::path& path)
{
    std::error_code error;
    if (!fs::exists(path.string() + "-journal", error))
        return;
    const SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, patience_ms);
    SQLite::Statement(database, "SELECT count(*) FROM sqlite_schema").executeStep();
}

int flags_for(Store::Mode mode)
{
    return mode == Store::Mode::Write ? SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE : SQLite::OPEN_READONLY;
}

bool is_new(const SQLite::Database& database)
{
    SQLite::Statement pages(database, "PRAGMA page_count");
    pages.executeStep();
    return pages.getColumn(0).getInt() == 0;
}

} // namespace

struct Store::Inside {
    Inside(const std::string& file, int flags)
        : identity(identity_of(file)), database(file, flags, patience_ms), path(file)
    {
        database.exec("PRAGMA trusted_schema = OFF"); // a catalog from a stick is outside data
        database.exec("PRAGMA cell_size_check = ON"); // so that a torn page is an error, not a wrong answer
        database.exec("PRAGMA synchronous = EXTRA");  // the folder is synced too: what is put stays put
    }

    void prepare()
    {
        const int version = version_of(database);
        texts.emplace(RowTexts{SharedTexts(database, version), {}});
        find.emplace(database, find_sql(version));
        next.emplace(database, next_sql(version));
        holds.emplace(database, "SELECT 1 FROM product WHERE gtin = ?");
        count.emplace(database, "SELECT count(*) FROM product");
        nth.emplace(database, "SELECT 1 FROM product LIMIT 1 OFFSET ?");
        page.emplace(database, "SELECT gtin, name, brand, aisle FROM product " +
                                   std::string(version < 3 ? "" : "WHERE origin_kind <> 1 ") +
                                   "ORDER BY aisle COLLATE NOCASE, name COLLATE NOCASE, gtin LIMIT ? OFFSET ?");
    }

    /// Asks a statement, and tells of a file that breaks meanwhile with its path and what helps.
    template<class Ask>
    auto asked(std::optional<SQLite::Statement>& statement, Ask ask) const
    {
        try {
            const ResetAtExit ready{*statement};
            return ask(*statement);
        } catch (const SQLite::Exception& error) {
            throw std::runtime_error(path + ": the catalog cannot be read any more (" + error.what() +
                                     "); move it away and load your sheets again");
        }
    }

    std::optional<FileIdentity> identity; // taken first: a file that comes in between counts as changed
    SQLite::Database database;            // before its statements: it must outlive them
    std::string path;
    std::optional<FolderLock> lock;
    mutable std::optional<RowTexts> texts;
    std::optional<SQLite::Statement> find;
    std::optional<SQLite::Statement> next;
    std::optional<SQLite::Statement> holds;
    std::optional<SQLite::Statement> count;
    std::optional<SQLite::Statement> nth;
    std::optional<SQLite::Statement> page;
    std::optional<SQLite::Statement> put; // only once something is put
};

core::Result<Store> Store::open(const fs::path& path, Mode mode)
{
    if (const auto looked = look_at(path, mode); !looked)
        return tl::make_unexpected(looked.error());
    std::optional<FolderLock> lock;
    if (mode == Mode::Write) {
        auto taken = FolderLock::take(folder_of(fs::weakly_canonical(path)));
        if (!taken)
            return refuse(taken.error().kind, path, taken.error().detail);
        lock.emplace(std::move(*taken));
    }
    try {
        play_back_journal(path);
        auto inside = std::make_unique<Inside>(path.string(), flags_for(mode));
        if (mode == Mode::Write && is_new(inside->database)) {
            make_tables(inside->database);
            inside->identity = identity_of(path);
        }
        if (const auto checked = check_tables(inside->database, path); !checked)
            return tl::make_unexpected(checked.error());
        if (mode == Mode::Write)
            bring_up(inside->database);
        inside->prepare();
        if (lock)
            inside->lock.emplace(std::move(*lock));
        return Store(std::move(inside));
    } catch (const SQLite::Exception& error) {
        return tl::make_unexpected(why_unreadable(error, path));
    }
}

Store::Store(const std::string& path) : inside_(std::make_unique<Inside>(path, flags_for(Mode::Write)))
{
    if (is_new(inside_->database))
        make_tables(inside_->database);
    if (const auto checked = check_tables(inside_->database, path); !checked)
        throw std::runtime_error(path + ": " + checked.error().detail);
    bring_up(inside_->database);
    inside_->identity = identity_of(path);
    inside_->prepare();
}

Store::Store(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

std::optional<core::Product> Store::find(const core::Gtin& gtin) const
{
    return inside_->asked(inside_->find, [&](SQLite::Statement& find) -> std::optional<core::Product> {
        find.bind(1, key_of(gtin));
        if (!find.executeStep())
            return std::nullopt;
        return product_in(find, *inside_->texts);
    });
}

bool Store::holds(const core::Gtin& gtin) const
{
    return inside_->asked(inside_->holds, [&](SQLite::Statement& holds) {
        holds.bind(1, key_of(gtin));
        return holds.executeStep();
    });
}

std::optional<core::Product> Store::next_after(const core::Gtin* gtin) const
{
    return inside_->asked(inside_->next, [&](SQLite::Statement& next) -> std::optional<core::Product> {
        next.bind(1, gtin ? key_of(*gtin) : -1);
        if (!next.executeStep())
            return std::nullopt;
        return product_in(next, *inside_->texts);
    });
}

std::size_t Store::count() const
{
    return inside_->asked(inside_->count, [](SQLite::Statement& count) {
        count.executeStep();
        return static_cast<std::size_t>(count.getColumn(0).getInt64());
    });
}

bool Store::has_more_than(std::size_t products) const
{
    return inside_->asked(inside_->nth, [&](SQLite::Statement& nth) {
        nth.bind(1, static_cast<std::int64_t>(products));
        return nth.executeStep();
    });
}

std::vector<ListedProduct> Store::products_in_order(std::size_t limit, std::size_t offset) const
{
    return inside_->asked(inside_->page, [&](SQLite::Statement& page) {
        page.bind(1, static_cast<std::int64_t>(limit));
        page.bind(2, static_cast<std::int64_t>(offset));
        std::vector<ListedProduct> products;
        while (page.executeStep())
            products.push_back({gtin_of(page.getColumn(0).getInt64()), page.getColumn(1).getString(),
                                page.getColumn(2).getString(), page.getColumn(3).getString()});
        return products;
    });
}

NameSearch Store::search() const
{
    return inside_->asked(inside_->count, [&](SQLite::Statement&) {
        return NameSearch(inside_->database, version_of(inside_->database), inside_->path);
    });
}

void Store::put(const core::Product& product)
{
    put(std::span(&product, 1));
}

std::size_t Store::put(std::span<const core::Product> products)
{
    if (!inside_->put)
        inside_->put.emplace(inside_->database, put_sql());
    auto& put = *inside_->put;
    const ResetAtExit ready{put};
    inside_->texts->shared.read_again(); // an earlier call that threw has taken back what it wrote
    SQLite::Transaction all(inside_->database, SQLite::TransactionBehavior::IMMEDIATE);
    std::size_t replaced = 0;
    for (const auto& product : products) {
        replaced += holds(product.gtin) ? 1U : 0U;
        bind(put, product, *inside_->texts);
        put.exec();
        put.reset();
        note_loose(inside_->database, key_of(product.gtin));
    }
    index_names_if_many_loose(inside_->database);
    all.commit();
    return replaced;
}

void Store::for_each(const std::function<bool(const core::Product&)>& visit) const
{
    std::optional<SQLite::Statement> all;
    all.emplace(inside_->database, all_sql(version_of(inside_->database)));
    inside_->asked(all, [&](SQLite::Statement& rows) {
        while (rows.executeStep())
            if (!visit(product_in(rows, *inside_->texts)))
                return;
    });
}

Approvals Store::approvals() const
{
    return read_approvals(inside_->database);
}

bool Store::approve(const core::Gtin& gtin, std::string_view rule, core::Date on)
{
    const auto product = find(gtin);
    if (!product)
        return false;
    SQLite::Transaction all(inside_->database, SQLite::TransactionBehavior::IMMEDIATE);
    make_doubt_tables(inside_->database);
    put_approval(inside_->database, {gtin, std::string(rule), on, label_fingerprint(product->label)});
    all.commit();
    return true;
}

std::vector<core::Product> Store::this_place_only() const
{
    std::vector<core::Product> products;
    if (version_of(inside_->database) < 3) // older catalogs have no such labels
        return products;
    SQLite::Statement all(inside_->database, "SELECT gtin FROM product WHERE this_place_only <> 0 ORDER BY gtin");
    while (all.executeStep())
        if (auto product = find(gtin_of(all.getColumn(0).getInt64())))
            products.push_back(std::move(*product));
    return products;
}

std::size_t Store::remove_this_place_only()
{
    SQLite::Transaction all(inside_->database, SQLite::TransactionBehavior::IMMEDIATE);
    const int removed = inside_->database.exec("DELETE FROM product WHERE this_place_only <> 0");
    inside_->database.exec("DELETE FROM shared_text WHERE number NOT IN (SELECT source FROM product UNION "
                           "SELECT category FROM product WHERE category IS NOT NULL)");
    remove_orphaned_approvals(inside_->database);
    if (removed > 0)
        index_names(inside_->database); // no word of theirs stays
    all.commit();
    inside_->texts->shared.read_again();
    return static_cast<std::size_t>(removed);
}

void Store::copy_to(const fs::path& path) const
{
    SQLite::Statement copy(inside_->database, "VACUUM INTO ?");
    copy.bind(1, path.string());
    copy.exec();
}

bool Store::changed_on_disk() const
{
    const auto now = identity_of(inside_->path);
    return now && now != inside_->identity;
}

} // namespace catalog
