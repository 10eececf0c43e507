#include "catalog/read/published_csv.h"

#include <algorithm>
#include <cstring>
#include <numeric>

namespace catalog {
namespace {

constexpr std::size_t piece = 1U << 20U;
constexpr std::size_t every_field = 500; // of a header

std::string without_doubled_quotes(std::string_view text)
{
    std::string plain;
    plain.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        plain += text[i];
        if (text[i] == '"' && i + 1 < text.size() && text[i + 1] == '"')
            ++i;
    }
    return plain;
}

} // namespace

PublishedCsv::PublishedCsv(ByteStream& bytes, std::string source) : bytes_(&bytes), source_(std::move(source))
{
    buffer_.resize(2 * piece);
}

core::Result<std::vector<std::string>> PublishedCsv::header()
{
    std::vector<std::size_t> all(every_field);
    std::iota(all.begin(), all.end(), 0);
    want(std::move(all));
    const auto found = next();
    if (!found)
        return tl::make_unexpected(found.error());
    if (!*found)
        return core::refuse(core::Error::Kind::Empty, "no header", core::Place{source_, 1, {}, {}, {}});
    columns_ = fields_seen_;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(columns_, every_field); ++i)
        names.emplace_back(fields_[i]);
    if (names.front().starts_with("\xEF\xBB\xBF")) { // a byte order mark, put there by who saved it again
        auto& first = names.front();
        first.erase(0, 3);
        if (first.size() >= 2 && first.front() == '"' && first.back() == '"')
            first = first.substr(1, first.size() - 2);
    }
    return names;
}

void PublishedCsv::want(std::vector<std::size_t> places)
{
    wanted_ = std::move(places);
    fields_.assign(wanted_.size(), {});
    unquoted_.resize(wanted_.size());
}

core::Result<bool> PublishedCsv::next()
{
    for (;;) {
        const std::size_t start = at_;
        switch (parse()) {
        case Found::Row:
            ++row_;
            return true;
        case Found::End:
            return false;
        case Found::More:
            at_ = start;
            if (const auto filled = fill(); !filled)
                return filled;
        }
    }
}

/// Moves what is left to the front and reads on behind it.
core::Result<bool> PublishedCsv::fill()
{
    if (at_ > 0) {
        std::memmove(buffer_.data(), buffer_.data() + at_, end_ - at_);
        taken_ += at_;
        end_ -= at_;
        at_ = 0;
    }
    if (end_ > longest_row)
        return core::refuse(core::Error::Kind::TooLarge, "a row without end",
                            core::Place{source_, row_ + 1, {}, {}, "rows of at most 4 MB"});
    if (buffer_.size() - end_ < piece)
        buffer_.resize(end_ + piece);
    const auto got = bytes_->read(buffer_.data() + end_, buffer_.size() - end_);
    if (!got)
        return tl::make_unexpected(got.error());
    end_ += *got;
    at_end_ = *got == 0;
    return true;
}

void PublishedCsv::take(std::size_t& next_wanted, std::string_view field)
{
    if (next_wanted < wanted_.size() && wanted_[next_wanted] == fields_seen_)
        fields_[next_wanted++] = field;
    ++fields_seen_;
}

/// Reads a field whose opening quote stands before `at`; leaves `at` behind its closing quote.
PublishedCsv::Found PublishedCsv::quoted(std::size_t& at, std::string_view& field)
{
    const std::size_t start = at;
    bool doubled = false;
    for (;;) {
        const auto* quote = static_cast<const char*>(std::memchr(buffer_.data() + at, '"', end_ - at));
        if (quote == nullptr) {
            if (!at_end_)
                return Found::More;
            field = {buffer_.data() + start, end_ - start}; // never closed: the file was cut off
            at = end_;
            return Found::Row;
        }
        at = static_cast<std::size_t>(quote - buffer_.data()) + 1;
        if (at == end_ && !at_end_)
            return Found::More; // the next piece tells whether it is doubled
        if (at < end_ && buffer_[at] == '"') {
            doubled = true;
            ++at;
            continue;
        }
        field = {buffer_.data() + start, at - 1 - start};
        if (doubled && unquoted_used_ < unquoted_.size()) {
            unquoted_[unquoted_used_] = without_doubled_quotes(field);
            field = unquoted_[unquoted_used_++];
        }
        return Found::Row;
    }
}

PublishedCsv::Found PublishedCsv::parse()
{
    std::size_t at = at_;
    std::size_t next_wanted = 0;
    fields_seen_ = 0;
    unquoted_used_ = 0;
    if (at == end_)
        return at_end_ ? Found::End : Found::More;
    for (;;) {
        std::string_view field;
        if (at < end_ && buffer_[at] == '"') {
            ++at;
            if (quoted(at, field) == Found::More)
                return Found::More;
        } else {
            const std::size_t start = at;
            while (at < end_ && buffer_[at] != ',' && buffer_[at] != '\n')
                ++at;
            if (at == end_ && !at_end_)
                return Found::More;
            field = {buffer_.data() + start, at - start};
            if (!field.empty() && field.back() == '\r' && (at == end_ || buffer_[at] == '\n'))
                field.remove_suffix(1);
        }
        take(next_wanted, field);
        while (at < end_ && buffer_[at] != ',' && buffer_[at] != '\n')
            ++at; // what stands behind a closing quote (CR, or letters that no published file has) is passed over
        if (at == end_ && !at_end_)
            return Found::More;
        const bool row_ends = at == end_ || buffer_[at] == '\n';
        at += at < end_ ? 1 : 0;
        if (!row_ends)
            continue;
        at_ = at;
        for (; next_wanted < wanted_.size(); ++next_wanted)
            fields_[next_wanted] = {};
        return Found::Row;
    }
}

} // namespace catalog
