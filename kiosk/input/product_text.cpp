#include "kiosk/input/product_text.h"

#include "core/code/element_string.h"
#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/input/aim.h"

namespace kiosk {

Scan scan_of(const std::string& text, TimePoint when)
{
    const auto identified = identify(text).value_or(Identified{text, core::Symbology::Unknown});
    return {identified.text, identified.symbology, Scan::From::Scanner, when};
}

bool holds_number(const Scan& scan)
{
    return core::Gtin::parse(scan.text) || core::expand_upc_e(scan.text) || core::gtin_within(scan.text);
}

} // namespace kiosk
