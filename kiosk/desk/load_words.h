// What came of loading sheets, in words: for the leader desk and for `pairstand load`.
#pragma once

#include "catalog/load/load.h"
#include "ui/words/language.h"

#include <string>
#include <vector>

namespace kiosk {

/// Which sheet of each workbook was read, and which other may have been meant.
[[nodiscard]] std::vector<std::string> tab_words(const catalog::LoadReport& report, const ui::Language& language);

/// Every fault that was kept, at most `most` of them, a sentence each, and how many more there were.
[[nodiscard]] std::vector<std::string> fault_words(const catalog::Faults& faults, const ui::Language& language,
                                                   std::size_t most = catalog::Faults::most_kept);

/// What was loaded into which catalog, or that nothing was; `keep_good_rows` is what was asked for, and
/// `there` whether the catalog exists.
[[nodiscard]] std::string loaded_words(const catalog::LoadReport& report, bool keep_good_rows,
                                       const std::string& catalog, bool there, const ui::Language& language);

/// Of entries that were replaced and said something else: how many, and the first ones with both.
[[nodiscard]] std::vector<std::string> replaced_words(const catalog::LoadReport& report, const ui::Language& language);

} // namespace kiosk
