// Spanish words for kinds of food, so that "galletas" finds what a release or a sheet calls "Cookies & Biscuits".
#pragma once

#include <span>
#include <string_view>

namespace catalog {

/// A Spanish word and the English words that a category or an aisle has then, all of them; both folded (fold.h).
struct KindWord {
    std::string_view spanish;
    std::string_view english;
};

/// All of them, by the Spanish word. A word may stand in several rows. Source: common practice (bilingual labels and
/// shelf signs in the United States); the English words are those of the categories of FoodData Central, Branded Foods
/// (downloads of October 2023 and April 2026).
[[nodiscard]] std::span<const KindWord> kind_words();

/// Whether a folded text has every word of `words`.
[[nodiscard]] bool has_words(std::string_view folded, std::string_view words);

} // namespace catalog
