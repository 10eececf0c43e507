#include "ui/words/amounts_words.h"

#include "core/compare/my_amount.h"

namespace ui {
namespace {

using Of = core::MyAmount::Of;

constexpr std::pair<TextId, core::MyAmount> kinds[] = {
    {TextId::amounts_servings, {Of::Servings, {1, 1}}},       {TextId::amounts_cups, {Of::Cups, {1, 1}}},
    {TextId::amounts_tablespoons, {Of::Tablespoons, {1, 1}}}, {TextId::amounts_pieces, {Of::Pieces, {1, 1}}},
    {TextId::amounts_package, {Of::Package, {1, 2}}},
};

} // namespace

AmountsWords amounts_words(const core::Label& left, const core::Label& right, const core::MyAmount& amount,
                           const Language& language)
{
    using core::Basis;
    const auto possible = [&](Basis basis, const core::MyAmount& of) {
        return core::comparable_on(basis, left, right, of) == core::Why::Comparable;
    };
    AmountsWords words;
    for (const auto basis : {Basis::SameMeasure, Basis::Prepared})
        if (possible(basis, {}))
            words.bases.push_back(basis_named(basis, left, right, amount, language));
    for (const auto& [id, start] : kinds)
        if (possible(Basis::MyAmount, start))
            words.kinds.push_back({id, start, start.of == amount.of});
    words.amount = amount;
    words.words = my_amount_words(amount, language);
    if (const auto next = core::stepped(amount, 1); next != amount)
        words.more = next;
    if (const auto next = core::stepped(amount, -1); next != amount)
        words.fewer = next;
    return words;
}

} // namespace ui
