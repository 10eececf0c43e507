// The products of the demo catalog, as a test of the whole program needs them: what to type and what to see.
#pragma once

#include "kiosk/files/catalog_place.h"

#include <optional>
#include <string>
#include <vector>

namespace test {

/// A product that can be scanned.
struct DemoProduct {
    std::string digits; ///< as a scanner types it: without zeros in front that no package has
    std::string gtin;   ///< 14 digits
    std::string name;
};

/// Products with a name and number of their own, in the catalog's order. Read from the sheet, not from the program.
/// Those whose eight digits stand for two products are left out: there the station asks.
[[nodiscard]] inline std::vector<DemoProduct> demo_products()
{
    kiosk::StationCatalog catalog("", kiosk::data_folder(), [](const std::string&) { return std::nullopt; });
    std::vector<DemoProduct> products;
    for (const auto& listed : catalog.store().products_in_order(1'000)) {
        const std::string& gtin = listed.gtin.digits();
        if (gtin.starts_with("000000"))
            continue;
        products.push_back({gtin.substr(gtin.starts_with("00") ? 2 : 1), gtin, listed.name});
    }
    return products;
}

} // namespace test
