#include "catalog/bundle/seal.h"

#include "catalog/bundle/bundle_file.h"
#include "catalog/file/new_file.h"
#include "catalog/store/store.h"

#include <algorithm>
#include <charconv>
#include <fstream>
#include <system_error>
#include <vector>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using Kind = core::Error::Kind;

constexpr std::size_t piece_bytes = 256U << 10U;
constexpr const char* count_file = "pairstand.count";

auto refuse(Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

auto bad_words(const char* option, const std::string& found, const char* expected)
{
    return core::refuse(Kind::BadValue, found, core::Place{option, 0, {}, found, expected});
}

/// A file that goes into the bundle, and as what.
struct Ingoing {
    fs::path file;
    std::string name;
};

/// A copy of the catalog that may leave, gone at the end.
class LeavingCopy {
public:
    explicit LeavingCopy(const fs::path& out)
        : whole_(out.string() + ".pairstand-whole"), leaving_(out.string() + ".pairstand-leaving")
    {
        clear();
    }
    LeavingCopy(const LeavingCopy&) = delete;
    LeavingCopy& operator=(const LeavingCopy&) = delete;
    ~LeavingCopy() { clear(); }

    /// Makes it; how many labels stay behind.
    core::Result<std::uint64_t> make(const fs::path& catalog)
    {
        auto store = Store::open(catalog, Store::Mode::ReadOnly);
        if (!store)
            return tl::make_unexpected(store.error());
        try {
            store->copy_to(whole_);
            Store whole(whole_.string()); // an older catalog is brought up, so that any station can read it
            const std::uint64_t stayed = whole.remove_this_place_only();
            products_ = whole.count();
            whole.copy_to(leaving_); // pages that hold what was removed stay behind
            return stayed;
        } catch (const std::runtime_error& broken) {
            return refuse(Kind::CannotWrite, whole_, broken.what());
        }
    }

    [[nodiscard]] const fs::path& path() const { return leaving_; }
    [[nodiscard]] std::uint64_t products() const { return products_; }

private:
    void clear() const
    {
        std::error_code ignored; // what cannot be removed stops the copying soon enough
        for (const auto& path : {whole_, leaving_}) {
            fs::remove(path, ignored);
            fs::remove(path.string() + "-journal", ignored);
        }
    }

    fs::path whole_;
    fs::path leaving_;
    std::uint64_t products_ = 0;
};

/// Reads a file piece by piece and hands each on. Errors: those of the file, and of whoever takes the pieces.
template<class Take>
core::Result<void> stream(const fs::path& file, Take take)
{
    auto source = open_file(file);
    if (!source)
        return tl::make_unexpected(source.error());
    std::vector<std::uint8_t> piece(piece_bytes);
    for (;;) {
        const auto got = fill(**source, piece);
        if (!got)
            return tl::make_unexpected(got.error());
        if (*got == 0)
            return {};
        if (core::Result<void> taken = take(std::span<const std::uint8_t>(piece.data(), *got)); !taken)
            return taken;
    }
}

core::Result<Part> part_of(const Ingoing& ingoing)
{
    Part part{ingoing.name, 0, {}};
    Digester digester;
    const auto read = stream(ingoing.file, [&](std::span<const std::uint8_t> bytes) -> core::Result<void> {
        digester.add(bytes);
        part.bytes += bytes.size();
        return {};
    });
    if (!read)
        return tl::make_unexpected(read.error());
    part.digest = digester.finish();
    return part;
}

/// The texts of a folder, by name, so that the same folder always makes the same bundle.
core::Result<std::vector<Ingoing>> texts_in(const fs::path& folder)
{
    std::vector<Ingoing> texts;
    std::error_code error;
    for (fs::directory_iterator files(folder, error); !error && files != fs::directory_iterator();
         files.increment(error)) {
        const auto name = files->path().filename().string();
        if (!files->is_regular_file(error) || !is_text_name(name))
            return core::refuse(Kind::BadValue, name,
                                core::Place{folder.string(),
                                            0,
                                            {},
                                            name,
                                            "only files, with names of letters A to Z, digits, dots, hyphens and _"});
        texts.push_back({files->path(), texts_folder + name});
    }
    if (error)
        return refuse(Kind::CannotRead, folder, error.message());
    std::ranges::sort(texts, {}, &Ingoing::name);
    return texts;
}

/// The counter of the bundle that lies at `path`, if one with this seal does.
std::uint64_t counter_at(const fs::path& path, const PublicKey& key)
{
    auto source = open_file(path);
    if (!source)
        return 0;
    const auto sealed = read_seal(**source, path.string());
    if (!sealed || sealed->key != key)
        return 0;
    const auto manifest = read_manifest(sealed->text);
    return manifest ? manifest->counter : 0;
}

/// The counter of the last bundle that was sealed with the key of this folder.
std::uint64_t last_counter(const fs::path& folder)
{
    std::ifstream file(folder / count_file);
    std::uint64_t last = 0;
    file >> last;
    return file && last < largest_counter ? last : 0;
}

/// Keeps it, before the bundle is there: a number that no bundle got does no harm, one that two got does.
core::Result<void> keep_counter(const fs::path& folder, std::uint64_t counter, Disk& disk)
{
    auto writing = SafeWrite::begin(folder / count_file, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    auto file = NewFile::make(writing->aside(), disk);
    if (!file)
        return tl::make_unexpected(file.error());
    if (auto added = file->add(bytes_in(std::to_string(counter) + "\n")); !added)
        return added;
    if (auto finished = file->finish(); !finished)
        return finished;
    return writing->commit();
}

core::Result<std::uint64_t> next_counter(const SealOrder& order, const PublicKey& key, Disk& disk)
{
    std::error_code unknown;
    const auto folder = fs::is_directory(order.key, unknown) ? order.key : folder_of(order.key);
    const auto last = last_counter(folder);
    const auto counter = order.counter.value_or(std::max(last, counter_at(order.out, key)) + 1);
    // A key on a stick that takes no writing can still seal, by a counter that the leader gives.
    if (const auto kept = keep_counter(folder, std::max(last, counter), disk); !kept && !order.counter)
        return tl::make_unexpected(kept.error());
    return counter;
}

core::Result<void> check_words(const SealOrder& order)
{
    if (!is_plain_words(order.name))
        return bad_words("--name", order.name, "1 to 80 letters on one line");
    if (!is_plain_words(order.maker))
        return bad_words("--maker", order.maker, "1 to 80 letters on one line");
    if (order.counter && (*order.counter == 0 || *order.counter > largest_counter))
        return bad_words("--counter", std::to_string(*order.counter), "a whole number from 1 to 9007199254740991");
    return {};
}

/// Writes the bundle. The parts are read a second time: whatever changed meanwhile is not sealed.
core::Result<void> write_bundle(NewFile& file, const std::string& head, const std::vector<Ingoing>& ingoing,
                                const std::vector<Part>& parts)
{
    if (auto added = file.add(bytes_in(head)); !added)
        return added;
    for (std::size_t i = 0; i < ingoing.size(); ++i) {
        Digester digester;
        const auto copied = stream(ingoing[i].file, [&](std::span<const std::uint8_t> bytes) {
            digester.add(bytes);
            return file.add(bytes);
        });
        if (!copied)
            return copied;
        if (digester.finish() != parts[i].digest)
            return refuse(Kind::CannotRead, ingoing[i].file, "it changed while it was sealed");
    }
    if (auto added = file.add(bytes_in(bundle_end())); !added)
        return added;
    return file.finish();
}

/// All that goes in, in the order in which it will lie there.
core::Result<std::vector<Ingoing>> all_ingoing(const SealOrder& order, const fs::path& catalog)
{
    std::vector<Ingoing> all{{catalog, catalog_part}};
    if (!order.tour.empty())
        all.push_back({order.tour, tour_part});
    if (order.texts.empty())
        return all;
    auto texts = texts_in(order.texts);
    if (!texts)
        return texts;
    all.insert(all.end(), texts->begin(), texts->end());
    return all;
}

core::Result<Sealed> seal_into(SafeWrite& writing, const SealOrder& order, const SigningKey& key, Disk& disk)
{
    LeavingCopy copy(writing.aside());
    const auto stayed = copy.make(order.catalog);
    if (!stayed)
        return tl::make_unexpected(stayed.error());
    if (copy.products() == 0)
        return core::refuse(Kind::Empty, "no product",
                            core::Place{order.catalog.string(), 0, {}, {}, "a product that may leave this place"});
    const auto ingoing = all_ingoing(order, copy.path());
    if (!ingoing)
        return tl::make_unexpected(ingoing.error());
    Sealed sealed{{order.name, order.maker, order.made, 0, copy.products(), {}}, key.public_key(), 0, *stayed};
    for (const auto& one : *ingoing) {
        auto part = part_of(one);
        if (!part)
            return tl::make_unexpected(part.error());
        sealed.manifest.parts.push_back(std::move(*part));
    }
    const auto counter = next_counter(order, key.public_key(), disk);
    if (!counter)
        return tl::make_unexpected(counter.error());
    sealed.manifest.counter = *counter;
    const auto text = manifest_text(sealed.manifest);
    if (const auto good = read_manifest(text); !good) // too many texts, a part too large
        return refuse(Kind::TooLarge, order.out, good.error().detail);
    auto file = NewFile::make(writing.aside(), disk);
    if (!file)
        return tl::make_unexpected(file.error());
    if (const auto written = write_bundle(*file, bundle_head(key, text), *ingoing, sealed.manifest.parts); !written)
        return tl::make_unexpected(written.error());
    sealed.bytes = bundle_bytes(sealed.manifest, text.size());
    return sealed;
}

} // namespace

core::Result<Sealed> seal(const SealOrder& order, Disk& disk)
{
    if (const auto checked = check_words(order); !checked)
        return tl::make_unexpected(checked.error());
    const auto key = read_signing_key(order.key);
    if (!key)
        return tl::make_unexpected(key.error());
    auto writing = SafeWrite::begin(order.out, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    auto sealed = seal_into(*writing, order, *key, disk);
    if (!sealed)
        return sealed;
    if (const auto done = writing->commit(); !done)
        return tl::make_unexpected(done.error());
    return sealed;
}

} // namespace catalog
