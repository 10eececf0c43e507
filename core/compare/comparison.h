// The answer that screen, voice, paper and JSON all show: two labels on one basis, nutrient by nutrient.
#pragma once

#include "core/compare/basis.h"
#include "core/compare/choices.h"
#include "core/figure/percent.h"
#include "core/label/aims.h"
#include "core/label/label.h"
#include "core/label/sharpen.h"

#include <optional>
#include <vector>

namespace core {

/// The answer for one nutrient.
enum class Finding {
    LeftLess, ///< whatever the true values are, the left has less
    LeftMore,
    SameFigure,     ///< both labels print the same figure for this basis without any multiplication
    TooCloseToTell, ///< the ranges behind the figures allow both
    NotPrinted,     ///< at least one label does not print it: absent, never 0
    NotComparable,  ///< see Row::why
};

/// How a shown figure came about.
enum class Source {
    NotPrinted,
    Printed,        ///< stands on the label for this basis
    WorkedOut,      ///< multiplied or divided from what stands there
    NotSignificant, ///< the label says "not a significant source of"
};

/// A percent Daily Value as shown: the printed or taught one, and the range where the two could mislead.
struct ShownPercent {
    int percent = 0;
    bool less_than = false;
    Source source = Source::Printed;
    std::optional<Reading> reading;       ///< by the 5/20 guide; nothing in equal amounts, where the guide is silent
    std::optional<Range<Percent>> range;  ///< true percents behind it, where a figure allows to know
    bool say_range = false;               ///< the taught figure is more than 2 points off, or the reading may differ
    std::optional<Reading> label_reading; ///< what the label's own one serving reads, when a package reads otherwise
    bool operator==(const ShownPercent&) const = default;
};

/// The percent Daily Value that a column shows: printed, else worked out from the printed amount. Protein's percent is
/// never worked out: it counts the protein's quality (21 CFR 101.9(c)(7)(ii)), which no label prints.
[[nodiscard]] std::optional<ShownPercent> percent_of_column(const Label& label, const Column& column,
                                                            Nutrient nutrient);

/// One side of a row.
struct Shown {
    Source source = Source::NotPrinted;
    std::optional<Figure> figure;        ///< the printed figure, or the worked-out one to the digits worth showing
    std::optional<Range<Content>> range; ///< the true amounts behind it on this basis, edges rounded outwards
    bool say_range = false; ///< a printed 0 or "less than" that was multiplied: it may have become something
    std::optional<ShownPercent> percent;
    std::optional<Line> printed;                ///< the line as the label prints it, where it prints one
    std::optional<Contradiction> contradiction; ///< this line cannot be right as it stands, and is not compared
    std::optional<Nutrient> against;            ///< the other line, where part and whole contradict each other
    bool operator==(const Shown&) const = default;
};

/// One nutrient of a comparison.
struct Row {
    Nutrient nutrient;
    Aim aim;
    Shown left;
    Shown right;
    Finding finding;
    Why why = Why::Comparable; ///< why not, for Finding::NotComparable
    bool first = false;        ///< one of those that the leader wants first
    bool operator==(const Row&) const = default;
};

/// Two labels side by side on one basis.
struct Comparison {
    Basis basis = Basis::Serving;
    MyAmount amount;                  ///< for Basis::MyAmount
    std::optional<Household> measure; ///< for Basis::SameMeasure: the cup, spoon or piece
    Why why = Why::Comparable;        ///< why nothing at all can be compared on this basis
    ServingSizes sizes = ServingSizes::Unknown;
    bool unlike_panels = false;      ///< one label of 2016, one older: their percents count from different Daily Values
    bool left_inconsistent = false;  ///< something on the left label contradicts something else
    bool right_inconsistent = false; ///< and on the right
    bool in_millilitres = false;     ///< equal amounts mean 100 mL, not 100 g
    std::optional<Ratio> left_times; ///< servings of the left label in this basis, as taught; nothing: see `why`
    std::optional<Ratio> right_times; ///< and of the right
    std::vector<Row> rows; ///< calories, the leader's first ones, then less of, more of and the rest, as the panel goes
    bool operator==(const Comparison&) const = default;
};

/// Compares two labels: pure, the same answer for the same labels. Rows are there for every nutrient that either label
/// prints or names. Swapping the two swaps LeftLess and LeftMore and changes nothing else.
[[nodiscard]] Comparison compare(const Label& left, const Label& right, Basis basis, const Choices& choices = {},
                                 const MyAmount& amount = {});

} // namespace core
