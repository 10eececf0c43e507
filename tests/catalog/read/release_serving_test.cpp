#include "catalog/read/release_serving.h"

#include <doctest/doctest.h>

using catalog::read_release_household;
using catalog::read_release_net;
using catalog::read_release_serving;
using Unit = catalog::ReleaseServing::Unit;

// Forms: seen in FoodData Central, Branded Foods, October 2023. Units: UN/ECE Recommendation 20 (GRM, MLT, ONZ, OZA
// ...).
TEST_CASE("release serving: floats printed in full, units of every year, wrong ones")
{
    const auto net_of = [](const char* text) { return read_release_net(text); };
    struct Case {
        const char* why;
        const char* size;
        const char* unit;
        const char* net;
        const char* shown;
        std::int64_t micro;
        Unit from;
    };
    const Case cases[] = {
        {"grams", "30.0", "g", "", "30 g", 30'000'000, Unit::Told},
        {"a 32-bit float", "28.350000381469727", "g", "", "28.35 g", 28'350'000, Unit::Told},
        {"another", "0.800000011920929", "g", "", "0.8 g", 800'000, Unit::Told},
        {"milliliters", "240", "ml", "", "240 mL", 240'000'000, Unit::Told},
        {"since 2023", "55.0", "GRM", "", "55 g", 55'000'000, Unit::Told},
        {"since 2023, a drink", "355.0", "MLT", "12 fl oz", "355 mL", 355'000'000, Unit::Told},
        {"MG beside a package in grams", "30.0", "MG", "12 oz/340 g", "30 g", 30'000'000, Unit::Guessed},
        {"IU of milk", "240.0", "IU", "1 GAL/3.78 L", "240 mL", 240'000'000, Unit::Guessed},
        {"GM", "7.0", "GM", "", "7 g", 7'000'000, Unit::Guessed},
        {"no unit, a package in fluid ounces", "240.0", "", "46 OZA", "240 mL", 240'000'000, Unit::Guessed},
        {"no unit, and nothing tells", "30.0", "", "", "", 30'000'000, Unit::Unknown},
        {"zero", "0.0", "g", "", "", 0, Unit::Told},
        {"nothing", "", "g", "", "", 0, Unit::Told},
        {"no number", "one", "g", "", "", 0, Unit::Told},
        {"below zero", "-5", "g", "", "", 0, Unit::Told},
        {"beyond all packages", "1e30", "g", "", "", 0, Unit::Told},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto serving = read_release_serving(c.size, c.unit, net_of(c.net));
        CHECK(serving.micro == c.micro);
        CHECK((serving.metric ? core::measure_text(*serving.metric) : "") == c.shown);
        CHECK(serving.unit_from == c.from);
    }
}

TEST_CASE("release serving: household words as packages print them")
{
    CHECK(read_release_household("1 ONZ") == "1 oz");
    CHECK(read_release_household("8 OZA") == "8 fl oz");
    CHECK(read_release_household("50 GRM") == "50 g");
    CHECK(read_release_household("1 PIZZA | null") == "1 PIZZA");
    CHECK(read_release_household("2 CUPS | ABOUT") == "2 CUPS");
    CHECK(read_release_household(" Cup") == "Cup");
    CHECK(read_release_household("Amount per serving").empty());
    CHECK(read_release_household("PER CONTAINER").empty());
    CHECK(read_release_household("").empty());
    CHECK(read_release_household("0.25 SEC SPRAY") == "0.25 SEC SPRAY");
}

TEST_CASE("release serving: net quantities in one cell")
{
    struct Case {
        const char* text;
        const char* printed;
        const char* metric;
    };
    const Case cases[] = {{"12 oz/340 g", "12 oz (340 g)", "340 g"},
                          {"16 oz/1 lbs/454 g", "16 oz (454 g)", "454 g"},
                          {"340 g", "340 g", "340 g"},
                          {"198 g/7 oz", "198 g (7 oz)", "198 g"},
                          {"1.19 KGM", "1.19 kg", "1190 g"},
                          {"240 H87", "240 ct", ""}};
    for (const auto& c : cases) {
        CAPTURE(c.text);
        const auto net = read_release_net(c.text);
        REQUIRE(net);
        CHECK(net->printed == c.printed);
        CHECK((net->metric ? core::measure_text(*net->metric) : "") == c.metric);
    }
    CHECK_FALSE(read_release_net(""));
    CHECK_FALSE(read_release_net("  "));
    CHECK(read_release_net("46 OZA")->printed == "46 fl oz");
}
