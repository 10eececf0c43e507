// pairstand compare on labels of the demo market.
#include "catalog/load/load.h"
#include "kiosk/command/compare.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <sstream>
#include <string>
#include <vector>

namespace test {
namespace {

using Json = nlohmann::ordered_json;

/// The command on two cereals of the demo catalog.
struct Counter {
    TempFolder folder;
    kiosk::CompareArguments asked;
    std::ostringstream out;
    std::ostringstream err;

    Counter()
    {
        asked.left = "520417001013";
        asked.right = "520417001020";
        asked.language = "en";
        asked.catalog = folder.file("catalog.db");
        asked.settings = folder.write("station.conf", "");
        REQUIRE(catalog::load({PAIRSTAND_SOURCE "/config/demo/cedar_hollow.csv"}, asked.catalog));
    }

    int compare()
    {
        out.str("");
        err.str("");
        return kiosk::compare(asked, out, err);
    }
};

} // namespace

TEST_CASE("compare command: the settings hold, and a line that cannot be taken ends the work with one sentence")
{
    Counter counter;
    counter.asked.json = true;
    counter.asked.settings = counter.folder.write("own.conf", "first_nutrients = protein\naims = label_2016");
    REQUIRE(counter.compare() == 0);
    const auto rows = Json::parse(counter.out.str())["bases"][0]["rows"];
    CHECK(rows[0]["nutrient"] == "calories");
    CHECK(rows[1]["nutrient"] == "protein");
    for (const auto& row : rows)
        if (row["nutrient"] == "total_fat")
            CHECK(row["aim"] == "neither");

    counter.asked.settings = counter.folder.write("bad.conf", "aims = label_2016\naims2 = class\n");
    CHECK(counter.compare() == 2);
    CHECK(counter.out.str().empty());
    CHECK(counter.err.str().starts_with("pairstand compare: " + counter.asked.settings +
                                        ", line 2: found \"aims2\", expected aims"));
}

// 21 CFR 101.61(b)(4): low sodium is 140 mg or less in the reference amount, 40 g for such cereals (101.12(b)).
TEST_CASE("compare command: published rules are printed where they are asked for, and only there")
{
    Counter counter;
    counter.asked.left = "9520141001120"; // 130 mg in 40 g
    counter.asked.right = "9520141001083";
    counter.asked.basis = core::Basis::Serving;
    REQUIRE(counter.compare() == 0);
    CHECK(counter.out.str().find("Published rules") == std::string::npos);
    counter.asked.rules = std::vector{core::RuleSet::SodiumClaims, core::RuleSet::WicBefore};
    REQUIRE(counter.compare() == 0);
    const auto text = counter.out.str();
    const auto says = [&](const std::string& words) { return text.find(words) != std::string::npos; };
    CHECK(says("  Low sodium (21 CFR 101.61(b)(4)). Left: meets the figures. Right: does not meet the figures.\n"));
    CHECK(says("Left: meets the federal limit printed here; your State's list decides."));
    CHECK(says("no verdict on the food"));
    counter.asked.json = true;
    REQUIRE(counter.compare() == 0);
    const auto rules = Json::parse(counter.out.str())["rules"];
    for (const auto& answer : rules["left"])
        if (answer["rule"] == "low_sodium") {
            CHECK(answer["verdict"] == "meets");
            CHECK(answer["decided"]["printed"] == "130");
            CHECK(answer["decided"]["limit"]["value"] == "140");
        }
    CHECK(rules["sets"].size() == 2);
}

} // namespace test
