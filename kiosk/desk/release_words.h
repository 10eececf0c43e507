// What came of loading a release, and how far a load is, in words: for the leader desk and for `pairstand load`.
#pragma once

#include "catalog/load/load_release.h"
#include "kiosk/clock.h"
#include "kiosk/desk/report_line.h"
#include "ui/words/language.h"

#include <cstdint>
#include <string>
#include <vector>

namespace kiosk {

/// The whole report, without what did not happen.
[[nodiscard]] std::vector<ReportLine> release_words(const catalog::ReleaseLoaded& loaded, const std::string& catalog,
                                                    const ui::Language& language);

/// "Reading the amounts: 42 %, about 20 seconds left": the time from what the first part took. No time is told in the
/// first three seconds, which tell nothing.
[[nodiscard]] std::string progress_words(const catalog::LoadProgress& progress, Milliseconds since_start,
                                         const ui::Language& language);

/// The same for any work, told by what it is: "Reading the bundle: 42 %".
[[nodiscard]] std::string progress_words(const std::string& what, std::uint64_t done, std::uint64_t whole,
                                         Milliseconds since_start, const ui::Language& language);

} // namespace kiosk
