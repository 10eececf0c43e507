// The command line: which command, with which options. Parsing only; nothing is opened, drawn or loaded here.
#pragma once

#include "core/error.h"
#include "kiosk/app.h"
#include "kiosk/command/audit_arguments.h"
#include "kiosk/command/bundle_arguments.h"
#include "kiosk/command/compare.h"
#include "kiosk/command/export_arguments.h"
#include "kiosk/command/render.h"

#include <span>
#include <string>
#include <variant>
#include <vector>

namespace kiosk {

/// pairstand load SOURCE... --into CATALOG.
struct LoadArguments {
    std::vector<std::string> sources;
    std::string into; ///< empty: the catalog in the user's data folder
    bool keep_good_rows = false;
    std::vector<std::string> categories = {}; ///< of a release: only these, as it names them
    std::vector<std::string> words = {};      ///< of a release: only products with all of these in their name
    std::string market = {};                  ///< of a release: only those sold there
    std::string numbers = {};                 ///< of a release: a file with the numbers that are wanted, one a line
    std::string language = "en";
    bool operator==(const LoadArguments&) const = default;
};

/// pairstand decode IMAGE...
struct DecodeArguments {
    std::vector<std::string> images;
    bool operator==(const DecodeArguments&) const = default;
};

/// Something to print and be done: --help, --version.
struct Printed {
    std::string text;
};

/// Arguments that make no sense: one sentence that says which and what to do.
struct Misused {
    std::string sentence;
};

using Command =
    std::variant<StationArguments, LoadArguments, CompareArguments, DecodeArguments, RenderArguments, KeysArguments,
                 SealArguments, InstallArguments, ExportArguments, AuditArguments, Printed, Misused>;

/// Reads the arguments, without the program's name. `languages` are the codes that help names: "en, es";
/// `screens` the names of screens to draw, in the same way.
/// An option before a command counts for the command.
[[nodiscard]] Command read_arguments(std::vector<std::string> arguments, const std::string& languages = "",
                                     const std::string& screens = "");

} // namespace kiosk
