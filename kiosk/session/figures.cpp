// The figures of a pair on the basis that was chosen, and where one of them comes from.
#include "kiosk/session/session.h"
#include "ui/words/rule_words.h"

#include <utility>

namespace kiosk {

using ui::ScreenId;

void Session::perform(const ui::OpenAmounts&)
{
    if (state_.sides[0] && state_.sides[1])
        go(ScreenId::Amounts);
}

void Session::perform(const ui::ChooseMyAmount& asked)
{
    if (!core::is_sound(asked.amount))
        return;
    state_.my_amount = asked.amount;
    state_.basis = core::Basis::MyAmount;
}

void Session::perform(const ui::OpenWhy& asked)
{
    state_.why_of = asked;
    go(ScreenId::Why);
}

void Session::refresh_pair(const core::Product& left, const core::Product& right)
{
    state_.comparison = core::compare(left.label, right.label, state_.basis, settings_.choices, state_.my_amount);
    state_.pair = ui::pair_words(*state_.comparison, left, right, language());
    for (auto& section : ui::rule_sections(left, right, settings_.rules, language()))
        state_.pair->sections.push_back(std::move(section));
    state_.amounts = ui::amounts_words(left.label, right.label, state_.my_amount, language());
}

/// What the screen Why tells about may be gone by now: a side that was emptied, a product that was changed.
void Session::refresh_why()
{
    state_.why.reset();
    if (!state_.why_of)
        return;
    const auto& of = *state_.why_of;
    if (of.side) {
        if (const auto& held = state_.sides[ui::index_of(*of.side)])
            state_.why = of.nutrient ? ui::why_words(held->product, *of.nutrient, settings_.choices, language())
                                     : ui::sizes_why_words(held->product, language());
    } else if (state_.comparison && of.nutrient)
        state_.why = ui::why_words(*state_.comparison, *of.nutrient, state_.sides[0]->product, state_.sides[1]->product,
                                   settings_.choices, language());
}

} // namespace kiosk
