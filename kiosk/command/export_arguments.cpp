#include "kiosk/command/export_arguments.h"

#include <CLI/CLI.hpp>

namespace kiosk {

void add_export(CLI::App& command, ExportArguments& asked, const std::string& languages)
{
    auto* const catalog =
        command.add_option("CATALOG", asked.catalog,
                           "the catalog; else $PAIRSTAND_CATALOG, else the one in your data folder, else the demo");
    command.add_option("--out", asked.out, "the sheet to write (CSV); more than one load takes goes into -2, -3 ...")
        ->required();
    auto* const typed =
        command.add_flag("--typed-here", asked.typed_here, "only what was typed at the station, to be looked through");
    command
        .add_flag("--template", asked.blank, "an empty sheet with the columns, notes on each and a row that shows how")
        ->excludes(catalog)
        ->excludes(typed);
    command
        .add_option("--lang", asked.language, "language of the answer" + (languages.empty() ? "" : ": " + languages))
        ->capture_default_str();
    command.footer("The sheet loads again without loss: docs/sheet.md describes its columns.\n"
                   "Exit status: 0 done; 1 done, and some products cannot be said in a sheet; 2 could not be done.");
}

} // namespace kiosk
