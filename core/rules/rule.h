// A published rule as a row of a table, and the answer of one label to it: values without words.
#pragma once

#include "core/figure/figure.h"
#include "core/figure/range.h"
#include "core/label/nutrient.h"
#include "core/label/serving.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace core {

/// A calendar day as a table holds it: no clock is read anywhere, a screen only says the days.
struct Day {
    int year;
    int month;
    int day;
    auto operator<=>(const Day&) const = default;
};

/// Which foods a rule is for.
enum class RuleFood {
    AnyFood,          ///< every food that is no meal or main dish product and not made for young children
    MealOrMainDish,   ///< meal and main dish products of 21 CFR 101.13(l) and (m)
    Meal,             ///< meal products alone
    MainDish,         ///< main dish products alone
    Seafood,          ///< seafood and game meat
    MixedDishByPiece, ///< mixed dishes that are not measured with a cup
    DryCereal,        ///< breakfast cereal
    Yogurt,
};

/// Which way a limit binds.
enum class Bound {
    Below,
    AtMost,
    AtLeast,
};

/// What a limit counts.
enum class Counted {
    Amount,            ///< grams of the nutrient, or calories
    PercentDailyValue, ///< whole percents of its Daily Value
    PercentOfCalories, ///< calories from it at 9 a gram, as a share of all calories (fats)
};

/// The amount of the food that a limit speaks of.
enum class Per {
    ReferenceAmount, ///< as customarily consumed (21 CFR 101.12(b))
    Serving,         ///< the labeled serving
    Portion,         ///< a weight that the rule itself names
};

/// A weight that a rule names. An ounce is 28 g on labels and 28.349523125 g exactly: where the rule says ounces, both.
struct Portion {
    Mass least;
    Mass most; ///< the same as `least` where the rule says grams
    bool operator==(const Portion&) const = default;
};

/// One figure that a rule asks for.
struct Limit {
    Nutrient nutrient;
    Bound bound;
    std::int64_t value; ///< billionths of a gram or calorie; whole percents for both kinds of percent
    Counted counted = Counted::Amount;
    Per per = Per::ReferenceAmount;
    bool small_serving = false; ///< where the reference amount is small, also in 50 g of the food
    Portion portion{};          ///< for Per::Portion
    bool confirmed = true;      ///< false: from general knowledge, not yet read in the rule; never answered by a figure
    bool operator==(const Limit&) const = default;
};

/// What a rule asks beyond figures.
enum class Beyond {
    Nothing,
    Ingredients, ///< about ingredients or other words beside the claim: the figures are answered, this is said with it
    ReferenceFood, ///< measured against another food, which no label names
    PackageWords,  ///< about how the food was made and what else its package says
};

/// Which value of the label the rule is judged by; docs/label-math.md tells why.
enum class JudgedBy {
    TrueContent,   ///< whatever the food may really hold behind the rounded figure (21 CFR 101.13(o))
    PrintedFigure, ///< the figure as it stands there, as the programs have their operators do it
};

/// The sets of rules that a leader switches on, by their keys in the settings (rule_sets.h).
enum class RuleSet {
    CalorieClaims,
    SugarClaims,
    SodiumClaims,
    FatClaims,
    SaturatedFatClaims,
    CholesterolClaims,
    LeanClaims,
    SourceClaims,
    DisclosureLevels,
    Wic,
    WicBefore,
    Cacfp,
    CacfpBefore,
};

/// One published rule. All its limits together make it.
struct Rule {
    std::string_view key; ///< "low_sodium": stable; with `subject` behind it where one rule serves many nutrients
    std::optional<Nutrient> subject; ///< of "high" and "good source"
    RuleSet set;
    std::string_view citation;
    std::optional<Day> from; ///< the first day on which it holds; nothing: longer than this table reaches back
    std::optional<Day> to;   ///< the last day; nothing: no end is published
    bool end_confirmed = true;
    RuleFood food = RuleFood::AnyFood;
    std::span<const Limit> limits{};
    Beyond beyond = Beyond::Nothing;
    JudgedBy judged_by = JudgedBy::TrueContent;
};

/// The answer of one label to one rule. None of them is a verdict on the food.
enum class Verdict {
    Meets,
    DoesNotMeet,
    CannotTell,     ///< from the label
    NotForThisFood, ///< the rule speaks of other foods
};

/// Why.
enum class Reason {
    Figures,                ///< the figures decide: see Answer::decided
    RangeStraddles,         ///< what a printed figure can stand for lies on both sides of the limit
    OunceDecides,           ///< 28 g an ounce and the exact ounce lead to different answers
    NoReferenceAmount,      ///< the product's entry names no reference food
    ReferenceAmountInWords, ///< the rule gives this food's reference amount in words
    NoServingSize,          ///< a serving size without grams or millilitres
    UnlikeMeasures,         ///< grams on the label, a cup or spoon in the rule (or the other way round)
    FigureNotPrinted,
    FigureOffTheRule, ///< a figure that no lawful label prints, or figures that contradict each other
    FigureWorkedBack, ///< a figure worked back from a release: the package may print another
    MayBeMainDish,    ///< limits of meals and main dishes may hold instead, and no label tells
    NeedsReferenceFood,
    NeedsPackageWords,
    LimitNotConfirmed, ///< this table's limit was not read in the rule
    OtherFood,
    ForYoungChildren, ///< such claims are not for food made for young children (21 CFR 101.13(b)(3), (h)(1))
};

/// The arithmetic of the limit that decided, to be written out.
struct Decided {
    Limit limit;
    std::optional<Figure> figure;          ///< as printed
    std::optional<Range<Content>> behind;  ///< what one serving can truly hold
    std::optional<Measure> serving;        ///< as printed
    std::optional<Measure> amount;         ///< that the limit speaks of; nothing for the serving itself
    std::optional<Content> worked_out;     ///< figure x amount / serving, to the nearest billionth
    std::optional<Range<Content>> reaches; ///< what `amount` can truly hold, edges rounded outwards
    bool operator==(const Decided&) const = default;
};

/// What one label says to one rule.
struct Answer {
    const Rule* rule; ///< a row of a table: good for ever
    Verdict verdict;
    Reason reason;
    std::optional<Decided> decided;  ///< the limit that decided or is in doubt; for Meets the first one of the rule
    bool true_content_agrees = true; ///< JudgedBy::PrintedFigure: every true value behind it says the same
    bool operator==(const Answer&) const = default;
};

} // namespace core
