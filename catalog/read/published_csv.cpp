#include "catalog/read/published_csv.h"

#include "catalog/read/csv_pieces.h"
#include "catalog/read/handover.h"

#include <algorithm>
#include <exception>
#include <thread>

namespace catalog {
namespace {

constexpr std::uint64_t worth_a_thread = 256U << 10U; // bytes
constexpr std::size_t pieces_ahead = 8;               // half a megabyte of the file, and what stands in it

/// What the reading thread hands over: a piece, the end, an error; or what was thrown.
struct Ahead {
    core::Result<std::optional<CsvPiece>> piece;
    std::exception_ptr broken;
};

} // namespace

/// The piece whose rows are given, and the thread that takes the next ones apart meanwhile: that is more than half of
/// the work of reading a release.
struct PublishedCsv::Inside {
    Inside(ByteStream& bytes, std::string name)
        : source(std::move(name)), pieces(bytes, source), large(bytes.size() > worth_a_thread)
    {
    }
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    ~Inside()
    {
        line.taker_leaves();
        if (thread.joinable())
            thread.join();
    }

    void read_ahead() noexcept
    {
        try {
            for (bool more = true; more;) {
                auto read = pieces.next();
                more = read && *read;
                more = line.give({std::move(read), nullptr}) && more;
            }
        } catch (...) {
            line.give({std::nullopt, std::current_exception()});
        }
        line.giver_leaves();
    }

    core::Result<std::optional<CsvPiece>> next_piece()
    {
        if (!large || !has_wants)
            return pieces.next();
        if (!thread.joinable())
            thread = std::thread([this] { read_ahead(); });
        auto ahead = line.take();
        if (!ahead)
            return std::nullopt;
        if (ahead->broken)
            std::rethrow_exception(ahead->broken);
        return std::move(ahead->piece);
    }

    core::Result<bool> next()
    {
        if (row_at == piece.columns.size()) {
            auto more = next_piece();
            if (!more)
                return tl::make_unexpected(more.error());
            if (!*more)
                return false;
            piece = *std::move(*more);
            row_at = 0;
        }
        ++row_at;
        ++row;
        return true;
    }

    std::string source;
    CsvPieces pieces; ///< the thread's own once that runs
    bool large;
    bool has_wants = false;
    CsvPiece piece;
    std::size_t row_at = 0; ///< how many of its rows were given
    std::size_t wanted_count = CsvPieces::every_field;
    std::size_t header_columns = CsvPieces::every_field;
    std::size_t row = 0;
    Handover<Ahead> line{pieces_ahead};
    std::thread thread;
};

PublishedCsv::PublishedCsv(ByteStream& bytes, std::string source)
    : inside_(std::make_unique<Inside>(bytes, std::move(source)))
{
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
    inside_->header_columns = inside_->piece.columns[0];
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(inside_->header_columns, CsvPieces::every_field); ++i)
        names.emplace_back(field(i));
    return names;
}

void PublishedCsv::want(const std::vector<std::size_t>& places)
{
    inside_->piece.keep(places, inside_->wanted_count); // rows that were taken apart with the header have all fields
    inside_->pieces.want(places, inside_->header_columns);
    inside_->wanted_count = places.size();
    inside_->has_wants = true;
}

core::Result<bool> PublishedCsv::next()
{
    return inside_->next();
}

std::string_view PublishedCsv::field(std::size_t wanted) const
{
    const auto& field = inside_->piece.fields[(inside_->row_at - 1) * inside_->wanted_count + wanted];
    return std::string_view(inside_->piece.letters).substr(field.at, field.size);
}

std::size_t PublishedCsv::row() const
{
    return inside_->row;
}

bool PublishedCsv::complete() const
{
    return inside_->piece.columns[inside_->row_at - 1] == inside_->header_columns;
}

std::uint64_t PublishedCsv::bytes_read() const
{
    return inside_->piece.bytes_read;
}

} // namespace catalog
