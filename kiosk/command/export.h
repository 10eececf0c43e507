// pairstand export: a catalog as sheets that load again, or an empty sheet to fill in.
#pragma once

#include <iosfwd>

namespace kiosk {

struct ExportArguments; // kiosk/command/export_arguments.h

/// Writes the sheets and tells which on `out`. Exit status: 0 done; 1 done, but for products that no sheet can say,
/// each named on `err`; 2 not done, with one sentence on `err`.
[[nodiscard]] int export_sheets(const ExportArguments& asked, std::ostream& out, std::ostream& err);

} // namespace kiosk
