#include "catalog/bundle/bundle_file.h"

#include <algorithm>
#include <array>
#include <vector>

namespace catalog {
namespace {

using Kind = core::Error::Kind;

constexpr std::string_view opening = "PairstandBundle\n"; // 16 bytes
constexpr std::string_view closing = "PairstandFinish\n"; // 16 bytes
constexpr std::uint32_t form = 1;

// The head: opening, form, length of the manifest, key, signature, check.
constexpr std::size_t form_at = 16;
constexpr std::size_t length_at = 20;
constexpr std::size_t key_at = 24;
constexpr std::size_t signature_at = 56;
constexpr std::size_t check_at = 120;
constexpr std::size_t check_bytes = 16;
constexpr std::size_t head_bytes = 136;

constexpr std::size_t piece_bytes = 256U << 10U; // a stick is read in pieces of this size

auto refuse(Kind kind, const std::string& name, const std::string& detail, const std::string& found = {})
{
    return core::refuse(kind, detail, core::Place{name, 0, {}, found, {}});
}

auto cut(const std::string& name, const std::string& detail)
{
    return refuse(Kind::CutBundle, name, detail);
}

auto damaged(const std::string& name, const std::string& detail, const std::string& part = {})
{
    return refuse(Kind::DamagedBundle, name, detail, part);
}

void put_number(std::string& bytes, std::uint32_t number)
{
    for (unsigned shift = 0; shift < 32; shift += 8)
        bytes += static_cast<char>(number >> shift & 0xFFU);
}

std::uint32_t number_at(std::span<const std::uint8_t> bytes, std::size_t at)
{
    std::uint32_t number = 0;
    for (std::size_t i = 4; i > 0; --i)
        number = number << 8U | bytes[at + i - 1];
    return number;
}

/// What the signature stands under: all of the head in front of it, and the manifest.
std::vector<std::uint8_t> signed_bytes(std::span<const std::uint8_t> head, std::span<const std::uint8_t> text)
{
    std::vector<std::uint8_t> bytes(signature_at + text.size());
    std::copy_n(head.begin(), signature_at, bytes.begin());
    std::copy(text.begin(), text.end(), bytes.begin() + signature_at);
    return bytes;
}

template<std::size_t size>
std::array<std::uint8_t, size> array_at(std::span<const std::uint8_t> bytes, std::size_t at)
{
    std::array<std::uint8_t, size> copy{};
    std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), size, copy.begin());
    return copy;
}

std::string text_of(std::span<const std::uint8_t> bytes)
{
    return {bytes.begin(), bytes.end()};
}

/// Whether the head is one of ours and as it was written, whatever its form: its check says so in every form.
core::Result<void> check_head(std::span<const std::uint8_t> head, std::size_t got, const std::string& name)
{
    const auto there = text_of(head.first(std::min(got, opening.size())));
    if (there.empty() || !opening.starts_with(there))
        return refuse(Kind::NoBundle, name, "it does not begin as one");
    if (got < head.size())
        return cut(name, "it ends in its head");
    const Digest check = digest_of(head.first(check_at));
    if (!std::equal(check.begin(), check.begin() + check_bytes, head.begin() + check_at))
        return damaged(name, "its head is not as it was written");
    if (number_at(head, form_at) > form)
        return refuse(Kind::NewerBundle, name, "it has a later form");
    const auto length = number_at(head, length_at);
    if (number_at(head, form_at) != form || length == 0 || length > longest_manifest)
        return damaged(name, "its head says what cannot be");
    return {};
}

/// The parts of one bundle on their way to whoever takes them.
class Parts {
public:
    Parts(ByteStream& source, const std::string& name, PartTaker& taker)
        : source_(source), name_(name), taker_(taker), piece_(piece_bytes)
    {
    }

