// One limit against hostile labels, and against brute force over what the figures can stand for.
#include "core/figure/rounding.h"
#include "core/figure/wide.h"
#include "core/rules/rule_sets.h"
#include "core/rules/weigh.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <limits>
#include <optional>
#include <string>

namespace test {
namespace {

using core::Bound;
using core::Content;
using core::JudgedBy;
using core::Limit;
using core::Mass;
using core::Verdict;
using N = core::Nutrient;

constexpr std::int64_t one = 1'000'000'000;

/// What a true food says, with no range at all.
bool meets(Bound bound, core::Wide content, core::Wide limit)
{
    if (bound == Bound::AtLeast)
        return content >= limit;
    return bound == Bound::AtMost ? content <= limit : content < limit;
}

/// Tries the edges and the middle of both ranges; `meet` and `fail` tell what was found.
struct Tried {
    bool meet = false;
    bool fail = false;
};

Tried tried(const Limit& limit, core::Range<Content> content, core::Range<Mass> serving, Mass amount)
{
    Tried found;
    for (const auto inside :
         {content.low.nano(), content.low.nano() / 2 + content.high.nano() / 2, content.high.nano() - 1})
        for (const auto size :
             {serving.low.nano(), serving.low.nano() / 2 + serving.high.nano() / 2, serving.high.nano() - 1}) {
            const bool meet = meets(limit.bound, core::Wide{inside} * amount.nano(), core::Wide{limit.value} * size);
            (meet ? found.meet : found.fail) = true;
        }
    return found;
}

} // namespace

// Every value at the edges of the ranges is a possible true food: an answer may contradict none of them, and where all
// of them agree there is an answer, up to a billionth beside the limit.
TEST_CASE("weigh: an answer fits every true food behind the figures")
{
    const auto& food = *core::reference_amount("cereal_20_to_43_g_per_cup");
    int certain = 0;
    for (const auto bound : {Bound::Below, Bound::AtMost, Bound::AtLeast})
        for (int printed = 0; printed <= 300; printed += printed < 140 ? 5 : 10)
            for (int size = 16; size <= 110; ++size) {
                CAPTURE(printed);
                CAPTURE(size);
                const Limit limit{N::Sodium, bound, 140'000'000};
                const auto label = make_label(std::to_string(size) + " g", "", {{N::Sodium, std::to_string(printed)}});
                const auto serving = size == 40 ? core::Range<Mass>{Mass::whole(40), Mass::from_nano(40 * one + 1)}
                                                : core::range_behind_serving_size(Mass::whole(size));
                const auto content = *core::range_behind(N::Sodium, *label.per_serving.find(N::Sodium)->amount);
                const auto found = tried(limit, content, serving, Mass::whole(40));
                const auto verdict = core::weigh(limit, label, &food, JudgedBy::TrueContent).verdict;
                if (verdict == Verdict::Meets)
                    REQUIRE_FALSE(found.fail);
                if (verdict == Verdict::DoesNotMeet)
                    REQUIRE_FALSE(found.meet);
                if (found.meet && found.fail)
                    REQUIRE(static_cast<int>(verdict) == static_cast<int>(Verdict::CannotTell));
                certain += verdict == Verdict::CannotTell ? 0 : 1;
            }
    CHECK(certain > 10'000);
}

TEST_CASE("weigh: a hostile label neither divides by zero nor overflows")
{
    const auto& food = *core::reference_amount("cereal_20_to_43_g_per_cup");
    const std::int64_t sizes[] = {0, 1, -1, one, 100'000 * one, std::numeric_limits<std::int64_t>::max()};
    const std::int64_t amounts[] = {0, 1, 5 * one, 1'000 * one, std::numeric_limits<std::int64_t>::max() / 4};
    for (const auto size : sizes)
        for (const auto amount : amounts)
            for (const auto& info : core::rule_sets())
                for (const core::Rule* rule : core::rules_of(info.set))
                    for (const auto& limit : rule->limits)
                        for (const auto judged_by : {JudgedBy::TrueContent, JudgedBy::PrintedFigure}) {
                            CAPTURE(size);
                            CAPTURE(amount);
                            core::Label label;
                            label.serving.metric = Mass::from_nano(size);
                            label.per_serving.lines[limit.nutrient].amount = core::Figure{Content::from_nano(amount)};
                            label.per_serving.lines[N::Calories].amount = core::Figure{Content::from_nano(amount)};
                            const auto weighed = core::weigh(limit, label, &food, judged_by);
                            if (size <= 0 && limit.per != core::Per::Serving &&
                                limit.counted != core::Counted::PercentOfCalories)
                                CHECK(weighed.verdict == Verdict::CannotTell);
                            if (weighed.decided.reaches)
                                CHECK(weighed.decided.reaches->low < weighed.decided.reaches->high);
                        }
}

TEST_CASE("weigh: the arithmetic that a screen writes out")
{
    const Limit limit{N::Sodium, Bound::AtMost, 140'000'000};
    const auto label = make_label("39 g", "", {{N::Sodium, "135"}});
    const auto weighed =
        core::weigh(limit, label, core::reference_amount("cereal_20_to_43_g_per_cup"), JudgedBy::TrueContent);
    const auto& told = weighed.decided;
    REQUIRE((told.figure && told.behind && told.serving && told.amount && told.worked_out && told.reaches));
    CHECK(told.figure->amount == Content::milli(135));
    CHECK(*told.behind == core::Range<Content>{Content::micro(132'500), Content::micro(137'500)});
    CHECK(*told.serving == core::Measure(Mass::whole(39)));
    CHECK(*told.amount == core::Measure(Mass::whole(40)));
    CHECK(told.worked_out->nano() == 138'461'538);   // 135 mg x 40 / 39
    CHECK(told.reaches->low.nano() == 134'177'215);  // 132.5 mg x 40 / 39.5, down
    CHECK(told.reaches->high.nano() == 142'857'143); // 137.5 mg x 40 / 38.5, up
}

} // namespace test
