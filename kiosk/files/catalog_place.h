// Which catalog a command or the station works with, and how it is opened and followed.
#pragma once

#include "catalog/bundle/manifest.h"
#include "catalog/store/store.h"
#include "core/error.h"
#include "kiosk/files/data_folder.h"
#include "ui/words/language.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>

namespace kiosk {

/// Where the products come from.
struct CatalogPlace {
    std::filesystem::path path; ///< a catalog, or for the demo its sheet
    bool demo = false;
};

/// The station's own folder, "pairstand" in the user's data folder ($XDG_DATA_HOME, usually ~/.local/share); empty when
/// the user has none.
[[nodiscard]] std::filesystem::path own_data(const Environment& environment = process_environment);

/// `given` (of --catalog) when it is not empty, else $PAIRSTAND_CATALOG, else in the station's own folder the catalog
/// of the bundle that is in place, else catalog.db there if a label is in it, else the demo sheet in `data`. Where the
/// record of bundles is damaged the place is that record, which is no catalog: real products are never exchanged for
/// the demo.
[[nodiscard]] CatalogPlace catalog_place(const std::string& given, const std::filesystem::path& data,
                                         const Environment& environment = process_environment);

/// What the bundle says about itself whose catalog lies at `place`; nothing when none does.
[[nodiscard]] std::optional<catalog::Manifest> bundle_at(const CatalogPlace& place,
                                                         const Environment& environment = process_environment);

/// The bundle that a station shows although this catalog, its own, is there; nothing when it shows this one.
[[nodiscard]] std::optional<catalog::Manifest> bundle_before(const std::filesystem::path& catalog);

/// Opens it for reading; the demo sheet is read into memory. Errors: those of catalog::Store::open, and BadValue for a
/// demo sheet with a fault, with the first fault's place.
[[nodiscard]] core::Result<catalog::Store> open_catalog(const CatalogPlace& place);

/// One sentence of why a catalog cannot be used and what to do.
[[nodiscard]] std::string catalog_trouble(const CatalogPlace& place, const core::Error& error,
                                          const ui::Language& language);

/// Thrown for a catalog that cannot be opened; catalog_trouble says it in a language.
struct CatalogRefused : std::runtime_error {
    CatalogRefused(CatalogPlace where, core::Error why);
    CatalogPlace place;
    core::Error error;
};

/// The catalog of a running station: noticed when another file lies at its place, and opened anew. One that is gone
/// goes on being served from what is open: real work is never exchanged for the demo. A bundle that cannot be opened at
/// the start gives way to the one before it, and look_again then tells of it.
class StationCatalog {
public:
    /// What looking after the place brought.
    enum class News {
        None,
        Another, ///< another catalog is open now; whoever held store() must ask for it again
        Broken,  ///< another file is there but no good, or none any more: the old products go on being served
    };

    /// `given` as for catalog_place. Throws CatalogRefused when it cannot be opened.
    StationCatalog(std::string given, std::filesystem::path data, Environment environment = process_environment);

    [[nodiscard]] catalog::Store& store() { return store_; }
    [[nodiscard]] const CatalogPlace& place() const { return place_; }
    /// What the bundle that is open says about itself; nothing for any other catalog.
    [[nodiscard]] const std::optional<catalog::Manifest>& bundle() const { return bundle_; }

    /// Whom to tell of what News::Broken stands for, with what catalog_trouble needs; nobody by default.
    void on_trouble(std::function<void(const CatalogPlace&, const core::Error&)> tell) { tell_ = std::move(tell); }

    /// What must happen before the store that is open is closed for another one; nothing by default.
    void on_leaving(std::function<void()> leave) { leave_ = std::move(leave); }

    /// Looks whether another catalog is there by now. Cheap: for every scan and every now and then.
    [[nodiscard]] News look_again();

private:
    CatalogPlace place_now() const;
    News say_gone(const CatalogPlace& place);

    std::string given_;
    std::filesystem::path data_;
    Environment environment_;
    CatalogPlace place_;
    catalog::Store store_;
    std::optional<catalog::Manifest> bundle_;
    std::function<void(const CatalogPlace&, const core::Error&)> tell_;
    std::function<void()> leave_;
    std::filesystem::file_time_type refused_{}; ///< of a file already said to be broken
    bool gone_ = false;                         ///< the file is not there, and that was said
};

/// A StationCatalog, or a std::runtime_error with one sentence in this language.
[[nodiscard]] StationCatalog station_catalog(const std::string& given, const std::filesystem::path& data,
                                             const ui::Language& language);

} // namespace kiosk
