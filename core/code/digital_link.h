// The product's number in a web address that names it (a GS1 Digital Link, as QR codes carry it). No link is followed.
// Source: GS1 Digital Link Standard, URI syntax; read here are versions 1.0 to 1.6, uncompressed.
#pragma once

#include "core/code/gtin.h"

#include <string_view>

namespace core {

/// Whether the text begins like a web address: "http://" or "https://", in capitals too.
[[nodiscard]] bool is_web_address(std::string_view text);

/// The number behind "/01/": any domain, any path in front, then only "22", "10" and "21" with their values, in this
/// order, or "235" with its. "gtin", "cpv", "lot" and "ser" stand for the digits (versions 1.0 and 1.1), and a number
/// may have lost the zeros in front of its 13 or 12 digits; of 8 digits only right behind the domain, because
/// ".../2021/01/20210113" is the page of a day. What stands behind "?" or "#" is not the number's.
/// Errors: NotAProductCode.
[[nodiscard]] Result<Gtin> read_link(std::string_view uri);

} // namespace core
