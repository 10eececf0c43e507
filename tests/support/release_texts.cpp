#include "tests/support/release_texts.h"

#include <cmath>
#include <iterator>
#include <string_view>

namespace test {
namespace {

/// A place in a list where the first ones are the most common: the share of the nth goes with 1/n, as words do
/// (G. K. Zipf, Human Behavior and the Principle of Least Effort, 1949).
std::uint64_t common_first(Dice& dice, std::uint64_t length)
{
    const double share = static_cast<double>(roll(dice, 1U << 30U)) / static_cast<double>(1U << 30U);
    return static_cast<std::uint64_t>(std::pow(static_cast<double>(length), share)) - 1;
}

template<std::size_t Length>
std::string_view one_of(Dice& dice, const std::string_view (&words)[Length])
{
    return words[roll(dice, Length)];
}

constexpr std::string_view starts[] = {"bran", "quin", "dor",  "mel", "tal", "ver", "hol", "cas", "lin", "mor",
                                       "sal",  "ten",  "gar",  "pel", "wes", "nor", "ash", "bel", "cor", "dun",
                                       "el",   "fen",  "glen", "har", "ken", "lor", "mar", "nel", "os",  "pra",
                                       "ros",  "sil",  "tor",  "ul",  "val", "wil", "yar", "zel", "bri", "cla"};
constexpr std::string_view middles[] = {"a",  "e",  "i",  "o",  "ta", "ri", "lo", "ma", "ne", "vi", "do", "sa",
                                        "me", "ra", "li", "no", "ca", "be", "fi", "go", "pe", "to", "u",  ""};
constexpr std::string_view ends[] = {"vale", "ra",   "wick",  "ton",  "dale", "ro",  "mont", "field", "lla",
                                     "nia",  "der",  "brook", "ford", "na",   "sta", "more", "land",  "ven",
                                     "lin",  "ster", "ria",   "bury", "ley",  "go",  "mar",  "th"};

/// The nth invented word: always the same one.
std::string invented(std::uint64_t nth)
{
    std::string word(starts[nth % std::size(starts)]);
    nth /= std::size(starts);
    word += middles[nth % std::size(middles)];
    nth /= std::size(middles);
    word += ends[nth % std::size(ends)];
    nth /= std::size(ends);
    if (nth > 0)
        word += std::string(middles[nth % std::size(middles)]) +
                std::string(ends[(nth / std::size(middles)) % std::size(ends)]);
    return word;
}

std::string capital(std::string word)
{
    word.front() = static_cast<char>(word.front() - 'a' + 'A');
    return word;
}

std::string upper(std::string text)
{
    for (char& letter : text)
        if (letter >= 'a' && letter <= 'z')
            letter = static_cast<char>(letter - 'a' + 'A');
    return text;
}

constexpr std::string_view name_words[] = {
    "chocolate", "organic",  "cheese",  "chicken",  "cookies",  "sauce",   "milk",     "bread",      "vanilla",
    "original",  "whole",    "sweet",   "almond",   "beef",     "butter",  "mix",      "snack",      "fruit",
    "yogurt",    "potato",   "chips",   "crackers", "cereal",   "honey",   "oat",      "wheat",      "corn",
    "rice",      "beans",    "soup",    "pasta",    "tomato",   "garlic",  "onion",    "pepper",     "spicy",
    "hot",       "smoked",   "roasted", "salted",   "unsalted", "reduced", "fat",      "low",        "sodium",
    "light",     "classic",  "creamy",  "crunchy",  "thin",     "sliced",  "shredded", "cheddar",    "mozzarella",
    "cream",     "ice",      "frozen",  "pizza",    "sausage",  "turkey",  "ham",      "bacon",      "tuna",
    "salmon",    "shrimp",   "juice",   "apple",    "orange",   "grape",   "berry",    "strawberry", "blueberry",
    "raspberry", "lemon",    "lime",    "peach",    "mango",    "coconut", "peanut",   "cashew",     "walnut",
    "raisin",    "cinnamon", "caramel", "mint",     "coffee",   "tea",     "water",    "drink",      "bar",
    "granola",   "dressing", "vinegar", "oil",      "salsa",    "tortilla"};

constexpr std::string_view parts[] = {"sugar",
                                      "salt",
                                      "water",
                                      "wheat flour",
                                      "enriched flour (wheat flour, niacin, reduced iron, thiamin mononitrate, "
                                      "riboflavin, folic acid)",
                                      "corn syrup",
                                      "high fructose corn syrup",
                                      "soybean oil",
                                      "palm oil",
                                      "canola oil",
                                      "natural flavor",
                                      "natural flavors",
                                      "artificial flavor",
                                      "citric acid",
                                      "soy lecithin",
                                      "modified corn starch",
                                      "whey",
                                      "nonfat milk",
                                      "cream",
                                      "butter (cream, salt)",
                                      "eggs",
                                      "egg whites",
                                      "baking soda",
                                      "yeast",
                                      "dextrose",
                                      "maltodextrin",
                                      "spices",
                                      "garlic powder",
                                      "onion powder",
                                      "black pepper",
                                      "paprika",
                                      "tomato paste",
                                      "tomatoes",
                                      "vinegar",
                                      "distilled vinegar",
                                      "xanthan gum",
                                      "guar gum",
                                      "carrageenan",
                                      "caramel color",
                                      "annatto (color)",
                                      "red 40",
                                      "yellow 5",
                                      "yellow 6",
                                      "blue 1",
                                      "beta carotene",
                                      "potassium sorbate (preservative)",
                                      "sodium benzoate (preservative)",
                                      "sorbic acid",
                                      "calcium propionate",
                                      "tocopherols",
                                      "ascorbic acid",
                                      "vitamin a palmitate",
                                      "vitamin d3",
                                      "niacinamide",
                                      "zinc oxide",
                                      "calcium carbonate",
                                      "iron",
                                      "cocoa",
                                      "cocoa processed with alkali",
                                      "chocolate liquor",
                                      "cocoa butter",
                                      "vanilla extract",
                                      "vanillin",
                                      "honey",
                                      "molasses",
                                      "brown sugar",
                                      "invert sugar",
                                      "cane sugar",
                                      "organic cane sugar",
                                      "brown rice",
                                      "rice flour",
                                      "white rice",
                                      "whole grain oats",
                                      "rolled oats",
                                      "corn meal",
                                      "corn flour",
                                      "corn starch",
                                      "potatoes",
                                      "potato starch",
                                      "tapioca starch",
                                      "pea protein",
                                      "soy protein isolate",
                                      "wheat gluten",
                                      "malted barley flour",
                                      "peanuts",
                                      "almonds",
                                      "cashews",
                                      "walnuts",
                                      "pecans",
                                      "coconut",
                                      "sunflower seeds",
                                      "sesame seeds",
                                      "raisins",
                                      "apples",
                                      "apple juice concentrate",
                                      "strawberries",
                                      "blueberries",
                                      "lemon juice concentrate",
                                      "orange juice",
                                      "pasteurized milk",
                                      "cheese cultures",
                                      "enzymes",
                                      "cheddar cheese (pasteurized milk, "
                                      "cheese cultures, salt, enzymes)",
                                      "parmesan cheese",
                                      "chicken breast",
                                      "chicken broth",
                                      "beef",
                                      "pork",
                                      "turkey",
                                      "sodium phosphate",
                                      "sodium nitrite",
                                      "yeast extract",
                                      "hydrolyzed soy protein",
                                      "monosodium glutamate",
                                      "disodium inosinate",
                                      "disodium guanylate",
                                      "mono- and diglycerides",
                                      "gelatin",
                                      "pectin",
                                      "sucralose",
                                      "turmeric"};

constexpr std::string_view joins[] = {
    ", ", ", ", ", ", ", ", ", ", ", organic ", ", contains 2% or less of: ", " (contains "};

constexpr const char* categories[] = {"Cookies & Biscuits",
                                      "Cereal",
                                      "Cheese",
                                      "Candy",
                                      "Popcorn, Peanuts, Seeds & Related Snacks",
                                      "Ice Cream & Frozen Yogurt",
                                      "Chips, Pretzels & Snacks",
                                      "Breads & Buns",
                                      "Yogurt",
                                      "Milk",
                                      "Soda",
                                      "Fruit & Vegetable Juice, Nectars & Fruit Drinks",
                                      "Pickles, Olives, Peppers & Relishes",
                                      "Snack, Energy & Granola Bars",
                                      "Crackers & Biscotti",
                                      "Canned Vegetables",
                                      "Canned Fruit",
                                      "Vegetable & Cooking Oils",
                                      "Pizza",
                                      "Pasta by Shape & Type",
                                      "Chocolate",
                                      "Salad Dressing & Mayonnaise",
                                      "Other Soups",
                                      "Rice"};

} // namespace

std::string food_name(Dice& dice)
{
    std::string name;
    const std::uint64_t words = 3 + roll(dice, 6);
    for (std::uint64_t i = 0; i < words; ++i) {
        name += name.empty() ? "" : i + 1 == words && happens(dice, 500) ? ", " : " ";
        name += happens(dice, 750) ? std::string(name_words[common_first(dice, std::size(name_words))])
                                   : invented(common_first(dice, 200'000));
    }
    return happens(dice, 850) ? upper(std::move(name)) : capital(std::move(name));
}

std::string maker_name(Dice& dice)
{
    constexpr std::string_view kinds[] = {" Foods, Inc.", " Company", " LLC", " Brothers Bakery", " Farms"};
    const auto maker = common_first(dice, 30'000);
    return capital(invented(maker)) + std::string(kinds[maker % std::size(kinds)]);
}

std::string brand_name(Dice& dice)
{
    return upper(invented(common_first(dice, 30'000)));
}

std::string ingredient_list(Dice& dice)
{
    std::string list;
    const std::uint64_t parts_in_it = happens(dice, 20) ? 40 + roll(dice, 200) : 2 + roll(dice, 24);
    for (std::uint64_t i = 0; i < parts_in_it; ++i) {
        if (!list.empty())
            list += one_of(dice, joins);
        list += happens(dice, 900) ? std::string(one_of(dice, parts)) : invented(common_first(dice, 5'000));
    }
    if (happens(dice, 20))
        list += " (\"pure\" " + invented(roll(dice, 2'000)) + ")";
    return happens(dice, 700) ? upper(std::move(list)) + "." : list;
}

const char* food_category(Dice& dice)
{
    return categories[common_first(dice, std::size(categories))];
}

} // namespace test
