#include "ui/words/price_words.h"

#include "core/figure/figure.h"
#include "ui/words/numbers.h"

#include <algorithm>

namespace ui {
namespace {

using core::TradeUnit;

/// How a unit is written behind a number, as on packages, and its word behind "per".
struct UnitWords {
    TradeUnit unit;
    const char* sign; ///< null: the words for a number of pieces
    TextId per;
};
constexpr UnitWords units[] = {
    {TradeUnit::Gram, "g", TextId::unit_gram},
    {TradeUnit::Kilogram, "kg", TextId::unit_kilogram},
    {TradeUnit::Ounce, "oz", TextId::unit_ounce},
    {TradeUnit::Pound, "lb", TextId::unit_pound},
    {TradeUnit::Millilitre, "mL", TextId::unit_millilitre},
    {TradeUnit::Litre, "L", TextId::unit_litre},
    {TradeUnit::FluidOunce, "fl oz", TextId::unit_fluid_ounce},
    {TradeUnit::Pint, "pt", TextId::unit_pint},
    {TradeUnit::Quart, "qt", TextId::unit_quart},
    {TradeUnit::Gallon, "gal", TextId::unit_gallon},
    {TradeUnit::DryPint, "dry pt", TextId::unit_dry_pint},
    {TradeUnit::DryQuart, "dry qt", TextId::unit_dry_quart},
    {TradeUnit::Piece, nullptr, TextId::unit_piece},
    {TradeUnit::Dozen, nullptr, TextId::unit_dozen},
    {TradeUnit::SquareCentimetre, "cm²", TextId::unit_square_centimetre},
    {TradeUnit::SquareDecimetre, "dm²", TextId::unit_square_decimetre},
    {TradeUnit::SquareMetre, "m²", TextId::unit_square_metre},
    {TradeUnit::SquareInch, "sq in", TextId::unit_square_inch},
    {TradeUnit::SquareFoot, "sq ft", TextId::unit_square_foot},
    {TradeUnit::SquareYard, "sq yd", TextId::unit_square_yard},
};

const UnitWords& words_of(TradeUnit unit)
{
    return *std::ranges::find(units, unit, &UnitWords::unit); // every unit has its row; a test walks them
}

std::string number_words(std::int64_t nano)
{
    std::string text = core::decimal_text(nano, 9);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return grouped(text);
}

std::string amount_words(std::int64_t nano, TradeUnit unit, const Language& language)
{
    const std::string number = number_words(nano);
    if (const char* sign = words_of(unit).sign)
        return number + " " + sign;
    const bool one = nano == 1'000'000'000;
    if (unit == TradeUnit::Dozen)
        return language.fill(one ? TextId::price_dozen_one : TextId::price_dozens, {{"n", number}});
    return language.fill(one ? TextId::price_piece_one : TextId::price_pieces, {{"n", number}});
}

std::string serving_words(const core::ServingPrice& serving, const Language& language)
{
    const auto price = shown_price_words(serving.shown, language);
    return language.fill(serving.about ? TextId::price_serving_about : TextId::price_serving, {{"price", price}});
}

std::string side_sentence(const core::PricedSide& side, const std::string& place, const Language& language)
{
    const auto price = money_words(*side.price);
    if (!side.unit && !side.serving)
        return language.fill(TextId::price_side_alone, {{"side", place}, {"price", price}});
    const auto serving = side.serving ? serving_words(*side.serving, language) : "";
    if (!side.unit)
        return language.fill(TextId::price_side_serving, {{"side", place}, {"price", price}, {"serving", serving}});
    const auto amount = trade_amount_words(side.unit->amount, side.unit->packages, language);
    const auto unit = price_unit_words(side.unit->unit, language);
    const auto shown = shown_price_words(side.unit->shown, language);
    return language.fill(side.serving ? TextId::price_side_unit_serving : TextId::price_side_unit,
                         {{"side", place},
                          {"price", price},
                          {"amount", amount},
                          {"shown", shown},
                          {"unit", unit},
                          {"serving", serving}});
}

/// Why the side has no unit price, in one sentence.
std::string why_sentence(core::PriceWhy why, const std::string& place, const Language& language)
{
    switch (why) {
    case core::PriceWhy::NetQuantityMissing:
        return language.fill(TextId::price_no_net_quantity, {{"side", place}});
    case core::PriceWhy::NetQuantityUnclear:
        return language.fill(TextId::price_net_quantity_unclear, {{"side", place}});
    case core::PriceWhy::PriceMissing:
        return language.fill(TextId::price_missing, {{"side", place}});
    case core::PriceWhy::UnlikeGoods:
    case core::PriceWhy::Comparable:
        break;
    }
    return language.text(TextId::price_unlike);
}

std::string order_sentence(const core::PricePair& pair, const Language& language)
{
    const auto unit = price_unit_words(pair.sides[0].unit->unit, language);
    if (*pair.order == std::strong_ordering::equal)
        return language.fill(TextId::price_same, {{"unit", unit}});
    const bool left = *pair.order == std::strong_ordering::less;
    const bool shows = pair.sides[0].unit->shown != pair.sides[1].unit->shown;
    if (!shows)
        return language.fill(left ? TextId::price_left_little_less : TextId::price_right_little_less, {{"unit", unit}});
    return language.fill(left ? TextId::price_left_less : TextId::price_right_less, {{"unit", unit}});
}

} // namespace

std::string money_words(core::Money money)
{
    return "$" + grouped(core::decimal_text(money.nano(), 2));
}

std::string shown_price_words(const core::ShownPrice& price, const Language& language)
{
    if (price.tenths >= 1000)
        return money_words(core::cents(price.tenths / 10));
    const bool whole = !price.with_tenth;
    if (price.rounds_to_0)
        return language.fill(whole ? TextId::price_below_cent : TextId::price_below_cents,
                             {{"n", whole ? "1" : "0.1"}});
    const auto number = std::to_string(price.tenths / 10) + (whole ? "" : "." + std::to_string(price.tenths % 10));
    return language.fill(whole && price.tenths == 10 ? TextId::price_cent_one : TextId::price_cents, {{"n", number}});
}

std::string trade_amount_words(core::TradeAmount amount, int packages, const Language& language)
{
    const auto one = amount_words(amount.nano, amount.unit, language);
    return packages == 1 ? one
                         : language.fill(TextId::price_packages, {{"n", std::to_string(packages)}, {"amount", one}});
}

std::string price_unit_words(core::PriceUnit unit, const Language& language)
{
    if (unit.times == 1)
        return language.text(words_of(unit.unit).per);
    return amount_words(std::int64_t{unit.times} * 1'000'000'000, unit.unit, language);
}

Section price_section(const core::PricePair& pair, const Language& language)
{
    Section section{language.text(TextId::prices_heading), {}};
    const std::string places[] = {language.text(TextId::left), language.text(TextId::right)};
    if (!pair.sides[0].price && !pair.sides[1].price)
        return section;
    for (std::size_t i = 0; i < 2; ++i)
        if (pair.sides[i].price)
            section.sentences.push_back(side_sentence(pair.sides[i], places[i], language));
    if (pair.why == core::PriceWhy::Comparable)
        section.sentences.push_back(order_sentence(pair, language));
    for (std::size_t i = 0; i < 2; ++i)
        if (pair.sides[i].why != core::PriceWhy::Comparable)
            section.sentences.push_back(why_sentence(pair.sides[i].why, places[i], language));
    if (pair.why == core::PriceWhy::UnlikeGoods)
        section.sentences.push_back(why_sentence(pair.why, "", language));
    if (pair.sides[0].unit || pair.sides[1].unit)
        section.sentences.push_back(language.text(TextId::price_rule));
    return section;
}

} // namespace ui
