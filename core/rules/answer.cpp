#include "core/rules/answer.h"

#include "core/rules/claims.h"
#include "core/rules/programs.h"
#include "core/rules/weigh.h"

#include <utility>

namespace core {
namespace {

bool is_program(RuleFood food)
{
    return food == RuleFood::DryCereal || food == RuleFood::Yogurt;
}

Answer unknown(const Rule& rule, Reason reason)
{
    return {&rule, Verdict::CannotTell, reason, std::nullopt};
}

/// Why the rule is not held against this label at all.
std::optional<Answer> before_figures(const Rule& rule, const Label& label, const ReferenceAmount* food)
{
    const auto why = is_program(rule.food) ? not_for_program(rule.food, food) : not_for_claim(rule.food, label, food);
    if (!why)
        return std::nullopt;
    const bool other = *why == Reason::OtherFood || *why == Reason::ForYoungChildren;
    return Answer{&rule, other ? Verdict::NotForThisFood : Verdict::CannotTell, *why, std::nullopt};
}

/// All limits that hold for this food: where its reference amount is small, those in 50 g as well.
std::vector<Limit> limits_for(const Rule& rule, const ReferenceAmount* food)
{
    std::vector<Limit> limits;
    for (const auto& limit : rule.limits) {
        limits.push_back(limit);
        if (limit.small_serving && food && is_small(*food).value_or(false))
            limits.push_back(in_fifty_grams(limit));
    }
    return limits;
}

Answer answer_of(const Rule& rule, Weighed weighed)
{
    return {&rule, weighed.verdict, weighed.reason, std::move(weighed.decided), weighed.true_content_agrees};
}

/// By the figures alone.
Answer by_figures(const Rule& rule, const Label& label, const ReferenceAmount* food)
{
    std::optional<Answer> met;
    std::optional<Answer> doubtful;
    for (const auto& limit : limits_for(rule, food)) {
        Answer answer = answer_of(rule, weigh(limit, label, food, rule.judged_by));
        if (answer.verdict == Verdict::DoesNotMeet)
            return answer;
        auto& first = answer.verdict == Verdict::Meets ? met : doubtful;
        if (!first)
            first = std::move(answer);
        else
            first->true_content_agrees = first->true_content_agrees && answer.true_content_agrees;
    }
    return doubtful ? *std::move(doubtful) : *std::move(met);
}

} // namespace

Answer answer_to(const Rule& rule, const Label& label, const ReferenceAmount* food)
{
    if (auto answer = before_figures(rule, label, food))
        return *std::move(answer);
    const bool other_food = rule.beyond == Beyond::ReferenceFood;
    const bool beyond_figures = other_food || rule.beyond == Beyond::PackageWords;
    if (!rule.limits.empty()) {
        Answer answer = by_figures(rule, label, food);
        if (!beyond_figures || answer.verdict == Verdict::DoesNotMeet)
            return answer;
    }
    return unknown(rule, other_food ? Reason::NeedsReferenceFood : Reason::NeedsPackageWords);
}

} // namespace core
