// How a row names the few values that a label can have: a number since version 3 of the tables, a word before. Both
// outlive every change of the enumerations: add lines, never change one.
#pragma once

#include "core/label/label.h"
#include "core/origin.h"

#include <cstdint>
#include <string_view>

namespace catalog {

/// A value, its word in versions 1 and 2, its number since.
template<class Value>
struct RowWord {
    Value value;
    std::string_view text;
    std::int64_t number;
};

inline constexpr RowWord<core::Panel> panel_words[] = {{core::Panel::Of2016, "2016", 0},
                                                       {core::Panel::Older, "older", 1}};
inline constexpr RowWord<core::Audience> audience_words[] = {{core::Audience::Adult, "adult", 0},
                                                             {core::Audience::Ages1To3, "ages_1_3", 1},
                                                             {core::Audience::Infant, "infant", 2}};

inline constexpr RowWord<core::ServingsPerContainer::Kind> servings_words[] = {
    {core::ServingsPerContainer::Kind::NotPrinted, "not_printed", 0},
    {core::ServingsPerContainer::Kind::Number, "number", 1},
    {core::ServingsPerContainer::Kind::About, "about", 2},
    {core::ServingsPerContainer::Kind::Varied, "varied", 3},
    {core::ServingsPerContainer::Kind::Single, "single", 4}};

inline constexpr RowWord<core::SecondColumn::Kind> second_words[] = {
    {core::SecondColumn::Kind::AsPrepared, "as_prepared", 0},
    {core::SecondColumn::Kind::PerContainer, "per_container", 1}};

inline constexpr RowWord<core::Origin::Kind> origin_words[] = {{core::Origin::Kind::Sheet, "sheet", 0},
                                                               {core::Origin::Kind::Release, "release", 1},
                                                               {core::Origin::Kind::TypedHere, "typed_here", 2}};

} // namespace catalog
