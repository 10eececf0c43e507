// What the ingredient list of a label tells, in words: the first grain, the sugars by all their names, and the oil that
// makes a printed 0 g of trans fat less sure. Sources: 21 CFR 101.4 (order by weight; the name of the oil),
// 101.9(c)(2)(ii) and (c)(6)(iii).
#pragma once

#include "core/label/ingredients.h"
#include "core/product.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// "“sugar”, “honey”": words as printed, each in quotation marks.
[[nodiscard]] std::string quoted_words(const std::vector<std::string>& printed);

/// The printed list under its heading, and how such a list is read; or that it is not recorded.
[[nodiscard]] Section ingredients_section(const core::Label& label, const core::IngredientList& list,
                                          const Language& language);

/// Whether the first grain is whole, with the words that decided it and who published that they do.
[[nodiscard]] std::string first_grain_sentence(const core::IngredientList& list, const Language& language);

/// The sugars by name, concentrated juice told apart. A list that names none may hold sugars of fruit and milk: it says
/// so.
[[nodiscard]] std::vector<std::string> sugar_sentences(const core::IngredientList& list, const Language& language);

/// Who says that the named ones are sugars; nothing where none is named.
[[nodiscard]] std::optional<std::string> sugar_sources_sentence(const core::IngredientList& list,
                                                                const Language& language);

/// Beside a printed 0 g of trans fat: that the ingredients name partially hydrogenated oil, and what 0 g can be.
/// Nothing where the label prints another figure, or names no such oil.
[[nodiscard]] std::optional<std::string> trans_fat_remark(const core::Label& label, const Language& language);

/// For *why* of trans fat: the rules of a printed 0 g and of the name of the oil.
[[nodiscard]] std::string trans_fat_rules(const Language& language);

/// For *why* of trans fat: what the ingredients of this label say of such an oil, or that they are not recorded.
[[nodiscard]] std::string trans_fat_of_label(const core::Label& label, const Language& language);

} // namespace ui
