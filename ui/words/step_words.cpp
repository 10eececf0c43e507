#include "core/figure/figure.h"
#include "ui/words/basis_words.h"
#include "ui/words/contradiction_words.h"
#include "ui/words/core_words.h"
#include "ui/words/numbers.h"
#include "ui/words/pair_words.h"
#include "ui/words/why_words.h"

#include <algorithm>

namespace ui {
namespace {

using Kind = core::Step::Kind;
using core::Content;

/// Billionths with as many places as they need: at most three below 10, two below 100, one above.
std::string shortest(std::int64_t nano, bool up)
{
    constexpr std::int64_t one = 1'000'000'000;
    const std::int64_t place = nano < 10 * one ? one / 1'000 : nano < 100 * one ? one / 100 : one / 10;
    const std::int64_t cut = nano / place * place + (up && nano % place != 0 ? place : 0);
    std::string text = core::decimal_text(cut, 3);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return grouped(text);
}

std::string range_words(core::Range<Content> range, core::Nutrient nutrient, const Language& language)
{
    const std::string high = exact_words(range.high, nutrient, true);
    const std::string low = exact_words(range.low, nutrient, false);
    if (low == high) // amount and percent that meet in a single value
        return low;
    if (range.low == Content{})
        return language.fill(TextId::why_range_below, {{"high", high}});
    return language.fill(TextId::why_range, {{"low", low}, {"high", high}});
}

std::string line_words(const core::Line& line, core::Nutrient nutrient, const Language& language)
{
    std::string words = line.amount ? amount_words(*line.amount, nutrient, language) : "";
    if (line.percent)
        words += (words.empty() ? "" : ", ") + percent_words(line.percent->percent, line.percent->less_than, language);
    return words;
}

std::string size_unit(const core::Label& label)
{
    return label.serving.metric && std::holds_alternative<core::Volume>(*label.serving.metric) ? "mL" : "g";
}

std::string net_words(const core::Label& label, bool narrowed, const Language& language)
{
    if (!narrowed || !label.net_quantity)
        return "";
    return " " + language.fill(TextId::why_narrowed, {{"net", label.net_quantity->printed}});
}

std::string sizes_words(const core::Step& step, const core::Label& label, const Language& language)
{
    const std::string low = shortest(step.span->low, false);
    const std::string high = shortest(step.span->high, true);
    const std::string rule = core_words(step.citation, language);
    if (step.kind == Kind::ServingStandsFor)
        return language.fill(TextId::why_serving_size, {{"size", core::measure_text(*label.serving.metric)},
                                                        {"low", low},
                                                        {"high", high},
                                                        {"unit", size_unit(label)},
                                                        {"rule", rule}}) +
               net_words(label, step.narrowed, language);
    std::string servings = count_words(label.servings.count);
    if (label.servings.kind == core::ServingsPerContainer::Kind::About)
        servings = language.fill(TextId::servings_about, {{"n", servings}});
    if (step.span->exact() && !step.narrowed)
        return language.fill(TextId::why_servings_exact, {{"servings", servings}, {"rule", rule}});
    return language.fill(TextId::why_servings, {{"servings", servings}, {"low", low}, {"high", high}, {"rule", rule}}) +
           net_words(label, step.narrowed, language);
}

std::string times_sentence(const core::Step& step, core::Nutrient nutrient, const core::Label& label, core::Basis basis,
                           const Language& language)
{
    const std::string figure = amount_words(*step.line->amount, nutrient, language);
    const std::string result = amount_words(*step.figure, nutrient, language);
    if (basis == core::Basis::SameAmount)
        return language.fill(TextId::why_per_hundred, {{"figure", figure},
                                                       {"size", core::measure_text(*label.serving.metric)},
                                                       {"result", result},
                                                       {"unit", size_unit(label)}});
    return language.fill(TextId::why_times,
                         {{"figure", figure}, {"times", times_words(*step.times)}, {"result", result}});
}

std::string percent_sentence(const core::Step& step, core::Nutrient nutrient, const Language& language)
{
    const std::string percent = percent_words(*step.percent, false, language);
    if (step.kind == Kind::PercentFromAmount)
        return step.daily
                   ? language.fill(TextId::why_percent_counted, {{"percent", percent},
                                                                 {"daily", exact_words(*step.daily, nutrient, false)},
                                                                 {"rule", core_words(step.citation, language)}})
                   : "";
    if (!step.line || !step.line->percent)
        return "";
    return language.fill(TextId::why_times, {{"figure", percent_words(step.line->percent->percent,
                                                                      step.line->percent->less_than, language)},
                                             {"times", times_words(*step.times)},
                                             {"result", percent}});
}

std::string other_words(const core::Step& step, const Language& language)
{
    return in_sentence(nutrient_name(*step.other, language));
}

std::string contradicts(const core::Step& step, core::Nutrient nutrient, const core::Label& label, core::Basis basis,
                        const Language& language)
{
    core::Shown shown;
    if (const auto* line = core::column_for(label, nutrient, basis).find(nutrient))
        shown.printed = *line;
    shown.contradiction = step.contradiction;
    shown.against = step.other;
    return contradiction_sentence(shown, nutrient, nutrient_name(nutrient, language), language);
}

} // namespace

std::string exact_words(Content amount, core::Nutrient nutrient, bool up)
{
    const auto unit = core::info(nutrient).unit;
    const std::int64_t times = 1'000'000'000 / core::nano_of(unit);
    std::string words = shortest(amount.nano() * times, up);
    if (const auto name = core::unit_name(unit); !name.empty())
        words.append(" ").append(name);
    return words;
}

std::string step_words(const core::Step& step, core::Nutrient nutrient, const core::Label& label, core::Basis basis,
                       const Language& language)
{
    const std::string rule = core_words(step.citation, language);
    const auto range = [&] { return range_words(*step.range, nutrient, language); };
    switch (step.kind) {
    case Kind::Printed:
        return language.fill(TextId::why_printed, {{"figure", line_words(*step.line, nutrient, language)}});
    case Kind::NotPrinted:
        return language.text(TextId::why_not_printed);
    case Kind::NotSignificant:
        return step.range ? language.fill(TextId::why_not_significant,
                                          {{"high", exact_words(step.range->high, nutrient, true)}, {"rule", rule}})
                          : "";
    case Kind::AmountStandsFor:
        return language.fill(TextId::why_amount,
                             {{"figure", amount_words(*core::column_for(label, nutrient, basis).find(nutrient)->amount,
                                                      nutrient, language)},
                              {"range", range()},
                              {"rule", rule}});
    case Kind::PercentStandsFor:
        return language.fill(TextId::why_percent, {{"percent", percent_words(step.line->percent->percent,
                                                                             step.line->percent->less_than, language)},
                                                   {"daily", exact_words(*step.daily, nutrient, false)},
                                                   {"range", range()},
                                                   {"rule", rule}});
    case Kind::PercentOfAmount:
        return language.fill(TextId::why_percent_of_amount, {{"rule", rule}});
    case Kind::Together:
        return language.fill(TextId::why_together, {{"range", range()}});
    case Kind::NoMoreThanWhole:
        return language.fill(TextId::why_whole,
                             {{"other", other_words(step, language)}, {"range", range()}, {"rule", rule}});
    case Kind::NoLessThanPart:
        return language.fill(TextId::why_part,
                             {{"other", other_words(step, language)}, {"range", range()}, {"rule", rule}});
    case Kind::Contradicts:
        return contradicts(step, nutrient, label, basis, language);
    case Kind::ServingStandsFor:
    case Kind::ServingsStandFor:
        return sizes_words(step, label, language);
    case Kind::Times:
        return times_sentence(step, nutrient, label, basis, language);
    case Kind::PercentTimes:
    case Kind::PercentFromAmount:
        return percent_sentence(step, nutrient, language);
    case Kind::OnBasis:
        return language.fill(TextId::why_on_basis, {{"range", range()}});
    case Kind::PercentOnBasis:
        return language.fill(
            TextId::why_percent_on_basis,
            {{"low", tenths_down(step.percents->low)}, {"high", tenths_up(step.percents->high)}, {"rule", rule}});
    }
    return "";
}

} // namespace ui
