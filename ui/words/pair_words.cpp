#include "ui/words/pair_words.h"

#include "core/compare/shown_figure.h"
#include "core/label/household.h"
#include "ui/words/allergen_words.h"
#include "ui/words/contradiction_words.h"
#include "ui/words/ingredient_words.h"
#include "ui/words/numbers.h"

#include <algorithm>

namespace ui {
namespace {

using core::Basis;
using core::Finding;
using core::Shown;
using core::Source;
using core::Why;
using Kind = core::ServingsPerContainer::Kind;

const std::string& place_of(bool is_left, const Language& language)
{
    return language.text(is_left ? TextId::left : TextId::right);
}

std::string servings_line(const core::Label& label, const Language& language)
{
    const std::string size = serving_words(label.serving, language);
    const std::string n = count_words(label.servings.count);
    const bool one = label.servings.count == core::Count::whole(1);
    switch (label.servings.kind) {
    case Kind::Number:
        return language.fill(one ? TextId::side_servings_one : TextId::side_servings_number,
                             {{"n", n}, {"size", size}});
    case Kind::About:
        return language.fill(one ? TextId::side_servings_about_one : TextId::side_servings_about,
                             {{"n", n}, {"size", size}});
    case Kind::Varied:
        return language.fill(TextId::side_servings_varied, {{"size", size}});
    case Kind::Single:
        return language.fill(TextId::side_servings_single, {{"size", size}});
    case Kind::NotPrinted:
        break;
    }
    return language.fill(TextId::side_servings_none, {{"size", size}});
}

/// What the whole package is: its household measure, worked out, and its net quantity. Ounces stand in that already.
std::string package_line(const core::Label& label, Basis basis, const Language& language)
{
    const std::string net = label.net_quantity ? label.net_quantity->printed : "";
    if (basis != Basis::Package)
        return net;
    std::string amount = net;
    const bool exact = label.servings.kind == Kind::Number || label.servings.kind == Kind::Single;
    const auto household = core::household_times(label.serving.household, label.servings.count);
    if (exact && household && (net.empty() || !household->ends_with(" oz")))
        amount = net.empty() ? *household : *household + " · " + net;
    return amount.empty() ? amount : language.fill(TextId::package_is, {{"amount", amount}});
}

FigureWords figure_words(const Shown& shown, core::Nutrient nutrient, const Language& language)
{
    FigureWords words;
    if (shown.source == Source::NotPrinted)
        words.amount = language.text(TextId::not_printed_short);
    else if (shown.source == Source::NotSignificant)
        words.amount = language.text(TextId::not_significant_short);
    else if (shown.figure)
        words.amount = amount_words(*shown.figure, nutrient, language);
    if (shown.percent) {
        words.percent = percent_words(shown.percent->percent, shown.percent->less_than, language);
        words.percent_value = shown.percent->percent;
    }
    return words;
}

/// What the taught product hides: the range by the printed amount, said where it would mislead.
std::string range_sentence(const core::ShownPercent& shown, const core::ShownPercent& once, core::Ratio times,
                           const std::string& place, const Language& language)
{
    std::string taught = percent_words(shown.percent, shown.less_than, language);
    if (once.percent * times.over % times.under != 0)
        taught = language.fill(TextId::about, {{"n", taught}});
    // Where the range ends just below 20, "20%" would read as high.
    std::string high = tenths_up(shown.range->high);
    if (shown.range->high == core::Percent::whole(20))
        high = language.fill(TextId::just_under, {{"n", high}});
    const auto first = core::reading_of(shown.range->low);
    const auto last = core::reading_of(core::Percent::from_nano(shown.range->high.nano() - 1));
    TextId text = TextId::range_percent;
    if (first != last)
        text = first == core::Reading::Low && last == core::Reading::High ? TextId::range_percent_any
                                                                          : TextId::range_percent_unsure;
    return language.fill(text, {{"side", place},
                                {"percent", percent_words(once.percent, once.less_than, language)},
                                {"n", times_words(times)},
                                {"taught", taught},
                                {"low", tenths_down(shown.range->low)},
                                {"high", high},
                                {"reading", reading_word(first, language)},
                                {"first", reading_word(first, language)},
                                {"second", reading_word(last, language)}});
}

/// One side of a row, with what its sentences need.
struct RowSide {
    const Shown& shown;
    const core::Product& product;
    std::optional<core::Ratio> times; ///< servings in the basis
    bool package = false;             ///< which is the whole package
};

void remark_side(const RowSide& side, const core::Row& row, const std::string& place, const Language& language,
                 std::vector<std::string>& remarks)
{
    const auto& [shown, product, times, package] = side;
    if (shown.contradiction)
        remarks.push_back(contradiction_sentence(shown, row.nutrient, place, language));
    if (!times)
        return;
    const bool percent_says_it = shown.percent && shown.percent->say_range; // one sentence a side is enough
    if (shown.say_range && shown.range && !percent_says_it) {
        core::Figure high{shown.range->high, false, 0};
        const auto unit = core::nano_of(core::info(row.nutrient).unit);
        high.decimals = high.amount.nano() % unit == 0 ? 0 : 1;
        remarks.push_back(language.fill(
            TextId::range_amount,
            {{"side", place}, {"n", times_words(*times)}, {"high", amount_words(high, row.nutrient, language)}}));
    }
    if (!shown.percent || !shown.percent->label_reading)
        return;
    const auto& percent = *shown.percent;
    if (percent.say_range) {
        const auto once = core::percent_of_column(product.label, product.label.per_serving, row.nutrient);
        if (once)
            remarks.push_back(range_sentence(percent, *once, *times, place, language));
    } else if (percent.reading && *percent.reading != *percent.label_reading)
        remarks.push_back(language.fill(package ? TextId::reading_changes : TextId::reading_changes_amount,
                                        {{"side", place},
                                         {"first", reading_word(*percent.label_reading, language)},
                                         {"second", reading_word(*percent.reading, language)}}));
}

/// What is to be said of both sides alike is said once.
void add_side_remarks(const core::Row& row, const RowSide& left, const RowSide& right, const Language& language,
                      std::vector<std::string>& remarks)
{
    const auto said = [&](const RowSide& side, TextId place) {
        std::vector<std::string> sentences;
        remark_side(side, row, language.text(place), language, sentences);
        return sentences;
    };
    const auto both = said(left, TextId::both_sides);
    const bool alike = both == said(right, TextId::both_sides);
    for (const auto& sentences :
         {alike ? both : said(left, TextId::left), alike ? std::vector<std::string>{} : said(right, TextId::right)})
        remarks.insert(remarks.end(), sentences.begin(), sentences.end());
}

void add_trans_fat_remarks(const core::Label& left, const core::Label& right, const Language& language,
                           std::vector<std::string>& remarks)
{
    for (const auto& [label, place] : {std::pair(&left, TextId::left), std::pair(&right, TextId::right)})
        if (const auto remark = trans_fat_remark(*label, language))
            remarks.push_back(language.text(place) + ": " + *remark);
}

RowWords row_words(const core::Row& row, const core::Comparison& comparison, const core::Product& left,
                   const core::Product& right, const Language& language)
{
    RowWords words;
    words.nutrient = row.nutrient;
    words.aim = row.aim;
    words.first = row.first;
    words.name = nutrient_name(row.nutrient, language);
    words.left = figure_words(row.left, row.nutrient, language);
    words.right = figure_words(row.right, row.nutrient, language);
    words.finding = comparison.why == Why::Comparable ? language.text(finding_text(row)) : "";
    if (row.finding == Finding::NotComparable && comparison.why == Why::Comparable)
        if (const auto why = why_text(row.why))
            words.remarks.push_back(language.text(*why));
    const bool package = comparison.basis == core::Basis::Package;
    add_side_remarks(row, {row.left, left, comparison.left_times, package},
                     {row.right, right, comparison.right_times, package}, language, words.remarks);
    if (row.nutrient == core::Nutrient::TransFat)
        add_trans_fat_remarks(left.label, right.label, language, words.remarks);
    return words;
}

std::string sizes_sentence(const core::Comparison& comparison, const core::Label& left, const core::Label& right,
                           const Language& language)
{
    const std::string a = serving_words(left.serving, language);
    const std::string b = serving_words(right.serving, language);
    switch (comparison.sizes) {
    case core::ServingSizes::Same:
        return language.fill(TextId::sizes_same, {{"size", core::measure_text(*left.serving.metric)}});
    case core::ServingSizes::Differ:
        return language.fill(TextId::sizes_differ, {{"left", core::measure_text(*left.serving.metric)},
                                                    {"right", core::measure_text(*right.serving.metric)}});
    case core::ServingSizes::Unlike:
        return language.fill(TextId::sizes_unlike, {{"left", a}, {"right", b}});
    case core::ServingSizes::Unknown:
        break;
    }
    return language.fill(TextId::sizes_unknown, {{"left", a}, {"right", b}});
}

void add_inconsistent(const core::Comparison& comparison, const Language& language, std::vector<std::string>& first)
{
    const bool both = comparison.left_inconsistent && comparison.right_inconsistent;
    const auto say = [&](TextId place) {
        first.push_back(language.fill(TextId::inconsistent_side, {{"side", language.text(place)}}));
    };
    if (both)
        say(TextId::both_sides);
    else if (comparison.left_inconsistent)
        say(TextId::left);
    else if (comparison.right_inconsistent)
        say(TextId::right);
}

/// Food as prepared is another food: with milk, with butter.
void add_prepared(const core::Comparison& comparison, const core::Label& left, const core::Label& right,
                  const Language& language, std::vector<std::string>& first)
{
    const auto prepared = [](const core::Label& label) {
        return label.second && label.second->kind == core::SecondColumn::Kind::AsPrepared;
    };
    if (comparison.basis == Basis::Prepared || (!prepared(left) && !prepared(right)))
        return;
    TextId place = prepared(left) ? TextId::left : TextId::right;
    if (prepared(left) && prepared(right))
        place = TextId::both_sides;
    first.push_back(language.fill(TextId::prepared_apart, {{"side", language.text(place)}}));
}

std::vector<std::string> first_sentences(const core::Comparison& comparison, const core::Label& left,
                                         const core::Label& right, const Language& language)
{
    std::vector<std::string> first;
    const bool eaten = comparison.why == Why::Comparable && core::is_eaten(comparison.basis);
    if (!eaten) // servings no longer matter where all that is eaten is shown
        first.push_back(sizes_sentence(comparison, left, right, language));
    if (const auto why = why_text(comparison.why)) {
        first.push_back(language.text(*why));
        if (comparison.basis != Basis::Serving) {
            first.push_back(language.text(TextId::why_shown_per_serving));
            if (auto offer = offer_sentence(left, right, language); !offer.empty())
                first.push_back(std::move(offer));
        }
    }
    add_inconsistent(comparison, language, first);
    add_prepared(comparison, left, right, language, first);
    if (comparison.unlike_panels)
        first.push_back(language.fill(
            TextId::panels_unlike,
            {{"side", language.text(left.panel == core::Panel::Older ? TextId::side_left : TextId::side_right)}}));
    if (comparison.why == Why::Comparable &&
        (comparison.basis == Basis::SameAmount || comparison.basis == Basis::SameMeasure))
        first.push_back(language.text(TextId::guide_one_serving));
    return first;
}

} // namespace

const std::string& nutrient_name(core::Nutrient nutrient, const Language& language)
{
    // The names of nutrients stand in the order of the panel, in text.h as in core::Nutrient; a test holds them
    // together.
    const auto first = static_cast<std::size_t>(TextId::n_calories);
    return language.text(static_cast<TextId>(first + static_cast<std::size_t>(nutrient)));
}

TextId finding_text(const core::Row& row)
{
    const bool calories = row.nutrient == core::Nutrient::Calories;
    switch (row.finding) {
    case Finding::LeftLess:
        return calories ? TextId::finding_left_fewer : TextId::finding_left_less;
    case Finding::LeftMore:
        return TextId::finding_left_more;
    case Finding::SameFigure:
        return TextId::finding_same;
    case Finding::TooCloseToTell:
        return TextId::finding_too_close;
    case Finding::NotPrinted:
        return TextId::finding_not_printed;
    case Finding::NotComparable:
        break;
    }
    return TextId::finding_not_comparable;
}

const std::string& basis_heading(const PairWords& words, Basis basis)
{
    if (!words.shown_instead.empty())
        return words.shown_instead;
    const auto at = std::ranges::find(words.bases, basis, &BasisWords::basis);
    return at == words.bases.end() ? words.bases.front().words : at->words;
}

SideWords side_words(const core::Product& product, bool is_left, Basis basis, const Language& language)
{
    return {place_of(is_left, language), product.name, product.brand, servings_line(product.label, language),
            package_line(product.label, basis, language)};
}

PairWords pair_words(const core::Comparison& comparison, const core::Product& left, const core::Product& right,
                     const Language& language)
{
    PairWords words;
    words.sides = {side_words(left, true, comparison.basis, language),
                   side_words(right, false, comparison.basis, language)};
    words.first = first_sentences(comparison, left.label, right.label, language);
    for (const auto* side : {&right, &left})
        if (side->this_place_only)
            words.first.insert(words.first.begin(),
                               language.fill(TextId::pair_this_place, {{"side", place_of(side == &left, language)}}));
    if (comparison.why == Why::Comparable && core::is_eaten(comparison.basis))
        words.guide = language.text(TextId::guide_short);
    if (comparison.why != Why::Comparable && comparison.basis != Basis::Serving)
        words.shown_instead = language.text(TextId::basis_serving);
    words.bases = bases_words(comparison, left.label, right.label, language);
    for (const auto& row : comparison.rows)
        words.rows.push_back(row_words(row, comparison, left, right, language));
    words.sections = pair_package_sections(left, right, language);
    return words;
}

} // namespace ui
