// Whether a label's household measure is the reference amount itself: "2 tbsp (32 g)" against "2 tbsp".
#pragma once

#include <string_view>

namespace core {

/// The same number of cups or spoons on both. What stands in brackets on the label is left out; a reference amount may
/// offer several ("1 cup or 8 fl oz"). Never true for pieces and other words that fix no amount.
/// Source: 21 CFR 101.12(b), column "label statement"; 101.9(b)(5)(viii) for the abbreviations.
[[nodiscard]] bool same_household(std::string_view on_label, std::string_view reference);

} // namespace core
