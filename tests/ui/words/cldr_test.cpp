// Numbers against the Unicode Common Locale Data Repository (CLDR), as the ICU of this machine carries it.
#include "tests/support/headless.h"
#include "ui/words/numbers.h"
#include "ui/words/price_words.h"

#include <doctest/doctest.h>

#include <string>
#include <unicode/numberformatter.h>

namespace {

using icu::number::NumberFormatter;

icu::Locale locale(const char* tag)
{
    UErrorCode error = U_ZERO_ERROR;
    const auto found = icu::Locale::forLanguageTag(tag, error);
    REQUIRE(U_SUCCESS(error));
    return found;
}

std::string written(const icu::number::LocalizedNumberFormatter& as, const std::string& number)
{
    UErrorCode error = U_ZERO_ERROR;
    std::string words;
    as.formatDecimal(number, error).toString(error).toUTF8String(words);
    REQUIRE(U_SUCCESS(error));
    return words;
}

std::string by_cldr(const char* tag, const std::string& number)
{
    return written(NumberFormatter::withLocale(locale(tag)).precision(icu::number::Precision::unlimited()), number);
}

std::string percent_by_cldr(const char* tag, const std::string& number)
{
    return written(NumberFormatter::withLocale(locale(tag)).unit(icu::NoUnit::percent()), number);
}

std::string dollars_by_cldr(const char* tag, const std::string& number)
{
    UErrorCode error = U_ZERO_ERROR;
    return written(NumberFormatter::withLocale(locale(tag)).unit(icu::CurrencyUnit(u"USD", error)), number);
}

/// Without the no-break space (U+00A0) that some languages have before the sign.
std::string tight(std::string words)
{
    const auto at = words.find("\xC2\xA0");
    return at == std::string::npos ? words : words.erase(at, 2);
}

const std::string numbers[] = {"0",    "7",     "10",       "100",    "999",      "1000", "1170",
                               "9999", "10000", "123456",   "999999", "1234567",  "0.5",  "0.05",
                               "2.5",  "12.25", "999.1234", "1000.5", "1234.5678"};
const std::string percents[] = {"0", "5", "8", "20", "100", "999", "1250", "10000"};

} // namespace

// Source: CLDR, common/main/en.xml, es_419.xml, es_US.xml: symbols (decimal, group), decimalFormats and
// minimumGroupingDigits. Both write 1,170 and 0.5 here; es of Spain (1170 and 0,5) is another language to it.
TEST_CASE("cldr: digits are grouped, and fractions set off, as English and Spanish of the United States do")
{
    for (const auto* const tag : {"en-US", "es-US", "es-419"})
        for (const auto& number : numbers) {
            CAPTURE(tag);
            CAPTURE(number);
            CHECK(ui::grouped(number) == by_cldr(tag, number));
        }
    CHECK(by_cldr("es-ES", "1170") == "1170"); // so the comparison can fail
    CHECK(by_cldr("es-ES", "0.5") == "0,5");
}

// Source: CLDR, currencyFormats of en_US and es_US.
TEST_CASE("cldr: prices in dollars are written alike in both languages")
{
    CHECK(ui::money_words(core::cents(399)) == "$3.99");
    for (const auto* const tag : {"en-US", "es-US"}) {
        CAPTURE(tag);
        CHECK(dollars_by_cldr(tag, "3.99") == ui::money_words(core::cents(399)));
        CHECK(dollars_by_cldr(tag, "0.05") == ui::money_words(core::cents(5)));
        CHECK(dollars_by_cldr(tag, "1234.50") == ui::money_words(core::cents(123'450)));
    }
}

// Source: CLDR, percentFormats. es_419 and es_US have a no-break space before the sign, es_MX has none. Ours has none
// in Spanish either: a label in two languages prints each figure once, for both ("Total Fat/Grasa Total 5g 7%"), and
// the screen shows what the package in the hand shows. Source of that: 21 CFR 101.9(d)(14), "numeric characters that
// are identical in both languages need not be repeated" (from memory).
TEST_CASE("cldr: percents are as English and Spanish write them, with the sign where the label has it")
{
    for (const auto& number : percents) {
        CAPTURE(number);
        const int percent = std::stoi(number);
        const auto english = ui::percent_words(percent, false, test::language("en"));
        const auto spanish = ui::percent_words(percent, false, test::language("es"));
        CHECK(english == percent_by_cldr("en-US", number));
        CHECK(spanish == percent_by_cldr("es-MX", number));
        CHECK(spanish == tight(percent_by_cldr("es-US", number)));
        CHECK(spanish == tight(percent_by_cldr("es-419", number)));
    }
}
