// The amounts that a pair can be shown in beside those on its own buttons, in words.
#pragma once

#include "core/compare/basis.h"
#include "ui/words/basis_words.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One kind of amount: servings, cups, pieces, of the package.
struct AmountKind {
    TextId id;
    core::MyAmount amount; ///< where it begins
    bool chosen = false;
    bool operator==(const AmountKind&) const = default;
};

/// What the screen of amounts offers.
struct AmountsWords {
    std::vector<BasisWords> bases;       ///< the same cup, as prepared: where both labels allow them
    std::vector<AmountKind> kinds;       ///< those that both labels can be told in
    core::MyAmount amount;               ///< the one that holds
    std::string words;                   ///< "2 servings"
    std::optional<core::MyAmount> more;  ///< one step up; nothing at the end
    std::optional<core::MyAmount> fewer; ///< one step down
    bool operator==(const AmountsWords&) const = default;
};

/// The amounts for a pair.
[[nodiscard]] AmountsWords amounts_words(const core::Label& left, const core::Label& right,
                                         const core::MyAmount& amount, const Language& language);

} // namespace ui
