#include "kiosk/command/load.h"

#include "catalog/load/load.h"
#include "catalog/read/release_files.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/load_release.h"
#include "kiosk/desk/load_words.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <filesystem>
#include <ostream>
#include <system_error>

namespace kiosk {
namespace {

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
    const auto languages = read_language_files(data_folder());
    const auto& language = language_named(asked.language, languages);
    for (const auto& source : asked.sources)
        if (catalog::is_release(source)) {
            if (asked.sources.size() == 1)
                return tell_bundle(load_release(source, asked, language, out, err), asked, language, out);
            err << "pairstand load: " << source
                << " is a release: load it by itself, and your sheets before or after.\n";
            return 2;
        }
    const auto report = catalog::load(asked.sources, asked.into, {asked.keep_good_rows, false, {}});
    if (!report) {
        err << "pairstand load: nothing was loaded. " << ui::sentence(report.error(), language) << '\n';
        return 2;
    }
    for (const auto& tab : tab_words(*report, language))
        out << tab << '\n';
    for (const auto& fault : fault_words(report->faults, language))
        err << fault << '\n';
    std::error_code unknown;
    const bool there = std::filesystem::exists(asked.into, unknown);
    const bool loaded = report->taken > 0;
    (loaded ? out : err) << loaded_words(*report, asked.keep_good_rows, asked.into, there, language) << '\n';
    for (const auto& words : replaced_words(*report, language))
        out << words << '\n';
    const int status = !loaded ? 2 : report->faults.empty() ? 0 : 1;
    return tell_bundle(status, asked, language, out);
}

} // namespace kiosk
