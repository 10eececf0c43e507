// pairstand load FOLDER --into CATALOG: a published release into a catalog.
#pragma once

#include "kiosk/command/arguments.h"
#include "ui/words/language.h"

#include <iosfwd>
#include <string>

namespace kiosk {

/// Loads one release and prints the report. Exit status: 0 something was taken, 2 nothing was.
[[nodiscard]] int load_release(const std::string& source, const LoadArguments& asked, const ui::Language& language,
                               std::ostream& out, std::ostream& err);

} // namespace kiosk
