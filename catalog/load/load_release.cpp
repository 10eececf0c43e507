#include "catalog/load/load_release.h"

#include "catalog/load/merging_writer.h"
#include "catalog/load/release_amounts.h"
#include "catalog/load/release_heads.h"
#include "catalog/load/release_products.h"
#include "catalog/load/undo.h"
#include "catalog/load/work_folder.h"
#include "catalog/read/release_files.h"
#include "catalog/read/release_json.h"
#include "catalog/store/store.h"

#include <system_error>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using core::Error;
using Stage = LoadProgress::Stage;

auto cannot_write(const fs::path& into, const std::string& detail)
{
    return core::refuse(Error::Kind::CannotWrite, detail, core::Place{into.string(), 0, {}, {}, {}});
}

/// One load.
class Loading {
public:
    Loading(const ReleaseFiles& files, const fs::path& source, const fs::path& into, const ReleaseLoad& asked)
        : files_(files), into_(into), asked_(asked), work_(into, fingerprint_of(files, source, asked.choice)),
          texts_(work_.path() / "texts", work_.done() != WorkFolder::Done::Nothing)
    {
        if (work_.done() != WorkFolder::Done::Nothing)
            loaded_.report = work_.report();
        loaded_.report.bytes = files.size();
    }

    /// Nothing is left of the load but the catalog; without it a later load of the same files goes on here.
    void clear() const { work_.clear(); }

    /// Writes the new catalog into `aside`.
    core::Result<ReleaseLoaded> write(const fs::path& aside)
    {
        std::optional<Store> old;
        if (std::error_code error; fs::exists(into_, error)) {
            auto opened = Store::open(into_, Store::Mode::ReadOnly);
            if (!opened)
                return tl::make_unexpected(opened.error());
            old.emplace(*std::move(opened));
        }
        auto release = heads();
        if (!release || loaded_.cancelled)
            return ended(release);
        const bool again = work_.done() == WorkFolder::Done::Amounts;
        AmountParts parts(release->heads, work_.path(), again);
        if (!again)
            if (const auto read = amounts(*release, parts); !read || loaded_.cancelled)
                return ended(read);
        work_.note_amounts(loaded_.report);
        products(*release, parts, aside, std::move(old));
        return std::move(loaded_);
    }

private:
    template<class Passed>
    core::Result<ReleaseLoaded> ended(const Passed& passed)
    {
        if (!passed)
            return tl::make_unexpected(passed.error());
        return std::move(loaded_);
    }

    core::Result<ReadRelease> heads()
    {
        ReadRelease release{{}, {}, files_.json ? json_digits : 0, 0, {}};
        if (work_.done() == WorkFolder::Done::Nothing) {
            RecordHeads heads(texts_, asked_.choice, loaded_.report);
            if (const auto read = files_.json ? json_heads(heads) : csv_heads(heads); !read)
                return tl::make_unexpected(read.error());
            if (loaded_.cancelled)
                return release;
            release.heads = heads.sorted();
            release.left_out = heads.left_out();
            heads.note_what_is_not_there();
            work_.note_heads(release.heads, release.left_out, loaded_.report);
        } else {
            release.heads = work_.heads();
            release.left_out = work_.left_out();
        }
        release.newest_day = newest_day(release.heads);
        release.name = release_name(release.newest_day);
        return release;
    }

    core::Result<bool> csv_heads(RecordHeads& heads)
    {
        const auto foods =
            file(files_.food, Stage::Foods, 0, [&](ByteStream& bytes, const std::string& name, const auto& go_on) {
                return heads.read_foods(bytes, name, go_on);
            });
        if (!foods || loaded_.cancelled)
            return foods;
        return file(files_.branded, Stage::Foods, files_.food.size,
                    [&](ByteStream& bytes, const std::string& name, const auto& go_on) {
                        return heads.read_branded(bytes, name, go_on);
                    });
    }

    core::Result<bool> json_heads(RecordHeads& heads)
    {
        const auto take = [&](const JsonFood& food) {
            heads.take(food.code, food.views(), food.market, food.fdc_id, food.published_on, food.modified_on);
        };
        return file(*files_.json, Stage::Foods, 0, [&](ByteStream& bytes, const std::string& name, const auto& go_on) {
            return read_release_json(bytes, name, take, go_on);
        });
    }

    core::Result<bool> amounts(const ReadRelease& release, AmountParts& parts)
    {
        const PlaceOfRecord place_of(release.heads);
        if (files_.json)
            return json_amounts(place_of, parts);
        return file(files_.amounts, Stage::Amounts, files_.food.size + files_.branded.size,
                    [&](ByteStream& bytes, const std::string& name, const auto& go_on) {
                        return read_amounts(bytes, name, place_of, release.left_out, parts, loaded_.report, go_on);
                    });
    }

    core::Result<bool> json_amounts(const PlaceOfRecord& place_of, AmountParts& parts)
    {
        const auto take = [&](const JsonFood& food) { add_amounts(food, place_of, parts, loaded_.report); };
        auto read = file(*files_.json, Stage::Amounts, files_.json->size,
                         [&](ByteStream& bytes, const std::string& name, const auto& go_on) {
                             return read_release_json(bytes, name, take, go_on);
                         });
        parts.flush();
        return read;
    }

    void products(const ReadRelease& release, const AmountParts& parts, const fs::path& aside, std::optional<Store> old)
    {
        MergingWriter writer(aside, std::move(old), loaded_.report);
        // Making products takes about as long as reading the files: the second half of the way.
        const auto go_on = [&](std::uint64_t done) {
            return told(Stage::Products,
                        files_.size() + files_.size() * done / std::max<std::size_t>(release.heads.size(), 1));
        };
        if (!make_products(
                release, texts_, parts, loaded_.report, [&](core::Product product) { writer.add(std::move(product)); },
                go_on))
            return;
        writer.finish();
    }

    template<class Read>
    core::Result<bool> file(const ReleaseFile& file, Stage stage, std::uint64_t before, Read read)
    {
        auto bytes = file.open();
        if (!bytes)
            return tl::make_unexpected(bytes.error());
        return read(**bytes, file.name,
                    std::function<bool(std::uint64_t)>([&](std::uint64_t done) { return told(stage, before + done); }));
    }

    bool told(Stage stage, std::uint64_t done)
    {
        if (asked_.tell && !asked_.tell({stage, done, 2 * files_.size()}))
            loaded_.cancelled = true;
        return !loaded_.cancelled;
    }

    const ReleaseFiles& files_;
    const fs::path& into_;
    const ReleaseLoad& asked_;
    WorkFolder work_;
    Spill texts_;
    ReleaseLoaded loaded_;
};

} // namespace

core::Result<ReleaseLoaded> load_release(const fs::path& source, const fs::path& into, const ReleaseLoad& asked,
                                         Disk& disk)
{
    const auto files = find_release(source);
    if (!files)
        return tl::make_unexpected(files.error());
    std::error_code later; // if it cannot be made, writing says why
    fs::create_directories(folder_of(into), later);
    auto writing = SafeWrite::begin(into, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    try {
        Loading loading(*files, source, into, asked);
        auto loaded = loading.write(writing->aside());
        const bool counts = loaded && !loaded->cancelled && loaded->report.taken > 0;
        if (counts) {
            keep_former(*writing, into, asked.keep_former);
            if (const auto done = writing->commit(); !done)
                return tl::make_unexpected(done.error());
        }
        if (loaded)
            loading.clear();
        return loaded;
    } catch (const std::runtime_error& broken) { // the database's or the disk's word for no room, no permission, ...
        return cannot_write(into, broken.what());
    }
}

} // namespace catalog
