#include "catalog/store/search_lists.h"

#include "catalog/store/search_tables.h"

#include <SQLiteCpp/Column.h>

#include <stdexcept>

namespace catalog {
namespace {

constexpr std::size_t portion = 20'000; // numbers, or bytes of lists that are passed by

[[noreturn]] void torn()
{
    throw std::runtime_error("catalog: the lists of the name search are torn");
}

} // namespace

SearchLists::SearchLists(SQLite::Database& database) : database_(&database) {}

void SearchLists::ask(std::size_t first, std::size_t last, ProductBits& into)
{
    if (first < last)
        asked_.push_back({first, last, &into});
}

void SearchLists::clear()
{
    asked_.clear();
    in_rows_ = false;
    left_ = {};
    open_ = {};
    if (rows_)
        rows_->tryReset();
}

void SearchLists::next_row()
{
    if (!rows_)
        rows_.emplace(*database_, "SELECT first, lists FROM search_list WHERE first >= "
                                  "(SELECT max(first) FROM search_list WHERE first <= ?) ORDER BY first");
    if (!in_rows_) {
        rows_->reset();
        rows_->bind(1, static_cast<std::int64_t>(asked_.front().first));
        in_rows_ = true;
    }
    if (!rows_->executeStep())
        torn(); // a list that must be there is not
    list_ = static_cast<std::size_t>(rows_->getColumn(0).getInt64());
    const auto blob = rows_->getColumn(1);
    row_.assign(static_cast<const char*>(blob.getBlob()), static_cast<std::size_t>(blob.getBytes()));
    left_ = row_;
    if (left_.empty())
        torn();
}

void SearchLists::next_list()
{
    const auto length = take_number(left_);
    if (length > left_.size())
        torn();
    if (list_ >= asked_.front().first)
        open_ = left_.substr(0, length);
    left_.remove_prefix(length);
    ++list_;
    place_ = 0;
    at_start_ = true;
}

std::size_t SearchLists::read_on(ProductBits& into)
{
    const auto before = open_.size();
    std::size_t place = place_;
    const std::size_t products = into.products();
    if (at_start_) {
        place = take_number(open_);
        if (place >= products)
            torn();
        at_start_ = false;
        into.set(place);
    }
    const char* at = open_.data();
    const char* const end = at + open_.size();
    for (std::size_t read = 1; read < portion && at != end; ++read) {
        std::uint64_t gap = static_cast<std::uint8_t>(*at);
        if (gap < 0x80) { // nearly always: the lists that take time are the long ones
            ++at;
        } else {
            std::string_view rest(at, static_cast<std::size_t>(end - at));
            gap = take_number(rest);
            at = rest.data();
        }
        if (gap - 1 >= products - 1 - place) // no gap at all is as wrong as one that leads too far
            torn();
        place += gap;
        into.set(place);
    }
    open_ = {at, static_cast<std::size_t>(end - at)};
    place_ = place;
    return before - open_.size();
}

bool SearchLists::step()
{
    for (std::size_t passed = 0; passed < portion;) {
        if (asked_.empty())
            return false;
        if (!open_.empty()) {
            passed += read_on(*asked_.front().into);
        } else if (in_rows_ && !left_.empty() && list_ >= asked_.front().last) {
            asked_.pop_front();
            in_rows_ = false;
            left_ = {};
            rows_->reset();
        } else if (left_.empty()) {
            if (in_rows_ && list_ >= asked_.front().last) {
                asked_.pop_front();
                in_rows_ = false;
                rows_->reset();
                continue;
            }
            next_row();
            passed += 200;
        } else {
            next_list();
            ++passed;
        }
    }
    return true;
}

} // namespace catalog
