// How long the name search takes to make and to answer, and how many bytes it needs, beside a scan with LIKE.
// search_bench [PRODUCTS]: 400,000 where nothing is said. Names, makers and categories are those of a generated
// release.
#include "catalog/store/schema.h"
#include "catalog/store/search.h"
#include "catalog/store/search_writer.h"
#include "core/code/gtin.h"
#include "tests/bench/timing.h"
#include "tests/support/release_texts.h"
#include "tests/support/temp_folder.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <fstream>
#include <string>

namespace {

using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// Rising numbers of twelve digits, as far from one another as a nation's are.
std::uint64_t gtin(std::size_t nth)
{
    const auto body = std::to_string(20'000'000'000 + nth * 35'000 + nth % 7);
    return std::stoull(body + core::check_digit(body));
}

/// Seconds of the processor: other programs do not count.
double processor_ms()
{
    return static_cast<double>(std::clock()) * 1000 / CLOCKS_PER_SEC;
}

/// Writes the rows that a search reads: as wide as a catalog's rows are, their labels left empty.
void write_products(SQLite::Database& database, std::size_t count)
{
    SQLite::Statement put(database,
                          "INSERT INTO product (gtin, name, brand, aisle, note, panel, audience, household, "
                          "servings, servings_nano, figures, not_significant, source, source_row, "
                          "entered_on, origin_kind, category, this_place_only) VALUES "
                          "(?, ?, ?, '', '', 0, 0, '1 cup', 0, 0, zeroblob(150), x'', 1, 1, 20260401, 1, ?, 0)");
    SQLite::Statement share(database, "INSERT OR IGNORE INTO shared_text (number, text) VALUES (?, ?)");
    for (std::size_t i = 0; i < count; ++i) {
        test::Dice dice(77 * 4711 + i);
        put.bind(1, static_cast<std::int64_t>(gtin(i)));
        put.bind(2, test::food_name(dice));
        put.bind(3, test::happens(dice, 700) ? test::brand_name(dice) : test::maker_name(dice));
        const std::string category = test::food_category(dice);
        const auto number = static_cast<std::int64_t>(std::hash<std::string>{}(category) >> 2U);
        share.bind(1, number);
        share.bind(2, category);
        share.exec();
        share.reset();
        put.bind(4, number);
        put.exec();
        put.reset();
    }
}

/// Makes the lists from the rows, and says what that takes beyond reading them.
void make_lists(SQLite::Database& database, const std::string& path, std::size_t count)
{
    const auto before = std::filesystem::file_size(path);
    const double memory = bench::peak_megabytes();
    catalog::SearchWriter writer;
    SQLite::Statement all(database, "SELECT gtin, name, brand, text FROM product JOIN shared_text ON number = category "
                                    "ORDER BY gtin");
    struct Row {
        std::int64_t key;
        std::string name, brand, category;
    };
    double adding = 0;
    for (bool more = true; more;) {
        std::vector<Row> rows;
        while (rows.size() < 1000 && (more = all.executeStep()))
            rows.push_back({all.getColumn(0).getInt64(), all.getColumn(1).getString(), all.getColumn(2).getString(),
                            all.getColumn(3).getString()});
        const double start = processor_ms();
        for (const auto& row : rows)
            writer.add(row.key, row.name, row.brand, "", row.category);
        adding += processor_ms() - start;
    }
    all.reset();
    const double start = processor_ms();
    database.exec("BEGIN");
    writer.write(database);
    database.exec("COMMIT");
    const double writing = processor_ms() - start;
    const auto products = static_cast<double>(count);
    std::printf(
        "  made: %.2f us a product to add, %.2f us to sort and write; %.1f bytes a product; %.0f MB of memory\n",
        adding * 1000 / products, writing * 1000 / products,
        static_cast<double>(std::filesystem::file_size(path) - before) / products, bench::peak_megabytes() - memory);
}

struct Times {
    double first = 0;   // until a page of answers is there, or all is known
    double longest = 0; // the longest portion
    double all = 0;     // until everything is counted
};

Times answer(catalog::NameSearch& search, const std::string& typed)
{
    Times times;
    const auto start = Clock::now();
    search.ask(typed);
    for (bool done = false; !done;) {
        const auto portion = Clock::now();
        done = search.step([] { return false; });
        times.longest = std::max(times.longest, ms_since(portion));
        if (times.first == 0 && (search.found().size() >= 8 || done))
            times.first = ms_since(start);
    }
    times.all = ms_since(start);
    return times;
}

double like_ms(SQLite::Database& database, const std::string& word)
{
    SQLite::Statement like(database, "SELECT gtin, name FROM product WHERE name LIKE ? ORDER BY name LIMIT 8");
    like.bind(1, "%" + word + "%");
    const auto start = Clock::now();
    while (like.executeStep())
        bench::keep(like.getColumn(0).getInt64());
    return ms_since(start);
}

void measure(std::size_t count)
{
    const test::TempFolder folder;
    const auto path = folder.file("names.pairstand");
    SQLite::Database database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode = OFF");
    database.exec("PRAGMA synchronous = OFF");
    catalog::make_tables(database);
    database.exec("BEGIN");
    write_products(database, count);
    database.exec("COMMIT");
    std::printf("%zu products\n", count);
    make_lists(database, path, count);

    catalog::NameSearch search(database, catalog::newest_version, path);
    const auto cold = answer(search, "chocolate");
    std::printf("  the first question of all, words read into memory: first page after %.1f ms\n", cold.first);
    std::printf("  %-34s %9s %9s %9s %9s\n", "typed", "page ms", "portion", "all ms", "products");
    for (const char* typed : {"c",
                              "ch",
                              "cho",
                              "chocolate",
                              "chocolate cheese",
                              "c c",
                              "o",
                              "vale",
                              "choclate",
                              "choclate chese",
                              "chocoalte cookeis",
                              "salsa tortilla oil vinegar",
                              "zzzz",
                              "galletas",
                              "leche",
                              "milk chocolate cookies organic cheese",
                              "brievael",
                              "quintaravale",
                              "cookies biscuits",
                              "honey oat"}) {
        Times worst;
        for (int i = 0; i < 5; ++i) {
            const auto times = answer(search, typed);
            if (i == 0 || times.first < worst.first)
                worst = times;
        }
        std::printf("  %-34s %9.2f %9.2f %9.2f %9zu\n", typed, worst.first, worst.longest, worst.all, search.count());
    }
    std::printf("  LIKE '%%chocolate%%' %9.2f ms, LIKE '%%zzzz%%' %9.2f ms\n", like_ms(database, "chocolate"),
                like_ms(database, "zzzz"));
}

} // namespace

int main(int count, char** words)
{
    try {
        measure(count > 1 ? std::strtoull(words[1], nullptr, 10) : 400'000);
        return 0;
    } catch (const std::exception& broken) {
        std::fprintf(stderr, "%s\n", broken.what());
        return 2;
    }
}
