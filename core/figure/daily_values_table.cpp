// The rows of the Daily Values, in billionths of a gram, each as the rule prints it.
// Sources: 21 CFR 101.9(c)(8)(iv) (RDI) and (c)(9) (DRV) as amended 27 May 2016; before 2016: the same paragraphs as
// they stood, and 21 CFR 101.9(c)(7)(iii) for protein. Rows marked `memory` were not found in a text of the rule.
#include "core/figure/daily_values_table.h"

namespace core {
namespace {

using N = Nutrient;
using P = Panel;
using A = Audience;

constexpr DailyValueRow table[] = {
    {N::TotalFat, P::Of2016, A::Adult, 78'000'000'000},              // 78 g
    {N::TotalFat, P::Of2016, A::Ages1To3, 39'000'000'000},           // 39 g
    {N::TotalFat, P::Of2016, A::Infant, 30'000'000'000},             // 30 g
    {N::TotalFat, P::Older, A::Adult, 65'000'000'000},               // 65 g
    {N::SaturatedFat, P::Of2016, A::Adult, 20'000'000'000},          // 20 g
    {N::SaturatedFat, P::Of2016, A::Ages1To3, 10'000'000'000},       // 10 g
    {N::SaturatedFat, P::Older, A::Adult, 20'000'000'000},           // 20 g
    {N::Cholesterol, P::Of2016, A::Adult, 300'000'000},              // 300 mg
    {N::Cholesterol, P::Of2016, A::Ages1To3, 300'000'000},           // 300 mg
    {N::Cholesterol, P::Older, A::Adult, 300'000'000},               // 300 mg
    {N::Sodium, P::Of2016, A::Adult, 2'300'000'000},                 // 2300 mg
    {N::Sodium, P::Of2016, A::Ages1To3, 1'500'000'000},              // 1500 mg
    {N::Sodium, P::Older, A::Adult, 2'400'000'000},                  // 2400 mg
    {N::TotalCarbohydrate, P::Of2016, A::Adult, 275'000'000'000},    // 275 g
    {N::TotalCarbohydrate, P::Of2016, A::Ages1To3, 150'000'000'000}, // 150 g
    {N::TotalCarbohydrate, P::Of2016, A::Infant, 95'000'000'000},    // 95 g
    {N::TotalCarbohydrate, P::Older, A::Adult, 300'000'000'000},     // 300 g
    {N::DietaryFiber, P::Of2016, A::Adult, 28'000'000'000},          // 28 g
    {N::DietaryFiber, P::Of2016, A::Ages1To3, 14'000'000'000},       // 14 g
    {N::DietaryFiber, P::Older, A::Adult, 25'000'000'000},           // 25 g
    {N::AddedSugars, P::Of2016, A::Adult, 50'000'000'000},           // 50 g
    {N::AddedSugars, P::Of2016, A::Ages1To3, 25'000'000'000},        // 25 g
    {N::Protein, P::Of2016, A::Adult, 50'000'000'000},               // 50 g
    {N::Protein, P::Of2016, A::Ages1To3, 13'000'000'000},            // 13 g
    {N::Protein, P::Of2016, A::Infant, 11'000'000'000},              // 11 g
    {N::Protein, P::Older, A::Adult, 50'000'000'000},                // 50 g
    {N::Protein, P::Older, A::Ages1To3, 16'000'000'000},             // 16 g, `memory`
    {N::Protein, P::Older, A::Infant, 14'000'000'000},               // 14 g, `memory`
    {N::VitaminD, P::Of2016, A::Adult, 20'000},                      // 20 mcg
    {N::VitaminD, P::Of2016, A::Ages1To3, 15'000},                   // 15 mcg
    {N::VitaminD, P::Of2016, A::Infant, 10'000},                     // 10 mcg
    {N::Calcium, P::Of2016, A::Adult, 1'300'000'000},                // 1300 mg
    {N::Calcium, P::Of2016, A::Ages1To3, 700'000'000},               // 700 mg
    {N::Calcium, P::Of2016, A::Infant, 260'000'000},                 // 260 mg
    {N::Calcium, P::Older, A::Adult, 1'000'000'000},                 // 1000 mg
    {N::Iron, P::Of2016, A::Adult, 18'000'000},                      // 18 mg
    {N::Iron, P::Of2016, A::Ages1To3, 7'000'000},                    // 7 mg
    {N::Iron, P::Of2016, A::Infant, 11'000'000},                     // 11 mg
    {N::Iron, P::Older, A::Adult, 18'000'000},                       // 18 mg
    {N::Potassium, P::Of2016, A::Adult, 4'700'000'000},              // 4700 mg
    {N::Potassium, P::Of2016, A::Ages1To3, 3'000'000'000},           // 3000 mg
    {N::Potassium, P::Of2016, A::Infant, 700'000'000},               // 700 mg
    {N::Potassium, P::Older, A::Adult, 3'500'000'000},               // 3500 mg
    {N::VitaminA, P::Of2016, A::Adult, 900'000},                     // 900 mcg RAE
    {N::VitaminA, P::Of2016, A::Ages1To3, 300'000},                  // 300 mcg RAE
    {N::VitaminA, P::Of2016, A::Infant, 500'000},                    // 500 mcg RAE
    {N::VitaminC, P::Of2016, A::Adult, 90'000'000},                  // 90 mg
    {N::VitaminC, P::Of2016, A::Ages1To3, 15'000'000},               // 15 mg
    {N::VitaminC, P::Of2016, A::Infant, 50'000'000},                 // 50 mg
    {N::VitaminC, P::Older, A::Adult, 60'000'000},                   // 60 mg
    {N::VitaminE, P::Of2016, A::Adult, 15'000'000},                  // 15 mg
    {N::VitaminE, P::Of2016, A::Ages1To3, 6'000'000},                // 6 mg
    {N::VitaminE, P::Of2016, A::Infant, 5'000'000},                  // 5 mg
    {N::VitaminK, P::Of2016, A::Adult, 120'000},                     // 120 mcg
    {N::VitaminK, P::Of2016, A::Ages1To3, 30'000},                   // 30 mcg
    {N::VitaminK, P::Of2016, A::Infant, 2'500},                      // 2.5 mcg
    {N::VitaminK, P::Older, A::Adult, 80'000},                       // 80 mcg
    {N::Thiamin, P::Of2016, A::Adult, 1'200'000},                    // 1.2 mg
    {N::Thiamin, P::Of2016, A::Ages1To3, 500'000},                   // 0.5 mg
    {N::Thiamin, P::Of2016, A::Infant, 300'000},                     // 0.3 mg
    {N::Thiamin, P::Older, A::Adult, 1'500'000},                     // 1.5 mg
    {N::Riboflavin, P::Of2016, A::Adult, 1'300'000},                 // 1.3 mg
    {N::Riboflavin, P::Of2016, A::Ages1To3, 500'000},                // 0.5 mg
    {N::Riboflavin, P::Of2016, A::Infant, 400'000},                  // 0.4 mg
    {N::Riboflavin, P::Older, A::Adult, 1'700'000},                  // 1.7 mg
    {N::Niacin, P::Of2016, A::Adult, 16'000'000},                    // 16 mg NE
    {N::Niacin, P::Of2016, A::Ages1To3, 6'000'000},                  // 6 mg NE
    {N::Niacin, P::Of2016, A::Infant, 4'000'000},                    // 4 mg NE
    {N::Niacin, P::Older, A::Adult, 20'000'000},                     // 20 mg
    {N::VitaminB6, P::Of2016, A::Adult, 1'700'000},                  // 1.7 mg
    {N::VitaminB6, P::Of2016, A::Ages1To3, 500'000},                 // 0.5 mg
    {N::VitaminB6, P::Of2016, A::Infant, 300'000},                   // 0.3 mg
    {N::VitaminB6, P::Older, A::Adult, 2'000'000},                   // 2.0 mg
    {N::Folate, P::Of2016, A::Adult, 400'000},                       // 400 mcg DFE
    {N::Folate, P::Of2016, A::Ages1To3, 150'000},                    // 150 mcg DFE
    {N::Folate, P::Of2016, A::Infant, 80'000},                       // 80 mcg DFE
    {N::Folate, P::Older, A::Adult, 400'000},                        // 400 mcg
    {N::VitaminB12, P::Of2016, A::Adult, 2'400},                     // 2.4 mcg
    {N::VitaminB12, P::Of2016, A::Ages1To3, 900},                    // 0.9 mcg
    {N::VitaminB12, P::Of2016, A::Infant, 500},                      // 0.5 mcg
    {N::VitaminB12, P::Older, A::Adult, 6'000},                      // 6 mcg
    {N::Biotin, P::Of2016, A::Adult, 30'000},                        // 30 mcg
    {N::Biotin, P::Of2016, A::Ages1To3, 8'000},                      // 8 mcg
    {N::Biotin, P::Of2016, A::Infant, 6'000},                        // 6 mcg
    {N::Biotin, P::Older, A::Adult, 300'000},                        // 300 mcg
    {N::PantothenicAcid, P::Of2016, A::Adult, 5'000'000},            // 5 mg
    {N::PantothenicAcid, P::Of2016, A::Ages1To3, 2'000'000},         // 2 mg
    {N::PantothenicAcid, P::Of2016, A::Infant, 1'800'000},           // 1.8 mg
    {N::PantothenicAcid, P::Older, A::Adult, 10'000'000},            // 10 mg
    {N::Phosphorus, P::Of2016, A::Adult, 1'250'000'000},             // 1250 mg
    {N::Phosphorus, P::Of2016, A::Ages1To3, 460'000'000},            // 460 mg
    {N::Phosphorus, P::Of2016, A::Infant, 275'000'000},              // 275 mg
    {N::Phosphorus, P::Older, A::Adult, 1'000'000'000},              // 1000 mg
    {N::Iodine, P::Of2016, A::Adult, 150'000},                       // 150 mcg
    {N::Iodine, P::Of2016, A::Ages1To3, 90'000},                     // 90 mcg
    {N::Iodine, P::Of2016, A::Infant, 130'000},                      // 130 mcg
    {N::Iodine, P::Older, A::Adult, 150'000},                        // 150 mcg
    {N::Magnesium, P::Of2016, A::Adult, 420'000'000},                // 420 mg
    {N::Magnesium, P::Of2016, A::Ages1To3, 80'000'000},              // 80 mg
    {N::Magnesium, P::Of2016, A::Infant, 75'000'000},                // 75 mg
    {N::Magnesium, P::Older, A::Adult, 400'000'000},                 // 400 mg
    {N::Zinc, P::Of2016, A::Adult, 11'000'000},                      // 11 mg
    {N::Zinc, P::Of2016, A::Ages1To3, 3'000'000},                    // 3 mg
    {N::Zinc, P::Of2016, A::Infant, 3'000'000},                      // 3 mg
    {N::Zinc, P::Older, A::Adult, 15'000'000},                       // 15 mg
    {N::Selenium, P::Of2016, A::Adult, 55'000},                      // 55 mcg
    {N::Selenium, P::Of2016, A::Ages1To3, 20'000},                   // 20 mcg
    {N::Selenium, P::Of2016, A::Infant, 20'000},                     // 20 mcg
    {N::Selenium, P::Older, A::Adult, 70'000},                       // 70 mcg
    {N::Copper, P::Of2016, A::Adult, 900'000},                       // 0.9 mg
    {N::Copper, P::Of2016, A::Ages1To3, 300'000},                    // 0.3 mg
    {N::Copper, P::Of2016, A::Infant, 200'000},                      // 0.2 mg
    {N::Copper, P::Older, A::Adult, 2'000'000},                      // 2 mg
    {N::Manganese, P::Of2016, A::Adult, 2'300'000},                  // 2.3 mg
    {N::Manganese, P::Of2016, A::Ages1To3, 1'200'000},               // 1.2 mg
    {N::Manganese, P::Of2016, A::Infant, 600'000},                   // 0.6 mg
    {N::Manganese, P::Older, A::Adult, 2'000'000},                   // 2 mg
    {N::Chromium, P::Of2016, A::Adult, 35'000},                      // 35 mcg
    {N::Chromium, P::Of2016, A::Ages1To3, 11'000},                   // 11 mcg
    {N::Chromium, P::Of2016, A::Infant, 5'500},                      // 5.5 mcg
    {N::Chromium, P::Older, A::Adult, 120'000},                      // 120 mcg
    {N::Molybdenum, P::Of2016, A::Adult, 45'000},                    // 45 mcg
    {N::Molybdenum, P::Of2016, A::Ages1To3, 17'000},                 // 17 mcg
    {N::Molybdenum, P::Of2016, A::Infant, 3'000},                    // 3 mcg
    {N::Molybdenum, P::Older, A::Adult, 75'000},                     // 75 mcg
    {N::Chloride, P::Of2016, A::Adult, 2'300'000'000},               // 2300 mg
    {N::Chloride, P::Of2016, A::Ages1To3, 1'500'000'000},            // 1500 mg
    {N::Chloride, P::Of2016, A::Infant, 570'000'000},                // 570 mg
    {N::Chloride, P::Older, A::Adult, 3'400'000'000},                // 3400 mg
    {N::Choline, P::Of2016, A::Adult, 550'000'000},                  // 550 mg
    {N::Choline, P::Of2016, A::Ages1To3, 200'000'000},               // 200 mg
    {N::Choline, P::Of2016, A::Infant, 150'000'000},                 // 150 mg
};

} // namespace

std::span<const DailyValueRow> daily_value_rows()
{
    return table;
}

} // namespace core
