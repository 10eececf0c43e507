#include "catalog/bundle/install.h"

#include "catalog/bundle/bundle_file.h"
#include "catalog/file/new_file.h"
#include "catalog/store/store.h"

#include <algorithm>
#include <stdexcept>
#include <system_error>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using Kind = core::Error::Kind;

constexpr std::uint64_t megabyte = 1'000'000;
constexpr std::uint64_t always_left = 8 * megabyte; // for the record, and so that a station never fills its disk

auto refuse(Kind kind, const fs::path& path, const std::string& detail, const std::string& found = {},
            const std::string& expected = {})
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, found, expected});
}

/// A folder that is thrown away unless it is kept.
class NewFolder {
public:
    explicit NewFolder(fs::path path) : path_(std::move(path)) {}
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;
    ~NewFolder()
    {
        std::error_code ignored; // the next install clears it away
        if (!kept_)
            fs::remove_all(path_, ignored);
    }
    void keep() { kept_ = true; }
    [[nodiscard]] const fs::path& path() const { return path_; }

private:
    fs::path path_;
    bool kept_ = false;
};

/// Writes each part into its file. The names are those of Part: they lead nowhere else.
class IntoFolder : public PartTaker {
public:
    IntoFolder(const fs::path& folder, Disk& disk) : folder_(folder), disk_(disk) {}
    core::Result<void> begin(const Part& part) override
    {
        const auto path = folder_ / part.name;
        if (auto made = make_folders(path.parent_path(), disk_); !made)
            return made;
        auto file = NewFile::make(path, disk_);
        if (!file)
            return tl::make_unexpected(file.error());
        file_.emplace(std::move(*file));
        return {};
    }
    core::Result<void> take(std::span<const std::uint8_t> bytes) override { return file_->add(bytes); }
    core::Result<void> end() override { return file_->finish(); }

private:
    const fs::path& folder_;
    Disk& disk_;
    std::optional<NewFile> file_;
};

core::Result<void> check_key(const PublicKey& key, const Installed& has, const InstallOrder& order)
{
    const auto here = fingerprint(key);
    if (has.key && *has.key != key)
        return refuse(Kind::ForeignKey, order.bundle, "sealed with another key", here, fingerprint(*has.key));
    if (!order.accept.empty() && !is_fingerprint_of(key, order.accept))
        return refuse(Kind::OtherKey, order.bundle, "another fingerprint was typed", here, order.accept);
    if (!has.key && order.accept.empty())
        return refuse(Kind::UnknownKey, order.bundle, "nobody accepted its key yet", here);
    return {};
}

bool is(const std::optional<InstalledBundle>& bundle, const Digest& manifest)
{
    return bundle && bundle->manifest == manifest;
}

/// The clock has no say in this. What is or was in place may be installed again, say with new labels of the place.
core::Result<void> check_age(const Manifest& manifest, const Digest& digest, const Installed& has,
                             const InstallOrder& order)
{
    if (manifest.counter > has.newest || is(has.now, digest) || is(has.before, digest))
        return {};
    return refuse(Kind::OlderBundle, order.bundle, "not newer", std::to_string(manifest.counter),
                  std::to_string(has.newest));
}

core::Result<void> check_room(const Manifest& manifest, const fs::path& folder, Disk& disk)
{
    std::uint64_t needed = always_left;
    for (const auto& part : manifest.parts)
        needed += part.bytes;
    const auto free = disk.room(folder);
    if (free >= needed)
        return {};
    return refuse(Kind::NoRoom, folder, "too little room", std::to_string(free / megabyte),
                  std::to_string(needed / megabyte + 1));
}

/// Removes the folders that the record does not name: of broken off installs, and of bundles two steps back.
void clear_leftovers(const fs::path& folder, const Installed& has)
{
    std::error_code error;
    std::vector<fs::path> leftovers;
    for (fs::directory_iterator entries(folder, error); !error && entries != fs::directory_iterator();
         entries.increment(error)) {
        const auto name = entries->path().filename().string();
        const bool named = (has.now && has.now->folder == name) || (has.before && has.before->folder == name);
        std::error_code unknown;
        if (!named && name.starts_with('b') && entries->is_directory(unknown))
            leftovers.push_back(entries->path());
    }
    for (const auto& leftover : leftovers)
        fs::remove_all(leftover, error);
}

