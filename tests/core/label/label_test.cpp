// A label as a value, and the net quantity as packages print it.
#include "core/label/label.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {
namespace {

using core::Mass;
using core::Measure;
using core::Nutrient;
using core::Volume;

} // namespace

// Source of the forms: 21 CFR 101.7 (declaration of net quantity of contents), 16 CFR 500 (both systems of units).
TEST_CASE("label: the metric part of a net quantity")
{
    struct Case {
        std::string why, printed;
        std::optional<Measure> metric;
    };
    const Case cases[] = {
        {"ounces, grams in brackets", "NET WT 12 oz (340 g)", Mass::whole(340)},
        {"run together, as many print it", "NET WT 12 OZ (340g)", Mass::whole(340)},
        {"fluid ounces", "64 FL OZ (1.89 L)", Volume::whole(1'890)},
        {"grams alone", "340 g", Mass::whole(340)},
        {"litres alone", "1 L", Volume::whole(1'000)},
        {"kilograms in brackets", "3 LB (1.36 kg)", Mass::whole(1'360)},
        {"the last brackets count", "NET WT 16 OZ (1 LB) (454 g)", Mass::whole(454)},
        {"a bracket that never closes", "12 oz (340 g", Mass::whole(340)},
        {"grams behind the brackets", "NET WT 16 OZ (1 LB) 454 g", Mass::whole(454)},
        {"litres behind the brackets", "64 FL OZ (2 QT) 1.89 L", Volume::whole(1'890)},
        {"grams in front of the brackets", "340 g (12 oz)", Mass::whole(340)},
        {"words and grams in front of them", "NET WT 340 g (12 oz)", Mass::whole(340)},
        {"words and grams alone", "NET WT 340 g", Mass::whole(340)},
        {"pounds and ounces are two numbers of one package", "NET WT 1 LB 4 OZ (567 g)", Mass::whole(567)},
        {"several cans: the brackets hold one", "6 - 12 FL OZ (355 mL) CANS", std::nullopt},
        {"several cups", "4 x 113 g", std::nullopt},
        {"the sign for times", "4 \xC3\x97 113 g", std::nullopt},
        {"each of several", "NET WT 1.2 OZ (35 g) EACH", std::nullopt},
        {"no metric part", "NET WT 12 OZ", std::nullopt},
        {"a count", "12 eggs", std::nullopt},
        {"nothing", "", std::nullopt},
        {"empty brackets", "12 oz ()", std::nullopt},
        {"brackets the wrong way round", ") 340 g (", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto net = core::parse_net_quantity(c.printed);
        CHECK(net.printed == c.printed); // the words stay as they stood, read or not
        CHECK(net.metric == c.metric);
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        CHECK_FALSE(core::parse_net_quantity(text).metric);
        CHECK_FALSE(core::parse_net_quantity("12 oz (" + text + " g)").metric);
        CHECK(core::parse_net_quantity(text).printed == text);
    }
}

TEST_CASE("label: what a column does not print has no entry, and is not 0")
{
    core::Column column;
    CHECK(column.find(Nutrient::TotalFat) == nullptr);
    column.lines[Nutrient::TotalFat].percent = core::PrintedPercent{0, false}; // an older label: percent alone
    REQUIRE(column.find(Nutrient::TotalFat) != nullptr);
    CHECK_FALSE(column.find(Nutrient::TotalFat)->amount);
    column.not_significant.insert(Nutrient::DietaryFiber);
    CHECK(column.find(Nutrient::DietaryFiber) == nullptr); // a statement is no figure
}

} // namespace test
