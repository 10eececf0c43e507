// The rows of conversions.csv that core counts with: household measures and the forms of a serving size.
#include "core/label/household.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace test {
namespace {

using Unit = core::Household::Unit;

/// "1 cup" is 240 mL; an ounce is a weight, which no volume stands for.
void check_measure(const ReferenceRow& row)
{
    const auto read = core::parse_household(row["amount"] + " " + row["what"]);
    REQUIRE(read);
    CHECK(read->count == core::Ratio{1, 1});
    if (row["unit"] == "mL") {
        CHECK(core::label_millilitres(read->unit) == std::stoll(row["equals"]));
    } else {
        CHECK(read->unit == Unit::Ounce);
        CHECK(core::label_millilitres(read->unit) == 0);
    }
}

/// The forms in a cell: "1/4 or 1/3", "1, 1 1/3, 1 1/2".
std::vector<std::string> forms_of(std::string cell)
{
    for (auto at = cell.find(" or "); at != std::string::npos; at = cell.find(" or "))
        cell.replace(at, 4, ",");
    std::vector<std::string> forms;
    std::istringstream in(cell);
    for (std::string form; std::getline(in, form, ',');)
        forms.push_back(form.substr(form.find_first_not_of(' ')));
    return forms;
}

/// Each form is read, as the unit that its row is about, and says itself again (0.5 as 1/2).
void check_forms(const ReferenceRow& row, Unit unit)
{
    for (const auto& form : forms_of(row["equals"])) {
        CAPTURE(form);
        const auto read = core::parse_household(form + " " + row["unit"]);
        REQUIRE(read);
        CHECK(read->unit == unit);
        CHECK_FALSE(read->about);
        const auto again = core::ratio_text(read->count);
        REQUIRE(again);
        CHECK(*again == (form == "0.5" ? "1/2" : form));
    }
}

/// Why nothing in core counts with a row; empty for what should be counted with.
std::string not_counted_with(const std::string& topic, const std::string& what)
{
    if (topic == "serving_size_form" && what == "half way")
        return "serving sizes are read and not made";
    if (topic == "energy" || topic == "reference_calories")
        return "calories are taken as printed";
    if (topic.starts_with("vitamin_") || topic == "niacin" || topic == "folate")
        return "vitamins are compared in the unit of the panel";
    if (topic == "compliance")
        return "tolerances are told in words only";
    return topic == "columns" ? "columns are read as they are printed" : "";
}

} // namespace

TEST_CASE("conversions.csv: household measures and the forms of a serving size")
{
    const std::map<std::string, Unit> forms{
        {"cup", Unit::Cup}, {"tablespoon", Unit::Tablespoon}, {"teaspoon", Unit::Teaspoon}, {"ounce", Unit::Ounce}};
    TableRun run("conversions.csv");
    const auto rows = reference_rows("conversions.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        const auto& topic = row["topic"];
        CAPTURE(row["what"]);
        if (topic == "household") {
            check_measure(row);
            run.used();
        } else if (const auto form = forms.find(row["what"]); topic == "serving_size_form" && form != forms.end()) {
            check_forms(row, form->second);
            run.used();
        } else {
            run.skipped(not_counted_with(topic, row["what"]));
        }
    }
    run.done(rows.size());
}

} // namespace test
