#include "catalog/store/search_writer.h"

#include "catalog/store/fold.h"
#include "catalog/store/search_tables.h"
#include "catalog/store/word_numbers.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <bit>
#include <numeric>
#include <span>
#include <string>
#include <vector>

namespace catalog {
namespace {

constexpr std::size_t entries_at_once = 6'000'000; // of lists held in memory: 24 MB
constexpr std::size_t row_bytes = 4000;            // a row of lists: about a page
constexpr std::uint32_t no_list = UINT32_MAX;

/// The number of a beginning of two bytes.
std::size_t beginning_of(std::string_view word)
{
    return static_cast<std::size_t>(static_cast<std::uint8_t>(word[0])) << 8U | static_cast<std::uint8_t>(word[1]);
}

/// Writes rows of (first, bytes).
class Rows {
public:
    Rows(SQLite::Database& database, const char* insert) : put_(database, insert) {}
    void put(std::uint64_t first, const std::string& bytes)
    {
        put_.bind(1, static_cast<std::int64_t>(first));
        put_.bind(2, bytes.data(), static_cast<int>(bytes.size()));
        put_.exec();
        put_.reset();
    }

private:
    SQLite::Statement put_;
};

} // namespace

struct SearchWriter::Inside {
    WordNumbers words;
    WordNumbers kinds;
    std::string said; // of each product: words of the name with their count before, of the brand, both kinds
    std::vector<std::uint32_t> starts;
    std::vector<std::int64_t> keys;

    std::vector<std::uint32_t> ranks;      // of each word, by its letters
    std::vector<std::uint32_t> by_rank;    // and back
    std::vector<std::uint32_t> order;      // the products by their names
    std::vector<std::uint32_t> beginnings; // by their two bytes: the number of the list, or no_list
    std::string named_beginnings;          // those that there are, two bytes each
    std::vector<std::uint32_t> beginning_of_word;

    std::string folded;
    std::vector<std::uint32_t> found; // scratch

    void append_words(std::string_view text)
    {
        fold_into(text, folded);
        found.clear();
        each_word(folded, [&](std::string_view word) { found.push_back(words.number_of(word)); });
        append_number(said, found.size());
        for (const auto number : found)
            append_number(said, number);
    }

    void append_kind(std::string_view text) { append_number(said, text.empty() ? 0 : kinds.number_of(text) + 1); }

    [[nodiscard]] std::string_view said_of(std::uint32_t product) const
    {
        return std::string_view(said).substr(starts[product]);
    }

    void sort_words()
    {
        by_rank.resize(words.size());
        std::iota(by_rank.begin(), by_rank.end(), 0U);
        std::sort(by_rank.begin(), by_rank.end(),
                  [&](std::uint32_t a, std::uint32_t b) { return words.word(a) < words.word(b); });
        ranks.resize(words.size());
        for (std::uint32_t rank = 0; rank < by_rank.size(); ++rank)
            ranks[by_rank[rank]] = rank;
    }

    /// Whether a's name comes before b's; equal names by their keys.
    [[nodiscard]] bool name_before(std::uint32_t a, std::uint32_t b) const
    {
        auto left = said_of(a);
        auto right = said_of(b);
        auto left_words = take_number(left);
        auto right_words = take_number(right);
        for (; left_words > 0 && right_words > 0; --left_words, --right_words)
            if (const auto l = ranks[take_number(left)], r = ranks[take_number(right)]; l != r)
                return l < r;
        return left_words != right_words ? left_words < right_words : a < b;
    }

    /// As many first words of a name as go into 64 bits: nearly always enough to tell two names apart.
    [[nodiscard]] std::uint64_t sort_key(std::uint32_t product, unsigned bits) const
    {
        auto bytes = said_of(product);
        const auto count = take_number(bytes);
        std::uint64_t key = 0;
        for (unsigned place = 0; (place + 1) * bits <= 64; ++place)
            key = key << bits | (place < count ? ranks[take_number(bytes)] + 1 : 0);
        return key;
    }

