#include "kiosk/command/load.h"

#include "catalog/load/load.h"
#include "kiosk/command/arguments.h"
#include "ui/words/error_words.h"

#include <ostream>

namespace kiosk {
namespace {

/// "1 product", "3 products".
std::string counted(std::size_t count, const std::string& one)
{
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

void tell(const catalog::Faults& faults, std::ostream& err)
{
    for (const auto& error : faults.kept())
        err << ui::sentence(error) << '\n';
    if (const auto more = faults.count() - faults.kept().size(); more > 0)
        err << "... and " << counted(more, "more fault") << ".\n";
}

int tell_refused(const catalog::LoadReport& report, const LoadArguments& asked, std::ostream& err)
{
    err << "Nothing was loaded: " << counted(report.faults.count(), "fault") << ". " << asked.into
        << " is as it was. Put the sheet right and load it again";
    if (asked.keep_good_rows)
        err << "; no row was good";
    err << ".\n";
    return 2;
}

int tell_loaded(const catalog::LoadReport& report, const LoadArguments& asked, std::ostream& out)
{
    out << counted(report.taken, "product") << " loaded into " << asked.into;
    if (report.replaced > 0)
        out << ", " << report.replaced << " in place of an older entry";
    if (report.refused_rows > 0)
        out << "; " << counted(report.refused_rows, "row") << " not taken";
    out << ".\n";
    return report.faults.empty() ? 0 : 1;
}

} // namespace

int load(const LoadArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto report = catalog::load(asked.sources, asked.into, {asked.keep_good_rows});
    if (!report) {
        err << ui::sentence(report.error()) << "\nNothing was loaded.\n";
        return 2;
    }
    tell(report->faults, err);
    return report->taken == 0 ? tell_refused(*report, asked, err) : tell_loaded(*report, asked, out);
}

} // namespace kiosk
