// One pass over a bundle tells whole from damaged from half copied, at every byte.
#include "catalog/bundle/bundle_file.h"
#include "tests/catalog/bundle/leader.h"

#include <algorithm>
#include <map>

using catalog::read_parts;
using Kind = core::Error::Kind;

namespace {

/// A source in memory; tells how much was asked for.
class Bytes : public catalog::ByteStream {
public:
    explicit Bytes(std::string bytes) : bytes_(std::move(bytes)) {}
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    [[nodiscard]] core::Result<std::size_t> read(char* bytes, std::size_t size) override
    {
        largest_ = std::max(largest_, size);
        const auto got = std::min(size, bytes_.size() - at_);
        std::copy_n(bytes_.begin() + static_cast<std::ptrdiff_t>(at_), got, bytes);
        at_ += got;
        return got;
    }
    [[nodiscard]] std::size_t read_so_far() const { return at_; }
    [[nodiscard]] std::size_t largest() const { return largest_; }

private:
    std::string bytes_;
    std::size_t at_ = 0;
    std::size_t largest_ = 0;
};

/// Keeps nothing.
struct Nobody : catalog::PartTaker {
    std::size_t ended = 0;
    core::Result<void> begin(const catalog::Part&) override { return {}; }
    core::Result<void> take(std::span<const std::uint8_t>) override { return {}; }
    core::Result<void> end() override
    {
        ++ended;
        return {};
    }
};

/// What one pass says; nothing for a whole bundle.
std::optional<Kind> verdict(Bytes source)
{
    const auto sealed = catalog::read_seal(source, "b");
    if (!sealed)
        return sealed.error().kind;
    const auto manifest = catalog::read_manifest(sealed->text);
    if (!manifest)
        return manifest.error().kind;
    if (const auto length = catalog::check_length(source, *manifest, sealed->text.size(), "b"); !length)
        return length.error().kind;
    Nobody nobody;
    const auto read = read_parts(source, *manifest, "b", nobody);
    return read ? std::nullopt : std::optional(read.error().kind);
}

std::optional<Kind> verdict(const std::string& bytes)
{
    return verdict(Bytes(bytes));
}

/// A small bundle, so that every byte of it can be tried; its parts are no real ones.
std::string small_bundle(const catalog::SigningKey& key)
{
    const std::string parts[] = {std::string(300, 'c') + "atalog", "stop;shelf\n", std::string(1000, '\0') + "x"};
    catalog::Manifest manifest{"Winter", "Cedar Hollow", "2026-11-25", 7, 3, {}};
    std::size_t i = 0;
    for (const char* name : {"catalog.db", "tour.csv", "texts/a"}) {
        manifest.parts.push_back({name, parts[i].size(), catalog::digest_of(catalog::bytes_in(parts[i]))});
        ++i;
    }
    auto bytes = catalog::bundle_head(key, catalog::manifest_text(manifest));
    for (const auto& part : parts)
        bytes += part;
    return bytes + catalog::bundle_end();
}

const catalog::SigningKey& some_key()
{
    static const catalog::SigningKey key(catalog::Digest{1, 2, 3});
    return key;
}

} // namespace

TEST_CASE("bundle file: whole, in pieces that do not grow")
{
    const auto bytes = small_bundle(some_key());
    CHECK_FALSE(verdict(bytes));
    CHECK(bytes.substr(0, 16) == "PairstandBundle\n");
    CHECK(bytes.substr(bytes.size() - 16) == "PairstandFinish\n");

    const std::string large(3'000'000, 'x');
    catalog::Manifest manifest{"Large",
                               "Cedar Hollow",
                               "2026-11-25",
                               1,
                               1,
                               {{"catalog.db", large.size(), catalog::digest_of(catalog::bytes_in(large))}}};
    const auto text = catalog::manifest_text(manifest);
    Bytes source(catalog::bundle_head(some_key(), text) + large + catalog::bundle_end());
    REQUIRE(catalog::read_seal(source, "b"));
    Nobody nobody;
    REQUIRE(read_parts(source, manifest, "b", nobody));
    CHECK(nobody.ended == 1);
    CHECK(source.largest() <= 256U * 1024U);
}

