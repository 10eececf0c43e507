// Two entries of one product that differ, in words: under the report of a load.
#pragma once

#include "catalog/load/merge.h"
#include "ui/words/language.h"

#include <string>

namespace kiosk {

/// Which entry stands now.
enum class Standing {
    Loaded, ///< a sheet's, in place of the one before
    Own,    ///< the leader's own, over the release's
};

/// "09521234543213 Oat rounds: Sodium 190 mg, before 160 mg": at most three things, what stands now first.
[[nodiscard]] std::string difference_words(const catalog::EntryDifference& difference, Standing standing,
                                           const ui::Language& language);

} // namespace kiosk
