// The arithmetic of an answer to a published rule, sentence by sentence.
#include "core/label/content_behind.h"
#include "ui/words/numbers.h"
#include "ui/words/rule_words.h"
#include "ui/words/why_words.h"

#include <algorithm>
#include <variant>

namespace ui {
namespace {

using core::Content;
using core::Counted;
using core::Decided;
using core::Limit;
using core::Measure;
using core::Per;
using core::Verdict;

std::string per_words(const Limit& limit, const core::ReferenceAmount* food, const Language& language)
{
    if (limit.per == Per::Serving)
        return language.text(TextId::rule_per_serving);
    if (limit.per == Per::Portion) {
        const auto amount = core::measure_text(limit.portion.least);
        if (limit.portion.least == limit.portion.most)
            return language.fill(TextId::rule_per_portion, {{"amount", amount}});
        constexpr std::int64_t ounce = 28'000'000'000; // as programs and labels count it
        return language.fill(TextId::rule_per_ounces,
                             {{"n", std::to_string(limit.portion.least.nano() / ounce)}, {"amount", amount}});
    }
    const auto amount = food ? core::amount_of(*food) : std::nullopt;
    if (!amount)
        return language.text(TextId::rule_per_reference_bare);
    return language.fill(TextId::rule_per_reference, {{"amount", core::measure_text(*amount)}});
}

std::string value_words(const Limit& limit, const Language& language)
{
    if (limit.counted == Counted::Amount)
        return exact_words(Content::from_nano(limit.value), limit.nutrient, false);
    const auto percent = percent_words(static_cast<int>(limit.value), false, language);
    return language.fill(limit.counted == Counted::PercentDailyValue ? TextId::rule_of_daily : TextId::rule_of_calories,
                         {{"percent", percent}});
}

std::string range_words(core::Range<Content> range, core::Nutrient nutrient, const Language& language)
{
    const auto high = exact_words(range.high, nutrient, true);
    if (range.low == Content{})
        return language.fill(TextId::why_range_below, {{"high", high}});
    return language.fill(TextId::why_range, {{"low", exact_words(range.low, nutrient, false)}, {"high", high}});
}

/// Writes the sentences of one answer.
class Arithmetic {
public:
    Arithmetic(const core::Answer& answer, const core::Product& product, const Language& language)
        : answer_(answer), decided_(*answer.decided), limit_(decided_.limit), label_(product.label),
          food_(product.reference_food), language_(language)
    {
    }

    std::vector<std::string> write()
    {
        if (!limit_.confirmed)
            return {};
        limit();
        printed();
        if (limit_.counted == Counted::PercentOfCalories)
            of_calories();
        else if (decided_.reaches)
            in_the_amount();
        if (answer_.rule->beyond == core::Beyond::Ingredients && answer_.verdict == Verdict::Meets)
            say(TextId::rule_ingredients);
        return std::move(sentences_);
    }

private:
    void say(TextId text, std::initializer_list<Fill> fills = {}) { sentences_.push_back(language_.fill(text, fills)); }

    void limit()
    {
        TextId text = TextId::rule_limit;
        if (answer_.rule->limits.size() > 1 || limit_.per == Per::Portion) {
            if (answer_.verdict == Verdict::Meets && answer_.rule->limits.size() > 1)
                text = TextId::rule_limit_first;
            else if (answer_.verdict == Verdict::DoesNotMeet)
                text = TextId::rule_limit_decides;
            else if (answer_.verdict == Verdict::CannotTell)
                text = TextId::rule_limit_doubt;
        }
        say(text, {{"limit", limit_words(limit_, food_, language_)}});
        const auto daily = core::daily_value_or(label_, limit_.nutrient, std::nullopt);
        if (limit_.counted == Counted::PercentDailyValue && daily && !is_protein()) {
            const auto share = Content::from_nano(daily->nano() / 100 * limit_.value);
            say(TextId::rule_daily, {{"percent", percent_words(static_cast<int>(limit_.value), false, language_)},
                                     {"daily", exact_words(*daily, limit_.nutrient, false)},
                                     {"result", exact_words(share, limit_.nutrient, false)}});
        }
    }

    [[nodiscard]] bool is_protein() const
    {
        return limit_.counted == Counted::PercentDailyValue && limit_.nutrient == core::Nutrient::Protein;
    }

    /// Where only a percent is printed, or only a percent counts.
    [[nodiscard]] bool by_percent() const
    {
        return is_protein() || (limit_.counted == Counted::PercentDailyValue && !decided_.figure);
    }

