// One Nutrition Facts label as it is printed: nothing worked out, nothing filled in. What is absent is absent, never 0.
#pragma once

#include "core/figure/figure.h"
#include "core/label/format.h"
#include "core/label/nutrient.h"
#include "core/label/serving.h"

#include <map>
#include <optional>
#include <set>
#include <string>

namespace core {

/// What a label prints for one nutrient; either part may be missing.
struct Line {
    std::optional<Figure> amount;
    std::optional<PrintedPercent> percent;
    /// The amount was worked back from one per 100 g or mL, and more than one printed figure could stand behind it; or
    /// nothing says what it was worked out from. False for all that was read from a package.
    bool worked_back = false;
    bool operator==(const Line&) const = default;
};

/// One column of figures. A nutrient that it does not print has no entry.
struct Column {
    std::map<Nutrient, Line> lines;
    std::set<Nutrient> not_significant; ///< "Not a significant source of ...": a statement, not a figure
    [[nodiscard]] const Line* find(Nutrient nutrient) const
    {
        const auto line = lines.find(nutrient);
        return line == lines.end() ? nullptr : &line->second;
    }
    bool operator==(const Column&) const = default;
};

/// A second column beside the one "per serving".
struct SecondColumn {
    enum class Kind { AsPrepared, PerContainer };
    Kind kind;
    Column column;
    bool operator==(const SecondColumn&) const = default;
};

/// "NET WT 12 oz (340 g)": the words as printed, and the metric amount if it could be read.
struct NetQuantity {
    std::string printed;
    std::optional<Measure> metric;
    bool operator==(const NetQuantity&) const = default;
};

/// A whole label. The first column is always per serving, as packaged.
struct Label {
    Panel panel = Panel::Of2016;
    Audience audience = Audience::Adult;
    Serving serving;
    ServingsPerContainer servings;
    Column per_serving;
    std::optional<SecondColumn> second;
    std::optional<std::string> ingredients; ///< nothing: not recorded
    std::optional<std::string>
        contains; ///< the "Contains ..." statement; empty: the label has none; nothing: not recorded
    std::optional<NetQuantity> net_quantity;
    bool operator==(const Label&) const = default;
};

/// Reads the net quantity as printed; the metric part may stand inside, behind or before the brackets: "12 oz (340 g)",
/// "16 OZ (1 LB) 454 g", "340 g (12 oz)", "NET WT 340 g". None for several packages ("6 - 12 FL OZ (355 mL) CANS"):
/// what is printed is then the amount of one.
[[nodiscard]] NetQuantity parse_net_quantity(std::string_view printed);

} // namespace core
