#include "catalog/read/published_csv.h"

#include <algorithm>
#include <csv.h>
#include <new>

namespace catalog {
namespace {

constexpr std::size_t piece = 64U << 10U; // bytes taken apart at a time: small enough to stay in the processor's memory
constexpr std::size_t every_field = 500;  // of a header
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Where a field lies in the letters of the rows that wait.
struct Field {
    std::size_t at = 0;
    std::size_t size = 0;
};

} // namespace

/// The rows of one piece, and what the library needs between two.
struct PublishedCsv::Inside {
    Inside(ByteStream& from, std::string name) : bytes(&from), source(std::move(name)), buffer(piece)
    {
        if (csv_init(&parser, 0) != 0)
            throw std::bad_alloc();
        csv_set_blk_size(&parser, piece); // it grows its memory by so much: by 128 bytes else, for a field of megabytes
        wanted_at.assign(every_field, 0);
        for (std::size_t i = 0; i < every_field; ++i)
            wanted_at[i] = i;
        wanted_count = every_field;
    }
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    ~Inside() { csv_free(&parser); }

    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    // Nothing may be thrown through the library, since it is C.
    static void take_field(void* text, std::size_t size, void* self) noexcept
    {
        auto& in = *static_cast<Inside*>(self);
        const std::size_t column = in.columns++;
        const std::size_t wanted = column < in.wanted_at.size() ? in.wanted_at[column] : none;
        if (wanted == none)
            return;
        try {
            in.fields[in.fields.size() - in.wanted_count + wanted] = {in.letters.size(), size};
            in.letters.append(static_cast<const char*>(text), size);
        } catch (const std::bad_alloc&) {
            in.out_of_memory = true;
        }
    }
    static void take_row(int, void* self) noexcept
    {
        auto& in = *static_cast<Inside*>(self);
        try {
            in.columns_of_rows.push_back(in.columns);
            in.columns = 0;
            in.fields.resize(in.fields.size() + in.wanted_count);
        } catch (const std::bad_alloc&) {
            in.out_of_memory = true;
        }
    }

    /// Keeps only the row under way.
    void forget_rows_behind()
    {
        const std::vector<Field> under_way(fields.end() - static_cast<std::ptrdiff_t>(wanted_count), fields.end());
        std::string kept;
        fields.clear();
        for (const auto& field : under_way) {
            fields.push_back({kept.size(), field.size});
            kept += letters.substr(field.at, field.size);
        }
        letters = std::move(kept);
        columns_of_rows.clear();
        row_at = 0;
    }

    /// Takes the next piece apart. False at the end of the file.
    core::Result<bool> fill()
    {
        const auto got = bytes->read(buffer.data(), buffer.size());
        if (!got)
            return tl::make_unexpected(got.error());
        std::string_view text(buffer.data(), *got);
        if (read == 0 && text.starts_with(byte_order_mark)) // put there by who saved it again
            text.remove_prefix(byte_order_mark.size());
        read += *got;
        if (*got == 0) {
            if (!ended)
                csv_fini(&parser, take_field, take_row, this);
            ended = true;
        } else
            csv_parse(&parser, text.data(), text.size(), take_field, take_row, this);
        if (out_of_memory || csv_error(&parser) == CSV_ENOMEM)
            throw std::bad_alloc();
        since_row = columns_of_rows.empty() ? since_row + *got : 0;
        if (since_row > longest_row)
            return core::refuse(core::Error::Kind::TooLarge, "a row without end",
                                core::Place{source, row + 1, {}, {}, "rows of at most 4 MB"});
        return *got != 0;
    }

    core::Result<bool> next()
    {
        while (row_at == columns_of_rows.size()) {
            forget_rows_behind();
            const auto filled = fill();
            if (!filled)
                return filled;
            if (!*filled && columns_of_rows.empty())
                return false;
        }
        ++row_at;
        ++row;
        return true;
    }

    void want(const std::vector<std::size_t>& places)
    {
        std::vector<std::size_t> at(header_columns, none);
        for (std::size_t i = 0; i < places.size(); ++i)
            if (places[i] < at.size())
                at[places[i]] = i;
        // Rows that were taken apart with the header have all their fields.
        std::vector<Field> only;
        for (std::size_t start = 0; start < fields.size(); start += wanted_count)
            for (const auto place : places)
                only.push_back(place < wanted_count ? fields[start + place] : Field{});
        fields = std::move(only);
        wanted_at = std::move(at);
        wanted_count = places.size();
    }

    ByteStream* bytes;
    std::string source;
    std::vector<char> buffer;
    csv_parser parser{};
    std::vector<std::size_t> wanted_at; ///< for each column which wanted field it is
    std::size_t wanted_count = 0;
    std::string letters;                      ///< of the rows that wait, and of the one under way
    std::vector<Field> fields;                ///< as many as are wanted for each of them
    std::vector<std::size_t> columns_of_rows; ///< how many columns each row that waits has
    std::size_t row_at = 0;                   ///< how many of them were given
    std::size_t columns = 0;                  ///< of the row under way
    std::size_t header_columns = every_field;
    std::size_t row = 0;
    std::uint64_t read = 0;
    std::size_t since_row = 0;
    bool ended = false;
    bool out_of_memory = false;
};

PublishedCsv::PublishedCsv(ByteStream& bytes, std::string source)
    : inside_(std::make_unique<Inside>(bytes, std::move(source)))
{
    inside_->fields.resize(inside_->wanted_count);
}
PublishedCsv::PublishedCsv(PublishedCsv&&) noexcept = default;
PublishedCsv::~PublishedCsv() = default;

core::Result<std::vector<std::string>> PublishedCsv::header()
{
    const auto found = inside_->next();
    if (!found)
        return tl::make_unexpected(found.error());
    if (!*found)
        return core::refuse(core::Error::Kind::Empty, "no header", core::Place{inside_->source, 1, {}, {}, {}});
    inside_->header_columns = inside_->columns_of_rows[0];
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(inside_->header_columns, every_field); ++i)
        names.emplace_back(field(i));
    return names;
}

void PublishedCsv::want(std::vector<std::size_t> places)
{
    inside_->want(places);
}

core::Result<bool> PublishedCsv::next()
{
    return inside_->next();
}

std::string_view PublishedCsv::field(std::size_t wanted) const
{
    const auto& field = inside_->fields[(inside_->row_at - 1) * inside_->wanted_count + wanted];
    return std::string_view(inside_->letters).substr(field.at, field.size);
}

std::size_t PublishedCsv::row() const
{
    return inside_->row;
}

bool PublishedCsv::complete() const
{
    return inside_->columns_of_rows[inside_->row_at - 1] == inside_->header_columns;
}

std::uint64_t PublishedCsv::bytes_read() const
{
    return inside_->read;
}

} // namespace catalog
