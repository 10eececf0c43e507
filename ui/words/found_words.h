// What a search by name says of its answers: how to tell one product from another, and how many there are.
#pragma once

#include "core/product.h"
#include "ui/words/language.h"

#include <cstddef>
#include <string>
#include <vector>

namespace ui {

/// Below a product's name: its brand and how much is in the package, "Millbrook · 12 oz (340 g)"; where the label does
/// not say, its serving. A label of this place only says so first, on a line of its own. May be empty.
[[nodiscard]] std::string found_detail(const core::Product& product, const Language& language);

/// How far a search has come.
struct SearchCount {
    std::size_t products = 0; ///< that match, as far as is known
    bool all = false;         ///< no more will be found
    std::size_t most_shown = 0;
    std::vector<std::string> left_out{}; ///< typed words that no product has
};

/// How many products there are, or why there is none and what to do: "12 products", "The first 60 of 3,214 products".
/// Where words were left out to find them, a line before says which.
[[nodiscard]] std::string found_words(const SearchCount& count, const Language& language);

} // namespace ui
