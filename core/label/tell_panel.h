// Which panel a label is printed by, told from what stands on it, where nobody wrote it down.
// Sources: 21 CFR 101.9(c)(6)(iii) as amended 27 May 2016 (added sugars), (c)(8)(iv) and (c)(9) before and after it
// (Daily Values), (c)(8)(ii) before it (vitamins A and C stand on every label) and after it (vitamin D and potassium).
#pragma once

#include "core/label/label.h"

#include <optional>

namespace core {

/// A panel and what told it.
struct ToldPanel {
    /// What told it, the surest first.
    enum class By {
        AddedSugars, ///< only labels of 2016 print a line for them
        DailyValues, ///< amounts and percents fit the Daily Values of one panel better than those of the other
        Vitamins,    ///< vitamins A and C, and not both vitamin D and potassium
        Nothing,     ///< nothing did: taken for a label of 2016, which is what is printed today
    };
    Panel panel;
    By by;
    std::optional<Nutrient> nutrient; ///< the first line that told it by its Daily Value
    bool operator==(const ToldPanel&) const = default;
};

/// Tells the panel of a label; its own `panel` is not looked at. A label that contradicts itself by both is told by the
/// one that it contradicts less.
[[nodiscard]] ToldPanel tell_panel(const Label& label);

} // namespace core