    void sort_products()
    {
        struct Keyed {
            std::uint64_t key;
            std::uint32_t product;
        };
        const auto bits = static_cast<unsigned>(std::bit_width(words.size() + 1));
        std::vector<Keyed> sorted(keys.size());
        for (std::uint32_t i = 0; i < sorted.size(); ++i)
            sorted[i] = {sort_key(i, bits), i};
        std::sort(sorted.begin(), sorted.end(), [&](const Keyed& a, const Keyed& b) {
            return a.key != b.key ? a.key < b.key : name_before(a.product, b.product);
        });
        order.resize(sorted.size());
        for (std::size_t i = 0; i < sorted.size(); ++i)
            order[i] = sorted[i].product;
    }

    void find_beginnings()
    {
        beginnings.assign(1U << 16U, no_list);
        beginning_of_word.assign(words.size(), no_list);
        for (std::uint32_t rank = 0; rank < by_rank.size(); ++rank) { // by rank: so that the lists stand in order
            const auto word = words.word(by_rank[rank]);
            if (word.size() < 2)
                continue;
            auto& list = beginnings[beginning_of(word)];
            if (list == no_list) {
                list = static_cast<std::uint32_t>(words.size() + named_beginnings.size() / 2);
                named_beginnings += word.substr(0, 2);
            }
            beginning_of_word[by_rank[rank]] = list;
        }
    }

    [[nodiscard]] std::size_t list_count() const { return words.size() + named_beginnings.size() / 2 + kinds.size(); }

    /// All lists in which a product stands, each once, into `found`.
    void lists_of(std::uint32_t product)
    {
        found.clear();
        auto bytes = said_of(product);
        for (int part = 0; part < 2; ++part)
            for (auto count = take_number(bytes); count > 0; --count) {
                const auto word = take_number(bytes);
                found.push_back(ranks[word]);
                if (beginning_of_word[word] != no_list)
                    found.push_back(beginning_of_word[word]);
            }
        const auto first_kind = words.size() + named_beginnings.size() / 2;
        for (int part = 0; part < 2; ++part)
            if (const auto kind = take_number(bytes); kind > 0)
                found.push_back(static_cast<std::uint32_t>(first_kind + kind - 1));
        std::sort(found.begin(), found.end());
        found.erase(std::unique(found.begin(), found.end()), found.end());
    }

    void write_words(SQLite::Database& database) const
    {
        Rows rows(database, "INSERT INTO search_word (first, words) VALUES (?, ?)");
        std::string bytes;
        std::size_t first = 0;
        std::string_view before;
        for (std::size_t rank = 0; rank < by_rank.size(); ++rank) {
            const auto word = words.word(by_rank[rank]);
            std::size_t shared = 0;
            while (shared < before.size() && shared < word.size() && before[shared] == word[shared])
                ++shared;
            bytes += static_cast<char>(shared);
            bytes += static_cast<char>(word.size() - shared);
            bytes += word.substr(shared);
            before = word;
            if (bytes.size() < row_bytes && rank + 1 < by_rank.size())
                continue;
            rows.put(first, bytes);
            bytes.clear();
            before = {};
            first = rank + 1;
        }
    }

    void write_numbers(SQLite::Database& database) const
    {
        Rows rows(database, "INSERT INTO search_number (first, numbers) VALUES (?, ?)");
        std::string bytes;
        for (std::size_t i = 0; i < order.size(); ++i) {
            for (std::size_t byte = 0; byte < number_bytes; ++byte)
                bytes += static_cast<char>(keys[order[i]] >> (8 * byte));
            if ((i + 1) % numbers_in_row != 0 && i + 1 < order.size())
                continue;
            rows.put(i / numbers_in_row * numbers_in_row, bytes);
            bytes.clear();
        }
    }

