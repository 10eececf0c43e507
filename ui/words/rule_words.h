// What one or two labels say to published rules, in words: figures, the limit and the day, never a verdict on the food.
#pragma once

#include "core/product.h"
#include "core/rules/rule_sets.h"
#include "ui/words/label_words.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <span>
#include <string>
#include <vector>

namespace ui {

/// Both labels to the chosen sets: one section a set. Rules that both answer alike share a sentence; rules about other
/// foods are told of in one sentence, if no other of the set is about this food.
[[nodiscard]] std::vector<Section> rule_sections(const core::Product& left, const core::Product& right,
                                                 std::span<const core::RuleSet> chosen, const Language& language);

/// One label to the chosen sets, each answer with its arithmetic: behind everything else that the label tells.
void add_rules(const core::Product& product, std::span<const core::RuleSet> chosen, const Language& language,
               LabelWords& label);

/// A rule's name: "Low sodium", "High in iron".
[[nodiscard]] std::string rule_name(const core::Rule& rule, const Language& language);

/// What is said over the answers to a set.
[[nodiscard]] const std::string& rule_set_name(core::RuleSet set, const Language& language);

/// "October 1, 2025", "1 de octubre de 2025".
[[nodiscard]] std::string day_words(core::Day day, const Language& language);

/// "Low sodium (21 CFR 101.61(b)(4))", with the days on which it holds where it has such.
[[nodiscard]] std::string cited_rule(const core::Rule& rule, const Language& language);

/// "meets the figures", "cannot tell from the label: sodium is not printed"; for WIC always with whose list decides.
[[nodiscard]] std::string answer_words(const core::Answer& answer, const Language& language);

/// "sodium at most 140 mg in the reference amount, 40 g". `food`: of the label; nullptr: not known.
[[nodiscard]] std::string limit_words(const core::Limit& limit, const core::ReferenceAmount* food,
                                      const Language& language);

/// What decided, as a class would write it: the limit, the printed figure, what it can stand for, the multiplication
/// and where that can reach. Empty where no figure was weighed.
[[nodiscard]] std::vector<std::string> arithmetic_sentences(const core::Answer& answer, const core::Product& product,
                                                            const Language& language);

} // namespace ui
