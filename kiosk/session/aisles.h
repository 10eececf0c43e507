// The catalog as lists for fingers: its aisles, and the products of one.
#pragma once

#include "catalog/store/store.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <string>
#include <vector>

namespace kiosk {

/// One aisle of the catalog.
struct Aisle {
    std::string name;         ///< as in the catalog; may be empty
    std::size_t products = 0; ///< how many stand in it
};

/// The aisles in the catalog's order; of a very long catalog only those of its first 5,000 products, which is more than
/// anyone turns pages for. Throws std::runtime_error when the catalog is broken.
[[nodiscard]] std::vector<Aisle> aisles_of(const catalog::Store& store);

/// Whether anyone would leaf through it: it has several aisles, and few enough products that all are in them.
[[nodiscard]] bool is_for_leafing(const catalog::Store& store);

/// The same in words.
[[nodiscard]] std::vector<ui::PickAisle> aisle_words(const std::vector<Aisle>& aisles, const ui::Language& language);

/// The products of one aisle, in the catalog's order. Throws std::runtime_error when the catalog is broken.
[[nodiscard]] std::vector<ui::PickEntry> products_in(const catalog::Store& store, const std::string& aisle);

} // namespace kiosk
