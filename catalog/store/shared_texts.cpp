#include "catalog/store/shared_texts.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <stdexcept>

namespace catalog {

const char* shared_texts_table()
{
    return "CREATE TABLE shared_text (number INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT;";
}

SharedTexts::SharedTexts(SQLite::Database& database, int version) : database_(&database)
{
    if (version >= 3)
        read_again();
}

void SharedTexts::read_again()
{
    texts_.clear();
    numbers_.clear();
    SQLite::Statement all(*database_, "SELECT number, text FROM shared_text");
    while (all.executeStep()) {
        const auto& text = texts_[all.getColumn(0).getInt64()] = all.getColumn(1).getString();
        numbers_[text] = all.getColumn(0).getInt64();
    }
}

const std::string& SharedTexts::text_of(std::int64_t number) const
{
    const auto found = texts_.find(number);
    if (found == texts_.end())
        throw std::runtime_error("catalog: a row names a text that is not there: " + std::to_string(number));
    return found->second;
}

std::int64_t SharedTexts::number_of(const std::string& text)
{
    if (const auto known = numbers_.find(text); known != numbers_.end())
        return known->second;
    const std::int64_t number = texts_.empty() ? 1 : texts_.rbegin()->first + 1;
    SQLite::Statement put(*database_, "INSERT INTO shared_text (number, text) VALUES (?, ?)");
    put.bind(1, number);
    put.bind(2, text);
    put.exec();
    texts_[number] = text;
    numbers_[text] = number;
    return number;
}

} // namespace catalog
