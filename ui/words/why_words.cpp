#include "ui/words/why_words.h"

#include "core/compare/measured.h"
#include "core/compare/shown_figure.h"
#include "ui/words/basis_words.h"
#include "ui/words/beside_words.h"
#include "ui/words/ingredient_words.h"
#include "ui/words/numbers.h"
#include "ui/words/origin_words.h"
#include "ui/words/pair_words.h"
#include "ui/words/what_is.h"

#include <algorithm>

namespace ui {
namespace {

using core::Finding;
using core::Nutrient;

class Writer {
public:
    Writer(Nutrient nutrient, const core::Choices& choices, const Language& language)
        : nutrient_(nutrient), choices_(choices), language_(language)
    {
        words_.title = language.fill(TextId::why_title, {{"name", nutrient_name(nutrient, language)}});
        words_.what = what_is_this(what_is(nutrient, language), language);
    }

    void heading(std::string words) { words_.lines.push_back({true, std::move(words)}); }
    void say(std::string words)
    {
        if (!words.empty())
            words_.lines.push_back({false, std::move(words)});
    }

    void side(const core::Product& product, const core::Ground& ground)
    {
        const core::SharpLabel sharp = core::sharpen(product.label);
        for (const auto& step : core::steps_of({product.label, sharp}, nutrient_, ground))
            say(step_words(step, nutrient_, product.label, ground.basis, language_));
        if (nutrient_ == Nutrient::TransFat)
            say(trans_fat_of_label(product.label, language_));
        say(origin_sentence(product, language_));
    }

    void finding(const core::Comparison& comparison, const core::Row& row);
    void good_to_know(const core::Label& one, const core::Label& other, core::Basis basis);
    void teaspoons(const core::Shown& shown);
    void day();

    WhyWords take() { return std::move(words_); }

private:
    void less(const core::Row& row);
    void too_close(const core::Row& row, core::Basis basis);
    [[nodiscard]] std::string value(core::Content amount, bool up) const { return exact_words(amount, nutrient_, up); }

    Nutrient nutrient_;
    const core::Choices& choices_;
    const Language& language_;
    WhyWords words_;
};

void Writer::less(const core::Row& row)
{
    const bool left = row.finding == Finding::LeftLess;
    const auto& lower = left ? row.left : row.right;
    const auto& higher = left ? row.right : row.left;
    if (!lower.range || !higher.range)
        return;
    say(language_.fill(TextId::why_less, {{"finding", language_.text(finding_text(row))},
                                          {"lower", language_.text(left ? TextId::side_left : TextId::side_right)},
                                          {"higher", language_.text(left ? TextId::side_right : TextId::side_left)},
                                          {"most", value(lower.range->high, true)},
                                          {"least", value(higher.range->low, false)}}));
}

void Writer::too_close(const core::Row& row, core::Basis basis)
{
    const auto both = core::common_value(row.left, row.right);
    say(both ? language_.fill(TextId::why_too_close, {{"value", value(*both, true)}})
             : language_.text(TextId::why_too_close_plain));
    if (basis == core::Basis::SameAmount)
        say(language_.text(TextId::why_sizes_differ_note));
}

void Writer::finding(const core::Comparison& comparison, const core::Row& row)
{
    heading(language_.text(TextId::why_finding));
    switch (row.finding) {
    case Finding::LeftLess:
    case Finding::LeftMore:
        return less(row);
    case Finding::SameFigure:
        return say(language_.text(TextId::why_same_figure));
    case Finding::TooCloseToTell:
        return too_close(row, comparison.basis);
    case Finding::NotPrinted:
        return say(language_.text(TextId::why_not_printed));
    case Finding::NotComparable:
        break;
    }
    say(language_.text(finding_text(row)));
    if (const auto why = why_text(row.why))
        say(language_.text(*why));
}

void Writer::teaspoons(const core::Shown& shown)
{
    if (shown.figure)
        if (auto sentence = teaspoons_sentence(nutrient_, *shown.figure, language_))
            say(std::move(*sentence));
}

/// Calories beside those of a day: a table to look at.
void Writer::day()
{
    if (nutrient_ != Nutrient::Calories)
        return;
    auto section = day_section(language_);
    heading(std::move(section.heading));
    for (auto& sentence : section.sentences)
        say(std::move(sentence));
}

bool prints_percent(const core::Label& label, Nutrient nutrient)
{
    return core::percent_of_column(label, label.per_serving, nutrient).has_value();
}

void Writer::good_to_know(const core::Label& one, const core::Label& other, core::Basis basis)
{
    heading(language_.text(TextId::why_good_to_know));
    const auto aim = core::aim_of(nutrient_, choices_.aims);
    const std::string source = choices_.aims == core::AimList::Class ? language_.text(TextId::why_aim_common)
                                                                     : std::string(core::source_of(choices_.aims));
    if (aim == core::Aim::Less)
        say(language_.fill(TextId::why_aim_less, {{"source", source}}));
    if (aim == core::Aim::More)
        say(language_.fill(TextId::why_aim_more, {{"source", source}}));
    const bool percents = prints_percent(one, nutrient_) || prints_percent(other, nutrient_);
    if (percents && core::percent_rounding(nutrient_, one.panel) == core::PercentRounding::Vitamin)
        say(language_.text(TextId::why_vitamin_steps));
    if (nutrient_ == Nutrient::TransFat)
        say(trans_fat_rules(language_));
    if (nutrient_ == Nutrient::Sodium)
        say(language_.text(TextId::why_low_sodium));
    if (nutrient_ == Nutrient::Protein && percents)
        say(language_.text(TextId::why_protein_percent));
    if (core::info(nutrient_).percent == core::PercentRounding::None && nutrient_ != Nutrient::Calories)
        say(language_.text(TextId::why_no_daily_value));
    if (core::is_eaten(basis))
        say(language_.text(TextId::guide_package));
    say(language_.text(TextId::why_label_may_be_wrong));
}

std::string side_heading(const core::Product& product, TextId place, const Language& language)
{
    return language.text(place) + " · " + product.name;
}

} // namespace

WhyWords why_words(const core::Comparison& comparison, Nutrient nutrient, const core::Product& left,
                   const core::Product& right, const core::Choices& choices, const Language& language)
{
    Writer writer(nutrient, choices, language);
    const bool alone = comparison.why != core::Why::Comparable;
    const core::Ground ground{alone ? core::Basis::Serving : comparison.basis, comparison.amount, comparison.measure};
    writer.say(basis_named(ground.basis, left.label, right.label, comparison.amount, language).words);
    writer.heading(side_heading(left, TextId::left, language));
    writer.side(left, ground);
    writer.heading(side_heading(right, TextId::right, language));
    writer.side(right, ground);
    const auto row = std::ranges::find(comparison.rows, nutrient, &core::Row::nutrient);
    if (row != comparison.rows.end())
        writer.finding(comparison, *row);
    writer.good_to_know(left.label, right.label, ground.basis);
    if (row != comparison.rows.end())
        for (const auto* shown : {&row->left, &row->right})
            writer.teaspoons(*shown);
    writer.day();
    return writer.take();
}

WhyWords why_words(const core::Product& product, Nutrient nutrient, const core::Choices& choices,
                   const Language& language)
{
    Writer writer(nutrient, choices, language);
    writer.heading(product.name);
    writer.side(product, {});
    writer.good_to_know(product.label, product.label, core::Basis::Serving);
    const core::SharpLabel sharp = core::sharpen(product.label);
    writer.teaspoons(core::measured({product.label, sharp}, nutrient, {}, std::nullopt).shown);
    writer.day();
    return writer.take();
}

} // namespace ui
