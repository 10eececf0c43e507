// Every row of gtin.csv that core answers for: check digits, UPC-E, classes of codes. Each row names its source.
#include "core/code/gtin.h"
#include "core/code/store_code.h"
#include "core/code/upc_e.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <string>

namespace test {
namespace {

using core::CodeClass;
using core::Error;
using core::Gtin;

CodeClass class_named(const std::string& name)
{
    static const std::map<std::string, CodeClass> names{
        {"product", CodeClass::Product},
        {"restricted_region", CodeClass::RestrictedRegion},
        {"restricted_company", CodeClass::RestrictedCompany},
        {"reserved", CodeClass::Reserved},
        {"unassigned", CodeClass::Unassigned},
        {"unused", CodeClass::Unused},
        {"demo", CodeClass::Demo},
        {"coupon", CodeClass::Coupon},
        {"refund", CodeClass::Refund},
        {"isbn", CodeClass::Isbn},
        {"ismn", CodeClass::Ismn},
        {"issn", CodeClass::Issn},
    };
    return names.at(name);
}

/// The thirteen digits that begin with `prefix`, go on with `fill` and end in the right check digit.
Gtin under_prefix(std::string prefix, char fill)
{
    prefix.resize(12, fill);
    const auto gtin = Gtin::parse(prefix + core::check_digit(prefix));
    REQUIRE(gtin);
    return *gtin;
}

/// The lowest and the highest of "020-029" or "951"; both have the same number of digits.
std::pair<std::string, std::string> ends_of(const std::string& range)
{
    const auto dash = range.find('-');
    if (dash == std::string::npos)
        return {range, range};
    return {range.substr(0, dash), range.substr(dash + 1)};
}

std::string padded(int number, std::size_t digits)
{
    std::string text = std::to_string(number);
    return text.insert(0, digits - text.size(), '0');
}

} // namespace

TEST_CASE("gtin.csv: no kind of row is left out unsaid")
{
    std::map<std::string, int> counted;
    for (const auto& row : reference_rows("gtin.csv"))
        ++counted[row["kind"]];
    const std::map<std::string, int> expected{
        // read below, row by row
        {"valid", 57},
        {"bad_check", 20},
        {"bad_form", 12},
        {"upce_expand", 35},
        {"upce_refuse", 9},
        {"prefix", 52},
        {"prefix_range", 22},
        // element strings, identifiers and addresses: core does not read them
        {"ai", 20},
        {"aim", 16},
        {"aim_scan", 30},
        {"digital_link", 41},
        {"digital_link_legacy", 7},
    };
    CHECK(counted == expected);
}

TEST_CASE("gtin.csv: valid codes have one form of 14 digits")
{
    for (const auto& row : reference_rows("gtin.csv", "kind", "valid")) {
        CAPTURE(row.place());
        CAPTURE(row["input"]);
        const auto gtin = Gtin::parse(row["input"]);
        REQUIRE(gtin);
        CHECK(gtin->digits() == row["expected"]);
    }
}

TEST_CASE("gtin.csv: a wrong check digit is refused, and the right one is known")
{
    for (const auto& row : reference_rows("gtin.csv", "kind", "bad_check")) {
        CAPTURE(row.place());
        CAPTURE(row["input"]);
        const auto gtin = Gtin::parse(row["input"]);
        REQUIRE_FALSE(gtin);
        CHECK(gtin.error().kind == Error::Kind::WrongCheckDigit);
        const std::string body = row["input"].substr(0, row["input"].size() - 1);
        CHECK(body + core::check_digit(body) == row["expected"]);
        CHECK(Gtin::parse(row["expected"]));
    }
}

TEST_CASE("gtin.csv: what is no code at all is refused")
{
    for (const auto& row : reference_rows("gtin.csv", "kind", "bad_form")) {
        CAPTURE(row.place());
        CAPTURE(row["input"]);
        REQUIRE(row["expected"].empty());
        const auto gtin = Gtin::parse(row["input"]);
        REQUIRE_FALSE(gtin);
        const bool digits_only = row["input"].find_first_not_of("0123456789") == std::string::npos;
        CHECK(gtin.error().kind == (digits_only ? Error::Kind::WrongLength : Error::Kind::NotDigits));
    }
}

TEST_CASE("gtin.csv: UPC-E expands to its UPC-A, and shortens again where a printer may make it")
{
    int shortened = 0;
    for (const auto& row : reference_rows("gtin.csv", "kind", "upce_expand")) {
        CAPTURE(row.place());
        CAPTURE(row["input"]);
        CHECK(core::expand_upc_e(row["input"]).value_or("refused") == row["expected"]);
        const std::string six = row["input"].substr(1, 6);
        if (!core::is_printable_upc_e(six))
            continue;
        ++shortened;
        CHECK(core::shorten_to_upc_e(row["expected"]).value_or("refused") == six);
    }
    CHECK(shortened > 25);
}

TEST_CASE("gtin.csv: UPC-E forms that no printer may make stand for a number with another form")
{
    for (const auto& row : reference_rows("gtin.csv", "kind", "upce_refuse")) {
        CAPTURE(row.place());
        const std::string& six = row["input"];
        CAPTURE(six);
        REQUIRE(row["expected"].empty());
        CHECK_FALSE(core::is_printable_upc_e(six));
        // A reader expands it all the same; the number that comes out is shortened to other six digits.
        std::string twelve;
        for (char check = '0'; check <= '9' && twelve.empty(); ++check)
            twelve = core::expand_upc_e("0" + six + check).value_or("");
        REQUIRE(twelve.size() == 12);
        const auto other = core::shorten_to_upc_e(twelve);
        REQUIRE(other);
        CHECK(*other != six);
        CHECK(core::is_printable_upc_e(*other));
    }
}

TEST_CASE("gtin.csv: the prefix says what a code is for")
{
    for (const auto& row : reference_rows("gtin.csv", "kind", "prefix")) {
        CAPTURE(row.place());
        CAPTURE(row["input"]);
        const auto gtin = Gtin::parse(row["input"]);
        REQUIRE(gtin);
        CHECK(core::class_of(*gtin, row["input"].size()) == class_named(row["expected"]));
    }
}

TEST_CASE("gtin.csv: every prefix of a range has its class, at both ends of what may follow")
{
    int sampled = 0;
    for (const auto& row : reference_rows("gtin.csv", "kind", "prefix_range")) {
        CAPTURE(row.place());
        const auto [low, high] = ends_of(row["input"]);
        REQUIRE(low.size() == high.size());
        for (int prefix = std::stoi(low); prefix <= std::stoi(high); ++prefix) {
            for (const char fill : {'0', '4', '9'}) {
                const std::string digits = padded(prefix, low.size());
                if (digits == "979" && fill == '0')
                    continue; // 979-0 is printed music: it has rows of its own
                const Gtin gtin = under_prefix(digits, fill);
                CAPTURE(gtin.digits());
                // 001 to 009 reach down into 0000..., which has rows of its own; no fill of ours gets there.
                CHECK(core::class_of(gtin) == class_named(row["expected"]));
                CHECK_FALSE(core::is_case(gtin));
                ++sampled;
            }
        }
    }
    CHECK(sampled > 1000);
}

TEST_CASE("gtin.csv: numbers of stores, coupons, refunds and print name no product with a label")
{
    // Reserved and unassigned numbers may come to name one: prefixes are given out over the years.
    const std::set<std::string> may_have_labels{"product", "demo", "reserved", "unassigned"};
    for (const auto& row : reference_rows("gtin.csv", "kind", "prefix")) {
        CAPTURE(row.place());
        CHECK(core::names_one_product(class_named(row["expected"])) == may_have_labels.contains(row["expected"]));
    }
}

} // namespace test
