// The shelf prices of a session: typed in cents, as on a till.
#include "core/rules/unit_price.h"
#include "kiosk/session/session.h"
#include "ui/words/price_words.h"

namespace kiosk {

void Session::perform(const ui::OpenPrices&)
{
    if (!state_.sides[0] || !state_.sides[1])
        return;
    state_.price_side = state_.prices[0] && !state_.prices[1] ? ui::Side::Right : ui::Side::Left;
    go(ui::ScreenId::Prices);
}

void Session::perform(const ui::PickPriceSide& asked)
{
    state_.price_side = asked.side;
}

void Session::perform(const ui::TypePriceDigit& asked)
{
    auto& price = state_.prices[ui::index_of(state_.price_side)];
    const auto typed = core::cents(core::whole_cents(price.value_or(core::Money{})) * 10 + asked.digit);
    if (asked.digit < 0 || asked.digit > 9 || typed > core::dearest)
        return; // a digit too many changes nothing
    if (typed > core::Money{})
        price = typed;
}

void Session::perform(const ui::ErasePriceDigit&)
{
    auto& price = state_.prices[ui::index_of(state_.price_side)];
    const auto left = core::cents(core::whole_cents(price.value_or(core::Money{})) / 10);
    price = left > core::Money{} ? std::optional(left) : std::nullopt;
}

void Session::perform(const ui::ClearPrice&)
{
    state_.prices[ui::index_of(state_.price_side)].reset();
}

/// Works out the prices in words, for the pair and for the screen that they are typed on.
void Session::refresh_prices()
{
    state_.price_words.reset();
    const auto& left = state_.sides[0];
    const auto& right = state_.sides[1];
    if (!left || !right || !state_.pair || (!state_.prices[0] && !state_.prices[1]))
        return;
    const auto pair = core::price_pair(left->product.label, state_.prices[0], right->product.label, state_.prices[1],
                                       settings_.prices);
    state_.price_words = ui::price_section(pair, language());
    state_.pair->sections.push_back(*state_.price_words);
}

} // namespace kiosk
