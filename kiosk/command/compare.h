// pairstand compare CODE CODE: two products side by side as text or JSON, without a display.
#pragma once

#include "core/compare/basis.h"
#include "core/figure/money.h"
#include "core/rules/rule_sets.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// What was asked for.
struct CompareArguments {
    std::string left; ///< digits as scanned or printed
    std::string right;
    std::optional<core::Basis> basis; ///< nothing: all that can be had
    core::MyAmount amount;            ///< for Basis::MyAmount
    bool json = false;
    std::string catalog;  ///< a path; empty: as for every command (kiosk/files/catalog.h)
    std::string language; ///< "en", "es"; empty: English
    std::string settings; ///< a path; empty: as for every command (kiosk/desk/settings_file.h)
    std::optional<core::Money> left_price = std::nullopt; ///< of the shelf; nothing: not asked for
    std::optional<core::Money> right_price = std::nullopt;
    std::optional<std::vector<core::RuleSet>> rules = std::nullopt; ///< nothing: those of the settings
    bool operator==(const CompareArguments&) const = default;
};

/// Prints the comparison. Exit status: 0 done, 2 an unknown code, a catalog that cannot be opened, the same product
/// twice, a line of settings that cannot be taken, or an unknown language: one sentence on `err`.
int compare(const CompareArguments& asked, std::ostream& out, std::ostream& err);

} // namespace kiosk
