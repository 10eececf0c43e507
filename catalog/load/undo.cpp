#include "catalog/load/undo.h"

#include "catalog/store/store.h"

#include <chrono>
#include <system_error>

namespace catalog {
namespace {

namespace fs = std::filesystem;

auto refuse(core::Error::Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

} // namespace

void keep_former(SafeWrite& writing, const fs::path& into, bool keep)
{
    writing.set_former(keep ? SafeWrite::Former::Kept : SafeWrite::Former::Dropped);
    if (!keep || fs::exists(into))
        return;
    const auto former = former_of(into);
    fs::remove(former);
    const Store nothing(former.string());
    using Time = fs::file_time_type::clock;
    fs::last_write_time(former, Time::from_sys(std::chrono::sys_seconds{})); // older than any that was loaded
}

bool can_undo(const fs::path& catalog)
{
    std::error_code unknown;
    const auto former = former_of(catalog);
    if (!fs::is_regular_file(catalog, unknown) || !fs::is_regular_file(former, unknown))
        return false;
    // One file under both names is what a load leaves that was broken off between the two.
    return !fs::equivalent(catalog, former, unknown) && !unknown;
}

bool is_load_undone(const fs::path& catalog)
{
    std::error_code unknown;
    if (!can_undo(catalog))
        return false;
    const auto now = fs::last_write_time(catalog, unknown);
    const auto other = fs::last_write_time(former_of(catalog), unknown);
    return !unknown && now < other;
}

core::Result<void> undo_load(const fs::path& catalog, Disk& disk)
{
    auto writing = SafeWrite::begin(catalog, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    if (!can_undo(catalog))
        return refuse(core::Error::Kind::NothingBefore, catalog, "no catalog was kept");
    const auto former = former_of(catalog);
    if (const auto good = Store::open(former, Store::Mode::ReadOnly); !good)
        return tl::make_unexpected(good.error());
    try {
        disk.link(former, writing->aside());
    } catch (const std::system_error& broken) {
        return refuse(core::Error::Kind::CannotWrite, catalog, broken.code().message());
    }
    writing->set_former(SafeWrite::Former::Kept);
    return writing->commit();
}

} // namespace catalog
