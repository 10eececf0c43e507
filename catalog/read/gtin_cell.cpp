#include "catalog/read/gtin_cell.h"

#include "core/code/store_code.h"
#include "core/code/upc_e.h"

#include <algorithm>
#include <string>

namespace catalog {
namespace {

using core::Error;

auto refuse(Error::Kind kind, std::string_view cell, std::string expected)
{
    constexpr std::size_t enough_to_show = 40;
    return core::refuse(kind, "gtin",
                        core::Place{"", 0, "", std::string(cell.substr(0, enough_to_show)), std::move(expected)});
}

/// "9.52E+12", "9,52E+12": what a spreadsheet makes of a long number in a column that is not text.
bool is_shortened(std::string_view cell)
{
    const auto e = cell.find_first_of("eE");
    const auto is_part = [](char c) { return (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '+'; };
    return e != std::string_view::npos && e > 0 && e + 1 < cell.size() &&
           std::all_of(cell.begin(), cell.begin() + static_cast<std::ptrdiff_t>(e), is_part) &&
           std::all_of(cell.begin() + static_cast<std::ptrdiff_t>(e) + 1, cell.end(), is_part);
}

/// What it would be with the zeros that a spreadsheet takes off in front; empty when that is no number either.
/// Zeros in front never change the check digit.
std::string with_zeros(std::string_view cell)
{
    constexpr std::size_t shortest = 6; // fewer digits are something else than a number that lost zeros
    if (cell.size() < shortest)
        return {};
    const std::size_t length = cell.size() < 8 ? 8 : 12;
    if (cell.size() >= length)
        return {};
    std::string longer = std::string(length - cell.size(), '0').append(cell);
    return core::Gtin::parse(longer) ? longer : std::string{};
}

std::string what_is_meant(std::string_view cell, Error::Kind kind)
{
    if (kind == Error::Kind::WrongLength)
        if (const auto longer = with_zeros(cell); !longer.empty())
            return longer + " (a spreadsheet takes zeros off the front of a number: set the column to Text)";
    if (kind == Error::Kind::WrongCheckDigit) {
        if (const auto twelve = core::expand_upc_e(cell))
            return *twelve + " (the eight digits are its short form, UPC-E)";
        return "a number whose last digit fits the others: compare it with the package";
    }
    return "8, 12, 13 or 14 digits with their check digit";
}

std::string what_it_is(core::CodeClass code_class)
{
    switch (code_class) {
    case core::CodeClass::RestrictedRegion:
    case core::CodeClass::RestrictedCompany:
        return "a product's number; this one is a store's own and means something else in the next store: with yes in "
               "the column this_place_only it gets a label for this place alone";
    case core::CodeClass::Coupon:
    case core::CodeClass::Refund:
        return "a product's number; this one is of a coupon or a refund";
    case core::CodeClass::Isbn:
    case core::CodeClass::Ismn:
    case core::CodeClass::Issn:
        return "a food's number; this one is of a book, of printed music or of a magazine";
    case core::CodeClass::Reserved:
    case core::CodeClass::Unassigned:
    case core::CodeClass::Unused:
    case core::CodeClass::Product:
    case core::CodeClass::Demo:
        break;
    }
    return "a product's number; no product has this one";
}

/// The length that the number has on the package: other programs write eight digits with zeros in front, and no longer
/// number begins with so many.
std::size_t printed_length(const core::Gtin& gtin, std::string_view cell)
{
    return gtin.digits().starts_with("000000") ? 8 : cell.size();
}

core::Result<core::Gtin> read_number(std::string_view cell)
{
    if (is_shortened(cell))
        return refuse(Error::Kind::BadValue, cell,
                      "all digits of the number (a spreadsheet has shortened it: set the column to Text, then enter it "
                      "again)");
    auto gtin = core::Gtin::parse(cell);
    if (!gtin)
        return refuse(gtin.error().kind, cell, what_is_meant(cell, gtin.error().kind));
    if (core::is_case(*gtin))
        return refuse(Error::Kind::NotAProductCode, cell,
                      "the number on one package; this one is of a case of them (1 to 9 in front of 13 digits)");
    return gtin;
}

/// "2", five digits of an item and five zeros, with the check digit that belongs there: no package prints this number,
/// so whoever writes it cannot copy its last digit.
std::optional<std::string> item_without_price(std::string_view cell)
{
    constexpr std::size_t body = 11;
    if (cell.size() != body + 1 || cell.find_first_not_of("0123456789") != std::string_view::npos || cell[0] != '2' ||
        cell.substr(6, 5) != "00000")
        return std::nullopt;
    return std::string(cell.substr(0, body)) + core::check_digit(cell.substr(0, body));
}

core::CodeClass class_of_cell(const core::Gtin& gtin, std::string_view cell)
{
    return core::class_of(gtin, printed_length(gtin, cell));
}

} // namespace

core::Result<core::Gtin> read_gtin(std::string_view cell)
{
    auto gtin = read_number(cell);
    if (gtin && !core::names_one_product(class_of_cell(*gtin, cell)))
        return refuse(Error::Kind::NotAProductCode, cell, what_it_is(class_of_cell(*gtin, cell)));
    return gtin;
}

core::Result<core::Gtin> read_own_number(std::string_view cell)
{
    auto gtin = read_number(cell);
    if (const auto item = item_without_price(cell); !gtin && item)
        return refuse(gtin.error().kind, cell, *item + " (the check digit that fits)");
    if (!gtin || core::is_stores_own(class_of_cell(*gtin, cell)))
        return gtin;
    if (core::names_one_product(class_of_cell(*gtin, cell)))
        return refuse(Error::Kind::NotAProductCode, cell,
                      "a number that a store gives itself (2, 4, 02, 04 or 20 to 29 in front); this one names its "
                      "product everywhere: leave this_place_only empty");
    return refuse(Error::Kind::NotAProductCode, cell, what_it_is(class_of_cell(*gtin, cell)));
}

} // namespace catalog
