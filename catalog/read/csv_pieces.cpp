#include "catalog/read/csv_pieces.h"

#include <algorithm>
#include <csv.h>
#include <new>
#include <utility>

namespace catalog {
namespace {

constexpr std::size_t piece = 64U << 10U; // bytes taken apart at a time: small enough to stay in the processor's memory
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t none = static_cast<std::size_t>(-1);

} // namespace

void CsvPiece::keep(const std::vector<std::size_t>& places, std::size_t count)
{
    std::vector<Field> only;
    for (std::size_t start = 0; start < fields.size(); start += count)
        for (const auto place : places)
            only.push_back(place < count ? fields[start + place] : Field{});
    fields = std::move(only);
}

/// The rows of one piece, and what the library needs between two.
struct CsvPieces::Inside {
    Inside(ByteStream& from, std::string name)
        : bytes(&from), source(std::move(name)), buffer(piece), wanted_at(every_field), wanted_count(every_field)
    {
        if (csv_init(&parser, 0) != 0)
            throw std::bad_alloc();
        csv_set_blk_size(&parser, piece); // it grows its memory by so much: by 128 bytes else, for a field of megabytes
        for (std::size_t i = 0; i < every_field; ++i)
            wanted_at[i] = i;
        now.fields.resize(wanted_count);
    }
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    ~Inside() { csv_free(&parser); }

    // Nothing may be thrown through the library, since it is C.
    static void take_field(void* text, std::size_t size, void* self) noexcept
    {
        auto& in = *static_cast<Inside*>(self);
        const std::size_t column = in.columns++;
        const std::size_t wanted = column < in.wanted_at.size() ? in.wanted_at[column] : none;
        if (wanted == none)
            return;
        try {
            in.now.fields[in.now.fields.size() - in.wanted_count + wanted] = {in.now.letters.size(), size};
            in.now.letters.append(static_cast<const char*>(text), size);
        } catch (const std::bad_alloc&) {
            in.out_of_memory = true;
        }
    }
    static void take_row(int, void* self) noexcept
    {
        auto& in = *static_cast<Inside*>(self);
        try {
            in.now.columns.push_back(in.columns);
            in.columns = 0;
            in.now.fields.resize(in.now.fields.size() + in.wanted_count);
        } catch (const std::bad_alloc&) {
            in.out_of_memory = true;
        }
    }

    /// Gives the whole rows away and keeps the row under way.
    CsvPiece rows()
    {
        CsvPiece next;
        next.letters.reserve(now.letters.size());
        next.fields.reserve(now.fields.size());
        next.columns.reserve(now.columns.size());
        for (std::size_t i = now.fields.size() - wanted_count; i < now.fields.size(); ++i) {
            const auto& field = now.fields[i];
            next.fields.push_back({next.letters.size(), field.size});
            next.letters.append(now.letters, field.at, field.size);
        }
        now.fields.resize(now.fields.size() - wanted_count);
        now.bytes_read = read;
        row += now.columns.size();
        return std::exchange(now, std::move(next));
    }

    /// Takes more bytes apart. False at the end of the file.
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
        since_row = now.columns.empty() ? since_row + *got : 0;
        if (since_row > longest_row)
            return core::refuse(core::Error::Kind::TooLarge, "a row without end",
                                core::Place{source, row + 1, {}, {}, "rows of at most 4 MB"});
        return *got != 0;
    }

    ByteStream* bytes;
    std::string source;
    std::vector<char> buffer;
    csv_parser parser{};
    std::vector<std::size_t> wanted_at; ///< for each column which wanted field it is
    std::size_t wanted_count;
    CsvPiece now;            ///< the rows taken apart, and behind them the one under way
    std::size_t columns = 0; ///< of the row under way
    std::size_t row = 0;     ///< how many were given away
    std::uint64_t read = 0;
    std::size_t since_row = 0;
    bool ended = false;
    bool out_of_memory = false;
};

CsvPieces::CsvPieces(ByteStream& bytes, std::string source)
    : inside_(std::make_unique<Inside>(bytes, std::move(source)))
{
}
CsvPieces::~CsvPieces() = default;

void CsvPieces::want(const std::vector<std::size_t>& places, std::size_t header_columns)
{
    std::vector<std::size_t> at(header_columns, none);
    for (std::size_t i = 0; i < places.size(); ++i)
        if (places[i] < at.size())
            at[places[i]] = i;
    inside_->now.keep(places, inside_->wanted_count); // the row under way has all its fields
    inside_->wanted_at = std::move(at);
    inside_->wanted_count = places.size();
}

core::Result<std::optional<CsvPiece>> CsvPieces::next()
{
    while (inside_->now.columns.empty()) {
        const auto filled = inside_->fill();
        if (!filled)
            return tl::make_unexpected(filled.error());
        if (!*filled && inside_->now.columns.empty())
            return std::nullopt;
    }
    return inside_->rows();
}

} // namespace catalog
