// Categories of Branded Foods by rising name, each with the reference amount of 21 CFR 101.12(b) that its foods have;
// which category is which is our reading. Left out are categories of foods with several reference amounts that lie far
// apart: hard and soft candy, grated and sliced cheese, dry and cooked rice, juice to drink and lemon juice. The names
// are those of USDA FoodData Central, branded_food_category (releases of 2019 to 2023).
#include "core/rules/categories.h"

namespace core {
namespace {

constexpr CategoryRow rows[] = {
    {"Baby/Infant  Foods/Beverages", "infant_dinners_strained"},
    {"Baby/Infant Foods/Beverages", "infant_dinners_strained"},
    {"Biscuits/Cookies", "cookies"},
    {"Biscuits/Cookies (Shelf Stable)", "cookies"},
    {"Bread", "breads_rolls"},
    {"Bread (Frozen)", "breads_rolls"},
    {"Breads & Buns", "breads_rolls"},
    {"Cakes, Cupcakes, Snack Cakes", "cakes_medium"},
    {"Canned & Bottled Beans", "beans_in_sauce_or_liquid"},
    {"Canned Soup", "soups"},
    {"Canned Tuna", "fish_game_canned"},
    {"Cereal/Muesli Bars", "grain_bars"},
    {"Chips, Pretzels & Snacks", "snacks"},
    {"Chocolate", "candies"},
    {"Cookies & Biscuits", "cookies"},
    {"Crackers & Biscotti", "crackers_snacks"},
    {"Flavored Snack Crackers", "crackers_snacks"},
    {"French Fries, Potatoes & Onion Rings", "french_fries_frozen"},
    {"Frozen Fish & Seafood", "fish_without_sauce_uncooked"},
    {"Frozen Pancakes, Waffles, French Toast & Crepes", "pancakes_prepared"},
    {"Frozen Vegetables", "vegetables"},
    {"Honey", "honey_jams"},
    {"Ice Cream & Frozen Yogurt", "ice_cream"},
    {"Iced & Bottle Tea", "beverages"},
    {"Jam, Jelly & Fruit Spreads", "honey_jams"},
    {"Milk", "milk"},
    {"Nut & Seed Butters", "nut_butters"},
    {"Other Soups", "soups"},
    {"Pasta by Shape & Type", "pasta_dry"},
    {"Pizza", "mixed_dish_not_by_cup"},
    {"Plant Based Milk", "milk"},
    {"Popcorn, Peanuts, Seeds & Related Snacks", "snacks"},
    {"Prepared Wraps and Burittos", "mixed_dish_not_by_cup"},
    {"Snack, Energy & Granola Bars", "grain_bars"},
    {"Soda", "beverages"},
    {"Sport Drinks", "beverages"},
    {"Water", "beverages"},
    {"Yogurt", "yogurt"},
    {"Yogurt (Perishable)", "yogurt"},
    {"Yogurt/Yogurt Substitutes", "yogurt"},
};

} // namespace

std::span<const CategoryRow> category_rows()
{
    return rows;
}

} // namespace core
