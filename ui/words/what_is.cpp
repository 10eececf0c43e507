#include "ui/words/what_is.h"

#include "core/label/folded_words.h"

#include <algorithm>

namespace ui {
namespace {

using Folded = std::vector<std::string>;

void fold_into(Folded& words, std::string_view text)
{
    for (auto& word : core::folded_words(text))
        words.push_back(std::move(word.text));
}

bool holds(const Folded& all, std::string_view form)
{
    Folded wanted;
    fold_into(wanted, form);
    return !wanted.empty() && std::search(all.begin(), all.end(), wanted.begin(), wanted.end()) != all.end();
}

/// The next form of a word, cut off what is left of its text.
std::string_view next_form(std::string_view& left)
{
    const auto bar = left.find('|');
    const auto form = left.substr(0, bar);
    left.remove_prefix(bar == std::string_view::npos ? left.size() : bar + 1);
    return form;
}

bool stands_in(const Folded& all, std::string_view forms)
{
    while (!forms.empty())
        if (holds(all, next_form(forms)))
            return true;
    return false;
}

Meaning meaning(const WhatIs& row, const Language& language)
{
    std::string_view forms = language.text(row.term);
    return {std::string(next_form(forms)), language.text(row.sentence)};
}

} // namespace

const std::string& what_is(core::Nutrient nutrient, const Language& language)
{
    // The texts are in the order of the panel; a test holds them to it.
    const auto first = static_cast<std::size_t>(TextId::what_calories);
    return language.text(static_cast<TextId>(first + static_cast<std::size_t>(nutrient)));
}

std::string what_is_this(const std::string& sentence, const Language& language)
{
    return language.fill(TextId::what_is_this, {{"sentence", sentence}});
}

std::vector<Meaning> all_meanings(const Language& language)
{
    std::vector<Meaning> all;
    for (const auto& row : what_is_table())
        all.push_back(meaning(row, language));
    return all;
}

std::vector<Meaning> meanings_in(const std::vector<std::string>& texts, const Language& language)
{
    Folded all;
    for (const auto& text : texts) {
        fold_into(all, text);
        all.emplace_back(); // no word goes on from one text into the next
    }
    std::vector<Meaning> found;
    for (const auto& row : what_is_table())
        if (stands_in(all, language.text(row.term)))
            found.push_back(meaning(row, language));
    return found;
}

} // namespace ui
