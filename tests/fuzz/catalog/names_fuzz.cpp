// Any bytes in the tables of the name search, as a torn disk or a foreign hand leaves them, and any question to them.
#include "catalog/store/schema.h"
#include "catalog/store/search.h"
#include "catalog/store/search_tables.h"
#include "catalog/store/search_writer.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <string_view>

namespace {

/// An input that breaks a promise is a crash, so that the fuzzer keeps it.
void promise(bool holds)
{
    if (!holds)
        std::abort();
}

/// A catalog in memory: a few hundred products, so that lists take more than one row.
SQLite::Database& shelves()
{
    static SQLite::Database database = [] {
        SQLite::Database made(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        catalog::make_tables(made);
        SQLite::Statement put(made,
                              "INSERT INTO product (gtin, name, brand, aisle, note, panel, audience, household, "
                              "servings, servings_nano, figures, not_significant, source, source_row, "
                              "entered_on, origin_kind, category, this_place_only) VALUES "
                              "(?, ?, 'Millbrook', ?, '', 0, 0, '1 cup', 0, 0, x'', x'', 1, 1, 20260401, 1, 0, 0)");
        constexpr std::array words{"oat", "honey", "rounds", "chocolate", "milk", "rice", "avena", "leche"};
        for (int i = 0; i < 600; ++i) {
            put.bind(1, 1000 + i);
            put.bind(2, std::string(words[i % 8]) + " " + words[i / 8 % 8] + " " + std::to_string(i * i));
            put.bind(3, i % 3 == 0 ? "Cereal" : "Milk");
            put.exec();
            put.reset();
        }
        catalog::index_names(made);
        return made;
    }();
    return database;
}

constexpr std::array spoil_sql{
    "UPDATE search_list SET lists = ?2 WHERE rowid = (SELECT rowid FROM search_list LIMIT 1 OFFSET ?1)",
    "UPDATE search_word SET words = ?2 WHERE rowid = (SELECT rowid FROM search_word LIMIT 1 OFFSET ?1)",
    "UPDATE search_number SET numbers = ?2 WHERE rowid = (SELECT rowid FROM search_number LIMIT 1 OFFSET ?1)",
    "UPDATE search_head SET beginnings = ?2, products = products + ?1 - 3",
    "UPDATE search_head SET beginnings = ?2, words = words + ?1 - 3",
    "UPDATE search_list SET lists = ?2, first = first + ?1",
};

void spoil(SQLite::Database& database, std::size_t which, int place, std::string_view bytes)
{
    SQLite::Statement update(database, spoil_sql[which % spoil_sql.size()]);
    update.bind(1, place);
    update.bind(2, bytes.data(), static_cast<int>(bytes.size()));
    update.exec();
}

void ask(SQLite::Database& database, std::string_view question)
{
    catalog::NameSearch search(database, catalog::newest_version, "names");
    search.ask(question);
    search.want(50);
    int portions = 0;
    while (!search.step([] { return false; }))
        promise(++portions < 100'000); // 600 products are answered in a few hundred
    promise(search.found().size() <= 50);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size < 3)
        return 0;
    const std::string_view rest(reinterpret_cast<const char*>(data) + 3, size - 3);
    const std::size_t question_bytes = std::min<std::size_t>(data[2] % 32, rest.size());
    auto& database = shelves();
    database.exec("SAVEPOINT whole");
    try {
        spoil(database, data[0], data[1] % 8, rest.substr(question_bytes));
        ask(database, rest.substr(0, question_bytes));
    } catch (const std::runtime_error&) { // told in one sentence by whoever asked
    }
    database.exec("ROLLBACK TO whole");
    database.exec("RELEASE whole");
    return 0;
}
