#include "ui/words/basis_words.h"

#include "core/figure/figure.h"
#include "ui/words/numbers.h"

#include <algorithm>

namespace ui {
namespace {

using core::Basis;
using core::Why;
using Of = core::MyAmount::Of;
using Kitchen = core::Household::Unit;

BasisWords same_amount(const core::Label& left, const core::Label& right, const Language& language)
{
    TextId id = TextId::basis_same;
    if (core::comparable_on(Basis::SameAmount, left, right) == Why::Comparable && left.serving.metric)
        id = std::holds_alternative<core::Mass>(*left.serving.metric) ? TextId::basis_same_g : TextId::basis_same_ml;
    return {Basis::SameAmount, TextId::basis_same, language.text(id)};
}

BasisWords same_measure(const core::Household& measure, const Language& language)
{
    switch (measure.unit) {
    case Kitchen::Tablespoon:
        return {Basis::SameMeasure, TextId::basis_same, language.text(TextId::basis_same_tablespoon)};
    case Kitchen::Teaspoon:
        return {Basis::SameMeasure, TextId::basis_same, language.text(TextId::basis_same_teaspoon)};
    case Kitchen::Piece:
        return {Basis::SameMeasure, TextId::basis_same,
                language.fill(TextId::basis_same_piece, {{"piece", measure.noun}})};
    case Kitchen::Cup:
    case Kitchen::FluidOunce:
    case Kitchen::Ounce:
    case Kitchen::Package:
        break;
    }
    return {Basis::SameMeasure, TextId::basis_same, language.text(TextId::basis_same_cup)};
}

/// As a kitchen says it: "1 1/2".
std::string ratio_words(core::Ratio times)
{
    const auto text = core::ratio_text(times);
    return text ? *text : times_words(times);
}

/// Singular up to one: "1/2 cup", "1 1/2 cups".
std::string counted(const core::MyAmount& amount, TextId one, TextId many, const Language& language)
{
    const bool is_one = amount.times.over <= amount.times.under;
    return language.fill(is_one ? one : many, {{"n", ratio_words(amount.times)}});
}

std::string package_words(core::Ratio times, const Language& language)
{
    if (times.over == times.under)
        return language.text(TextId::my_whole_package);
    if (2 * times.over == times.under)
        return language.text(TextId::my_half_package);
    return language.fill(times.over < times.under ? TextId::my_part_package : TextId::my_packages,
                         {{"n", ratio_words(times)}});
}

} // namespace

std::string times_words(core::Ratio times)
{
    if (10 % times.under != 0) // thirds and quarters are said as such, halves as labels print servings: 2.5
        if (const auto text = core::ratio_text(times))
            return *text;
    constexpr std::int64_t thousand = 1'000;
    std::string text = core::decimal_text((times.over * thousand + times.under / 2) / times.under * 1'000'000, 3);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

std::string my_amount_words(const core::MyAmount& amount, const Language& language)
{
    switch (amount.of) {
    case Of::Servings:
        if (amount.times.over == amount.times.under)
            return language.text(TextId::my_one_serving);
        return language.fill(TextId::my_servings, {{"n", ratio_words(amount.times)}});
    case Of::Cups:
        return counted(amount, TextId::my_one_cup, TextId::my_cups, language);
    case Of::Tablespoons:
        return counted(amount, TextId::my_one_tablespoon, TextId::my_tablespoons, language);
    case Of::Pieces:
        return counted(amount, TextId::my_one_piece, TextId::my_pieces, language);
    case Of::Package:
        break;
    }
    return package_words(amount.times, language);
}

BasisWords basis_named(Basis basis, const core::Label& left, const core::Label& right, const core::MyAmount& amount,
                       const Language& language)
{
    switch (basis) {
    case Basis::Serving:
        return {basis, TextId::basis_serving, language.text(TextId::basis_serving)};
    case Basis::Package:
        return {basis, TextId::basis_package, language.text(TextId::basis_package)};
    case Basis::SameAmount:
        return same_amount(left, right, language);
    case Basis::SameMeasure:
        if (const auto measure = core::common_measure(left, right))
            return same_measure(*measure, language);
        return {basis, TextId::basis_same, language.text(TextId::basis_same)};
    case Basis::Prepared:
        return {basis, TextId::basis_prepared, language.text(TextId::basis_prepared)};
    case Basis::MyAmount:
        break;
    }
    return {Basis::MyAmount, TextId::basis_my,
            language.fill(TextId::basis_my_chosen, {{"amount", my_amount_words(amount, language)}})};
}

std::vector<BasisWords> bases_words(const core::Comparison& comparison, const core::Label& left,
                                    const core::Label& right, const Language& language)
{
    const auto named = [&](Basis basis) { return basis_named(basis, left, right, comparison.amount, language); };
    const auto possible = [&](Basis basis) { return core::comparable_on(basis, left, right) == Why::Comparable; };
    const bool measure =
        comparison.basis == Basis::SameMeasure ||
        (comparison.basis != Basis::SameAmount && !possible(Basis::SameAmount) && possible(Basis::SameMeasure));
    std::vector<BasisWords> bases{named(Basis::Serving), named(Basis::Package),
                                  named(measure ? Basis::SameMeasure : Basis::SameAmount)};
    if (comparison.basis == Basis::MyAmount || comparison.basis == Basis::Prepared)
        bases.push_back(named(comparison.basis));
    else
        bases.push_back({Basis::MyAmount, TextId::basis_other, language.text(TextId::basis_other)});
    bases.back().opens = true;
    return bases;
}

std::string offer_sentence(const core::Label& left, const core::Label& right, const Language& language)
{
    std::string list;
    for (const auto basis : core::possible_bases(left, right))
        if (basis != Basis::MyAmount)
            list += (list.empty() ? "" : ", ") + in_sentence(basis_named(basis, left, right, {}, language).words);
    return list.empty() ? "" : language.fill(TextId::why_offer, {{"list", list}});
}

std::optional<TextId> why_text(Why why)
{
    switch (why) {
    case Why::UnlikeAudience:
        return TextId::why_audience;
    case Why::GramsAgainstMillilitres:
        return TextId::why_grams_against_ml;
    case Why::NoMetricServing:
        return TextId::why_no_metric;
    case Why::NoHouseholdMeasure:
        return TextId::why_no_household;
    case Why::UnlikeMeasures:
        return TextId::why_unlike_measures;
    case Why::NotPrepared:
        return TextId::why_not_prepared;
    case Why::ServingsAgainstNet:
        return TextId::why_servings_net;
    case Why::ServingsVaried:
        return TextId::why_varied;
    case Why::ServingsNotPrinted:
        return TextId::why_servings_not_printed;
    case Why::ServingsOffTheRule:
        return TextId::why_servings_off;
    case Why::FigureOffTheRule:
    case Why::AmountAgainstPercent:
    case Why::PartAgainstWhole:
    case Why::FigureWorkedBack:
        return std::nullopt; // said of the side, with its figures
    case Why::PercentsOfUnlikeLabels:
        return TextId::why_percents;
    case Why::Comparable:
        break;
    }
    return std::nullopt;
}

} // namespace ui
