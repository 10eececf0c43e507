// Labels and products for tests, written as a package prints them.
#pragma once

#include "core/product.h"

#include <string>
#include <vector>

namespace test {

/// One printed line: {Nutrient::Sodium, "430", "19%"}; an empty text is not printed.
struct Printed {
    core::Nutrient nutrient;
    std::string amount;
    std::string percent = "";
};

/// A column with these lines. Throws when a text is none that a label prints.
[[nodiscard]] core::Column make_column(const std::vector<Printed>& lines);

/// A label of 2016 for adults: make_label("30 g", "about 9", {...}). An empty text is not printed.
[[nodiscard]] core::Label make_label(const std::string& size, const std::string& servings,
                                     const std::vector<Printed>& lines);

/// An invented product; `digits` is a product number without its check digit.
[[nodiscard]] core::Product make_product(const std::string& digits, const std::string& name, core::Label label = {});

} // namespace test
