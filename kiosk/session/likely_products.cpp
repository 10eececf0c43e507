#include "kiosk/session/likely_products.h"

#include <algorithm>
#include <utility>

namespace kiosk {
namespace {

Scan scan_of(const Reading& reading, TimePoint when)
{
    return {reading.text, reading.symbology, Scan::From::Camera, when};
}

} // namespace

std::vector<core::Gtin> numbers_of(const Likely& likely)
{
    std::vector<core::Gtin> numbers;
    for (const Reading& reading : likely.codes)
        for (const auto& candidate : candidates(scan_of(reading, likely.when)))
            numbers.push_back(candidate.gtin);
    return numbers;
}

std::vector<core::Product> products_of(const Likely& likely, const Lookup& lookup)
{
    std::vector<core::Product> products;
    for (const Reading& reading : likely.codes)
        for (auto& product : look_up(scan_of(reading, likely.when), lookup).products)
            if (std::ranges::find(products, product.gtin, &core::Product::gtin) == products.end())
                products.push_back(std::move(product));
    return products;
}

} // namespace kiosk
