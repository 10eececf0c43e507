#include "catalog/store/search_rows.h"

#include "catalog/store/row.h"
#include "catalog/store/search_memory.h"
#include "catalog/store/search_tables.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>

#include <stdexcept>

namespace catalog {

std::int64_t SearchRows::key_at_place(std::size_t place)
{
    if (!numbers_)
        numbers_.emplace(*database_, "SELECT numbers FROM search_number WHERE first = ?");
    numbers_->reset();
    numbers_->bind(1, static_cast<std::int64_t>(place / numbers_in_row * numbers_in_row));
    if (!numbers_->executeStep())
        throw std::runtime_error("catalog: numbers of the name search are missing");
    const auto row = numbers_->getColumn(0);
    const auto key = key_at({static_cast<const char*>(row.getBlob()), static_cast<std::size_t>(row.getBytes())},
                            place % numbers_in_row);
    numbers_->reset();
    return key;
}

std::optional<FoundProduct> SearchRows::product(std::int64_t key)
{
    if (!products_)
        products_.emplace(*database_, version_ < 3 ? "SELECT name, brand, aisle, '' FROM product WHERE gtin = ?"
                                                   : "SELECT name, brand, aisle, text FROM product LEFT JOIN "
                                                     "shared_text ON number = category WHERE gtin = ?");
    products_->reset();
    products_->bind(1, key);
    if (!products_->executeStep())
        return std::nullopt;
    FoundProduct told{gtin_of(key), products_->getColumn(0).getString(), products_->getColumn(1).getString(),
                      products_->getColumn(2).getString()};
    if (told.kind.empty())
        told.kind = products_->getColumn(3).getString();
    products_->reset();
    return told;
}

} // namespace catalog
