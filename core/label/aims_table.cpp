// The class list. Sources: FDA, Interactive Nutrition Facts Label (less: saturated fat, sodium, added sugars; before
// 2016 also trans fat and cholesterol; more: dietary fiber, vitamin D, calcium, iron, potassium; before 2016 vitamins A
// and C). Total fat under "less" is common practice in label classes and in no FDA list; so are trans fat and
// cholesterol on labels of 2016.
#include "core/label/aims.h"

namespace core {
namespace {

constexpr Nutrient less[] = {
    Nutrient::TotalFat,    Nutrient::SaturatedFat, Nutrient::TransFat,
    Nutrient::Cholesterol, Nutrient::Sodium,       Nutrient::AddedSugars,
};

constexpr Nutrient more[] = {
    Nutrient::DietaryFiber, Nutrient::VitaminD, Nutrient::Calcium,  Nutrient::Iron,
    Nutrient::Potassium,    Nutrient::VitaminA, Nutrient::VitaminC,
};

} // namespace

Aim aim_of(Nutrient nutrient)
{
    for (const Nutrient n : less)
        if (n == nutrient)
            return Aim::Less;
    for (const Nutrient n : more)
        if (n == nutrient)
            return Aim::More;
    return Aim::Neither;
}

} // namespace core
