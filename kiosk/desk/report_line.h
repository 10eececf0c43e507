// A report line by line: what the leader desk shows on its pages and a command prints.
#pragma once

#include "ui/desk.h"

#include <iosfwd>
#include <vector>

namespace kiosk {

/// One line of a report; a sample stands under its line.
using ReportLine = ui::DeskLine;

/// Prints a report: counts indented under their heading, and samples under their count.
void print(const std::vector<ReportLine>& lines, std::ostream& out);

} // namespace kiosk
