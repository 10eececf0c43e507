// pairstand keys, seal, install: bundles made by a leader and put on stations.
#pragma once

#include <iosfwd>
#include <string>

namespace kiosk {

struct KeysArguments; // kiosk/command/bundle_arguments.h
struct SealArguments;
struct InstallArguments;

/// Makes, tells or forgets a key. Exit status: 0 done, 2 not, with one sentence on `err`.
[[nodiscard]] int keys(const KeysArguments& asked, std::ostream& out, std::ostream& err);

/// Seals a bundle. `today` are the words of its date. Exit status: 0 sealed, 2 not, with one sentence on `err`.
[[nodiscard]] int seal(const SealArguments& asked, const std::string& today, std::ostream& out, std::ostream& err);

/// Installs a bundle, or goes back to the one before. Exit status: 0 in place, 2 not, with one sentence on `err`; what
/// was in place then still is.
[[nodiscard]] int install(const InstallArguments& asked, std::ostream& out, std::ostream& err);

} // namespace kiosk
