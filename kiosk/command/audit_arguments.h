// The arguments of pairstand audit.
#pragma once

#include <string>

namespace CLI {
class App;
} // namespace CLI

namespace kiosk {

/// pairstand audit CATALOG|SHEET [--approve CODE --rule NAME].
struct AuditArguments {
    std::string source; ///< a catalog or a sheet
    bool json = false;
    int samples = 5;          ///< of each rule
    std::string approve = {}; ///< digits of a product; empty: look through all
    std::string rule = {};    ///< that is approved
    std::string language = "en";
    bool operator==(const AuditArguments&) const = default;
};

/// What the command takes. `languages` are the codes that help names.
void add_audit(CLI::App& command, AuditArguments& audit, const std::string& languages);

} // namespace kiosk
