// The demo catalog's files, read once for all tests of it.
#pragma once

#include "catalog/read/sheet.h"
#include "tests/demo/true_food.h"

#include <string>
#include <vector>

namespace test::demo {

/// config/demo/NAME in the checkout.
[[nodiscard]] std::string demo_file(const std::string& name);

/// The bytes of a file; throws std::runtime_error where it cannot be read.
[[nodiscard]] std::string bytes_of(const std::string& path);

/// The true foods.
[[nodiscard]] const std::vector<TrueFood>& true_foods();

/// cedar_hollow.csv as the sheet reader takes it, faults and all.
[[nodiscard]] const catalog::Sheet& cedar_hollow();

/// The product of cedar_hollow.csv with this number, as printed on its package; throws where there is none.
[[nodiscard]] const core::Product& product(const std::string& gtin);

} // namespace test::demo