    core::Result<void> read(const Part& part)
    {
        const bool taken = damaged_.empty(); // behind a damaged part all that matters is the end
        if (taken)
            if (const auto begun = taker_.begin(part); !begun)
                return begun;
        Digester digester;
        for (std::uint64_t left = part.bytes; left > 0;) {
            const auto wanted = static_cast<std::size_t>(std::min<std::uint64_t>(left, piece_.size()));
            const std::span piece(piece_.data(), wanted);
            const auto got = fill(source_, piece);
            if (!got)
                return tl::make_unexpected(got.error());
            if (*got != wanted)
                return ended_early();
            digester.add(piece);
            if (taken)
                if (const auto done = taker_.take(piece); !done)
                    return done;
            left -= wanted;
        }
        if (taken && digester.finish() != part.digest) {
            damaged_ = part.name;
            return {};
        }
        return taken ? taker_.end() : core::Result<void>{};
    }

    /// A stick that was pulled out while it was written to often keeps a file's length, with nothing at its end.
    core::Result<void> finish()
    {
        std::array<std::uint8_t, closing.size() + 1> end{};
        const auto got = fill(source_, end);
        if (!got)
            return tl::make_unexpected(got.error());
        if (*got < closing.size())
            return ended_early();
        const std::span mark(end.data(), closing.size());
        if (std::ranges::all_of(mark, [](std::uint8_t byte) { return byte == 0; }))
            return cut(name_, "its end was never written");
        if (!damaged_.empty())
            return damaged(name_, "a part is not as it was sealed", damaged_);
        if (*got > closing.size() || text_of(mark) != closing)
            return damaged(name_, "its end is not as it was sealed");
        return {};
    }

private:
    core::Result<void> ended_early() const
    {
        return refuse(Kind::CannotRead, name_, "it became shorter while it was read");
    }

    ByteStream& source_;
    const std::string& name_;
    PartTaker& taker_;
    std::vector<std::uint8_t> piece_;
    std::string damaged_; ///< the first part that is not as it was sealed
};

} // namespace

core::Result<SealedText> read_seal(ByteStream& source, const std::string& name)
{
    std::array<std::uint8_t, head_bytes> head{};
    const auto got = fill(source, head);
    if (!got)
        return tl::make_unexpected(got.error());
    if (const auto checked = check_head(head, *got, name); !checked)
        return tl::make_unexpected(checked.error());
    std::vector<std::uint8_t> text(number_at(head, length_at));
    const auto came = fill(source, text);
    if (!came)
        return tl::make_unexpected(came.error());
    if (*came < text.size())
        return cut(name, "it ends in its manifest");
    const auto key = array_at<std::tuple_size_v<PublicKey>>(head, key_at);
    const auto signature = array_at<std::tuple_size_v<Signature>>(head, signature_at);
    if (!is_signed_by(key, signature, signed_bytes(head, text)))
        return damaged(name, "its manifest does not fit its seal");
    return SealedText{key, text_of(text)};
}

std::uint64_t bundle_bytes(const Manifest& manifest, std::size_t text_bytes)
{
    std::uint64_t bytes = head_bytes + text_bytes + closing.size();
    for (const auto& part : manifest.parts)
        bytes += part.bytes;
    return bytes;
}

core::Result<void> check_length(const ByteStream& source, const Manifest& manifest, std::size_t text_bytes,
                                const std::string& name)
{
    const auto right = bundle_bytes(manifest, text_bytes);
    if (source.size() < right)
        return cut(name, std::to_string(source.size()) + " of " + std::to_string(right) + " bytes are there");
    if (source.size() > right)
        return damaged(name, "there is more behind its end");
    return {};
}

core::Result<void> read_parts(ByteStream& source, const Manifest& manifest, const std::string& name, PartTaker& taker)
{
    Parts parts(source, name, taker);
    for (const auto& part : manifest.parts)
        if (const auto read = parts.read(part); !read)
            return read;
    return parts.finish();
}

std::string bundle_head(const SigningKey& key, const std::string& manifest)
{
    std::string head(opening);
    put_number(head, form);
    put_number(head, static_cast<std::uint32_t>(manifest.size()));
    head.append(key.public_key().begin(), key.public_key().end());
    const Signature signature = key.sign(signed_bytes(bytes_in(head), bytes_in(manifest)));
    head.append(signature.begin(), signature.end());
    const Digest check = digest_of(bytes_in(head));
    head.append(check.begin(), check.begin() + check_bytes);
    return head + manifest;
}

std::string bundle_end()
{
    return std::string(closing);
}

} // namespace catalog
