#include "kiosk/session/scanning.h"

#include "core/code/element_string.h"
#include "core/code/upc_e.h"

namespace kiosk {
namespace {

constexpr std::string_view zeros_before_eight = "000000";

/// How many digits the package shows. A GTIN-8 filled up with zeros is known by them: no longer number begins with as
/// many (GS1 General Specifications, 1.4.2: those prefixes are kept free for that). The other lengths are classed
/// alike.
std::size_t printed_digits(const core::Gtin& gtin, std::size_t read)
{
    constexpr std::size_t gtin_13 = 13;
    return read >= gtin_13 && gtin.digits().starts_with(zeros_before_eight) ? 8 : read;
}

void add(std::vector<Candidate>& all, std::string_view digits)
{
    if (const auto gtin = core::Gtin::parse(digits))
        all.push_back({*gtin, printed_digits(*gtin, digits.size())});
}

/// The number as the package shows it under its bars.
std::string printed(const core::Gtin& gtin)
{
    for (const std::string_view zeros : {zeros_before_eight, std::string_view("00"), std::string_view("0")})
        if (gtin.digits().starts_with(zeros))
            return gtin.digits().substr(zeros.size());
    return gtin.digits();
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
    if (const auto gtin = core::gtin_within(scan.text)) {
        add(all, gtin->digits());
        return all;
    }
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
    if (const auto within = core::gtin_within(scan.text))
        scanned.code = printed(*within);
    else if (shows_digits_only(scan.text))
        scanned.code = scan.text.substr(0, enough_to_show);
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
