// Which way people are taught to look.
#include "core/label/aims.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace test {

using core::Aim;
using core::AimList;
using N = core::Nutrient;

namespace {

struct Taught {
    AimList list;
    std::vector<N> less;
    std::vector<N> more;
};

} // namespace

// Sources: FDA, Interactive Nutrition Facts Label, "Nutrients to get less of" and "more of" (label of 2016), and the
// same lists for the label before it (trans fat and cholesterol; vitamins A and C). The class list: common practice.
TEST_CASE("aims: each list, nutrient by nutrient")
{
    const Taught lists[] = {
        {AimList::Class,
         {N::TotalFat, N::SaturatedFat, N::TransFat, N::Cholesterol, N::Sodium, N::AddedSugars},
         {N::DietaryFiber, N::VitaminD, N::Calcium, N::Iron, N::Potassium}},
        {AimList::Label2016,
         {N::SaturatedFat, N::Sodium, N::AddedSugars},
         {N::DietaryFiber, N::VitaminD, N::Calcium, N::Iron, N::Potassium}},
        {AimList::LabelOlder,
         {N::SaturatedFat, N::TransFat, N::Cholesterol, N::Sodium},
         {N::DietaryFiber, N::VitaminA, N::VitaminC, N::Calcium, N::Iron}},
    };
    for (const auto& taught : lists) {
        CAPTURE(static_cast<int>(taught.list));
        CHECK_FALSE(core::source_of(taught.list).empty());
        for (const auto& known : core::nutrients()) {
            CAPTURE(std::string(known.key));
            Aim aim = Aim::Neither;
            if (std::ranges::find(taught.less, known.nutrient) != taught.less.end())
                aim = Aim::Less;
            if (std::ranges::find(taught.more, known.nutrient) != taught.more.end())
                aim = Aim::More;
            CHECK(core::aim_of(known.nutrient, taught.list) == aim);
        }
    }
    CHECK(core::aim_of(N::TotalFat) == Aim::Less); // the class list is the default
}

// Total sugars hold the sugars of fruit and milk too, and calories are energy: nobody is told to look one way.
TEST_CASE("aims: calories, total carbohydrate, total sugars and protein are shown without an aim")
{
    for (const auto list : {AimList::Class, AimList::Label2016, AimList::LabelOlder})
        for (const auto nutrient : {N::Calories, N::TotalCarbohydrate, N::TotalSugars, N::Protein})
            CHECK(core::aim_of(nutrient, list) == Aim::Neither);
}

} // namespace test
