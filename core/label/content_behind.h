// Backwards from one line of a label to the true content of one serving: by its amount, else by its percent.
#pragma once

#include "core/figure/range.h"
#include "core/label/label.h"

#include <optional>

namespace core {

/// The column "per container", where the label prints one; else nullptr.
[[nodiscard]] const Column* per_container(const Label& label);

/// The Daily Value that this label counts from; `nominal` where the tables hold none in grams.
[[nodiscard]] std::optional<Content> daily_value_or(const Label& label, Nutrient nutrient,
                                                    std::optional<Content> nominal);

/// What stands for a Daily Value that the tables do not hold in grams (vitamins in IU before 2016), so that the
/// percents of two labels that count from the same one can be compared: any number serves. Nothing where it is not
/// needed, where the labels are of two kinds, or where one of them prints an amount, which such a number says nothing
/// about.
[[nodiscard]] std::optional<Content> nominal_value(const Label& left, const Label& right, Nutrient nutrient);

/// The true contents that print this percent when it is counted from the true amount (21 CFR 101.9(d)(7)(ii)). Nothing
/// without a Daily Value in grams, for a percent off the rule, and for protein, whose percent counts its quality.
[[nodiscard]] std::optional<Range<Content>> content_of_percent(const Label& label, Nutrient nutrient,
                                                               const PrintedPercent& percent,
                                                               std::optional<Content> nominal = std::nullopt);

/// Whether the percent is just what the printed amount comes to: it may then say no more than the amount does.
/// Halves may have gone either way.
[[nodiscard]] bool counted_from_amount(const Label& label, Nutrient nutrient, const Line& line);

/// The true content of one serving (or of one container, for such a column) behind what is printed: from the amount,
/// else from the percent where a Daily Value is known. With a nominal one it is a share of that and no amount. Nothing
/// for a protein that is a percent only: that counts the protein's quality (21 CFR 101.9(c)(7)(ii)).
[[nodiscard]] std::optional<Range<Content>> content_behind(const Label& label, const Column& column, Nutrient nutrient,
                                                           std::optional<Content> nominal);

} // namespace core
