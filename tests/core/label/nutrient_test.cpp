// The table of nutrients: complete, in the order of the panel, every key once.
#include "core/label/nutrient.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

namespace test {

using core::Nutrient;

TEST_CASE("nutrient: every nutrient has its own row, in order")
{
    std::size_t place = 0;
    std::set<std::string> keys;
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        CHECK(static_cast<std::size_t>(known.nutrient) == place++); // info() looks a nutrient up by its place
        CHECK(&core::info(known.nutrient) == &known);
        CHECK(keys.emplace(known.key).second);
        CHECK(core::nutrient_by_key(known.key) == known.nutrient);
        CHECK(known.key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos);
        CHECK((known.indent >= 0 && known.indent <= 2));
    }
    CHECK(place == static_cast<std::size_t>(Nutrient::Fluoride) + 1); // the last one
}

TEST_CASE("nutrient: an unknown key names nothing")
{
    for (const std::string& key : {std::string{}, std::string("fat"), std::string("Total_Fat"),
                                   std::string("total_fat "), std::string("total_fat\0", 10)}) {
        CAPTURE(key);
        CHECK_FALSE(core::nutrient_by_key(key));
    }
}

// Source: 21 CFR 101.9(c) (what must be declared) and (d)(7) (its order), as amended 27 May 2016.
TEST_CASE("nutrient: the lines that an adult label of 2016 always prints")
{
    std::string panel;
    for (const auto& known : core::nutrients())
        if (known.on_the_panel)
            panel.append(known.key).append(" ");
    CHECK(panel == "calories total_fat saturated_fat trans_fat cholesterol sodium total_carbohydrate dietary_fiber "
                   "total_sugars added_sugars protein vitamin_d calcium iron potassium ");
}

TEST_CASE("nutrient: units have names and sizes")
{
    CHECK(core::unit_name(core::Unit::Kilocalorie).empty());
    CHECK(core::unit_name(core::Unit::Gram) == "g");
    CHECK(core::unit_name(core::Unit::Milligram) == "mg");
    CHECK(core::unit_name(core::Unit::Microgram) == "mcg");
    CHECK(core::nano_of(core::Unit::Gram) == 1'000 * core::nano_of(core::Unit::Milligram));
    CHECK(core::nano_of(core::Unit::Milligram) == 1'000 * core::nano_of(core::Unit::Microgram));
}

} // namespace test
