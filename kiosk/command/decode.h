// pairstand decode: which product code is in each picture file.
#pragma once

#include <iosfwd>
#include <span>
#include <string>

namespace kiosk {

/// Writes one line a file in the order given: name, symbology (EAN-13, UPC-A, UPC-E, EAN-8, ITF-14), GTIN-14, with tabs
/// between; unread is name, "-", "-". Tabs, line ends, other control characters and backslashes in a name are written
/// as in C (\t, \n, \x1b, \\), so that a line is always a line. Returns 0 when all were read, 1 when one was not, 2
/// when a file could not be opened as a picture: then one sentence on `err` for each such file, and the others are done
/// all the same.
[[nodiscard]] int decode(std::span<const std::string> files, std::ostream& out, std::ostream& err);

} // namespace kiosk
