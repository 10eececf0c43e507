// A session with a small invented catalog in memory, and short words for what people do.
#pragma once

#include "kiosk/session/session.h"

#include <span>
#include <string>

namespace test {

/// The languages of the checkout as a station has them: English first, drafts last.
[[nodiscard]] std::span<const ui::Language> station_languages();

/// The numbers of the small catalog, 13 digits or as printed.
namespace shelf {
inline const std::string oats = "9520000000011";
inline const std::string wheat = "9520000000028";
inline const std::string rice = "9520000000035";
inline const std::string cookies_ean8 = "16300255";   ///< as EAN-8 a cocoa bar, as UPC-E a small can of juice
inline const std::string juice_upca = "163002000055"; ///< what 16300255 expands to
inline const std::string nobody = "9520000000998";    ///< a good number that is not in the catalog
} // namespace shelf

/// A store with the products above; `brand` tells two such stores apart.
[[nodiscard]] catalog::Store small_store(const std::string& brand = "Millbrook");

/// One station. Members are in the order that they need one another.
struct Station {
    catalog::Store store = small_store();
    kiosk::Session session{store, station_languages()};

    /// A scanner types these digits.
    void scan(const std::string& digits, core::Symbology symbology = core::Symbology::Unknown);
    /// A finger asks for one thing.
    void ask(const ui::Action& action) { session.apply({action}); }

    [[nodiscard]] const ui::State& state() const { return session.state(); }
    [[nodiscard]] const std::string& notice() const { return session.state().notice.words; }
    /// The product's name on a side; empty for an empty side.
    [[nodiscard]] std::string on(ui::Side side) const;
};

} // namespace test