    void printed()
    {
        const core::Line* line = label_.per_serving.find(limit_.nutrient);
        std::string figure;
        if (by_percent()) {
            if (line && line->percent)
                figure = language_.fill(
                    TextId::rule_of_daily,
                    {{"percent", percent_words(line->percent->percent, line->percent->less_than, language_)}});
        } else if (decided_.figure)
            figure = amount_words(*decided_.figure, limit_.nutrient, language_);
        if (figure.empty())
            return;
        const auto& name = nutrient_name(limit_.nutrient, language_);
        if (decided_.serving)
            say(TextId::rule_printed_in,
                {{"nutrient", name}, {"figure", figure}, {"serving", core::measure_text(*decided_.serving)}});
        else
            say(TextId::rule_printed, {{"nutrient", name}, {"figure", figure}});
        if (is_protein())
            say(TextId::rule_protein);
        else if (by_figures())
            say(TextId::rule_by_figures);
        else if (decided_.behind && decided_.figure)
            say(TextId::rule_stands_for, {{"range", range_words(*decided_.behind, limit_.nutrient, language_)}});
    }

    /// The printed figure itself is held against the limit; "less than 1 g" is no such figure.
    [[nodiscard]] bool by_figures() const
    {
        return answer_.rule->judged_by == core::JudgedBy::PrintedFigure && decided_.figure &&
               !decided_.figure->less_than;
    }

    void of_calories()
    {
        const core::Line* calories = label_.per_serving.find(core::Nutrient::Calories);
        if (!decided_.figure || !calories || !calories->amount)
            return;
        constexpr std::int64_t a_gram = 9; // 21 CFR 101.9(c)(1)(i)(B)
        const auto from_fat = Content::from_nano(decided_.figure->amount.nano() * a_gram);
        say(TextId::rule_calories,
            {{"figure", amount_words(*decided_.figure, limit_.nutrient, language_)},
             {"result", exact_words(from_fat, core::Nutrient::Calories, false)},
             {"calories", amount_words(*calories->amount, core::Nutrient::Calories, language_)}});
    }

    /// The serving was scaled to the amount that the limit speaks of.
    [[nodiscard]] bool scaled() const
    {
        if (!decided_.amount || !decided_.serving || *decided_.amount == *decided_.serving)
            return false;
        if (decided_.figure && decided_.worked_out && *decided_.worked_out != decided_.figure->amount)
            return true;
        return !by_figures() && decided_.behind && decided_.reaches != decided_.behind;
    }

    void in_the_amount()
    {
        if (!decided_.amount)
            return;
        if (!scaled())
            return say(TextId::rule_same_amount);
        const auto amount = core::measure_text(*decided_.amount);
        if (decided_.figure && !decided_.figure->less_than && decided_.worked_out)
            say(TextId::rule_worked_out, {{"amount", amount},
                                          {"figure", amount_words(*decided_.figure, limit_.nutrient, language_)},
                                          {"serving", core::measure_text(*decided_.serving)},
                                          {"result", exact_words(*decided_.worked_out, limit_.nutrient, false)}});
        if (!by_figures()) {
            if (!by_percent())
                say(TextId::rule_reaches,
                    {{"amount", amount}, {"range", range_words(*decided_.reaches, limit_.nutrient, language_)}});
        } else if (limit_.per == Per::Portion && limit_.portion.least != limit_.portion.most)
            say(TextId::rule_exact_ounce, {{"high", exact_words(decided_.reaches->high, limit_.nutrient, true)}});
    }

    const core::Answer& answer_;
    const Decided& decided_;
    const Limit& limit_;
    const core::Label& label_;
    const core::ReferenceAmount* food_;
    const Language& language_;
    std::vector<std::string> sentences_;
};

} // namespace

std::string limit_words(const Limit& limit, const core::ReferenceAmount* food, const Language& language)
{
    const TextId text = limit.bound == core::Bound::Below    ? TextId::rule_below
                        : limit.bound == core::Bound::AtMost ? TextId::rule_at_most
                                                             : TextId::rule_at_least;
    const bool of_calories = limit.counted == Counted::PercentOfCalories; // of the same calories, whatever the amount
    return language.fill(
        text, {{"nutrient", in_sentence(nutrient_name(limit.nutrient, language))},
               {"value", value_words(limit, language)},
               {"per", of_calories ? language.text(TextId::rule_per_serving) : per_words(limit, food, language)}});
}

std::vector<std::string> arithmetic_sentences(const core::Answer& answer, const core::Product& product,
                                              const Language& language)
{
    return answer.decided ? Arithmetic(answer, product, language).write() : std::vector<std::string>{};
}

} // namespace ui
