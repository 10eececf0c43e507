// Invented products for the tests of the catalog.
#pragma once

#include "core/product.h"

#include <cstdint>
#include <string>
#include <vector>

namespace test {

/// A product number of the example prefix 952; `number` tells them apart (at most nine digits).
[[nodiscard]] core::Gtin gtin(std::uint64_t number);

/// A product with a short, sound label.
[[nodiscard]] core::Product product(std::uint64_t number, const std::string& name = "Oat rounds");

/// One product with every part of a label filled in.
[[nodiscard]] core::Product full_product();

/// `count` products whose numbers begin at `first`.
[[nodiscard]] std::vector<core::Product> products(std::size_t count, std::uint64_t first = 1);

/// A sheet with `rows` good rows whose numbers begin at `first`.
[[nodiscard]] std::string good_sheet(std::size_t rows, std::uint64_t first = 1);

} // namespace test
