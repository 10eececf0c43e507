// A label's household measure against the reference amount in cups and spoons.
#include "core/rules/household_amount.h"

#include <doctest/doctest.h>

#include <string>

namespace test {

// Source: 21 CFR 101.12(b), reference amounts in cups and spoons; 101.9(b)(5)(viii).
TEST_CASE("household amount: the same number of cups or spoons")
{
    struct Case {
        std::string why;
        std::string label;
        std::string reference;
        bool same;
    };
    const Case cases[] = {
        {"as it stands", "2 tbsp", "2 tbsp", true},
        {"grams behind it", "2 tbsp (32 g)", "2 tbsp", true},
        {"written out", "2 Tablespoons (32 g)", "2 tbsp", true},
        {"one cup", "1 cup (240 mL)", "1 cup or 8 fl oz", true},
        {"the other choice", "8 fl oz (240 mL)", "1 cup or 8 fl oz", true},
        {"another number", "3 tbsp", "2 tbsp", false},
        {"another unit", "2 tsp", "2 tbsp", false},
        {"pieces fix no amount", "3 pieces", "pieces", false},
        {"a word alone", "cup", "cup", false},
        {"nothing", "", "2 tbsp", false},
        {"words in front", "about 2 tbsp", "2 tbsp", false},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::same_household(c.label, c.reference) == c.same);
    }
}

} // namespace test