    void write_lists(SQLite::Database& database)
    {
        std::vector<std::uint32_t> lengths(list_count());
        for (std::uint32_t product = 0; product < keys.size(); ++product) {
            lists_of(product);
            for (const auto list : found)
                ++lengths[list];
        }
        Rows rows(database, "INSERT INTO search_list (first, lists) VALUES (?, ?)");
        for (std::size_t first = 0; first < lengths.size();) {
            std::size_t last = first;
            std::size_t entries = 0;
            for (; last < lengths.size() && (last == first || entries + lengths[last] <= entries_at_once); ++last)
                entries += lengths[last];
            write_some_lists(rows, first, std::span(lengths).subspan(first, last - first), entries);
            first = last;
        }
    }

    /// One walk through all products, for as many lists as go into memory.
    void write_some_lists(Rows& rows, std::size_t first, std::span<const std::uint32_t> lengths, std::size_t entries)
    {
        std::vector<std::uint32_t> members(entries);
        std::vector<std::uint32_t> ends(lengths.size());
        std::uint32_t start = 0;
        for (std::size_t i = 0; i < lengths.size(); ++i) {
            ends[i] = start;
            start += lengths[i];
        }
        for (std::uint32_t place = 0; place < order.size(); ++place) {
            lists_of(order[place]);
            for (const auto list : found)
                if (list >= first && list < first + lengths.size())
                    members[ends[list - first]++] = place;
        }
        put_lists(rows, first, members, ends);
    }

    static void put_lists(Rows& rows, std::size_t first, std::span<const std::uint32_t> members,
                          std::span<const std::uint32_t> ends)
    {
        std::string bytes;
        std::string list;
        std::size_t row_first = first;
        std::size_t member = 0;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            list.clear();
            std::uint32_t before = 0;
            for (; member < ends[i]; ++member) {
                append_number(list, members[member] - before);
                before = members[member];
            }
            append_number(bytes, list.size());
            bytes += list;
            if (bytes.size() < row_bytes && i + 1 < ends.size())
                continue;
            rows.put(row_first, bytes);
            bytes.clear();
            row_first = first + i + 1;
        }
    }

    void write_kinds(SQLite::Database& database) const
    {
        SQLite::Statement put(database, "INSERT INTO search_kind (number, text) VALUES (?, ?)");
        for (std::uint32_t kind = 0; kind < kinds.size(); ++kind) {
            put.bind(1, static_cast<std::int64_t>(kind));
            put.bind(2, std::string(kinds.word(kind)));
            put.exec();
            put.reset();
        }
    }

    void write_head(SQLite::Database& database) const
    {
        SQLite::Statement put(database,
                              "INSERT INTO search_head (id, products, words, beginnings) VALUES (1, ?, ?, ?)");
        put.bind(1, static_cast<std::int64_t>(keys.size()));
        put.bind(2, static_cast<std::int64_t>(words.size()));
        put.bind(3, named_beginnings.data(), static_cast<int>(named_beginnings.size()));
        put.exec();
    }
};

SearchWriter::SearchWriter() : inside_(std::make_unique<Inside>()) {}
SearchWriter::SearchWriter(SearchWriter&&) noexcept = default;
SearchWriter& SearchWriter::operator=(SearchWriter&&) noexcept = default;
SearchWriter::~SearchWriter() = default;

void SearchWriter::add(std::int64_t key, std::string_view name, std::string_view brand, std::string_view aisle,
                       std::string_view category)
{
    inside_->starts.push_back(static_cast<std::uint32_t>(inside_->said.size()));
    inside_->keys.push_back(key);
    inside_->append_words(name);
    inside_->append_words(brand);
    inside_->append_kind(aisle);
    inside_->append_kind(category);
}

void SearchWriter::write(SQLite::Database& database)
{
    inside_->sort_words();
    inside_->sort_products();
    inside_->find_beginnings();
    inside_->write_words(database);
    inside_->write_numbers(database);
    inside_->write_lists(database);
    inside_->write_kinds(database);
    inside_->write_head(database);
}

} // namespace catalog
