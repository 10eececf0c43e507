// States of the screen that says what words mean, as it is opened from each screen that leads to it.
#include "tests/ui/samples.h"
#include "ui/screens/shown.h"
#include "ui/words/rule_words.h"

#include <utility>

namespace test {

using ui::ScreenId;

ui::State words_state(ui::State from, const ui::Language& language)
{
    from.words_of = std::exchange(from.screen, ScreenId::Words);
    from.words = ui::meanings_for(from, from.words_of, language);
    from.notice.words.clear();
    return from;
}

std::vector<NamedState> words_states(const ui::Language& language)
{
    const auto& cereal = demo_product("9520141001120");
    const auto& other = demo_product("9520208001131");
    std::vector<NamedState> states;
    const auto add = [&](const std::string& name, ui::State from) {
        states.push_back({"words of " + name, words_state(std::move(from), language)});
    };
    add("a label", label_state(cereal, language));
    add("a label with a long list", label_state(product_with_long_list(), language));
    auto pair = pair_state(cereal, product_with_long_list(), core::Basis::SameAmount, language);
    const auto rules = core::rule_sets_named("claims_sodium, wic_before, cacfp").value();
    pair.pair->sections = ui::rule_sections(cereal, other, rules, language);
    add("a pair with all that can be told", pair);
    add("a line", why_state(cereal, other, core::Basis::Package, core::Nutrient::Iron, language));
    add("prices", prices_state(cereal, core::cents(399), other, core::cents(499), language));
    add("an amount", amounts_state(cereal, other, {}, language));
    add("not found", state_of(ScreenId::NotFound, language));
    add("all screens", state_of(ScreenId::Welcome, language));
    return states;
}

} // namespace test
