#include "ui/words/doubt_words.h"

#include "ui/words/numbers.h"
#include "ui/words/pair_words.h"

namespace ui {
namespace {

using core::Doubt;
using core::DoubtRule;

/// What a line printed: its amount, else its percent.
std::string found_words(const Doubt& doubt, const Language& language)
{
    if (doubt.found && doubt.nutrient)
        return amount_words(*doubt.found, *doubt.nutrient, language);
    return doubt.percent ? percent_words(doubt.percent->percent, doubt.percent->less_than, language) : "";
}

std::string likely_words(const Doubt& doubt, const Language& language)
{
    return doubt.likely ? amount_words(*doubt.likely, *doubt.nutrient, language) : "";
}

std::string name_words(const std::optional<core::Nutrient>& nutrient, const Language& language)
{
    return nutrient ? nutrient_name(*nutrient, language) : "";
}

std::string measure_words(const std::optional<core::Measure>& measure)
{
    return measure ? core::measure_text(*measure) : "";
}

/// Calories or grams, without a tail of decimals: a bound that was counted, not printed.
std::string bound_words(core::Content bound, core::Nutrient nutrient, const Language& language)
{
    const bool calories = nutrient == core::Nutrient::Calories;
    const std::int64_t place = calories ? 1'000'000'000 : 100'000'000;
    const auto whole = core::Content::from_nano(bound.nano() / place * place);
    return amount_words({whole, false, calories || whole.nano() % 1'000'000'000 == 0 ? 0 : 1}, nutrient, language);
}

std::string slipped(const Doubt& doubt, const Language& language)
{
    const std::string amount = found_words(doubt, language);
    const std::string likely = likely_words(doubt, language);
    if (doubt.percent)
        return language.fill(TextId::doubt_slipped_percent,
                             {{"nutrient", name_words(doubt.nutrient, language)},
                              {"amount", amount},
                              {"percent", percent_words(doubt.percent->percent, doubt.percent->less_than, language)},
                              {"likely", likely}});
    if (doubt.nutrient == core::Nutrient::Calories)
        return language.fill(TextId::doubt_slipped_calories, {{"amount", amount}, {"likely", likely}});
    return language.fill(TextId::doubt_slipped_line,
                         {{"nutrient", name_words(doubt.nutrient, language)}, {"amount", amount}, {"likely", likely}});
}

std::string against_percent(const Doubt& doubt, const Language& language)
{
    const std::string name = name_words(doubt.nutrient, language);
    const std::string amount = found_words(doubt, language);
    const std::string percent =
        doubt.percent ? percent_words(doubt.percent->percent, doubt.percent->less_than, language) : "";
    if (!doubt.right_percent)
        return language.fill(TextId::doubt_percent_plain,
                             {{"nutrient", name}, {"amount", amount}, {"percent", percent}});
    return language.fill(TextId::doubt_percent, {{"nutrient", name},
                                                 {"amount", amount},
                                                 {"percent", percent},
                                                 {"right", percent_words(*doubt.right_percent, false, language)}});
}

TextId other_audience(core::Audience audience)
{
    switch (audience) {
    case core::Audience::Adult:
        return TextId::doubt_audience_adult;
    case core::Audience::Ages1To3:
        return TextId::doubt_audience_1_3;
    case core::Audience::Infant:
        break;
    }
    return TextId::doubt_audience_infant;
}

bool in_millilitres(const Doubt& doubt)
{
    return doubt.serving && std::holds_alternative<core::Volume>(*doubt.serving);
}

std::string of_amounts(const Doubt& doubt, const Language& language)
{
    const core::Nutrient nutrient = doubt.nutrient.value_or(core::Nutrient::TotalFat);
    const std::string least = doubt.least ? bound_words(*doubt.least, nutrient, language) : "";
    const std::string most = doubt.most ? bound_words(*doubt.most, nutrient, language) : "";
    const std::string amount = found_words(doubt, language);
    if (doubt.rule == DoubtRule::Calories)
        return language.fill(TextId::doubt_calories, {{"amount", amount}, {"least", least}, {"most", most}});
    if (doubt.rule == DoubtRule::PartsOverWhole)
        return language.fill(
            TextId::doubt_parts,
            {{"nutrient", name_words(doubt.nutrient, language)}, {"least", least}, {"amount", amount}});
    return language.fill(TextId::doubt_weight, {{"least", least}, {"serving", measure_words(doubt.serving)}});
}

std::string of_part(const Doubt& doubt, const Language& language)
{
    return language.fill(TextId::doubt_part, {{"part", name_words(doubt.nutrient, language)},
                                              {"whole", in_sentence(name_words(doubt.other, language))}});
}

std::string of_unit(const Doubt& doubt, const Language& language)
{
    const std::string name = name_words(doubt.nutrient, language);
    const std::string amount = found_words(doubt, language);
    if (!doubt.likely)
        return language.fill(TextId::doubt_unit_unknown, {{"nutrient", name}, {"amount", amount}});
    return language.fill(TextId::doubt_unit,
                         {{"nutrient", name}, {"amount", amount}, {"likely", likely_words(doubt, language)}});
}

std::string of_sizes(const Doubt& doubt, const Language& language)
{
    const std::string serving = measure_words(doubt.serving);
    const std::string other = measure_words(doubt.reference);
    if (doubt.rule == DoubtRule::FarFromReference)
        return language.fill(TextId::doubt_reference, {{"serving", serving}, {"reference", other}});
    return language.fill(
        TextId::doubt_net,
        {{"servings", doubt.servings ? count_words(*doubt.servings) : ""}, {"serving", serving}, {"net", other}});
}

std::string of_rule(const Doubt& doubt, const Language& language, const std::string& code)
{
    switch (doubt.rule) {
    case DoubtRule::SlippedByTen:
        return slipped(doubt, language);
    case DoubtRule::UnitSwapped:
        return of_unit(doubt, language);
    case DoubtRule::Kilojoules:
        return language.fill(TextId::doubt_kilojoules,
                             {{"amount", found_words(doubt, language)}, {"likely", likely_words(doubt, language)}});
    case DoubtRule::PercentAgainstAmount:
        return against_percent(doubt, language);
    case DoubtRule::OtherPanel:
        return language.text(doubt.panel == core::Panel::Older ? TextId::doubt_panel_older : TextId::doubt_panel_2016);
    case DoubtRule::OtherAudience:
        return language.text(other_audience(doubt.audience.value_or(core::Audience::Adult)));
    case DoubtRule::OffTheGrid:
        return language.fill(TextId::doubt_grid, {{"nutrient", name_words(doubt.nutrient, language)},
                                                  {"amount", found_words(doubt, language)}});
    case DoubtRule::PerHundred:
        return language.fill(in_millilitres(doubt) ? TextId::doubt_per_hundred_ml : TextId::doubt_per_hundred_g,
                             {{"serving", measure_words(doubt.serving)}});
    case DoubtRule::PartOverWhole:
        return of_part(doubt, language);
    case DoubtRule::PartsOverWhole:
    case DoubtRule::HeavierThanServing:
    case DoubtRule::Calories:
        return of_amounts(doubt, language);
    case DoubtRule::ServingsAgainstNet:
    case DoubtRule::FarFromReference:
        return of_sizes(doubt, language);
    case DoubtRule::AudienceOfFood:
        return language.text(TextId::doubt_young_food);
    case DoubtRule::DuplicateName:
        break;
    }
    return language.fill(TextId::doubt_duplicate, {{"code", code}});
}

} // namespace

std::string doubt_sentence(const Doubt& doubt, const Language& language, const std::string& code)
{
    auto sentence = of_rule(doubt, language, code);
    if (!doubt.column)
        return sentence;
    return language.fill(*doubt.column == core::SecondColumn::Kind::PerContainer ? TextId::doubt_in_container
                                                                                 : TextId::doubt_in_prepared,
                         {{"doubt", sentence}});
}

const std::string& severity_words(core::Severity severity, const Language& language)
{
    switch (severity) {
    case core::Severity::Wrong:
        return language.text(TextId::doubt_severity_wrong);
    case core::Severity::Likely:
        return language.text(TextId::doubt_severity_likely);
    case core::Severity::Unusual:
        break;
    }
    return language.text(TextId::doubt_severity_unusual);
}

} // namespace ui
