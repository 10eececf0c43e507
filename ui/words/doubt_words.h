// What the audit says of a label, in one sentence a doubt, for the leader: the figures, and what to do. Never a verdict
// on the food.
#pragma once

#include "core/audit/doubt.h"
#include "ui/words/language.h"

#include <string>

namespace ui {

/// "Sodium: 1,600 mg does not fit 7%, but 160 mg would. ..."; `code` is the other number of DuplicateName.
[[nodiscard]] std::string doubt_sentence(const core::Doubt& doubt, const Language& language,
                                         const std::string& code = "");

/// "most likely a slip".
[[nodiscard]] const std::string& severity_words(core::Severity severity, const Language& language);

} // namespace ui
