#include "catalog/read/release_json.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstring>

using catalog::Derivation;
using catalog::JsonFood;
using catalog::ReleaseText;
using Kind = core::Error::Kind;

namespace {

class Text : public catalog::ByteStream {
public:
    explicit Text(std::string bytes) : bytes_(std::move(bytes)) {}
    core::Result<std::size_t> read(char* into, std::size_t size) override
    {
        const auto count = std::min({size, std::size_t{7}, bytes_.size() - at_});
        std::memcpy(into, bytes_.data() + at_, count);
        at_ += count;
        return count;
    }
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }

private:
    std::string bytes_;
    std::size_t at_ = 0;
};

core::Result<std::vector<JsonFood>> foods_of(const std::string& json)
{
    Text bytes(json);
    std::vector<JsonFood> foods;
    const auto read = catalog::read_release_json(
        bytes, "foods.json", [&](const JsonFood& food) { foods.push_back(food); }, [](std::uint64_t) { return true; });
    if (!read)
        return tl::make_unexpected(read.error());
    return foods;
}

std::string text(const JsonFood& food, ReleaseText which)
{
    return food.texts[static_cast<std::size_t>(which)];
}

} // namespace

// Source of the form: FoodData Central, JSON download of July 2021 (names of the fields, nested nutrients, days as
// M/D/YYYY).
TEST_CASE("release json: a food of a download")
{
    const auto foods = foods_of(R"({"BrandedFoods": [
      {"foodClass": "Branded", "description": "OAT ROUNDS", "foodNutrients": [
         {"type": "FoodNutrient", "id": 1, "nutrient": {"id": 1008, "number": "208", "name": "Energy", "unitName": "kcal"},
          "foodNutrientDerivation": {"code": "LCCS", "foodNutrientSource": {"id": 9, "code": "12"}}, "amount": 357},
         {"nutrient": {"id": 1079}, "foodNutrientDerivation": {"code": "LCSL"}, "amount": 3.6},
         {"nutrient": {"id": 1257}, "foodNutrientDerivation": {"code": "LCCS"}, "amount": 0E-8},
         {"nutrient": {"id": 1051}, "amount": 9.0},
         {"nutrient": {"id": 1003}, "amount": null}],
       "foodAttributes": [{"id": 5, "value": "x"}], "modifiedDate": "7/8/2017", "marketCountry": "United States",
       "brandOwner": "Millbrook Foods", "gtinUpc": "036000291452", "ingredients": "OATS \"ROLLED\".",
       "servingSize": 28.0, "servingSizeUnit": "g", "labelNutrients": {"fat": {"value": 9.99}, "calories": {}},
       "brandedFoodCategory": "Cereal", "publicationDate": "7/29/2021",
       "foodUpdateLog": [{"fdcId": 7, "description": "OLD", "gtinUpc": "1"}], "fdcId": 1863073, "dataType": "Branded"},
      {"fdcId": 2, "description": "RYE"}]})");
    REQUIRE(foods);
    REQUIRE(foods->size() == 2);
    const auto& food = foods->front();
    CHECK(food.fdc_id == 1'863'073);
    CHECK(food.code == "036000291452");
    CHECK(text(food, ReleaseText::Name) == "OAT ROUNDS");
    CHECK(text(food, ReleaseText::Ingredients) == "OATS \"ROLLED\".");
    CHECK(text(food, ReleaseText::ServingSize) == "28.0");
    CHECK(food.market == "United States");
    CHECK(food.published_on == 20'210'729);
    CHECK(food.modified_on == 20'170'708);
    REQUIRE(food.amounts.size() == 3);
    CHECK(food.amounts[0].amount.mantissa == 357);
    CHECK(food.amounts[0].derivation == Derivation::PerServing);
    CHECK(food.amounts[1].derivation == Derivation::LessThan);
    CHECK(food.amounts[2].amount.mantissa == 0);
    CHECK(food.bad_amounts == 1);
    CHECK(foods->back().fdc_id == 2);
}

TEST_CASE("release json: the flat form of the web service's answers, and a bare list")
{
    const auto foods =
        foods_of(R"({"totalHits": 1, "foods": [{"fdcId": 5, "gtinUpc": "9521234543213", "publishedDate": "2021-07-29",
      "foodNutrients": [{"nutrientId": 1093, "value": 1180, "derivationCode": "LCCS", "derivationId": 70,
                         "percentDailyValue": 14}]}], "aggregations": {}})");
    REQUIRE(foods);
    REQUIRE(foods->size() == 1);
    CHECK(foods->front().published_on == 20'210'729);
    REQUIRE(foods->front().amounts.size() == 1);
    CHECK(foods->front().amounts[0].percent == 14);
    CHECK(foods_of(R"([{"fdcId": 5}, {"fdcId": 6}])")->size() == 2);
}

// Source of the form: FoodData Central, web service, one food by its number (August 2023).
TEST_CASE("release json: one food by itself")
{
    const auto foods = foods_of(R"({"fdcId": 5, "description": "RYE", "gtinUpc": "036000291452",
      "foodNutrients": [{"nutrient": {"id": 1093}, "foodNutrientDerivation": {"code": "LCCS"}, "amount": 12.0}],
      "foodUpdateLog": [{"fdcId": 4, "description": "OLD", "foodNutrients": []}], "servingSize": 30.0})");
    REQUIRE(foods);
    REQUIRE(foods->size() == 1);
    CHECK(foods->front().fdc_id == 5);
    CHECK(text(foods->front(), ReleaseText::Name) == "RYE");
    CHECK(text(foods->front(), ReleaseText::ServingSize) == "30.0");
    CHECK(foods->front().amounts.size() == 1);
}

TEST_CASE("release json: a list of foods makes nothing of what stands around it")
{
    const auto foods = foods_of(R"({"fdcId": 9, "foodNutrients": [{"nutrientId": 1093, "value": 1}],
                                    "foods": [{"fdcId": 5}], "description": "around"})");
    REQUIRE(foods);
    REQUIRE(foods->size() == 1);
    CHECK(foods->front().fdc_id == 5);
    CHECK(foods->front().amounts.empty());
}

TEST_CASE("release json: a file without a food is refused")
{
    for (const char* json : {"{}", "[]", R"({"SurveyFoods": [{"fdcId": 5}]})", R"({"BrandedFoods": []})", "7"}) {
        CAPTURE(json);
        const auto refused = foods_of(json);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == Kind::NoFoods);
        CHECK(refused.error().place.source == "foods.json");
    }
}

TEST_CASE("release json: what is cut off, no JSON, or without end is refused with its place")
{
    for (const char* json : {"", "{\"BrandedFoods\": [{\"fdcId\": 5", "no json at all", "{\"BrandedFoods\": [}]"}) {
        CAPTURE(json);
        const auto refused = foods_of(json);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == Kind::TornFile);
        CHECK(refused.error().place.source == "foods.json");
        CHECK(refused.error().place.found.starts_with("byte "));
    }
    CHECK(foods_of(std::string(100'000, '[')).error().kind == Kind::TooLarge);
    CHECK(foods_of("{\"BrandedFoods\": [{\"description\": \"" + std::string(9U << 20U, 'x')).error().kind ==
          Kind::TooLarge);
}
