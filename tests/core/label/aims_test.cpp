// Which way people are taught to look.
#include "core/label/aims.h"

#include <doctest/doctest.h>

#include <map>
#include <string>

namespace test {

// Sources: FDA, Interactive Nutrition Facts Label, "Nutrients to get less of" and "more of" (labels of 2016), and the
// same lists for labels before 2016 (trans fat and cholesterol; vitamins A and C). Total fat: common practice.
TEST_CASE("aims: the class list, nutrient by nutrient")
{
    using core::Aim;
    using N = core::Nutrient;
    const std::map<N, Aim> taught{
        {N::SaturatedFat, Aim::Less}, {N::Sodium, Aim::Less},   {N::AddedSugars, Aim::Less},  {N::TransFat, Aim::Less},
        {N::Cholesterol, Aim::Less},  {N::TotalFat, Aim::Less}, {N::DietaryFiber, Aim::More}, {N::VitaminD, Aim::More},
        {N::Calcium, Aim::More},      {N::Iron, Aim::More},     {N::Potassium, Aim::More},    {N::VitaminA, Aim::More},
        {N::VitaminC, Aim::More},
    };
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        const auto found = taught.find(known.nutrient);
        CHECK(core::aim_of(known.nutrient) == (found == taught.end() ? Aim::Neither : found->second));
    }
}

// Total sugars hold the sugars of fruit and milk too, and calories are energy: nobody is told to look one way.
TEST_CASE("aims: calories, total carbohydrate, total sugars and protein are shown without an aim")
{
    for (const auto nutrient : {core::Nutrient::Calories, core::Nutrient::TotalCarbohydrate,
                                core::Nutrient::TotalSugars, core::Nutrient::Protein})
        CHECK(core::aim_of(nutrient) == core::Aim::Neither);
}

} // namespace test
