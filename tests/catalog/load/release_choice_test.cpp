// A part of a release: what is asked for, what is left out, and what the report says of it.
#include "catalog/load/load_release.h"
#include "catalog/load/names_there.h"
#include "catalog/load/record_set.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <string>

using catalog::Finding;
using catalog::load_release;

namespace {

void write(const std::string& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

struct Row {
    const char* name;
    const char* category;
    const char* market;
};

/// A release of these foods, each with one amount; the numbers of records begin with 1.
std::string release_of(const test::TempFolder& folder, const std::vector<Row>& rows)
{
    std::filesystem::create_directory(folder.file("r"));
    std::string foods = "\"fdc_id\",\"data_type\",\"description\",\"publication_date\"\n";
    std::string branded = "\"fdc_id\",\"gtin_upc\",\"serving_size\",\"serving_size_unit\","
                          "\"branded_food_category\",\"market_country\"\n";
    std::string amounts = "\"fdc_id\",\"nutrient_id\",\"amount\",\"derivation_id\"\n";
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto number = "\"" + std::to_string(i + 1) + "\",";
        foods += number + "\"branded_food\",\"" + rows[i].name + "\",\"2023-10-26\"\n";
        branded += number + "\"" + test::gtin(i + 1).digits().substr(1) + "\",\"30.0\",\"g\",\"" + rows[i].category +
                   "\",\"" + rows[i].market + "\"\n";
        amounts += number + "\"1008\",\"367.0\",\"70\"\n";
    }
    write(folder.file("r/food.csv"), foods);
    write(folder.file("r/branded_food.csv"), branded);
    write(folder.file("r/food_nutrient.csv"), amounts);
    return folder.file("r");
}

catalog::ReleaseReport report_of(const std::string& release, const test::TempFolder& folder,
                                 const catalog::ReleaseChoice& choice)
{
    const auto loaded = load_release(release, folder.file("shop"), {choice, {}});
    REQUIRE(loaded);
    return loaded->report;
}

} // namespace

TEST_CASE("release choice: amounts of records that were left out belong to something, amounts without a record do not")
{
    const test::TempFolder folder;
    const auto release = release_of(folder, {{"OATS", "Cereal", ""}, {"RYE", "Bread", ""}, {"CORN", "Snacks", ""}});
    std::ofstream(release + "/food_nutrient.csv", std::ios::app) << "\"9\",\"1008\",\"1.0\",\"70\"\n";
    catalog::ReleaseChoice choice;
    choice.categories = {"bread"};
    const auto report = report_of(release, folder, choice);
    CHECK(report.taken == 1);
    CHECK(report.of(Finding::NotChosen).count == 2);
    CHECK(report.of(Finding::LostAmounts).count == 1);
    CHECK(report.of(Finding::LostAmounts).samples == std::vector<std::string>{"fdc_id 9"});
}

TEST_CASE("release choice: which records were left out is known to a load that goes on after a broken one")
{
    const test::TempFolder folder;
    catalog::RecordSet set;
    for (const std::uint32_t number : {0U, 63U, 64U, 2'700'000U, 4'000'000'000U})
        set.add(number);
    set.write(folder.file("left_out"));
    const auto read = catalog::RecordSet::read(folder.file("left_out"));
    for (const std::uint32_t number : {0U, 63U, 64U, 2'700'000U})
        CHECK(read.has(number));
    for (const std::uint32_t number : {1U, 65U, 2'699'999U, 2'800'000U})
        CHECK_FALSE(read.has(number));
    CHECK(std::filesystem::file_size(folder.file("left_out")) < 400'000); // a number out of all measure grows nothing
    catalog::RecordSet().write(folder.file("none"));
    CHECK_FALSE(catalog::RecordSet::read(folder.file("none")).has(0));
}

TEST_CASE("release choice: a JSON food that is not asked for has no lost amounts")
{
    const test::TempFolder folder;
    const auto path =
        folder.write("foods.json", R"({"BrandedFoods": [{"fdcId": 1, "gtinUpc": ")" + test::gtin(1).digits() +
                                       R"(", "description": "OATS", "servingSize": 30, "servingSizeUnit": "g",
        "foodNutrients": [{"nutrient": {"id": 1008}, "amount": 367}]}, {"fdcId": 2, "description": "WITHOUT A CODE",
        "foodNutrients": [{"nutrient": {"id": 1008}, "amount": 367}]}]})");
    catalog::ReleaseChoice choice;
    choice.words = {"barley"};
    const auto report = report_of(path, folder, choice);
    CHECK(report.of(Finding::NotChosen).count == 1);
    CHECK(report.of(Finding::LostAmounts).count == 0);
    CHECK(report.of(Finding::UnreadableCode).count == 0);
    REQUIRE(report.of(Finding::NoCode).count == 1);
    CHECK(report.of(Finding::NoCode).samples.front() == "fdc_id 2: WITHOUT A CODE");
}

