#include "tests/support/release_figures.h"

#include "core/figure/daily_values.h"
#include "core/figure/rounding.h"
#include "core/figure/wide.h"

#include <array>
#include <cstdio>

namespace test {
namespace {

using N = core::Nutrient;

constexpr PublishedNutrient table[] = {
    {1008, N::Calories, "Energy", "KCAL", "208", 0, 1'000'000'000},
    {1003, N::Protein, "Protein", "G", "203", 2, 1'000'000'000},
    {1004, N::TotalFat, "Total lipid (fat)", "G", "204", 2, 1'000'000'000},
    {1258, N::SaturatedFat, "Fatty acids, total saturated", "G", "606", 2, 1'000'000'000},
    {1257, N::TransFat, "Fatty acids, total trans", "G", "605", 2, 1'000'000'000},
    {1253, N::Cholesterol, "Cholesterol", "MG", "601", 0, 1'000'000},
    {1093, N::Sodium, "Sodium, Na", "MG", "307", 0, 1'000'000},
    {1005, N::TotalCarbohydrate, "Carbohydrate, by difference", "G", "205", 2, 1'000'000'000},
    {1079, N::DietaryFiber, "Fiber, total dietary", "G", "291", 1, 1'000'000'000},
    {2000, N::TotalSugars, "Sugars, total including NLEA", "G", "269", 2, 1'000'000'000},
    {1235, N::AddedSugars, "Sugars, added", "G", "539", 1, 1'000'000'000},
    {1087, N::Calcium, "Calcium, Ca", "MG", "301", 0, 1'000'000},
    {1089, N::Iron, "Iron, Fe", "MG", "303", 2, 1'000'000},
    {1092, N::Potassium, "Potassium, K", "MG", "306", 0, 1'000'000},
    {1114, N::VitaminD, "Vitamin D (D2 + D3)", "UG", "328", 0, 1'000},
    {1110, N::VitaminD, "Vitamin D (D2 + D3), International Units", "IU", "324", 0, 25},
    {1104, N::VitaminA, "Vitamin A, IU", "IU", "318", 0, 300},
    {1162, N::VitaminC, "Vitamin C, total ascorbic acid", "MG", "401", 1, 1'000'000},
};

const PublishedNutrient& published(int id)
{
    for (const auto& nutrient : table)
        if (nutrient.id == id)
            return nutrient;
    return table[0];
}

struct Serving {
    std::int64_t micro;
    bool milliliters;
};
constexpr Serving servings[] = {{28'000'000, false},  {28'350'000, false},  {30'000'000, false},  {32'000'000, false},
                                {39'000'000, false},  {40'000'000, false},  {55'000'000, false},  {85'000'000, false},
                                {100'000'000, false}, {113'000'000, false}, {140'000'000, false}, {170'000'000, false},
                                {227'000'000, false}, {15'000'000, false},  {14'000'000, false},  {5'000'000, false},
                                {240'000'000, true},  {355'000'000, true},  {30'000'000, true},   {15'000'000, true}};

/// The categories whose foods people eat in such amounts (21 CFR 101.12(b) Table 2), by the largest serving.
struct FoodsByServing {
    std::int64_t most_micro;
    std::array<const char*, 4> categories;
};
constexpr FoodsByServing foods_by_serving[] = {
    {20'000'000,
     {"Vegetable & Cooking Oils", "Salad Dressing & Mayonnaise", "Pickles, Olives, Peppers & Relishes", "Candy"}},
    {29'000'000, {"Chips, Pretzels & Snacks", "Cheese", "Candy", "Popcorn, Peanuts, Seeds & Related Snacks"}},
    {34'000'000, {"Cookies & Biscuits", "Crackers & Biscotti", "Chocolate", "Cereal"}},
    {41'000'000, {"Cereal", "Snack, Energy & Granola Bars", "Breads & Buns", "Cookies & Biscuits"}},
    {60'000'000, {"Breads & Buns", "Cereal", "Snack, Energy & Granola Bars", "Pasta by Shape & Type"}},
    {120'000'000, {"Canned Vegetables", "Canned Fruit", "Ice Cream & Frozen Yogurt", "Pizza"}},
    {180'000'000, {"Yogurt", "Pizza", "Canned Fruit", "Rice"}},
    {250'000'000, {"Yogurt", "Other Soups", "Other Soups", "Yogurt"}}};
constexpr std::array by_the_cup = {"Milk", "Soda", "Soda", "Fruit & Vegetable Juice, Nectars & Fruit Drinks"};

const char* one_of_few(Dice& dice, const std::array<const char*, 4>& categories)
{
    return categories[roll(dice, categories.size())];
}

/// The amount per 100 with the release's decimals; a tie goes to the even digit.
std::string per_100(std::int64_t printed_nano, std::int64_t serving_micro, const PublishedNutrient& nutrient)
{
    std::int64_t scale = 1;
    for (int i = 0; i < nutrient.decimals; ++i)
        scale *= 10;
    const core::Wide above = static_cast<core::Wide>(printed_nano) * 100 * scale * 1'000'000;
    const core::Wide below = static_cast<core::Wide>(serving_micro) * nutrient.unit_nano;
    auto whole = static_cast<std::int64_t>(above / below);
    const core::Wide rest = above % below * 2;
    if (rest > below || (rest == below && whole % 2 != 0))
        ++whole;
    char text[40];
    if (nutrient.decimals == 0)
        std::snprintf(text, sizeof text, "%lld.0", static_cast<long long>(whole));
    else
        std::snprintf(text, sizeof text, "%lld.%0*lld", static_cast<long long>(whole / scale), nutrient.decimals,
                      static_cast<long long>(whole % scale));
    std::string trimmed = text; // the published files end at the last digit that counts: 3.5, not 3.50
    while (trimmed.back() == '0' && trimmed[trimmed.size() - 2] != '.')
        trimmed.pop_back();
    return trimmed;
}

/// What a food holds of fat, carbohydrate and protein in a serving, in billionths of a gram.
class Food {
public:
    Food(Dice& dice, const MadeRecord& record) : dice_(&dice), grams_nano_(record.serving_micro * 1'000)
    {
        fat = share(happens(dice, 300) ? 400 : 120);
        carbohydrate = share(happens(dice, 500) ? 750 : 250);
        if (fat + carbohydrate > grams_nano_ * 9 / 10)
            fat /= 8;
        protein = part((grams_nano_ - fat - carbohydrate) / 3);
    }
    std::int64_t part(std::int64_t whole) const
    {
        return static_cast<std::int64_t>(static_cast<core::Wide>(whole) * roll(*dice_, 1001) / 1000);
    }
    std::int64_t share(std::uint64_t thousandths) const
    {
        return part(static_cast<std::int64_t>(static_cast<core::Wide>(grams_nano_) * thousandths / 1000));
    }

    std::int64_t fat;
    std::int64_t carbohydrate;
    std::int64_t protein;

private:
    Dice* dice_;
    std::int64_t grams_nano_;
};

class Figures {
public:
    Figures(MadeRecord& record, core::Panel panel) : record_(record), panel_(panel) {}

    /// Prints a true amount by the rule.
    void amount(int id, std::int64_t nano)
    {
        const auto& nutrient = published(id);
        const auto figure = core::printed_figure(nutrient.nutrient, core::Content::from_nano(nano), panel_);
        add(nutrient, figure.amount.nano(), figure.less_than, false);
    }

    /// Prints a percent alone, as labels before 2016 do for vitamins and minerals.
    void percent(int id, std::int64_t percent)
    {
        const auto& nutrient = published(id);
        const auto daily_value = core::daily_value(nutrient.nutrient, panel_, core::Audience::Adult);
        // 5,000 IU of vitamin A: 21 CFR 101.9(c)(8)(iv) before 2016
        const std::int64_t whole = daily_value ? daily_value->nano() : 5'000 * nutrient.unit_nano;
        add(nutrient, whole / 100 * percent, false, true);
    }

private:
    void add(const PublishedNutrient& nutrient, std::int64_t nano, bool less_than, bool by_percent)
    {
        record_.figures.push_back({nutrient.nutrient, nano, less_than, by_percent, nutrient.id,
                                   per_100(nano, record_.serving_micro, nutrient)});
    }
    MadeRecord& record_;
    core::Panel panel_;
};

constexpr std::int64_t printed_percents[] = {0, 0, 2, 4, 6, 8, 10, 15, 20, 25, 30};

void minerals(Dice& dice, bool older_panel, Figures& figures)
{
    if (older_panel) {
        for (const int id : {1087, 1089, 1104, 1162})
            figures.percent(id, printed_percents[roll(dice, std::size(printed_percents))]);
        return;
    }
    figures.amount(1087, static_cast<std::int64_t>(roll(dice, 350)) * 1'000'000);
    figures.amount(1089, static_cast<std::int64_t>(roll(dice, 60)) * 100'000);
    figures.amount(1092, static_cast<std::int64_t>(roll(dice, 500)) * 1'000'000);
    if (happens(dice, 500))
        figures.amount(1114, static_cast<std::int64_t>(roll(dice, 40)) * 100);
}

} // namespace

std::span<const PublishedNutrient> published_nutrients()
{
    return table;
}

void make_figures(Dice& dice, bool older_panel, MadeRecord& record)
{
    const auto& serving = servings[roll(dice, std::size(servings))];
    record.serving_micro = serving.micro;
    record.in_milliliters = serving.milliliters;
    const Food food(dice, record);
    Figures figures(record, older_panel ? core::Panel::Older : core::Panel::Of2016);
    const auto sugars = food.part(food.carbohydrate);
    figures.amount(1257, happens(dice, 20) ? food.part(food.fat / 10) : 0);
    figures.amount(1258, food.part(food.fat / 2));
    figures.amount(1004, food.fat);
    figures.amount(1003, food.protein);
    figures.amount(1008, food.fat * 9 + (food.carbohydrate + food.protein) * 4);
    figures.amount(1253, static_cast<std::int64_t>(roll(dice, 60)) * 1'000'000 * (happens(dice, 400) ? 1 : 0));
    figures.amount(1093, food.share(15));
    figures.amount(1005, food.carbohydrate);
    figures.amount(1079, food.part((food.carbohydrate - sugars) / 3));
    figures.amount(2000, sugars);
    if (!older_panel)
        figures.amount(1235, food.part(sugars));
    minerals(dice, older_panel, figures);
}

const char* category_text(Dice& dice, const MadeRecord& record)
{
    if (happens(dice, 30))
        return food_category(dice); // a maker's slip
    if (record.in_milliliters)
        return record.serving_micro < 100'000'000 ? "Salad Dressing & Mayonnaise" : one_of_few(dice, by_the_cup);
    for (const auto& foods : foods_by_serving)
        if (record.serving_micro <= foods.most_micro)
            return one_of_few(dice, foods.categories);
    return "Other Soups";
}

std::string serving_text(const MadeRecord& record)
{
    const auto as_float = static_cast<float>(static_cast<double>(record.serving_micro) / 1e6);
    char text[40];
    std::snprintf(text, sizeof text, "%.17g", static_cast<double>(as_float));
    const std::string full = text;
    return full.find('.') == std::string::npos ? full + ".0" : full;
}

std::string unit_text(Dice& dice, const MadeRecord& record)
{
    if (record.published_on < "2023-03")
        return happens(dice, 5) ? "" : record.in_milliliters ? "ml" : "g";
    if (record.published_on < "2023-05" && happens(dice, 330))
        return record.in_milliliters ? "IU" : "MG";
    return record.in_milliliters ? "MLT" : "GRM";
}

std::string household_text(Dice& dice, const MadeRecord& record)
{
    constexpr const char* solid[] = {"1 cup",    "0.5 cup",  "2 COOKIES",   "1 BAR",
                                     "1 ONZ",    "15 CHIPS", "1/4 package", "1 slice",
                                     "3 PIECES", "2 Tbsp",   "1 container", "About 12 crackers"};
    constexpr const char* liquid[] = {"8 OZA", "1 cup", "1 can", "2 Tbsp", "1 BOTTLE", "8 fl oz"};
    return record.in_milliliters ? liquid[roll(dice, std::size(liquid))] : solid[roll(dice, std::size(solid))];
}

std::string weight_text(Dice& dice, const MadeRecord& record)
{
    const auto servings_in_it = static_cast<std::int64_t>(1 + roll(dice, 16));
    const auto metric = record.serving_micro * servings_in_it / 1'000'000;
    const auto ounces = record.in_milliliters ? metric * 10 / 296 : metric * 10 / 284;
    return std::to_string(ounces) + (record.in_milliliters ? " fl oz/" : " oz/") + std::to_string(metric) +
           (record.in_milliliters ? " ml" : " g");
}

} // namespace test
