// Where a label comes from, in one sentence.
#pragma once

#include "core/product.h"
#include "ui/words/language.h"

#include <string>

namespace ui {

/// "Entered on 2026-03-02 from cereals.csv, row 7."
[[nodiscard]] std::string origin_sentence(const core::Product& product, const Language& language);

} // namespace ui
