// pairstand compare on labels of the demo market.
#include "catalog/load/load.h"
#include "kiosk/command/compare.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <sstream>
#include <string>

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
                                        ", line 2: found \"aims2\", expected one of these keys: aims"));
}

} // namespace test
