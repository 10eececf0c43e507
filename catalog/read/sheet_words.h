// The words that cells of a sheet choose from, and what each stands for: for who reads a sheet and who writes one.
#pragma once

#include "core/label/label.h"
#include "core/origin.h"

#include <string_view>

namespace catalog {

/// A word of a cell and what it stands for. Of two words for one value the first is the one that is written.
template<class Value>
struct SheetWord {
    std::string_view text;
    Value value;
};

inline constexpr SheetWord<core::Panel> sheet_panels[] = {{"2016", core::Panel::Of2016}, {"older", core::Panel::Older}};
inline constexpr SheetWord<core::Audience> sheet_audiences[] = {
    {"adult", core::Audience::Adult}, {"ages_1_3", core::Audience::Ages1To3}, {"infant", core::Audience::Infant}};
inline constexpr SheetWord<core::SecondColumn::Kind> sheet_seconds[] = {
    {"as_prepared", core::SecondColumn::Kind::AsPrepared}, {"per_container", core::SecondColumn::Kind::PerContainer}};
/// The same above a column without a figure.
inline constexpr SheetWord<core::SecondColumn::Kind> sheet_empty_seconds[] = {
    {"as_prepared_no_figure", core::SecondColumn::Kind::AsPrepared},
    {"per_container_no_figure", core::SecondColumn::Kind::PerContainer}};
inline constexpr SheetWord<core::Origin::Kind> sheet_source_kinds[] = {{"sheet", core::Origin::Kind::Sheet},
                                                                       {"release", core::Origin::Kind::Release},
                                                                       {"typed_here", core::Origin::Kind::TypedHere}};
/// The last two are what a spreadsheet makes of the first two as values of logic.
inline constexpr SheetWord<bool> sheet_yes[] = {{"yes", true}, {"no", false}, {"true", true}, {"false", false}};

/// The row of a word, written small; nullptr for a word that is not among them.
template<class Words>
[[nodiscard]] constexpr auto sheet_word(const Words& words, std::string_view small) -> decltype(&words[0])
{
    for (const auto& word : words)
        if (word.text == small)
            return &word;
    return nullptr;
}

/// The word for a value.
template<class Words, class Value>
[[nodiscard]] constexpr std::string_view written_word(const Words& words, const Value& value)
{
    for (const auto& word : words)
        if (word.value == value)
            return word.text;
    return {};
}

} // namespace catalog
