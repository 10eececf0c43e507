#include "ui/words/ingredient_words.h"

#include "core/label/grains.h"
#include "core/label/sugars.h"
#include "ui/words/core_words.h"

#include <algorithm>

namespace ui {
namespace {

using Kind = core::FirstGrain::Kind;

/// A citation; what no publication says is named so in the reader's language.
std::string source_words(std::string_view source, const Language& language)
{
    return core_words(source, language);
}

/// In the quotation marks that both languages' texts have.
std::string quoted(const std::string& printed)
{
    return "“" + printed + "”";
}

TextId grain_text(Kind kind)
{
    switch (kind) {
    case Kind::Whole:
        return TextId::grain_whole;
    case Kind::NotWhole:
        return TextId::grain_not_whole;
    case Kind::CountsInPrograms:
        return TextId::grain_program;
    case Kind::Unclear:
        return TextId::grain_unclear;
    case Kind::NoneNamed:
        break;
    }
    return TextId::grain_none;
}

std::vector<std::string> printed_of(const std::vector<core::NamedSugar>& sugars, core::SugarRow::Kind kind)
{
    std::vector<std::string> printed;
    for (const auto& sugar : sugars)
        if (sugar.kind == kind)
            printed.push_back(sugar.printed);
    return printed;
}

std::vector<std::string> such_oils(const core::Label& label)
{
    return label.ingredients ? core::partially_hydrogenated(core::take_apart(*label.ingredients))
                             : std::vector<std::string>{};
}

} // namespace

std::string quoted_words(const std::vector<std::string>& printed)
{
    std::string all;
    for (const auto& words : printed)
        all += (all.empty() ? "" : ", ") + quoted(words);
    return all;
}

Section ingredients_section(const core::Label& label, const core::IngredientList& list, const Language& language)
{
    Section section{language.text(TextId::label_ingredients), {}};
    if (!label.ingredients) {
        section.sentences.push_back(language.text(TextId::ingredients_not_recorded));
        section.sentences.push_back(language.text(TextId::ingredients_on_package));
        return section;
    }
    section.sentences.push_back(*label.ingredients);
    section.sentences.push_back(language.text(TextId::ingredients_by_weight));
    if (list.cut)
        section.sentences.push_back(language.text(TextId::ingredients_cut));
    return section;
}

std::string first_grain_sentence(const core::IngredientList& list, const Language& language)
{
    const auto grain = core::first_grain(list);
    std::string named = quoted(grain.matched);
    if (grain.matched != grain.ingredient)
        named = language.fill(TextId::grain_within, {{"words", named}, {"ingredient", grain.ingredient}});
    return language.fill(grain_text(grain.kind), {{"named", named}, {"source", source_words(grain.source, language)}});
}

std::vector<std::string> sugar_sentences(const core::IngredientList& list, const Language& language)
{
    const auto sugars = core::sugars_in(list);
    const auto named = printed_of(sugars, core::SugarRow::Kind::Sugar);
    const auto juices = printed_of(sugars, core::SugarRow::Kind::Juice);
    std::vector<std::string> sentences;
    sentences.push_back(named.empty() ? language.text(TextId::sugars_none)
                                      : language.fill(TextId::sugars_named, {{"list", quoted_words(named)}}));
    if (!juices.empty())
        sentences.push_back(language.fill(TextId::sugars_juice, {{"list", quoted_words(juices)}}));
    return sentences;
}

std::optional<std::string> sugar_sources_sentence(const core::IngredientList& list, const Language& language)
{
    std::vector<std::string> sources;
    for (const auto& sugar : core::sugars_in(list))
        if (auto source = source_words(sugar.source, language); std::ranges::find(sources, source) == sources.end())
            sources.push_back(std::move(source));
    std::string all;
    for (const auto& source : sources)
        all += (all.empty() ? "" : "; ") + source;
    return all.empty() ? std::nullopt : std::optional(language.fill(TextId::sugars_sources, {{"list", all}}));
}

std::optional<std::string> trans_fat_remark(const core::Label& label, const Language& language)
{
    const core::Line* line = label.per_serving.find(core::Nutrient::TransFat);
    if (!line || !line->amount || line->amount->amount != core::Content{})
        return std::nullopt;
    const auto oils = such_oils(label);
    if (oils.empty())
        return std::nullopt;
    return language.fill(TextId::trans_fat_oil, {{"list", quoted_words(oils)}});
}

std::string trans_fat_rules(const Language& language)
{
    return language.text(TextId::trans_fat_rules);
}

std::string trans_fat_of_label(const core::Label& label, const Language& language)
{
    if (!label.ingredients)
        return language.text(TextId::trans_fat_not_recorded);
    const auto oils = such_oils(label);
    return oils.empty() ? language.text(TextId::trans_fat_look)
                        : language.fill(TextId::trans_fat_named, {{"list", quoted_words(oils)}});
}

} // namespace ui
