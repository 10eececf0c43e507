// The lists of aims. Both published lists are FDA's, Interactive Nutrition Facts Label. The class list is common
// practice in label classes: total fat, trans fat and cholesterol stand in no list of the label of 2016.
#include "core/label/aims.h"

#include <algorithm>
#include <iterator>
#include <span>

namespace core {
namespace {

using N = Nutrient;

constexpr N class_less[] = {N::TotalFat, N::SaturatedFat, N::TransFat, N::Cholesterol, N::Sodium, N::AddedSugars};
constexpr N class_more[] = {N::DietaryFiber, N::VitaminD, N::Calcium, N::Iron, N::Potassium};
constexpr N of_2016_less[] = {N::SaturatedFat, N::Sodium, N::AddedSugars};
constexpr N of_2016_more[] = {N::DietaryFiber, N::VitaminD, N::Calcium, N::Iron, N::Potassium};
constexpr N older_less[] = {N::SaturatedFat, N::TransFat, N::Cholesterol, N::Sodium};
constexpr N older_more[] = {N::DietaryFiber, N::VitaminA, N::VitaminC, N::Calcium, N::Iron};

struct List {
    AimList list;
    std::span<const N> less;
    std::span<const N> more;
    std::string_view source;
};

// In the order of AimList.
constexpr List lists[] = {
    {AimList::Class, class_less, class_more, "common practice in label classes"},
    {AimList::Label2016, of_2016_less, of_2016_more, "FDA, Interactive Nutrition Facts Label (label of 2016)"},
    {AimList::LabelOlder, older_less, older_more, "FDA, Interactive Nutrition Facts Label (label before 2016)"},
};

const List& row_of(AimList list)
{
    return lists[static_cast<std::size_t>(list)];
}

} // namespace

Aim aim_of(Nutrient nutrient, AimList list)
{
    const auto& row = row_of(list);
    if (std::ranges::find(row.less, nutrient) != row.less.end())
        return Aim::Less;
    return std::ranges::find(row.more, nutrient) != row.more.end() ? Aim::More : Aim::Neither;
}

std::string_view source_of(AimList list)
{
    return row_of(list).source;
}

} // namespace core
