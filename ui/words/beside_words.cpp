#include "ui/words/beside_words.h"

#include "core/label/teaspoons.h"
#include "core/rules/day.h"
#include "ui/words/numbers.h"

namespace ui {
namespace {

/// "3", "1/4", "2 1/2".
std::string quarters_words(std::int64_t quarters)
{
    static const char* const parts[] = {"", "1/4", "1/2", "3/4"};
    const std::int64_t whole = quarters / 4;
    const std::string part = parts[quarters % 4];
    if (whole == 0)
        return part;
    return grouped(std::to_string(whole)) + (part.empty() ? "" : " " + part);
}

std::string calories(int low, int high, const Language& language)
{
    const auto first = grouped(std::to_string(low));
    if (low == high)
        return first;
    return language.fill(TextId::day_from_to, {{"low", first}, {"high", grouped(std::to_string(high))}});
}

/// Whom a line is about: people, children or toddlers, by age.
std::string ages(const core::DayGroup& group, const Language& language)
{
    const auto from = std::to_string(group.from);
    if (group.to == core::no_end)
        return language.fill(TextId::day_ages_older, {{"from", from}});
    return language.fill(group.in_months ? TextId::day_months : TextId::day_ages,
                         {{"from", from}, {"to", std::to_string(group.to)}});
}

std::string group_line(const core::DayGroup& group, const Language& language)
{
    constexpr auto male = static_cast<std::size_t>(core::Sex::Male);
    constexpr auto female = static_cast<std::size_t>(core::Sex::Female);
    constexpr int grown = 19;
    const bool adult = !group.in_months && group.from >= grown;
    return language.fill(adult ? TextId::day_line_adults : TextId::day_line_children,
                         {{"ages", ages(group, language)},
                          {"female", calories(group.low[female], group.high[female], language)},
                          {"male", calories(group.low[male], group.high[male], language)}});
}

} // namespace

std::optional<std::string> teaspoons_sentence(core::Nutrient nutrient, const core::Figure& shown,
                                              const Language& language)
{
    const bool sugars = nutrient == core::Nutrient::TotalSugars || nutrient == core::Nutrient::AddedSugars;
    if (!sugars || shown.amount <= core::Content{})
        return std::nullopt;
    const auto quarters = core::quarter_teaspoons(shown.amount);
    const auto spoons = quarters_words(quarters == 0 ? 1 : quarters);
    const auto id = shown.less_than || quarters == 0 ? TextId::teaspoons_less
                    : quarters <= 4                  ? TextId::teaspoons_one
                                                     : TextId::teaspoons_many;
    return language.fill(id, {{"amount", amount_words(shown, nutrient, language)},
                              {"name", in_sentence(nutrient_name(nutrient, language))},
                              {"n", spoons}});
}

Section day_section(const Language& language)
{
    Section section{language.text(TextId::day_heading), {}};
    // What the figures are, and are not, comes before the first of them.
    section.sentences.push_back(language.text(TextId::day_caution));
    section.sentences.push_back(language.fill(TextId::day_source, {{"edition", core::day_edition}}));
    section.sentences.push_back(language.text(TextId::day_activity));
    for (const auto& group : core::day_groups())
        section.sentences.push_back(group_line(group, language));
    return section;
}

} // namespace ui