TEST_CASE("release choice: a category or a market that no record has is told with those that are there")
{
    const test::TempFolder folder;
    const auto release = release_of(folder, {{"OATS", "Cereal", "United States"},
                                             {"RYE", "Bread", "United States"},
                                             {"CORN", "Cereal", "New Zealand"},
                                             {"RICE", "Rice", ""}});
    catalog::ReleaseChoice choice;
    choice.categories = {"Braed", "CEREAL"};
    auto report = report_of(release, folder, choice);
    CHECK(report.taken == 2);
    REQUIRE(report.not_there.size() == 1);
    CHECK(report.not_there[0].asked == "Braed");
    CHECK(report.not_there[0].there == std::vector<std::string>{"Bread", "Cereal", "Rice"});
    CHECK(report.not_there[0].more == 0);
    choice = {};
    choice.market = "US";
    report = report_of(release, folder, choice);
    CHECK(report.taken == 0);
    REQUIRE(report.not_there.size() == 1);
    CHECK(report.not_there[0].what == catalog::NotThere::What::Market);
    CHECK(report.not_there[0].there == std::vector<std::string>{"United States", "New Zealand"});
    choice.market = "united states";
    choice.words = {"nothing has this"};
    CHECK(report_of(release, folder, choice).not_there.empty());
}

TEST_CASE("release choice: names that are there are told bounded, and a hostile file fills no memory")
{
    catalog::NamesThere names;
    for (int i = 0; i < 30; ++i)
        names.add("Category " + std::to_string(i));
    names.add("category 7");
    names.add("");
    names.add(std::string(5'000, 'x'));
    CHECK(names.count() == 30);
    CHECK(names.may_have("CATEGORY 7"));
    CHECK_FALSE(names.may_have("Bread"));
    CHECK(names.like("Bread").size() == 5);
    CHECK(names.like("Bread").front() == "Category 7"); // of most records
    CHECK(names.like("Categroy 9").front() == "Category 9");
    for (int i = 0; i < 10'000; ++i)
        names.add("More " + std::to_string(i));
    CHECK(names.count() == 2'000);
    CHECK(names.may_have("Bread")); // nobody knows
}

TEST_CASE("release choice: a word is found however its accents and case are written")
{
    const test::TempFolder folder;
    const auto release = release_of(
        folder,
        {{"JALAPE\xC3\x91O CHIPS", "", ""}, {"Jalapeno dip", "", ""}, {"SUGAR-FREE GUM", "", ""}, {"OATS", "", ""}});
    struct Asked {
        const char* word;
        std::size_t taken;
    };
    for (const auto& asked : {Asked{"jalapeno", 2}, Asked{"Jalape\xC3\xB1o", 2}, Asked{"sugar free", 1},
                              Asked{"chip", 1}, Asked{"%", 0}, Asked{"rye", 0}}) {
        CAPTURE(asked.word);
        catalog::ReleaseChoice choice;
        choice.words = {asked.word};
        CHECK(report_of(release, folder, choice).taken == asked.taken);
        std::filesystem::remove(folder.file("shop"));
    }
}
