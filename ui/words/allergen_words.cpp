#include "ui/words/allergen_words.h"

#include "ui/words/ingredient_words.h"

#include <algorithm>
#include <cctype>
#include <string_view>

namespace ui {
namespace {

using core::Allergen;
using core::AllergenPlace;

/// Words the namings of one label.
class Writer {
public:
    Writer(const core::Product& product, const core::IngredientList& list, const Language& language)
        : reading_(core::allergens_of(product.label, list, product.origin.entered_on)),
          date_(product.origin.entered_on.text()), language_(language)
    {
    }

    std::vector<std::string> write()
    {
        statement();
        if (!reading_.statement_in_text.empty())
            printed(TextId::contains_in_text, reading_.statement_in_text, AllergenPlace::StatementInText);
        ingredients();
        if (const auto list = with_words(AllergenPlace::InDoubt); !list.empty())
            say(language_.fill(TextId::allergens_in_doubt, {{"list", list}}));
        if (!reading_.may_contain.empty())
            printed(TextId::allergens_may_contain, reading_.may_contain, AllergenPlace::MayContain);
        if (reading_.sesame_need_not_be_named)
            say(language_.fill(TextId::allergens_sesame,
                               {{"date", date_}, {"from", core::sesame_named_from().text()}}));
        return std::move(sentences_);
    }

private:
    void say(std::string words) { sentences_.push_back(std::move(words)); }

    void statement()
    {
        if (!reading_.statement_recorded)
            say(language_.text(TextId::contains_not_recorded));
        else if (reading_.statement.empty())
            say(language_.fill(TextId::contains_absent, {{"date", date_}}));
        else
            printed(TextId::contains_entered, reading_.statement, AllergenPlace::Statement);
    }

    void ingredients()
    {
        if (!reading_.ingredients_recorded)
            return say(language_.text(TextId::ingredients_not_recorded));
        const auto list = with_words(AllergenPlace::Ingredients);
        say(list.empty() ? language_.text(TextId::allergens_none_recognized)
                         : language_.fill(TextId::allergens_in_ingredients, {{"list", list}}));
    }

    /// A printed text, and the allergens that were recognized in it.
    void printed(TextId text, const std::string& words, AllergenPlace place)
    {
        const auto names = with_words(place, Quote::WhatSaysMore);
        say(language_.fill(text, {{"words", quoted_words({words})}}) + " " +
            (names.empty() ? language_.text(TextId::allergens_unknown_words)
                           : language_.fill(TextId::allergens_recognized, {{"list", names}})));
    }

    enum class Quote { Always, WhatSaysMore };

    /// "wheat (“enriched flour”, “wheat gluten”), soybeans (“soy lecithin”)". The allergen's own name, in a statement
    /// that was quoted a word before, says no more: "milk, soybeans (“soy”)".
    std::string with_words(AllergenPlace place, Quote quote = Quote::Always) const
    {
        std::string all;
        for (std::size_t i = 0; i < core::allergen_count; ++i) {
            const auto allergen = static_cast<Allergen>(i);
            const auto& name = allergen_name(allergen, language_);
            if (!reading_.names(allergen, place))
                continue;
            std::vector<std::string> words;
            for (const auto& naming : reading_.named)
                if (naming.allergen == allergen && naming.place == place &&
                    (quote == Quote::Always || !same_name(naming.printed, name)))
                    words.push_back(naming.printed);
            all += (all.empty() ? "" : ", ") + name + (words.empty() ? "" : " (" + quoted_words(words) + ")");
        }
        return all;
    }

    static bool same_name(std::string_view printed, std::string_view name)
    {
        const auto small = [](unsigned char c) { return std::tolower(c); };
        return std::ranges::equal(printed, name, {}, small, small);
    }

    const core::AllergenReading reading_;
    const std::string date_;
    const Language& language_;
    std::vector<std::string> sentences_;
};

core::IngredientList list_of(const core::Product& product)
{
    return product.label.ingredients ? core::take_apart(*product.label.ingredients) : core::IngredientList{};
}

void append(std::vector<std::string>& to, std::vector<std::string> from)
{
    for (auto& words : from)
        to.push_back(std::move(words));
}

Section side_section(const core::Product& product, TextId place, const Language& language)
{
    Section section{language.fill(TextId::package_side, {{"side", language.text(place)}}), {}};
    const auto list = list_of(product);
    section.sentences = allergen_sentences(product, list, language);
    if (product.label.ingredients) {
        section.sentences.push_back(first_grain_sentence(list, language));
        append(section.sentences, sugar_sentences(list, language));
    }
    return section;
}

} // namespace

const std::string& allergen_name(Allergen allergen, const Language& language)
{
    // The names stand in the order of core::Allergen; a test holds them together.
    const auto first = static_cast<std::size_t>(TextId::allergen_milk);
    return language.text(static_cast<TextId>(first + static_cast<std::size_t>(allergen)));
}

std::vector<std::string> allergen_sentences(const core::Product& product, const core::IngredientList& list,
                                            const Language& language)
{
    return Writer(product, list, language).write();
}

std::vector<Section> package_sections(const core::Product& product, const Language& language)
{
    const auto list = list_of(product);
    std::vector<Section> sections{ingredients_section(product.label, list, language)};
    if (product.label.ingredients) {
        sections.push_back({language.text(TextId::grain_heading), {first_grain_sentence(list, language)}});
        sections.push_back({language.text(TextId::sugars_heading), sugar_sentences(list, language)});
        if (auto sources = sugar_sources_sentence(list, language))
            sections.back().sentences.push_back(std::move(*sources));
    }
    // The caution leads, so that no page shows allergens and leaves it to the next one.
    sections.push_back({language.text(TextId::allergens_heading),
                        {language.fill(TextId::label_caution, {{"date", product.origin.entered_on.text()}})}});
    append(sections.back().sentences, allergen_sentences(product, list, language));
    return sections;
}

std::vector<Section> pair_package_sections(const core::Product& left, const core::Product& right,
                                           const Language& language)
{
    return {{language.text(TextId::package_caution_heading),
             {language.fill(TextId::package_caution,
                            {{"left", left.origin.entered_on.text()}, {"right", right.origin.entered_on.text()}})}},
            side_section(left, TextId::left, language),
            side_section(right, TextId::right, language)};
}

} // namespace ui