/// A name that no bundle of this station has.
std::string next_folder(const Installed& has)
{
    const auto number = [](const std::optional<InstalledBundle>& bundle) {
        return bundle ? std::stoull(bundle->folder.substr(1)) : 0;
    };
    return "b" + std::to_string(std::max(number(has.now), number(has.before)) + 1);
}

/// What the new catalog is asked before it is served, and what the place adds to it. Returns how many labels. What is
/// wrong with it was sealed so, and is told of the bundle.
core::Result<std::size_t> complete_catalog(const fs::path& catalog, const InstallOrder& order, const Manifest& manifest)
{
    auto store = Store::open(catalog, Store::Mode::ReadOnly);
    if (!store) {
        const bool newer = store.error().kind == Kind::NewerCatalog;
        return refuse(newer ? Kind::NewerBundle : Kind::DamagedBundle, order.bundle, store.error().detail,
                      newer ? "" : catalog_part);
    }
    if (store->count() != manifest.products)
        return refuse(Kind::DamagedBundle, order.bundle, "it has not as many products as it says", catalog_part);
    const auto own = Store::open(own_catalog(order.data), Store::Mode::ReadOnly);
    const auto labels = own ? own->this_place_only() : std::vector<core::Product>{};
    if (!labels.empty())
        Store(catalog.string()).put(labels);
    return labels.size();
}

core::Result<void> write_text(const fs::path& path, const std::string& text, Disk& disk)
{
    auto file = NewFile::make(path, disk);
    if (!file)
        return tl::make_unexpected(file.error());
    if (auto added = file->add(bytes_in(text)); !added)
        return added;
    return file->finish();
}

/// Writes the record and lets it count.
core::Result<void> put_in_place(SafeWrite& writing, const Installed& installed, Disk& disk)
{
    if (auto written = write_text(writing.aside(), installed_text(installed), disk); !written)
        return written;
    return writing.commit();
}

/// Writes all of the bundle into a new folder, and sees it onto the disk.
core::Result<std::size_t> write_aside(ByteStream& source, const Manifest& manifest, const std::string& text,
                                      const NewFolder& folder, const InstallOrder& order, Disk& disk)
{
    if (const auto made = make_folders(folder.path(), disk); !made)
        return tl::make_unexpected(made.error());
    IntoFolder into(folder.path(), disk);
    if (const auto read = read_parts(source, manifest, order.bundle.string(), into); !read)
        return tl::make_unexpected(read.error());
    if (const auto written = write_text(folder.path() / "manifest.json", text, disk); !written)
        return tl::make_unexpected(written.error());
    const auto came_along = complete_catalog(folder.path() / catalog_part, order, manifest);
    if (!came_along)
        return came_along;
    disk.sync_file(folder.path() / catalog_part); // what came along, too
    std::error_code none;
    if (fs::is_directory(folder.path() / texts_folder, none))
        disk.sync_folder(folder.path() / texts_folder);
    disk.sync_folder(folder.path());
    return came_along;
}

Installed with(const Installed& has, const PublicKey& key, const Manifest& manifest, InstalledBundle bundle)
{
    Installed next = has;
    next.key = key;
    next.newest = std::max(has.newest, manifest.counter);
    if (!is(has.now, bundle.manifest)) { // the same one again leaves the way back as it is
        next.before = has.now;
        next.can_go_back = true;
    }
    next.now = std::move(bundle);
    return next;
}

