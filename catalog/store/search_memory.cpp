#include "catalog/store/search_memory.h"

#include "catalog/store/fold.h"
#include "catalog/store/search_tables.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <stdexcept>

namespace catalog {
namespace {

constexpr int rows_at_once = 16;

std::string_view bytes_of(const SQLite::Column& column)
{
    return {static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())};
}

const char* loose_sql(int version, bool with_lists)
{
    if (version < 3) // these have no lists: all are loose
        return "SELECT gtin, name, brand, aisle, '' FROM product ORDER BY gtin";
    if (!with_lists)
        return "SELECT gtin, name, brand, aisle, text FROM product LEFT JOIN shared_text ON number = category "
               "ORDER BY gtin";
    return "SELECT gtin, name, brand, aisle, text FROM search_loose JOIN product USING (gtin) "
           "LEFT JOIN shared_text ON number = category ORDER BY gtin";
}

} // namespace

SearchMemory::SearchMemory(SQLite::Database& database, int version)
{
    const bool with_lists = version >= 3 && has_search_tables(database);
    if (with_lists) {
        read_head(database);
        word_rows_.emplace(database, "SELECT first, words FROM search_word ORDER BY first");
        number_rows_.emplace(database, "SELECT first, numbers FROM search_number ORDER BY first");
    }
    loose_rows_.emplace(database, loose_sql(version, with_lists));
}

void SearchMemory::read_head(SQLite::Database& database)
{
    SQLite::Statement head(database, "SELECT products, words, beginnings FROM search_head");
    if (!head.executeStep())
        return;
    const auto products = head.getColumn(0).getInt64();
    constexpr std::int64_t most = 100'000'000; // a torn number is not to fill the memory
    if (products < 0 || products > most)
        throw std::runtime_error("catalog: the head of the name search is torn");
    products_ = static_cast<std::size_t>(products);
    word_count_ = static_cast<std::size_t>(head.getColumn(1).getInt64());
    beginnings_ = bytes_of(head.getColumn(2));
    out_of_date_ = ProductBits(products_);
    SQLite::Statement kinds(database, "SELECT text FROM search_kind ORDER BY number");
    while (kinds.executeStep())
        (void)kind_of(kinds.getColumn(0).getString());
    listed_kinds_ = kinds_.size();
}

std::size_t SearchMemory::kind_of(const std::string& text)
{
    if (text.empty())
        return no_kind;
    const auto [place, is_new] = kind_numbers_.emplace(text, kinds_.size());
    if (is_new)
        kinds_.push_back(fold(text));
    return place->second;
}

bool SearchMemory::step()
{
    for (int row = 0; row < rows_at_once; ++row) {
        if (word_rows_)
            read_word_row();
        else if (loose_rows_)
            read_loose_row();
        else if (number_rows_)
            read_number_row();
    }
    return word_rows_ || loose_rows_ || number_rows_;
}

void SearchMemory::read_word_row()
{
    if (!word_rows_->executeStep()) {
        word_rows_.reset();
        if (words_.size() != word_count_)
            throw std::runtime_error("catalog: words of the name search are missing");
        return;
    }
    words_.append(bytes_of(word_rows_->getColumn(1)));
}

void SearchMemory::read_loose_row()
{
    if (!loose_rows_->executeStep()) {
        loose_rows_.reset();
        if (loose_.empty() || products_ == 0)
            number_rows_.reset(); // nothing can be out of date
        return;
    }
    auto aisle = loose_rows_->getColumn(3).getString();
    auto category = loose_rows_->getColumn(4).getString();
    const auto aisle_kind = kind_of(aisle);
    const auto category_kind = kind_of(category);
    loose_.push_back({loose_rows_->getColumn(0).getInt64(), fold(loose_rows_->getColumn(1).getString()),
                      fold(loose_rows_->getColumn(2).getString()), std::move(aisle), std::move(category), aisle_kind,
                      category_kind});
}

void SearchMemory::read_number_row()
{
    if (!number_rows_->executeStep())
        return number_rows_.reset();
    const auto first = static_cast<std::size_t>(number_rows_->getColumn(0).getInt64());
    const auto numbers = bytes_of(number_rows_->getColumn(1));
    for (std::size_t i = 0; i < numbers.size() / number_bytes; ++i) {
        const auto key = key_at(numbers, i);
        const auto found =
            std::lower_bound(loose_.begin(), loose_.end(), key,
                             [](const LooseProduct& loose, std::int64_t other) { return loose.key < other; });
        if (found != loose_.end() && found->key == key && first + i < products_)
            out_of_date_.set(first + i);
    }
}

std::pair<std::size_t, std::size_t> SearchMemory::beginning_lists(std::string_view letters) const
{
    const auto count = beginnings_.size() / 2;
    std::size_t first = 0;
    while (first < count && std::string_view(beginnings_).substr(2 * first, letters.size()) < letters)
        ++first;
    std::size_t last = first;
    while (last < count && std::string_view(beginnings_).substr(2 * last, letters.size()) == letters)
        ++last;
    return {words_.size() + first, words_.size() + last};
}

std::int64_t key_at(std::string_view numbers, std::size_t place)
{
    if (numbers.size() < (place + 1) * number_bytes)
        throw std::runtime_error("catalog: the numbers of the name search are torn");
    std::int64_t key = 0;
    for (std::size_t byte = 0; byte < number_bytes; ++byte)
        key |= static_cast<std::int64_t>(static_cast<std::uint8_t>(numbers[place * number_bytes + byte])) << (8 * byte);
    return key;
}

} // namespace catalog
