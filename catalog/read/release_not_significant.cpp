#include "catalog/read/release_not_significant.h"

#include <cctype>
#include <string>

namespace catalog {
namespace {

using N = core::Nutrient;

struct Name {
    std::string_view words;
    N nutrient;
};

// Longer names stand before those that they hold.
constexpr Name names[] = {
    {"saturated fat", N::SaturatedFat},
    {"sat fat", N::SaturatedFat},
    {"trans fat", N::TransFat},
    {"cholesterol", N::Cholesterol},
    {"sodium", N::Sodium},
    {"carbohydrate", N::TotalCarbohydrate},
    {"fiber", N::DietaryFiber},
    {"added sugar", N::AddedSugars},
    {"total sugar", N::TotalSugars},
    {"sugars", N::TotalSugars},
    {"protein", N::Protein},
    {"vitamin d", N::VitaminD},
    {"calcium", N::Calcium},
    {"iron", N::Iron},
    {"potassium", N::Potassium},
    {"vitamin a", N::VitaminA},
    {"vitamin c", N::VitaminC},
    {"calories from fat", N::Calories},
    {"total fat", N::TotalFat},
};

} // namespace

std::set<core::Nutrient> read_not_significant(std::string_view statement)
{
    std::string rest(statement);
    for (char& letter : rest)
        letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    std::set<core::Nutrient> nutrients;
    for (const auto& name : names)
        for (auto at = rest.find(name.words); at != std::string::npos; at = rest.find(name.words, at)) {
            rest.replace(at, name.words.size(), name.words.size(), '.'); // so that no shorter name is found in it
            if (name.nutrient != N::Calories)                            // "calories from fat" is no line of ours
                nutrients.insert(name.nutrient);
        }
    return nutrients;
}

} // namespace catalog
