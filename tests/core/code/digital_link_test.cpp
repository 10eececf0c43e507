#include "core/code/digital_link.h"
#include "core/code/element_string.h"

#include <doctest/doctest.h>

#include <string>

namespace {

/// The 14 digits, or nothing.
std::string number_in(const std::string& text)
{
    const auto gtin = core::gtin_within(text);
    return gtin ? gtin->digits() : "";
}

} // namespace

// Addresses: examples of the GS1 Digital Link Standard, as the tests of the barcode syntax library that GS1 publishes
// have them, and examples of its first quick start guide; rows marked "memory" follow its grammar from memory.
TEST_CASE("digital link: the number, whatever the domain and whatever else the address says")
{
    const struct {
        std::string why;
        const char* uri;
        const char* number = "09520123456788";
    } cases[] = {
        {"as plain as can be", "https://id.gs1.org/01/09520123456788"},
        {"a maker's own domain, 13 digits", "https://brand.example.com/01/9520123456788"},
        {"a path in front", "https://brand.example.com/some-extra/pathinfo/01/9520123456788"},
        {"a variant", "https://id.gs1.org/01/09520123456788/22/2A"},
        {"a batch", "https://id.gs1.org/01/09520123456788/10/ABC123"},
        {"a serial number", "https://id.gs1.org/01/09520123456788/21/12345"},
        {"batch, serial number and date", "https://id.gs1.org/01/09520123456788/10/ABC1/21/12345?17=180426"},
        {"all three", "https://example.com/01/12312312312326/22/ABC/10/DEF/21/GHI", "12312312312326"},
        {"a serial number of a third party", "https://id.gs1.org/01/09520123456788/235/XYZ?10=ABC123"},
        {"a weight", "https://id.gs1.org/01/09520123456788?3103=000195"},
        {"weight, price and date", "https://example.com/01/9520123456788?3103=000195&3922=0299&17=201225"},
        {"words that are no key", "https://a/01/12312312312333?singleton&99=ABC&unknown=6", "12312312312333"},
        {"empty words", "https://a/01/12312312312333?&&&99=ABC&&&", "12312312312333"},
        {"12 digits", "https://id.gs1.org/01/614141123452", "00614141123452"},
        {"words for keys (1.0 and 1.1)", "https://id.gs1.org/gtin/9506000134352", "09506000134352"},
        {"words behind it (1.0 and 1.1)", "https://id.gs1.org/01/614141123452/lot/ABC1/ser/12345?exp=180426",
         "00614141123452"},
        {"percent signs", "https://a/01/12312312312333/22/ABC%2d123", "12312312312333"},
        {"a percent sign that is none", "https://a/01/12312312312333/10/100%", "12312312312333"},
        {"digits behind percent signs (memory)", "https://a/%30%31/0952012345678%38"},
        {"a part of the page", "https://a/01/12312312312333/22/test/10/abc/21/xyz#fragment", "12312312312333"},
        {"8 digits right behind the domain (memory)", "https://id.gs1.org/01/12345670", "00000012345670"},
        {"not secured", "http://example.com/01/09520123456788"},
        {"in capitals, as QR codes save room (memory)", "HTTPS://EXAMPLE.COM/01/09520123456788/10/ABC"},
        {"a port and a user (memory)", "https://me@example.com:8080/01/09520123456788"},
        {"a slash at the end (memory)", "https://example.com/01/09520123456788/"},
        {"twice the same (memory)", "https://example.com/01/9520123456788/01/09520123456788"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(number_in(c.uri) == c.number);
    }
}

TEST_CASE("digital link: an ordinary web address, and one that names something else, names no product")
{
    const struct {
        std::string why;
        const char* uri;
    } cases[] = {
        {"a page", "https://example.org/"},
        {"a domain alone", "https://example.org"},
        {"nothing behind the scheme", "https://"},
        {"no domain", "https:///01/09520123456788"},
        {"another scheme", "ftp://example.org/01/09520123456788"},
        {"no scheme", "example.org/01/09520123456788"},
        {"a number in a search", "https://example.org/?g=9520000000011"},
        {"a key in a search alone", "https://example.org/?01=09520123456788"},
        {"a number without its key", "https://example.org/09520123456788"},
        {"a page of a day, of which eight digits pass", "https://news.example/2021/01/20210113"},
        {"a page below the number", "https://example.org/01/09520123456788/offers"},
        {"two pages below the number", "https://example.org/01/09520123456788/offers/today"},
        {"a wrong check digit", "https://id.gs1.org/01/09520123456789"},
        {"nine digits", "https://id.gs1.org/01/952012345"},
        {"letters", "https://id.gs1.org/01/0952012345678X"},
        {"a blank", "https://id.gs1.org/01/09520123456788 "},
        {"a line end", "https://id.gs1.org/01/09520123456788\n"},
        {"a separator", "https://id.gs1.org/01/09520123456788\x1d"},
        {"no number", "https://id.gs1.org/01/"},
        {"the key alone", "https://id.gs1.org/01"},
        {"an empty batch", "https://id.gs1.org/01/09520123456788/10/"},
        {"serial number before batch", "https://id.gs1.org/01/09520123456788/21/5/10/A"},
        {"a batch twice", "https://id.gs1.org/01/09520123456788/10/A/10/B"},
        {"an unknown key", "https://example.com/01/09520123456788/89/ABC123"},
        {"a number behind it as well", "https://id.gs1.org/01/09520123456788/10/ABC123?99=X&01=09520123456788"},
        {"two numbers", "https://example.com/01/12312312312326/01/12312312312333"},
        {"a shipping unit with what is in it", "https://id.gs1.org/00/952012345678912345?02=09520123456788&37=25"},
        {"a place", "https://id.gs1.org/414/9520123456788"},
        {"an asset, with a product as its attribute", "https://example.com/8004/9520614141234567?01=9520123456788"},
        {"a piece of a product", "https://example.com/8006/095201234567880102"},
        {"the key in capitals", "https://example.com/GTIN/09520123456788"},
        {"squeezed into letters: nothing here reads that (memory)", "https://id.gs1.org/ARFKk4XB0CDKWcnpq"},
        {"the number in a part of the page", "https://example.com/#/01/09520123456788"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(number_in(c.uri).empty());
    }
    CHECK(number_in("https://a/" + std::string(100'000, '%') + "/01/09520123456788") == "09520123456788");
    CHECK(number_in("https://a" + std::string(100'000, '/')).empty());
    CHECK(core::read_link("https://" + std::string(1'000, 'x')).error().detail.size() == 40);
}
