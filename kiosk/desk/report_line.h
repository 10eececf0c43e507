// A report line by line: what the leader desk shows on its pages and a command prints.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace kiosk {

/// One line of a report; a sample stands under its line.
struct ReportLine {
    enum class Kind { Sentence, Heading, Count, Sample };
    Kind kind;
    std::string words;
    bool operator==(const ReportLine&) const = default;
};

/// Prints a report: counts indented under their heading, and samples under their count.
void print(const std::vector<ReportLine>& lines, std::ostream& out);

} // namespace kiosk
