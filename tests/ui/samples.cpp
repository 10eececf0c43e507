#include "tests/ui/samples.h"

#include "catalog/read/sheet.h"
#include "core/compare/comparison.h"
#include "tests/support/headless.h"
#include "tests/ui/desk_samples.h"
#include "ui/words/found_words.h"
#include "ui/words/price_words.h"
#include "ui/words/rule_words.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <stdexcept>

namespace test {
namespace {

using core::Basis;
using ui::ScreenId;
using ui::Side;
using ui::TextId;

/// Left and right, as on the packages. What each is there for stands in docs/demo-catalog.md.
constexpr std::array<std::array<const char*, 2>, 12> pairs{{
    {"9520141001120", "9520208001131"}, // two cereals of unlike servings
    {"9520588008041", "520417008036"},  // an older panel
    {"9520427005033", "9520427005088"}, // grams beside millilitres
    {"9520427005095", "9520427005057"}, // unlike ages
    {"520417002072", "9520233002028"},  // servings varied
    {"9520366004012", "9520366004029"}, // nine servings: remarks on ranges
    {"9520777012019", "9520777012026"}, // household measures multiplied
    {"520417001013", "9520141001069"},  // "not significant" beside a fortified cereal
    {"9520519007051", "9520519007068"}, // a printed column beside a worked-out one
    {"9520208011055", "9520208011048"}, // the package is the serving
    {"9520310003023", "9520310003030"}, // too close to tell
    {"9520588008010", "9520588008027"}, // a can and a bowl
}};

const ui::Language& other_than(const ui::Language& language)
{
    return test::language(language.code() == "en" ? "es" : "en");
}

void hold(ui::State& state, Side side, const core::Product& product, unsigned taken)
{
    state.sides[ui::index_of(side)] = ui::Held{product, false, taken};
}

std::string found_words(const core::Product& product, const ui::Language& language, TextId side)
{
    return language.fill(TextId::notice_found, {{"name", product.name}, {"side", language.text(side)}});
}

void add_welcomes(std::vector<NamedState>& states, const ui::Language& language)
{
    auto empty = state_of(ScreenId::Welcome, language);
    states.push_back({"welcome", empty});
    empty.can_take_back = true;
    empty.reader = language.text(TextId::camera_stalled);
    empty.notice.words = language.text(TextId::notice_started_over);
    states.push_back({"welcome after starting over", empty});
    auto bundle = state_of(ScreenId::Welcome, language);
    bundle.bundle = language.fill(
        TextId::welcome_bundle, {{"name", "Labels of the markets and pantries of Cedar Hollow, winter, second edition"},
                                 {"made", "2026-11-25"},
                                 {"maker", "The nutrition educators of Cedar Hollow and of Saltwhistle"}});
    states.push_back({"welcome with a bundle", bundle});
    auto held = label_state(demo_product("9520777012026"), language);
    held.screen = ScreenId::Welcome;
    states.push_back({"welcome with one package", held});
    empty.reader = language.text(TextId::camera_small) + " " + language.text(TextId::camera_private);
    empty.camera = camera_view(language.text(TextId::camera_turn));
    states.push_back({"welcome with a camera", empty});
}

void add_lists(std::vector<NamedState>& states, const ui::Language& language)
{
    states.push_back({"aisles", aisles_state(language)});
    auto none = state_of(ScreenId::PickAisle, language);
    none.can_take_back = true;
    states.push_back({"no aisles", none});
    states.push_back({"products", products_state("Cereal", language)});
    auto which = products_state("Snack bars", language);
    which.screen = ScreenId::WhichProduct;
    which.picks.erase(which.picks.begin() + 2, which.picks.end());
    states.push_back({"which product", which});
    auto unknown = state_of(ScreenId::NotFound, language);
    unknown.code = "09521234567899";
    unknown.notice.words = language.fill(TextId::notice_unknown, {{"code", unknown.code}});
    states.push_back({"not found", unknown});
    unknown.camera = camera_view(language.text(TextId::camera_hold_still));
    states.push_back({"not found with a camera", unknown});
    states.push_back({"gallery", state_of(ScreenId::Gallery, language)});
}

void add_finding(std::vector<NamedState>& states, const ui::Language& language)
{
    auto empty = state_of(ScreenId::FindByName, language);
    empty.by_aisle = true;
    empty.can_take_back = true;
    states.push_back({"find by name", empty});
    auto none = empty;
    none.typed = "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW"; // the widest letter
    none.found_words = ui::found_words({0, true, 60}, language);
    states.push_back({"nothing found", none});
    auto some = found_state("CEREAL SOYA", "Cereal", language);
    some.found_words = ui::found_words({some.found.size(), true, 60, {"SOYA", none.typed}}, language);
    states.push_back({"found without some words", some});
    auto searching = found_state("WHOLE ", "Cereal", language);
    searching.found_words = ui::found_words({123'456, false, 60}, language);
    hold(searching, Side::Left, demo_product("9520777012026"), 1);
    searching.notice.words = found_words(demo_product("9520777012026"), language, TextId::side_left);
    for (std::size_t i = 0; i < searching.found.size(); ++i) { // as a release may have them
        auto& found = searching.found[i];
        found.name += std::string(20 * i, 'W') + " WITH MANY MORE WORDS THAN ANYBODY READS ON A PACKAGE";
        found.detail = language.text(TextId::find_this_place) + "\n" + found.detail + std::string(10 * i, 'M');
    }
    states.push_back({"found names of any length", searching});
    states.push_back({"found", found_state("A", "Snack bars", language)});
    auto unknown = state_of(ScreenId::Welcome, language);
    unknown.by_aisle = true;
    states.push_back({"welcome with aisles", unknown});
}

void add_labels(std::vector<NamedState>& states, const ui::Language& language)
{
    for (const auto& pair : pairs)
        for (const auto* code : pair)
            states.push_back({"label " + std::string(code), label_state(demo_product(code), language)});
    auto both = pair_state(demo_product(pairs[0][0]), demo_product(pairs[0][1]), Basis::Serving, language);
    both.screen = ScreenId::OneLabel;
    both.label_side = Side::Right;
    both.label = ui::label_words(both.sides[1]->product, language);
    states.push_back({"right label of two", both});
}

void add_pairs(std::vector<NamedState>& states, const ui::Language& language)
{
    for (const auto& pair : pairs)
        for (const Basis basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
            auto state = pair_state(demo_product(pair[0]), demo_product(pair[1]), basis, language);
            const std::string name =
                "pair " + std::string(pair[0]) + " " + pair[1] + " basis " + std::to_string(static_cast<int>(basis));
            state.sides[0]->kept = basis == Basis::Package;
            if (basis == Basis::SameAmount)
                state.notice.words.clear();
            states.push_back({name, state});
        }
}

/// Ingredients at their worst: a list over several pages on one side, nothing recorded on the other.
void add_ingredients(std::vector<NamedState>& states, const ui::Language& language)
{
    const auto rich = product_with_long_list();
    auto bare = demo_product(pairs[0][1]);
    bare.label.ingredients.reset();
    bare.label.contains.reset();
    states.push_back({"label with a long list", label_state(rich, language)});
    states.push_back({"label without ingredients", label_state(bare, language)});
    states.push_back({"pair with a long list", pair_state(rich, bare, Basis::Serving, language)});
    states.push_back({"why of trans fat", why_state(rich, bare, Basis::Serving, core::Nutrient::TransFat, language)});
}

void add_prices(std::vector<NamedState>& states, const ui::Language& language)
{
    for (const auto& pair : pairs) {
        auto state =
            prices_state(demo_product(pair[0]), core::dearest, demo_product(pair[1]), core::cents(1), language);
        states.push_back({"prices " + std::string(pair[0]) + " " + pair[1], state});
        state.screen = ScreenId::Pair;
        states.push_back({"pair with prices " + std::string(pair[0]) + " " + pair[1], state});
    }
    states.push_back(
        {"no prices", prices_state(demo_product(pairs[0][0]), {}, demo_product(pairs[0][1]), {}, language)});
}

/// As many published rules as a leader would switch on for a class. All at once are a hundred pages of large letters.
void add_rules(std::vector<NamedState>& states, const ui::Language& language)
{
    const auto rules = core::rule_sets_named("claims_sodium, wic_before, cacfp").value();
    for (const auto& pair : {pairs[0], pairs[2], pairs[6]}) { // cereals; yogurts by weight and volume; main dishes
        const auto& left = demo_product(pair[0]);
        const auto& right = demo_product(pair[1]);
        auto state = pair_state(left, right, Basis::Serving, language);
        state.pair->sections = ui::rule_sections(left, right, rules, language);
        states.push_back({"pair with rules " + std::string(pair[0]) + " " + pair[1], state});
        auto one = label_state(left, language);
        ui::add_rules(left, rules, language, *one.label);
        states.push_back({"label with rules " + std::string(pair[0]), one});
    }
}

void add_amounts_and_whys(std::vector<NamedState>& states, const ui::Language& language)
{
    using enum core::Nutrient;
    for (const auto& pair : pairs) {
        const auto& left = demo_product(pair[0]);
        const auto& right = demo_product(pair[1]);
        const std::string both = std::string(pair[0]) + " " + pair[1];
        states.push_back({"amounts " + both, amounts_state(left, right, {}, language)});
        for (const auto nutrient : {Calories, Sodium, AddedSugars, Iron})
            for (const Basis basis : {Basis::Serving, Basis::Package, Basis::SameAmount})
                states.push_back({"why " + both + " " + std::string(core::info(nutrient).key) + " basis " +
                                      std::to_string(static_cast<int>(basis)),
                                  why_state(left, right, basis, nutrient, language)});
        states.push_back({"why of one " + both, why_state(left, SaturatedFat, language)});
        states.push_back({"why of the sizes of one " + both, states.back().state});
        states.back().state.why_of->nutrient.reset();
        states.back().state.why = ui::sizes_why_words(left, language);
    }
}

} // namespace

const std::vector<core::Product>& demo_products()
{
    static const auto sheet = [] {
        auto read = catalog::read_sheet_file(PAIRSTAND_SOURCE "/config/demo/cedar_hollow.csv");
        if (read.products.empty() || read.refused_rows > 0)
            throw std::runtime_error("the demo catalog has faults");
        return read;
    }();
    return sheet.products;
}

const core::Product& demo_product(std::string_view code)
{
    const auto gtin = core::Gtin::parse(code);
    const auto& all = demo_products();
    const auto found = std::ranges::find_if(all, [&](const auto& product) { return gtin && product.gtin == *gtin; });
    if (found == all.end())
        throw std::out_of_range("no demo product " + std::string(code));
    return *found;
}

ui::State state_of(ScreenId screen, const ui::Language& language)
{
    ui::State state;
    state.screen = screen;
    state.other_language = other_than(language).text(TextId::language_name);
    return state;
}

ui::CameraView camera_view(const std::string& hint, int width, int height)
{
    std::vector<std::uint8_t> grey;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            grey.push_back(static_cast<std::uint8_t>(x % 3 == 0 && y > height / 3 ? 30 : 80 + 150 * x / width));
    const ui::GreyPicture picture{width, height, std::make_shared<const std::vector<std::uint8_t>>(grey)};
    return {picture, picture, hint};
}

ui::State label_state(const core::Product& product, const ui::Language& language)
{
    auto state = state_of(ScreenId::OneLabel, language);
    hold(state, Side::Left, product, 1);
    state.newest = Side::Left;
    state.label = ui::label_words(product, language);
    state.notice.words = found_words(product, language, TextId::side_left);
    return state;
}

ui::State pair_state(const core::Product& left, const core::Product& right, Basis basis, const ui::Language& language)
{
    auto state = state_of(ScreenId::Pair, language);
    hold(state, Side::Left, left, 1);
    hold(state, Side::Right, right, 2);
    state.newest = Side::Right;
    state.basis = basis;
    state.comparison = core::compare(left.label, right.label, basis);
    state.pair = ui::pair_words(*state.comparison, left, right, language);
    state.notice.words = found_words(right, language, TextId::side_right);
    return state;
}

ui::State prices_state(const core::Product& left, std::optional<core::Money> left_price, const core::Product& right,
                       std::optional<core::Money> right_price, const ui::Language& language)
{
    auto state = pair_state(left, right, Basis::Serving, language);
    state.screen = ScreenId::Prices;
    state.prices = {left_price, right_price};
    state.notice.words.clear();
    if (left_price || right_price) {
        state.price_words =
            ui::price_section(core::price_pair(left.label, left_price, right.label, right_price, {}), language);
        state.pair->sections.push_back(*state.price_words);
    }
    return state;
}

ui::State amounts_state(const core::Product& left, const core::Product& right, const core::MyAmount& amount,
                        const ui::Language& language)
{
    auto state = pair_state(left, right, Basis::MyAmount, language);
    state.screen = ScreenId::Amounts;
    state.my_amount = amount;
    state.amounts = ui::amounts_words(left.label, right.label, amount, language);
    state.notice.words.clear();
    return state;
}

ui::State why_state(const core::Product& left, const core::Product& right, Basis basis, core::Nutrient nutrient,
                    const ui::Language& language)
{
    auto state = pair_state(left, right, basis, language);
    state.screen = ScreenId::Why;
    state.why_of = ui::OpenWhy{nutrient, std::nullopt};
    state.why = ui::why_words(*state.comparison, nutrient, left, right, {}, language);
    state.notice.words.clear();
    return state;
}

ui::State why_state(const core::Product& product, core::Nutrient nutrient, const ui::Language& language)
{
    auto state = label_state(product, language);
    state.screen = ScreenId::Why;
    state.why_of = ui::OpenWhy{nutrient, Side::Left};
    state.why = ui::why_words(product, nutrient, {}, language);
    state.notice.words.clear();
    return state;
}

ui::State aisles_state(const ui::Language& language)
{
    auto state = state_of(ScreenId::PickAisle, language);
    for (const auto& product : demo_products()) {
        const auto same = [&](const ui::PickAisle& aisle) { return aisle.aisle == product.aisle; };
        if (std::ranges::none_of(state.aisles, same))
            state.aisles.push_back(
                {product.aisle, product.aisle, language.fill(TextId::pick_count_many, {{"n", "16"}})});
    }
    return state;
}

ui::State products_state(std::string_view aisle, const ui::Language& language)
{
    auto state = state_of(ScreenId::PickProduct, language);
    state.pick_title = aisle;
    for (const auto& product : demo_products())
        if (aisle.empty() || product.aisle == aisle)
            state.picks.push_back({product.gtin, product.name, product.brand});
    return state;
}

ui::State found_state(const std::string& typed, std::string_view aisle, const ui::Language& language)
{
    auto state = state_of(ScreenId::FindByName, language);
    state.typed = typed;
    for (const auto& product : demo_products())
        if (aisle.empty() || product.aisle == aisle)
            state.found.push_back({product.gtin, product.name, ui::found_detail(product, language)});
    constexpr std::size_t most_shown = 60;
    state.found_words = ui::found_words({state.found.size(), true, most_shown}, language);
    state.found.resize(std::min(state.found.size(), most_shown), state.found.front());
    return state;
}

core::Product product_with_long_list()
{
    auto product = demo_product(pairs[0][0]);
    std::string list =
        "Enriched flour (wheat flour, niacin, reduced iron, thiamin mononitrate, riboflavin, folic acid)";
    for (int i = 0; i < 30; ++i)
        list += ", partially hydrogenated soybean oil, brown sugar, apple juice concentrate, whey, soy lecithin, "
                "natural flavor, almond paste";
    product.label.ingredients = list + ". May contain peanuts, sesame and egg.";
    product.label.contains.reset();
    product.label.per_serving.lines[core::Nutrient::TransFat].amount =
        core::parse_figure(core::Nutrient::TransFat, "0").value();
    product.origin.entered_on = core::Date::parse("2022-12-31").value();
    return product;
}

std::vector<NamedState> hard_states(const ui::Language& language)
{
    std::vector<NamedState> states;
    add_welcomes(states, language);
    add_lists(states, language);
    add_finding(states, language);
    add_labels(states, language);
    add_pairs(states, language);
    add_ingredients(states, language);
    add_prices(states, language);
    add_rules(states, language);
    add_amounts_and_whys(states, language);
    for (auto& words : words_states(language))
        states.push_back(std::move(words));
    for (auto& likely : likely_states(language))
        states.push_back(std::move(likely));
    add_desk_states(states, language);
    return states;
}

} // namespace test
