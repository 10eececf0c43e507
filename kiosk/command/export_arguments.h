// The arguments of pairstand export.
#pragma once

#include <string>

namespace CLI {
class App;
} // namespace CLI

namespace kiosk {

/// pairstand export [CATALOG] --out SHEET, or --template --out SHEET.
struct ExportArguments {
    std::string catalog; ///< empty: as everywhere
    std::string out;
    bool typed_here = false;
    bool blank = false; ///< a template in place of a catalog
    std::string language = "en";
    bool operator==(const ExportArguments&) const = default;
};

/// What the command takes. `languages` are the codes that help names.
void add_export(CLI::App& command, ExportArguments& asked, const std::string& languages);

} // namespace kiosk