TEST_CASE("bundle file: cut off at any byte it is half copied, and never whole")
{
    const auto bytes = small_bundle(some_key());
    CHECK(verdict(std::string()) == Kind::NoBundle);
    for (std::size_t length = 1; length < bytes.size(); ++length) {
        CAPTURE(length);
        CHECK(verdict(bytes.substr(0, length)) == Kind::CutBundle);
    }
}

TEST_CASE("bundle file: with nothing at its end, as a pulled stick leaves it, it is half copied")
{
    const auto bytes = small_bundle(some_key());
    const std::size_t parts_at = bytes.find("cccc");
    for (std::size_t length = parts_at; length <= bytes.size() - 16; length += 7) {
        CAPTURE(length);
        auto half = bytes.substr(0, length);
        half.resize(bytes.size(), '\0');
        CHECK(verdict(half) == Kind::CutBundle);
    }
}

TEST_CASE("bundle file: any changed byte is found, and told from half copied")
{
    const auto bytes = small_bundle(some_key());
    std::map<Kind, std::size_t> told;
    for (std::size_t i = 0; i < bytes.size(); ++i)
        for (const unsigned bit : {1U, 128U}) {
            CAPTURE(i);
            auto changed = bytes;
            changed[i] = static_cast<char>(static_cast<unsigned char>(changed[i]) ^ bit);
            const auto kind = verdict(changed);
            REQUIRE(kind);
            CHECK(*kind == (i < 16 ? Kind::NoBundle : Kind::DamagedBundle));
            ++told[*kind];
        }
    CHECK(told.size() == 2);
    CHECK(verdict(bytes + "x") == Kind::DamagedBundle);
    const auto end = bytes.size();
    CHECK(verdict(bytes.substr(0, end - 500) + bytes.substr(end - 499) + "x") ==
          Kind::DamagedBundle); // all moved by one
}

TEST_CASE("bundle file: other files are no bundles, and little of them is read")
{
    CHECK(verdict(std::string("SQLite format 3\0 and more", 25)) == Kind::NoBundle);
    CHECK(verdict(std::string(500, '\0')) == Kind::NoBundle);
    Bytes line(std::string(100'000'000, 'P')); // one line of 100 MB
    CHECK(catalog::read_seal(line, "b").error().kind == Kind::NoBundle);
    CHECK(line.read_so_far() < 1000);
}

TEST_CASE("bundle file: a later form is newer, and a head that lies about its length reads nothing")
{
    auto bytes = small_bundle(some_key());
    const auto head_with = [&](std::size_t at, std::uint8_t value) {
        auto changed = bytes;
        changed[at] = static_cast<char>(value);
        const auto check = catalog::digest_of(catalog::bytes_in(std::string_view(changed).substr(0, 120)));
        std::copy_n(check.begin(), 16, changed.begin() + 120);
        return changed;
    };
    CHECK(verdict(head_with(16, 2)) == Kind::NewerBundle);
    CHECK(verdict(head_with(16, 0)) == Kind::DamagedBundle);
    Bytes long_one(head_with(23, 255)); // a manifest of four thousand million bytes
    CHECK(catalog::read_seal(long_one, "b").error().kind == Kind::DamagedBundle);
    CHECK(long_one.read_so_far() < 1000);
    CHECK(verdict(head_with(24, 0)) == Kind::DamagedBundle); // somebody else's key over our seal
}

TEST_CASE("bundle file: a seal stands under its own manifest only")
{
    const auto one = small_bundle(some_key());
    const catalog::SigningKey other(catalog::Digest{9});
    const auto two = small_bundle(other);
    CHECK_FALSE(verdict(two));
    auto mixed = one;
    std::copy_n(two.begin() + 56, 64, mixed.begin() + 56); // the other's signature, and a check that fits
    const auto check = catalog::digest_of(catalog::bytes_in(std::string_view(mixed).substr(0, 120)));
    std::copy_n(check.begin(), 16, mixed.begin() + 120);
    CHECK(verdict(mixed) == Kind::DamagedBundle);
}
