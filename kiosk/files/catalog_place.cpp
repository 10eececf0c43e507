#include "kiosk/files/catalog_place.h"

#include "catalog/bundle/installed.h"
#include "catalog/read/sheet.h"
#include "ui/words/error_words.h"

#include <optional>
#include <system_error>
#include <utility>

namespace kiosk {
namespace {

std::filesystem::path user_data(const Environment& environment)
{
    if (const auto given = environment("XDG_DATA_HOME"))
        return *given;
    if (const auto home = environment("HOME"))
        return std::filesystem::path(*home) / ".local" / "share";
    return {};
}

/// A catalog without a label is what undoing a first load leaves.
bool holds_nothing(const std::filesystem::path& catalog)
{
    constexpr std::uintmax_t bytes_of_nothing = 1U << 18U; // tables and indices, empty
    std::error_code unknown;
    const auto bytes = std::filesystem::file_size(catalog, unknown);
    if (unknown || bytes > bytes_of_nothing)
        return false;
    const auto store = catalog::Store::open(catalog, catalog::Store::Mode::ReadOnly);
    return store && store->count() == 0;
}

/// The catalog of the bundle that is in place, else the place's own; nothing where there is neither.
std::optional<std::filesystem::path> own_place(const std::filesystem::path& data)
{
    if (data.empty())
        return std::nullopt;
    const auto installed = catalog::read_installed(data);
    if (!installed)
        return catalog::installed_file(data);
    if (installed->now)
        return catalog::catalog_of(data, *installed->now);
    const auto own = catalog::own_catalog(data);
    return std::filesystem::exists(own) && !holds_nothing(own) ? std::optional(own) : std::nullopt;
}

/// Where the last good catalog lies when `place` is that of the bundle in place; nothing when there is none.
std::optional<std::filesystem::path> last_good(const CatalogPlace& place, const std::filesystem::path& data)
{
    const auto installed = catalog::read_installed(data);
    if (data.empty() || !installed || !installed->now || !installed->can_go_back ||
        place.path != catalog::catalog_of(data, *installed->now))
        return std::nullopt;
    return installed->before ? catalog::catalog_of(data, *installed->before) : catalog::own_catalog(data);
}

/// Opens it; where it is the catalog of a bundle that is no good any more, the last good one, which `place` then is.
catalog::Store open_or_throw(CatalogPlace& place, const Environment& environment)
{
    auto store = open_catalog(place);
    if (store)
        return std::move(*store);
    if (const auto path = last_good(place, own_data(environment))) {
        const CatalogPlace before{*path, false};
        if (auto opened = open_catalog(before)) {
            place = before;
            return std::move(*opened);
        }
    }
    throw CatalogRefused(place, store.error());
}

} // namespace

std::filesystem::path own_data(const Environment& environment)
{
    const auto folder = user_data(environment);
    return folder.empty() ? folder : folder / "pairstand";
}

CatalogPlace catalog_place(const std::string& given, const std::filesystem::path& data, const Environment& environment)
{
    if (!given.empty())
        return {given, false};
    if (const auto named = environment("PAIRSTAND_CATALOG"))
        return {*named, false};
    if (const auto own = own_place(own_data(environment)))
        return {*own, false};
    return {data / "demo" / "cedar_hollow.csv", true};
}

std::optional<catalog::Manifest> bundle_at(const CatalogPlace& place, const Environment& environment)
{
    const auto data = own_data(environment);
    const auto installed = catalog::read_installed(data);
    if (data.empty() || !installed)
        return std::nullopt;
    for (const auto& bundle : {installed->now, installed->before})
        if (bundle && place.path == catalog::catalog_of(data, *bundle))
            return catalog::manifest_of(data, *bundle);
    return std::nullopt;
}

std::optional<catalog::Manifest> bundle_before(const std::filesystem::path& catalog)
{
    const auto data = catalog.parent_path();
    const auto installed = catalog::read_installed(data);
    if (!installed || !installed->now || catalog != catalog::own_catalog(data))
        return std::nullopt;
    return catalog::manifest_of(data, *installed->now);
}

core::Result<catalog::Store> open_catalog(const CatalogPlace& place)
{
    if (!place.demo)
        return catalog::Store::open(place.path, catalog::Store::Mode::ReadOnly);
    const auto sheet = catalog::read_sheet_file(place.path.string());
    if (!sheet.faults.empty()) {
        const core::Error& first = sheet.faults.kept().front();
        return core::refuse(first.kind, first.detail, first.place);
    }
    catalog::Store store(":memory:");
    store.put(sheet.products);
    return store;
}

std::string catalog_trouble(const CatalogPlace& place, const core::Error& error, const ui::Language& language)
{
    if (place.demo || error.kind != core::Error::Kind::NoSuchFile)
        return ui::sentence(error, language);
    const std::string path = place.path.string();
    return path + ": " + language.fill(ui::TextId::error_catalog_missing, {{"source", path}}) + ".";
}

CatalogRefused::CatalogRefused(CatalogPlace where, core::Error why)
    : std::runtime_error(where.path.string() + ": " + why.detail), place(std::move(where)), error(std::move(why))
{
}

StationCatalog::StationCatalog(std::string given, std::filesystem::path data, Environment environment)
    : given_(std::move(given)), data_(std::move(data)), environment_(std::move(environment)),
      place_(catalog_place(given_, data_, environment_)), store_(open_or_throw(place_, environment_)),
      bundle_(bundle_at(place_, environment_))
{
}

/// Where the catalog should lie by now. Without the user's own file that would be the demo, also after real products.
CatalogPlace StationCatalog::place_now() const
{
    const CatalogPlace now = catalog_place(given_, data_, environment_);
    return now.demo ? place_ : now;
}

/// Says once that the file is gone.
StationCatalog::News StationCatalog::say_gone(const CatalogPlace& place)
{
    if (std::exchange(gone_, true))
        return News::None;
    refused_ = {};
    const std::string path = place.path.string();
    if (tell_)
        tell_(place, {core::Error::Kind::NoSuchFile, path, {path, 0, {}, {}, {}}});
    return News::Broken;
}

StationCatalog::News StationCatalog::look_again()
{
    const CatalogPlace now = place_now();
    std::error_code unknown;
    if (!now.demo && std::filesystem::status(now.path, unknown).type() == std::filesystem::file_type::not_found)
        return say_gone(now);
    const bool back = std::exchange(gone_, false);
    if (!back && now.path == place_.path && !store_.changed_on_disk())
        return News::None;
    std::error_code missing;
    const auto written = std::filesystem::last_write_time(now.path, missing);
    if (missing || written == refused_)
        return News::None;
    auto store = open_catalog(now);
    if (!store) {
        refused_ = written;
        if (tell_)
            tell_(now, store.error());
        return News::Broken;
    }
    if (leave_)
        leave_();
    store_ = std::move(*store);
    place_ = now;
    bundle_ = bundle_at(now, environment_);
    return News::Another;
}

StationCatalog station_catalog(const std::string& given, const std::filesystem::path& data,
                               const ui::Language& language)
{
    try {
        return StationCatalog(given, data);
    } catch (const CatalogRefused& refused) {
        throw std::runtime_error(catalog_trouble(refused.place, refused.error, language));
    }
}

} // namespace kiosk
