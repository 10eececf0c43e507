// How long a product takes to find by its number, against what SQLite itself needs to find and hand over the same row.
#include "catalog/store/bulk_writer.h"
#include "catalog/store/row.h"
#include "catalog/store/schema.h"
#include "catalog/store/store.h"
#include "tests/bench/timing.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <cstdio>
#include <random>
#include <sqlite3.h>
#include <stdexcept>
#include <string>

namespace {

constexpr int lookups = 2000;

/// Numbers to look for, all over the catalog; the same ones in every run.
std::vector<core::Gtin> some_numbers(std::size_t count)
{
    std::mt19937_64 random(4711);
    std::vector<core::Gtin> numbers;
    for (int i = 0; i < lookups; ++i)
        numbers.push_back(test::gtin(1 + random() % count));
    return numbers;
}

/// The same table by SQLite's own functions: a statement prepared once, every column read, nothing made of it.
class Raw {
public:
    explicit Raw(const std::string& path)
    {
        if (sqlite3_open_v2(path.c_str(), &database_, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK ||
            sqlite3_prepare_v2(database_, catalog::find_sql(catalog::newest_version).c_str(), -1, &find_, nullptr) !=
                SQLITE_OK)
            throw std::runtime_error("no raw query");
    }
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;
    ~Raw()
    {
        sqlite3_finalize(find_);
        sqlite3_close(database_);
    }

    std::size_t find(std::int64_t key)
    {
        std::size_t bytes = 0;
        sqlite3_bind_int64(find_, 1, key);
        if (sqlite3_step(find_) == SQLITE_ROW)
            for (int column = 0; column < sqlite3_column_count(find_); ++column)
                if (sqlite3_column_text(find_, column) != nullptr)
                    bytes += static_cast<std::size_t>(sqlite3_column_bytes(find_, column));
        sqlite3_reset(find_);
        return bytes;
    }

private:
    sqlite3* database_ = nullptr;
    sqlite3_stmt* find_ = nullptr;
};

void measure(std::size_t count)
{
    const test::TempFolder folder;
    const auto path = folder.file("shop");
    {
        catalog::BulkWriter writer(path);
        for (std::uint64_t i = 1; i <= count; ++i)
            writer.add(test::product(i));
        writer.finish();
    }
    const auto numbers = some_numbers(count);
    Raw raw(path);
    const auto store = catalog::Store::open(path, catalog::Store::Mode::ReadOnly).value();
    std::size_t found = 0;
    std::size_t bytes = 0;
    const double raw_ms = bench::median_ms(15, [&] {
        for (const auto& gtin : numbers)
            bytes += raw.find(catalog::key_of(gtin));
    });
    const double store_ms = bench::median_ms(15, [&] {
        for (const auto& gtin : numbers)
            found += store.find(gtin).has_value() ? 1U : 0U;
    });
    const double open_ms =
        bench::median_ms(5, [&] { bench::keep(catalog::Store::open(path, catalog::Store::Mode::ReadOnly)); });
    if (found % lookups != 0 || bytes == 0)
        throw std::runtime_error("a product was not found");
    std::printf("%zu products, %d look-ups\n", count, lookups);
    bench::row("SQLite alone, all columns read", raw_ms, raw_ms);
    bench::row("Store::find, a whole product", store_ms, raw_ms);
    std::printf("  one look-up %.1f us, opening with its check %.1f ms\n", store_ms * 1000 / lookups, open_ms);
}

} // namespace

int main()
{
    for (const std::size_t count : {1'000U, 10'000U, 100'000U, 2'000'000U})
        measure(count);
}
