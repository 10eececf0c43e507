// A comparison in words: made once by the session, then placed on the screen, spoken and printed without change.
#pragma once

#include "core/compare/comparison.h"
#include "core/product.h"
#include "ui/words/basis_words.h"
#include "ui/words/language.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One side of a row as people read it.
struct FigureWords {
    std::string amount;               ///< "0.5 g", "less than 1 g", "not printed"
    std::string percent;              ///< "3 %", or empty
    std::optional<int> percent_value; ///< where it stands on the 5-20 line
    bool operator==(const FigureWords&) const = default;
};

/// One nutrient as people read it.
struct RowWords {
    core::Nutrient nutrient;
    core::Aim aim;
    bool first = false; ///< one of those that the leader wants first
    std::string name;
    FigureWords left;
    FigureWords right;
    std::string finding;              ///< "Left has less"
    std::vector<std::string> remarks; ///< what must be said beside the figures: ranges, changed readings, why not
    bool operator==(const RowWords&) const = default;
};

/// The head of one side.
struct SideWords {
    std::string place;    ///< "Left"
    std::string name;     ///< the product's own name
    std::string brand;    ///< may be empty
    std::string servings; ///< "About 9 servings, 1 cup (39 g) each"
    std::string net;      ///< "12 oz (340 g)", or what the whole package holds; may be empty
    bool operator==(const SideWords&) const = default;
};

/// What is told behind the rows under a heading of its own: prices, ingredients, published rules.
struct Section {
    std::string heading;
    std::vector<std::string> sentences;
    bool operator==(const Section&) const = default;
};

/// A whole comparison in words.
struct PairWords {
    std::array<SideWords, 2> sides;
    std::vector<std::string> first; ///< said before all figures: serving sizes, why not, unlike labels
    std::string guide; ///< said over the lines: what 5 and 20 are for; empty where they are read as they are meant
    std::vector<BasisWords> bases; ///< the buttons
    std::string shown_instead;     ///< said in place of the basis where its figures are not there; else empty
    std::vector<RowWords> rows;
    std::vector<Section> sections; ///< behind the rows
    bool operator==(const PairWords&) const = default;
};

/// What stands on the button of a basis; the first one's words where it is not offered; what is shown instead where its
/// figures are not there.
[[nodiscard]] const std::string& basis_heading(const PairWords& words, core::Basis basis);

/// Words a comparison: the one place that words a finding.
[[nodiscard]] PairWords pair_words(const core::Comparison& comparison, const core::Product& left,
                                   const core::Product& right, const Language& language);

/// Words the head of one side. On the basis of the package it tells what the package holds in household measures.
[[nodiscard]] SideWords side_words(const core::Product& product, bool is_left, core::Basis basis,
                                   const Language& language);

/// The words of a finding: "Left has less".
[[nodiscard]] TextId finding_text(const core::Row& row);

/// A nutrient's name.
[[nodiscard]] const std::string& nutrient_name(core::Nutrient nutrient, const Language& language);

} // namespace ui
