// What people can ask for by touch or key: one struct each. Screens report them, the session performs them.
#pragma once

#include "core/code/gtin.h"
#include "core/compare/basis.h"
#include "core/label/nutrient.h"
#include "ui/access_actions.h"
#include "ui/desk_actions.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ui {

/// The two sides of a pair.
enum class Side { Left, Right };

/// Where a side stands in an array of two.
[[nodiscard]] constexpr std::size_t index_of(Side side)
{
    return side == Side::Left ? 0 : 1;
}

/// One screen back.
struct GoBack {
    bool operator==(const GoBack&) const = default;
};
/// Empty both sides and go to Welcome; can be taken back.
struct StartOver {
    bool operator==(const StartOver&) const = default;
};
/// Undo the last StartOver.
struct TakeBack {
    bool operator==(const TakeBack&) const = default;
};
/// The next language.
struct NextLanguage {
    bool operator==(const NextLanguage&) const = default;
};
/// The next text size; after the largest comes the smallest.
struct NextTextSize {
    bool operator==(const NextTextSize&) const = default;
};
/// Another basis for the pair.
struct ChooseBasis {
    core::Basis basis;
    bool operator==(const ChooseBasis&) const = default;
};
/// Open the screen of other amounts.
struct OpenAmounts {
    bool operator==(const OpenAmounts&) const = default;
};
/// Set the pair side by side in this amount; the screen of amounts stays open.
struct ChooseMyAmount {
    core::MyAmount amount;
    bool operator==(const ChooseMyAmount&) const = default;
};
/// Open where a figure and its finding come from: of the pair, or of one label alone.
struct OpenWhy {
    std::optional<core::Nutrient> nutrient; ///< nothing: serving size and servings, of one label
    std::optional<Side> side;               ///< nothing: the row of the pair
    bool operator==(const OpenWhy&) const = default;
};
/// Keep this side when the next product comes, or let it go again.
struct ToggleKeep {
    Side side;
    bool operator==(const ToggleKeep&) const = default;
};
/// Show the label of one side by itself.
struct OpenLabel {
    Side side;
    bool operator==(const OpenLabel&) const = default;
};
/// Back to the two side by side.
struct ShowPair {
    bool operator==(const ShowPair&) const = default;
};
/// Open the list of aisles.
struct ChooseAisle {
    bool operator==(const ChooseAisle&) const = default;
};
/// Open the letters, to find a product by its name.
struct FindByName {
    bool operator==(const FindByName&) const = default;
};
/// More letters of the name that is looked for.
struct TypeLetters {
    std::string letters; ///< UTF-8; usually one, or a blank between words
    bool operator==(const TypeLetters&) const = default;
};
/// Take its last letter back.
struct EraseLetter {
    bool operator==(const EraseLetter&) const = default;
};
/// Begin the name again.
struct ClearLetters {
    bool operator==(const ClearLetters&) const = default;
};
/// Open one aisle of the list.
struct OpenAisle {
    std::string aisle;
    bool operator==(const OpenAisle&) const = default;
};
/// Take a product from a list, as if it had been scanned.
struct TakeProduct {
    core::Gtin gtin;
    bool operator==(const TakeProduct&) const = default;
};
/// Turn to another page of what does not fit.
struct TurnPage {
    int by; ///< +1 or -1
    bool operator==(const TurnPage&) const = default;
};

/// Open the screen on which shelf prices are typed.
struct OpenPrices {
    bool operator==(const OpenPrices&) const = default;
};
/// Type the price of this side from now on.
struct PickPriceSide {
    Side side;
    bool operator==(const PickPriceSide&) const = default;
};
/// One digit more of that price, from the right: 3, 9, 9 is $3.99.
struct TypePriceDigit {
    int digit; ///< 0 to 9
    bool operator==(const TypePriceDigit&) const = default;
};
/// Take its last digit back.
struct ErasePriceDigit {
    bool operator==(const ErasePriceDigit&) const = default;
};
/// No price for that side.
struct ClearPrice {
    bool operator==(const ClearPrice&) const = default;
};

using Action = std::variant<GoBack, StartOver, TakeBack, NextLanguage, NextTextSize, ChooseBasis, OpenAmounts,
                            ChooseMyAmount, OpenWhy, ToggleKeep, OpenLabel, ShowPair, ChooseAisle, OpenAisle,
                            TakeProduct, TurnPage, OpenPrices, PickPriceSide, TypePriceDigit, ErasePriceDigit,
                            ClearPrice, FindByName, TypeLetters, EraseLetter, ClearLetters, AskDesk, AskAccess>;
using Actions = std::vector<Action>;

} // namespace ui
