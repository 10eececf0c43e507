// Every figure of one label read with all the others: the true contents that the whole label allows, and where it
// contradicts itself. Sources: 21 CFR 101.9(c) (which line is part of which), (d)(7)(ii) (what a percent is counted
// from). Calories sharpen nothing: 101.9(c)(1)(i) lets a maker count them in several ways.
#pragma once

#include "core/figure/range.h"
#include "core/label/label.h"
#include "core/label/sizes.h"

#include <array>
#include <optional>
#include <span>

namespace core {

/// How a line contradicts its label; what is contradicted is not compared.
enum class Contradiction {
    OffTheRule,           ///< a figure that the rounding rule never prints
    AmountAgainstPercent, ///< no true amount prints both
    PartAgainstWhole,     ///< more of a part than of the whole, or the other way round
    WorkedBack, ///< no contradiction, but as little to rely on: Line::worked_back, the package may print another
};

/// One nutrient of a column read backwards, with what narrowed it: the steps of *why*.
struct Backwards {
    std::optional<Range<Content>> from_amount;  ///< by the amount alone
    std::optional<Range<Content>> from_percent; ///< by the percent alone, counted from true or printed amount
    bool percent_of_amount = false; ///< the percent is what the printed amount comes to, and may say nothing more
    std::optional<Range<Content>> content; ///< all together; nothing where not printed, or contradicted
    std::optional<Nutrient> whole;         ///< no more than this, which it is a part of, lowered the upper end
    std::optional<Nutrient> part;          ///< no less than this part raised the lower end
    std::optional<Contradiction> contradiction;
    std::optional<Nutrient> against; ///< the other line, for PartAgainstWhole
    bool operator==(const Backwards&) const = default;
};

/// All nutrients of a column, in the order of core::Nutrient.
class SharpColumn {
public:
    [[nodiscard]] const Backwards& of(Nutrient nutrient) const { return lines_[static_cast<std::size_t>(nutrient)]; }
    [[nodiscard]] Backwards& of(Nutrient nutrient) { return lines_[static_cast<std::size_t>(nutrient)]; }
    /// Whether any line contradicts another one, or the rule.
    [[nodiscard]] bool inconsistent() const;

private:
    std::array<Backwards, nutrient_count> lines_{};
};

/// One line that holds another: total fat holds saturated fat.
struct PartOf {
    Nutrient part;
    Nutrient whole;
};

/// Which line is part of which, directly and over one step (added sugars are carbohydrate even where no total sugars
/// are printed). Source: 21 CFR 101.9(c)(2) and (c)(6).
[[nodiscard]] std::span<const PartOf> parts_of_wholes();

/// Reads a column of the label backwards, each line with the others.
[[nodiscard]] SharpColumn sharpen(const Label& label, const Column& column);

/// A label with everything that its figures allow.
struct SharpLabel {
    SharpColumn serving;
    std::optional<SharpColumn> second; ///< of the second column, where there is one
    Sizes sizes;
    /// Whether anything on the label contradicts anything else, or the rules.
    [[nodiscard]] bool inconsistent() const;
};

/// Reads the whole label.
[[nodiscard]] SharpLabel sharpen(const Label& label);

} // namespace core
