#include "kiosk/desk/desk_work.h"

#include "catalog/file/byte_stream.h"
#include "catalog/load/undo.h"
#include "kiosk/desk/keep_picture.h"

#include <exception>
#include <system_error>
#include <utility>

namespace kiosk {
namespace {

namespace fs = std::filesystem;
using core::Error;

/// A touch that ends the reading of a bundle.
struct EndedByTouch : std::exception {};

/// Tells how far a bundle was read, and ends where it is asked to.
class ToldBytes : public catalog::ByteStream {
public:
    ToldBytes(catalog::ByteStream& bytes, WorkLine& line) : bytes_(bytes), line_(line) {}
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    [[nodiscard]] core::Result<std::size_t> read(char* bytes, std::size_t size) override
    {
        if (!line_.tell({std::nullopt, done_, bytes_.size()}))
            throw EndedByTouch{};
        auto came = bytes_.read(bytes, size);
        done_ += came.value_or(0);
        return came;
    }

private:
    catalog::ByteStream& bytes_;
    WorkLine& line_;
    std::uint64_t done_ = 0;
};

DeskNews refused(const Error& error, const std::optional<StickFile>& file)
{
    const bool of_file = error.kind == Error::Kind::NoSuchFile || error.kind == Error::Kind::CannotRead ||
                         error.kind == Error::Kind::TornFile || error.kind == Error::Kind::CutBundle;
    return Refused{error, of_file && file && !is_there(*file)};
}

/// What is thrown on the way is a disk that fails, the station's or the stick.
template<class Work>
DeskNews guarded(const std::optional<StickFile>& file, const std::string& place, Work work)
{
    try {
        return work();
    } catch (const EndedByTouch&) {
        return Ended{};
    } catch (const std::exception& broken) {
        return refused({Error::Kind::CannotRead, broken.what(), core::Place{place, 0, {}, {}, {}}}, file);
    }
}

DeskNews load_sheet(const StickFile& file, const fs::path& into, bool keep_good_rows, WorkLine& line)
{
    auto report = catalog::load({file.path.string()}, into, {keep_good_rows, true, [&] { return line.goes_on(); }});
    if (!report)
        return refused(report.error(), file);
    if (report->cancelled)
        return Ended{};
    if (report->taken == 0 && !is_there(file))
        return refused({Error::Kind::NoSuchFile, "gone", core::Place{file.path.string(), 0, {}, {}, {}}}, file);
    std::error_code unknown;
    return SheetTaken{*std::move(report), keep_good_rows, fs::exists(into, unknown)};
}

DeskNews load_release(const StickFile& file, const fs::path& into, WorkLine& line)
{
    catalog::ReleaseLoad wanted;
    wanted.keep_former = true;
    wanted.tell = [&](const catalog::LoadProgress& far) { return line.tell({far.stage, far.done, far.whole}); };
    auto loaded = catalog::load_release(file.path, into, wanted);
    if (!loaded)
        return refused(loaded.error(), file);
    return *std::move(loaded);
}

} // namespace

DeskNews find_files(const std::vector<fs::path>& folders, bool sticks, WorkLine& line)
{
    auto places = folders;
    if (sticks)
        for (auto& stick : mounted_sticks())
            places.push_back(std::move(stick));
    return guarded(std::nullopt, "",
                   [&]() -> DeskNews { return find_on_sticks(places, [&] { return line.goes_on(); }); });
}

DeskNews preview_file(const StickFile& file, const fs::path& data)
{
    return guarded(file, file.path.string(), [&]() -> DeskNews {
        auto preview = look_into(file, data);
        if (!preview)
            return refused(preview.error(), file);
        if (std::holds_alternative<SheetPreview>(*preview) && !is_there(file))
            return refused({Error::Kind::NoSuchFile, "gone", core::Place{file.path.string(), 0, {}, {}, {}}}, file);
        return *std::move(preview);
    });
}

DeskNews load_file(const StickFile& file, const fs::path& into, bool keep_good_rows, WorkLine& line)
{
    return guarded(file, file.path.string(), [&] {
        return file.kind == StickFile::Kind::Release ? load_release(file, into, line)
                                                     : load_sheet(file, into, keep_good_rows, line);
    });
}

DeskNews take_load_back(const fs::path& catalog)
{
    return guarded(std::nullopt, catalog.string(), [&]() -> DeskNews {
        if (const auto done = catalog::undo_load(catalog); !done)
            return refused(done.error(), std::nullopt);
        const auto now = catalog::Store::open(catalog, catalog::Store::Mode::ReadOnly);
        return LoadUndone{now ? now->count() : 0};
    });
}

DeskNews install_file(const StickFile& file, const fs::path& data, const std::string& accept, WorkLine& line)
{
    return guarded(file, file.path.string(), [&]() -> DeskNews {
        const auto source = catalog::open_file(file.path);
        if (!source)
            return refused(source.error(), file);
        ToldBytes told(**source, line);
        auto done = catalog::install(told, {file.path, data, accept});
        if (!done)
            return refused(done.error(), file);
        return *std::move(done);
    });
}

DeskNews take_install_back(const fs::path& data)
{
    return guarded(std::nullopt, data.string(), [&]() -> DeskNews {
        auto now = catalog::go_back(data);
        if (!now)
            return refused(now.error(), std::nullopt);
        return *std::move(now);
    });
}

DeskNews audit_file(const std::string& path, bool of_catalog, const std::optional<StickFile>& file, WorkLine& line)
{
    constexpr std::size_t most_samples = 40; // of a rule: some pages to leaf through
    return guarded(file, path, [&]() -> DeskNews {
        const auto source = open_audit_source(path);
        if (!source)
            return refused(source.error(), file);
        const std::uint64_t whole = source->store.count();
        auto tally = look_through(source->store, most_samples, [&](std::uint64_t done) {
            return line.tell({std::nullopt, done, whole});
        });
        if (!tally)
            return Ended{};
        return AuditFound{*std::move(tally), of_catalog, source->faults.count()};
    });
}

DeskNews approve_doubt(const std::string& catalog, const core::Gtin& gtin, core::DoubtRule rule, const std::string& day)
{
    return guarded(std::nullopt, catalog, [&]() -> DeskNews {
        return DoubtAnswered{approve(catalog, gtin.digits(), std::string(core::info(rule).name), day), gtin, rule};
    });
}

DeskNews keep_camera_picture(const std::function<std::optional<Frame>()>& take, const std::filesystem::path& folder)
{
    const auto picture = take();
    if (!picture)
        return PictureKept{};
    auto kept = keep_picture(*picture, folder);
    std::error_code unknown;
    if (!kept)
        return Refused{kept.error(), !std::filesystem::is_directory(folder, unknown)};
    return PictureKept{*kept};
}

} // namespace kiosk
