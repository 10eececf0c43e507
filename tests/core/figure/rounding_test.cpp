// Backwards undoes forwards, tried for every amount of a fine grid against a second statement of each rule.
#include "core/figure/rounding.h"
#include "tests/core/figure/lawful.h"

#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>

namespace test {
namespace {

using core::Content;
using core::Count;
using core::Figure;
using core::Mass;
using core::Nutrient;
using core::Panel;
using core::Percent;
using core::PercentRounding;
using core::PrintedPercent;

/// A range in billionths, whatever its unit.
struct Span {
    std::int64_t low;
    std::int64_t high;
};

using Backwards = std::function<std::optional<Span>(const Print&)>;
using Forwards = std::function<Print(std::int64_t)>;

template<class Quantity>
std::optional<Span> span_of(const std::optional<core::Range<Quantity>>& range)
{
    if (!range)
        return std::nullopt;
    return Span{range->low.nano(), range->high.nano()};
}

/// The grid, and beside each of its points the two nearest values that an amount can have.
template<class Visit>
void for_each_amount(const LawfulRule& rule, Visit visit)
{
    for (std::int64_t t = 0; t <= rule.most; t += rule.grid) {
        if (t > 0)
            visit(t - 1);
        visit(t);
        visit(t + 1);
    }
}

/// Every print that is lawful for some amount of the grid. Fails where core prints something else, or where the range
/// behind a lawful print does not hold the amount.
std::set<Print> check_forwards(const LawfulRule& rule, const Forwards& forwards, const Backwards& backwards)
{
    std::set<Print> seen;
    for_each_amount(rule, [&](std::int64_t t) {
        const auto lawful = rule.lawful(t);
        if (!lawful.contains(forwards(t)))
            FAIL_CHECK("amount ", t, " prints as ", forwards(t).nano, ", which the rule does not allow");
        for (const auto& print : lawful) {
            seen.insert(print);
            const auto span = backwards(print);
            if (!span || t < span->low || t >= span->high)
                FAIL_CHECK("amount ", t, " may print as ", print.nano, ", whose range does not hold it");
        }
    });
    return seen;
}

/// Just inside both edges the print is lawful, just outside it is not.
void check_edges(const LawfulRule& rule, const Print& print, const Span& span)
{
    CAPTURE(print.nano);
    CAPTURE(print.less_than);
    CAPTURE(span.low);
    CAPTURE(span.high);
    REQUIRE(span.low < span.high);
    CHECK(rule.lawful(span.low).contains(print));
    CHECK(rule.lawful(span.high - 1).contains(print));
    CHECK_FALSE(rule.lawful(span.high).contains(print));
    if (span.low > 0)
        CHECK_FALSE(rule.lawful(span.low - 1).contains(print));
}

void check_rule(const LawfulRule& rule, const Forwards& forwards, const Backwards& backwards)
{
    CAPTURE(rule.source);
    const auto seen = check_forwards(rule, forwards, backwards);
    CHECK(seen.size() > 20);
    int never_printed = 0;
    // Candidates twice as fine as anything printed, well inside the grid: a print that no amount has has no range.
    for (std::int64_t nano = 0; nano < rule.most * 9 / 10; nano += rule.finest / 2) {
        for (const bool less_than : {false, true}) {
            const Print print{nano, less_than};
            const auto span = backwards(print);
            if (span)
                check_edges(rule, print, *span);
            else
                ++never_printed;
            if (span.has_value() != seen.contains(print))
                FAIL_CHECK(nano, less_than ? " (less than)" : "", span ? " has a range" : " has no range");
        }
    }
    CHECK(never_printed > 20);
}

Print print_of(const Figure& figure)
{
    return {figure.amount.nano(), figure.less_than};
}

Backwards behind_figure(Nutrient nutrient, Panel panel)
{
    return [=](const Print& print) {
        return span_of(core::range_behind(nutrient, Figure{Content::from_nano(print.nano), print.less_than, 0}, panel));
    };
}

Forwards as_figure(Nutrient nutrient, Panel panel)
{
    return [=](std::int64_t t) { return print_of(core::printed_figure(nutrient, Content::from_nano(t), panel)); };
}

void check_percents(const LawfulRule& rule, PercentRounding rounding)
{
    const std::int64_t one = Percent::whole(1).nano();
    check_rule(
        rule, [=](std::int64_t t) { return Print{core::printed_percent(rounding, Percent::from_nano(t)) * one}; },
        [=](const Print& print) -> std::optional<Span> {
            if (print.nano % one != 0) // a printed percent is a whole number by its type
                return std::nullopt;
            const PrintedPercent printed{static_cast<int>(print.nano / one), print.less_than};
            return span_of(core::range_behind(rounding, printed));
        });
}

} // namespace

TEST_CASE("rounding: backwards undoes forwards for every figure that rounds in bands")
{
    for (const auto& [nutrient, panel, rule] : nutrient_rules()) {
        const auto key = std::string(core::info(nutrient).key);
        CAPTURE(key);
        check_rule(rule, as_figure(nutrient, panel), behind_figure(nutrient, panel));
    }
}

TEST_CASE("rounding: backwards undoes forwards for vitamins and minerals, whichever place the maker took")
{
    for (const auto& [nutrient, panel, rule] : vitamin_rules()) {
        const auto key = std::string(core::info(nutrient).key);
        CAPTURE(key);
        const auto backwards = behind_figure(nutrient, panel);
        const auto seen = check_forwards(rule, as_figure(nutrient, panel), backwards);
        CHECK(seen.size() > 100);
        for (const auto& print : seen) {
            const auto span = backwards(print);
            REQUIRE(span);
            check_edges(rule, print, *span);
        }
        CHECK_FALSE(backwards(Print{rule.finest * 1'000, true})); // the rule knows no "less than" amount
    }
}

TEST_CASE("rounding: backwards undoes forwards for percents")
{
    SUBCASE("whole ones")
    {
        check_percents(whole_percent_rule(), PercentRounding::Whole);
    }
    SUBCASE("those of vitamins and minerals")
    {
        check_percents(vitamin_percent_rule(), PercentRounding::Vitamin);
    }
    CHECK_FALSE(core::range_behind(PercentRounding::None, PrintedPercent{5, false}));
}

TEST_CASE("rounding: backwards undoes forwards for servings printed with about")
{
    check_rule(
        servings_rule(), [](std::int64_t t) { return Print{core::printed_servings(Count::from_nano(t)).nano()}; },
        [](const Print& print) -> std::optional<Span> {
            if (print.less_than)
                return std::nullopt;
            // "about 0 servings" is no print: a package holds something
            if (print.nano == 0)
                return Span{0, Count::milli(500).nano()};
            return span_of(core::range_behind_about(Count::from_nano(print.nano)));
        });
    CHECK_FALSE(core::range_behind_about(Count{}));
    CHECK_FALSE(core::range_behind_about(Count::whole(-1)));
}

TEST_CASE("rounding: backwards undoes forwards for the metric serving size")
{
    const auto rule = serving_size_rule();
    CAPTURE(rule.source);
    const auto backwards = [](const Print& print) {
        return span_of<Mass>(core::range_behind_serving_size(Mass::from_nano(print.nano)));
    };
    const auto forwards = [](std::int64_t t) { return Print{core::printed_serving_size(Mass::from_nano(t)).nano()}; };
    auto seen = check_forwards(rule, forwards, [&](const Print& print) {
        return print.nano == 0 ? std::optional(Span{0, 50'000'000}) : backwards(print);
    });
    seen.erase(Print{0}); // no serving weighs nothing: parse_measure refuses it
    CHECK(seen.size() > 80);
    for (const auto& print : seen)
        check_edges(rule, print, *backwards(print));
    for (const auto& print : seen) { // millilitres go like grams
        const auto printed = core::Volume::from_nano(print.nano);
        CHECK(core::range_behind_serving_size(printed).low.nano() == backwards(print)->low);
        CHECK(core::range_behind_serving_size(printed).high.nano() == backwards(print)->high);
        CHECK(core::printed_serving_size(printed) == printed);
    }
}

// Source: 21 CFR 101.9(b)(7)(ii). A maker may print a finer figure; what finer rounding was used is not known.
TEST_CASE("rounding: a serving size printed finer than the rule asks for gets the rule's width")
{
    const auto behind = core::range_behind_serving_size(Mass::milli(28'350));
    CHECK(behind == core::Range<Mass>{Mass::milli(27'850), Mass::milli(28'850)});
}

// Source: the sentence on the statement in 21 CFR 101.9(c)(1), (2), (3), (4), (6), (7), (8)(iii).
TEST_CASE("rounding: what 'not a significant source of' leaves open")
{
    struct Case {
        std::string why;
        Nutrient nutrient;
        Content below;
    };
    const Case cases[] = {
        {"less than 5 calories", Nutrient::Calories, Content::whole(5)},
        {"less than 0.5 g of fat", Nutrient::TotalFat, Content::milli(500)},
        {"less than 2 mg of cholesterol", Nutrient::Cholesterol, Content::milli(2)},
        {"less than 5 mg of sodium", Nutrient::Sodium, Content::milli(5)},
        {"less than 1 g of fiber", Nutrient::DietaryFiber, Content::whole(1)},
        {"less than 1 g of added sugars", Nutrient::AddedSugars, Content::whole(1)},
        {"less than 0.1 mg of fluoride: (c)(5) has no such sentence, so what prints as 0", Nutrient::Fluoride,
         Content::micro(100)},
        {"less than 2 percent of 1300 mg of calcium", Nutrient::Calcium, Content::milli(26)},
        {"less than 2 percent of 20 mcg of vitamin D", Nutrient::VitaminD, Content::from_nano(400)},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::range_behind_not_significant(c.nutrient) == core::Range<Content>{Content{}, c.below});
    }
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        const auto behind = core::range_behind_not_significant(known.nutrient);
        CHECK(behind.holds(Content{}));
        CHECK(behind.low < behind.high);
    }
}

} // namespace test
