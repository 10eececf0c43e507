// Any bytes as a bundle, as a sealed manifest with its parts, and as the record of what is installed.
#include "catalog/bundle/bundle_file.h"
#include "catalog/bundle/installed.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

namespace {

/// An input that breaks a promise is a crash, so that the fuzzer keeps it.
void promise(bool holds)
{
    if (!holds)
        std::abort();
}

class Bytes : public catalog::ByteStream {
public:
    explicit Bytes(std::string_view bytes) : bytes_(bytes) {}
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    [[nodiscard]] core::Result<std::size_t> read(char* bytes, std::size_t size) override
    {
        const auto got = std::min(size, bytes_.size() - at_);
        std::copy_n(bytes_.begin() + static_cast<std::ptrdiff_t>(at_), got, bytes);
        at_ += got;
        return got;
    }

private:
    std::string_view bytes_;
    std::size_t at_ = 0;
};

/// Takes parts, and holds them against what the manifest says.
class Taker : public catalog::PartTaker {
public:
    core::Result<void> begin(const catalog::Part& part) override
    {
        promise(part.name.find("/.") == std::string::npos && part.name.front() != '/' && part.name.front() != '.');
        promise(part.name == catalog::catalog_part || part.name == catalog::tour_part ||
                part.name.starts_with(catalog::texts_folder));
        wanted_ = part.bytes;
        return {};
    }
    core::Result<void> take(std::span<const std::uint8_t> bytes) override
    {
        promise(bytes.size() <= wanted_);
        wanted_ -= bytes.size();
        return {};
    }
    core::Result<void> end() override
    {
        promise(wanted_ == 0);
        ++ended_;
        return {};
    }
    [[nodiscard]] std::size_t ended() const { return ended_; }

private:
    std::uint64_t wanted_ = 0;
    std::size_t ended_ = 0;
};

/// As install does, without a disk.
void take_in(std::string_view bytes)
{
    Bytes source(bytes);
    const auto sealed = catalog::read_seal(source, "b");
    if (!sealed)
        return;
    const auto manifest = catalog::read_manifest(sealed->text);
    if (!manifest || !catalog::check_length(source, *manifest, sealed->text.size(), "b"))
        return;
    Taker taker;
    if (catalog::read_parts(source, *manifest, "b", taker))
        promise(taker.ended() == manifest->parts.size());
}

void check_manifest(std::string_view text)
{
    const auto manifest = catalog::read_manifest(text);
    if (!manifest)
        return;
    const auto again = catalog::read_manifest(catalog::manifest_text(*manifest));
    promise(again && *again == *manifest);
    promise(catalog::bundle_bytes(*manifest, text.size()) >= text.size());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const catalog::SigningKey key(catalog::Digest{1, 2, 3});
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    take_in(bytes);
    check_manifest(bytes);
    // The first line is a manifest that somebody sealed, the rest its parts: a seal alone makes nobody honest.
    const auto cut = std::min(bytes.find('\n'), bytes.size());
    const std::string text(bytes.substr(0, std::min(cut, catalog::longest_manifest)));
    take_in(catalog::bundle_head(key, text) + std::string(bytes.substr(cut)) + catalog::bundle_end());
    if (const auto installed = catalog::installed_in(bytes))
        promise(catalog::installed_in(catalog::installed_text(*installed)) == installed);
    return 0;
}
