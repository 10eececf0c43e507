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
        // Another store's number must not find this store's food: numbers that name no product are not looked up.
        const auto code_class = core::class_of(candidate.gtin, candidate.printed_digits);
        const bool own_number = code_class == core::CodeClass::RestrictedRegion ||
                                code_class == core::CodeClass::RestrictedCompany ||
                                code_class == core::CodeClass::Coupon || code_class == core::CodeClass::Refund;
        if (!own_number)
            if (auto product = lookup(candidate.gtin)) {
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
