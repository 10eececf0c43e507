#include "kiosk/desk/report_line.h"

#include <ostream>

namespace kiosk {

void print(const std::vector<ReportLine>& lines, std::ostream& out)
{
    for (const auto& line : lines) {
        const bool count = line.kind == ReportLine::Kind::Count;
        const bool sample = line.kind == ReportLine::Kind::Sample;
        out << (count ? "  " : sample ? "    " : "") << line.words << '\n';
    }
}

} // namespace kiosk
