#include "kiosk/session/scanning.h"

#include "core/code/upc_e.h"

namespace kiosk {
namespace {

void add(std::vector<Candidate>& all, std::string_view digits)
{
    if (const auto gtin = core::Gtin::parse(digits))
        all.push_back({*gtin, digits.size()});
}

bool shows_digits_only(std::string_view text)
{
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// The label that this place gave to a number of its own, or to all packages of an item with their price or weight in
/// their numbers. Another store's number must not find this store's food: nothing else is found under such a number.
std::optional<core::Product> own_label(const core::Gtin& gtin, const Lookup& lookup)
{
    auto product = lookup(gtin);
    if (!product)
        if (const auto item = core::without_measure(gtin))
            product = lookup(*item);
    return product && product->this_place_only ? product : std::nullopt;
}

std::optional<core::Product> label_of(const core::Gtin& gtin, core::CodeClass code_class, const Lookup& lookup)
{
    if (code_class == core::CodeClass::Coupon || code_class == core::CodeClass::Refund)
        return std::nullopt;
    return core::is_stores_own(code_class) ? own_label(gtin, lookup) : lookup(gtin);
}

} // namespace

std::vector<Candidate> candidates(const Scan& scan)
{
    std::vector<Candidate> all;
    const bool may_be_upc_e = scan.symbology == core::Symbology::UpcE || scan.symbology == core::Symbology::Unknown;
    if (scan.symbology != core::Symbology::UpcE || scan.text.size() != 8)
        add(all, scan.text);
    if (may_be_upc_e && scan.text.size() == 8)
        if (const auto twelve = core::expand_upc_e(scan.text))
            add(all, *twelve);
    return all;
}

Scanned look_up(const Scan& scan, const Lookup& lookup)
{
    constexpr std::size_t enough_to_show = 20;
    Scanned scanned;
    scanned.code = shows_digits_only(scan.text) ? scan.text.substr(0, enough_to_show) : "";
    for (const auto& candidate : candidates(scan)) {
        const auto code_class = core::class_of(candidate.gtin, candidate.printed_digits);
        if (auto product = label_of(candidate.gtin, code_class, lookup)) {
            scanned.products.push_back(std::move(*product));
            continue;
        }
        if (core::is_case(candidate.gtin)) {
            scanned.answer = Scanned::Answer::Case;
        } else if (core::names_one_product(code_class)) {
            scanned.answer = Scanned::Answer::Unknown;
        } else if (scanned.answer == Scanned::Answer::Unreadable) {
            scanned.answer = Scanned::Answer::NoProduct;
            scanned.code_class = code_class;
        }
    }
    if (!scanned.products.empty())
        scanned.answer = Scanned::Answer::Found;
    return scanned;
}

} // namespace kiosk
