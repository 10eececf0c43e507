#include "kiosk/command/load.h"

#include "catalog/load/load.h"
#include "catalog/read/release_files.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/load_release.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <filesystem>
#include <ostream>
#include <system_error>

namespace kiosk {
namespace {

/// "1 product", "3 products".
std::string counted(std::size_t count, const std::string& one)
{
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

void tell(const catalog::Faults& faults, const ui::Language& language, std::ostream& err)
{
    for (const auto& error : faults.kept())
        err << ui::sentence(error, language) << '\n';
    if (const auto more = faults.count() - faults.kept().size(); more > 0)
        err << "... and " << counted(more, "more fault") << ".\n";
}

int tell_refused(const catalog::LoadReport& report, const LoadArguments& asked, std::ostream& err)
{
    std::error_code unknown;
    err << "Nothing was loaded: " << counted(report.faults.count(), "fault");
    if (asked.keep_good_rows)
        err << ", and no row was good";
    if (std::filesystem::exists(asked.into, unknown))
        err << ". " << asked.into << " is as it was";
    else
        err << ". " << asked.into << " was not written";
    err << ". Put what is named above right, and load again.\n";
    return 2;
}

/// Which sheet of a workbook was read, and which other may have been meant.
void tell_tabs(const catalog::LoadReport& report, std::ostream& out)
{
    for (const auto& tab : report.tabs) {
        out << tab.source << ": the sheet \"" << tab.name << "\" was read";
        for (const auto& other : tab.others)
            out << (&other == &tab.others.front() ? "; not read, although it has a column gtin: \"" : ", \"") << other
                << '"';
        out << ".\n";
    }
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

/// Where a bundle is shown in place of the catalog that was loaded, nobody should wait for its labels.
int tell_bundle(int status, const LoadArguments& asked, const ui::Language& language, std::ostream& out)
{
    const auto bundle = status == 2 ? std::nullopt : bundle_before(asked.into);
    if (bundle)
        out << language.fill(ui::TextId::load_behind_bundle, {{"bundle", "“" + bundle->name + "”"}}) << '\n';
    return status;
}

} // namespace

int load(const LoadArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto languages = read_languages(data_folder());
    const auto& language = language_named(asked.language, languages);
    for (const auto& source : asked.sources)
        if (catalog::is_release(source)) {
            if (asked.sources.size() == 1)
                return tell_bundle(load_release(source, asked, language, out, err), asked, language, out);
            err << "pairstand load: " << source
                << " is a release: load it by itself, and your sheets before or after.\n";
            return 2;
        }
    const auto report = catalog::load(asked.sources, asked.into, {asked.keep_good_rows});
    if (!report) {
        err << "pairstand load: nothing was loaded. " << ui::sentence(report.error(), language) << '\n';
        return 2;
    }
    tell_tabs(*report, out);
    tell(report->faults, language, err);
    return report->taken == 0 ? tell_refused(*report, asked, err)
                              : tell_bundle(tell_loaded(*report, asked, out), asked, language, out);
}

} // namespace kiosk
