// What an audit found, in words: for the leader desk, for `pairstand audit` and under the report of a load.
#pragma once

#include "catalog/load/audit_tally.h"
#include "kiosk/desk/report_line.h"
#include "ui/words/language.h"

#include <string>
#include <vector>

namespace kiosk {

/// The sentence of one sample.
[[nodiscard]] std::string sample_sentence(const catalog::DoubtSample& sample, const ui::Language& language);

/// The whole audit: how many labels, how many of them are doubted, and rule by rule with its samples. A rule is a
/// heading; a sample names its label.
[[nodiscard]] std::vector<ReportLine> audit_words(const catalog::AuditTally& tally, const ui::Language& language);

} // namespace kiosk
