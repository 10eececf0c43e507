#include "kiosk/files/catalog_place.h"

#include "catalog/read/sheet.h"
#include "ui/words/error_words.h"

#include <stdexcept>
#include <system_error>

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

catalog::Store open_or_throw(const CatalogPlace& place)
{
    auto store = open_catalog(place);
    if (!store)
        throw std::runtime_error(catalog_trouble(place, store.error()));
    return std::move(*store);
}

} // namespace

CatalogPlace catalog_place(const std::string& given, const std::filesystem::path& data, const Environment& environment)
{
    if (!given.empty())
        return {given, false};
    if (const auto named = environment("PAIRSTAND_CATALOG"))
        return {*named, false};
    const auto own = user_data(environment);
    if (!own.empty() && std::filesystem::exists(own / "pairstand" / "catalog.db"))
        return {own / "pairstand" / "catalog.db", false};
    return {data / "demo" / "cedar_hollow.csv", true};
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

std::string catalog_trouble(const CatalogPlace& place, const core::Error& error)
{
    const std::string words = "the catalog cannot be used: " + ui::sentence(error);
    if (place.demo)
        return words;
    return words.substr(0, words.size() - 1) + "; 'pairstand load SHEET --into " + place.path.string() + "' makes one.";
}

StationCatalog::StationCatalog(std::string given, std::filesystem::path data, Environment environment)
    : given_(std::move(given)), data_(std::move(data)), environment_(std::move(environment)),
      place_(catalog_place(given_, data_, environment_)), store_(open_or_throw(place_))
{
}

StationCatalog::News StationCatalog::look_again()
{
    const CatalogPlace now = catalog_place(given_, data_, environment_);
    if (now.path == place_.path && !store_.changed_on_disk())
        return News::None;
    std::error_code missing;
    const auto written = std::filesystem::last_write_time(now.path, missing);
    if (missing || written == refused_)
        return News::None;
    auto store = open_catalog(now);
    if (!store) {
        refused_ = written;
        return News::Broken;
    }
    store_ = std::move(*store);
    place_ = now;
    return News::Another;
}

} // namespace kiosk
