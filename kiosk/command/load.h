// pairstand load: sheets into a catalog, all or nothing, with a sentence for every fault.
#pragma once

#include <iosfwd>

namespace kiosk {

struct LoadArguments; // kiosk/command/arguments.h

/// Loads the sheets. Every fault is one sentence on `err`, in the order of the sheets; what came of it is one sentence
/// on `out`, or on `err` when nothing was loaded. Exit status: 0 all loaded, 1 the good rows loaded although others
/// have a fault, 2 nothing loaded and the catalog as it was.
[[nodiscard]] int load(const LoadArguments& asked, std::ostream& out, std::ostream& err);

} // namespace kiosk