core::Result<Installing> install_locked(ByteStream& source, const SealedText& sealed, SafeWrite& writing,
                                        const InstallOrder& order, Disk& disk)
{
    const auto has = read_installed(order.data);
    if (!has)
        return tl::make_unexpected(has.error());
    if (const auto checked = check_key(sealed.key, *has, order); !checked)
        return tl::make_unexpected(checked.error());
    auto manifest = read_manifest(sealed.text);
    const auto name = order.bundle.string();
    if (!manifest)
        return refuse(manifest.error().kind, order.bundle, manifest.error().detail);
    const auto digest = digest_of(bytes_in(sealed.text));
    if (const auto checked = check_length(source, *manifest, sealed.text.size(), name); !checked)
        return tl::make_unexpected(checked.error());
    if (const auto checked = check_age(*manifest, digest, *has, order); !checked)
        return tl::make_unexpected(checked.error());
    const auto bundles = bundles_folder(order.data);
    clear_leftovers(bundles, *has);
    if (const auto checked = check_room(*manifest, bundles, disk); !checked)
        return tl::make_unexpected(checked.error());
    const auto folder_name = next_folder(*has);
    NewFolder folder(bundles / folder_name);
    const auto came_along = write_aside(source, *manifest, sealed.text, folder, order, disk);
    if (!came_along)
        return tl::make_unexpected(came_along.error());
    const auto next = with(*has, sealed.key, *manifest, {folder_name, digest});
    folder.keep(); // from here on the record says whether it counts, also where writing the record broke off
    const auto done = put_in_place(writing, next, disk);
    if (const auto counts = read_installed(order.data))
        clear_leftovers(bundles, *counts);
    if (!done)
        return tl::make_unexpected(done.error());
    return Installing{std::move(*manifest), sealed.key, *came_along};
}

/// Holds every other install off; what is thrown on the way is one more way not to be able to write.
template<class Work>
auto locked(const fs::path& data, Disk& disk, Work work) -> decltype(work(std::declval<SafeWrite&>()))
{
    if (const auto made = make_folders(bundles_folder(data), disk); !made)
        return tl::make_unexpected(made.error());
    auto writing = SafeWrite::begin(installed_file(data), disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    try {
        return work(*writing);
    } catch (const std::system_error& broken) {
        return refuse(Kind::CannotWrite, data, broken.code().message());
    } catch (const std::runtime_error& broken) { // the database's word for a full disk, a missing permission, ...
        return refuse(Kind::CannotWrite, data, broken.what());
    }
}

} // namespace

core::Result<Installing> install(ByteStream& source, const InstallOrder& order, Disk& disk)
{
    const auto sealed = read_seal(source, order.bundle.string());
    if (!sealed)
        return tl::make_unexpected(sealed.error());
    return locked(order.data, disk,
                  [&](SafeWrite& writing) { return install_locked(source, *sealed, writing, order, disk); });
}

core::Result<Installing> install(const InstallOrder& order, Disk& disk)
{
    auto source = open_file(order.bundle);
    if (!source)
        return tl::make_unexpected(source.error());
    return install(**source, order, disk);
}

core::Result<std::optional<Manifest>> go_back(const fs::path& data, Disk& disk)
{
    return locked(data, disk, [&](SafeWrite& writing) -> core::Result<std::optional<Manifest>> {
        auto has = read_installed(data);
        if (!has)
            return tl::make_unexpected(has.error());
        if (!has->can_go_back)
            return refuse(Kind::NothingBefore, data, "nothing was in place before");
        if (has->before)
            if (const auto good = Store::open(catalog_of(data, *has->before), Store::Mode::ReadOnly); !good)
                return tl::make_unexpected(good.error());
        std::swap(has->now, has->before);
        if (const auto done = put_in_place(writing, *has, disk); !done)
            return tl::make_unexpected(done.error());
        return has->now ? manifest_of(data, *has->now) : std::nullopt;
    });
}

core::Result<void> forget_key(const fs::path& data, Disk& disk)
{
    return locked(data, disk, [&](SafeWrite& writing) -> core::Result<void> {
        auto has = read_installed(data);
        if (!has)
            return tl::make_unexpected(has.error());
        has->key.reset();
        has->newest = 0;
        return put_in_place(writing, *has, disk);
    });
}

} // namespace catalog
