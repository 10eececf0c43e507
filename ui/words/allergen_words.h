// The major allergens that a label names, in words. It tells what stands there and where, never that something does
// not: a list may be old, and a word may be unknown here. Source: FD&C Act 403(w), 21 U.S.C. 343(w); FASTER Act of
// 2021, Public Law 117-11 (sesame).
#pragma once

#include "core/label/allergens.h"
#include "core/product.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <string>
#include <vector>

namespace ui {

/// "tree nuts", in a sentence.
[[nodiscard]] const std::string& allergen_name(core::Allergen allergen, const Language& language);

/// What the statement says, what the ingredients name, what is in doubt, and notes such as "may contain", a sentence
/// each. Never empty: what is not recorded is said to be so. The caution with the date is `label_caution`.
[[nodiscard]] std::vector<std::string> allergen_sentences(const core::Product& product,
                                                          const core::IngredientList& list, const Language& language);

/// Everything of one label behind its figures: ingredients, first grain, sugars, allergens with the caution and the
/// date of the entry.
[[nodiscard]] std::vector<Section> package_sections(const core::Product& product, const Language& language);

/// The same for a pair, short: the caution with both dates, and a section a side without the printed list.
[[nodiscard]] std::vector<Section> pair_package_sections(const core::Product& left, const core::Product& right,
                                                         const Language& language);

} // namespace ui
