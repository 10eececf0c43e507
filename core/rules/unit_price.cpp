#include "core/rules/unit_price.h"

namespace core {
namespace {

constexpr std::int64_t billion = 1'000'000'000;

/// Kinds of goods in the order in which they are looked for: a count only where nothing was weighed or measured.
constexpr Goods all_goods[] = {Goods::Weight, Goods::LiquidVolume, Goods::DryMeasure, Goods::Pieces, Goods::Area};

bool holds(const Contents& contents, Goods goods)
{
    return amount_of(contents, goods, System::Metric).has_value();
}

/// The first kind of goods that all the given packages hold.
std::optional<Goods> shared_goods(const Contents* left, const Contents* right)
{
    for (const auto goods : all_goods)
        if ((!left || holds(*left, goods)) && (!right || holds(*right, goods)))
            return goods;
    return std::nullopt;
}

/// What is known of one side before it is priced.
struct Given {
    std::optional<Contents> contents;
    PriceWhy why = PriceWhy::Comparable;
};

Given given(const Label& label, std::optional<Money> price)
{
    if (!price)
        return {std::nullopt, PriceWhy::PriceMissing};
    if (!label.net_quantity || label.net_quantity->printed.empty())
        return {std::nullopt, PriceWhy::NetQuantityMissing};
    auto contents = contents_of(label.net_quantity->printed);
    const auto why = contents ? PriceWhy::Comparable : PriceWhy::NetQuantityUnclear;
    return {std::move(contents), why};
}

PricedSide priced(const Label& label, std::optional<Money> price, const Given& given, std::optional<Goods> goods,
                  const PriceChoices& choices)
{
    PricedSide side{price, std::nullopt, std::nullopt, given.why};
    if (price)
        side.serving = serving_price(*price, label.servings, choices.rounding);
    if (!given.contents)
        return side;
    const auto own = goods ? goods : shared_goods(&*given.contents, nullptr);
    if (own)
        side.unit = unit_price(*price, *given.contents, *own, unit_for(*own, choices), choices.rounding);
    return side;
}

} // namespace

ShownPrice shown_price(Wide numerator, Wide denominator, PriceRounding rounding)
{
    constexpr int dollar = 100;
    const bool with_tenth = rounding == PriceRounding::TenthCent && numerator < dollar * denominator;
    ShownPrice shown;
    if (with_tenth) {
        shown.tenths = rounded_nearest(10 * numerator, denominator);
        shown.with_tenth = shown.tenths < 10 * dollar; // 99.95 cents goes up to a dollar, and that has no tenths
    } else {
        shown.tenths = 10 * rounded_nearest(numerator, denominator);
    }
    shown.rounds_to_0 = shown.tenths == 0 && numerator > 0;
    return shown;
}

std::optional<UnitPrice> unit_price(Money price, const Contents& contents, Goods goods, PriceUnit unit,
                                    PriceRounding rounding)
{
    const auto& known = info(unit.unit);
    const auto amount = amount_of(contents, goods, known.system);
    if (!amount)
        return std::nullopt;
    const Wide one_unit = Wide{known.size} * unit.times * billion;
    const auto shown = shown_price(whole_cents(price) * one_unit, exact_size(*amount, contents.packages), rounding);
    return UnitPrice{price, *amount, contents.packages, unit, shown};
}

std::strong_ordering cheaper_first(const UnitPrice& left, const UnitPrice& right)
{
    // At most 10^6 cents times 10^12 units of 4.6 * 10^12 (a gallon's size) times 1000 packages: below 2^127.
    const Wide a = whole_cents(left.price) * exact_size(right.amount, right.packages);
    const Wide b = whole_cents(right.price) * exact_size(left.amount, left.packages);
    return a <=> b;
}

std::optional<ServingPrice> serving_price(Money price, const ServingsPerContainer& servings, PriceRounding rounding)
{
    if (servings.count.nano() <= 0)
        return std::nullopt;
    return ServingPrice{shown_price(Wide{whole_cents(price)} * billion, servings.count.nano(), rounding),
                        servings.kind == ServingsPerContainer::Kind::About};
}

PricePair price_pair(const Label& left, std::optional<Money> left_price, const Label& right,
                     std::optional<Money> right_price, const PriceChoices& choices)
{
    const auto on_left = given(left, left_price);
    const auto on_right = given(right, right_price);
    PricePair pair;
    std::optional<Goods> goods;
    if (on_left.contents && on_right.contents) {
        goods = shared_goods(&*on_left.contents, &*on_right.contents);
        pair.why = goods ? PriceWhy::Comparable : PriceWhy::UnlikeGoods;
    } else {
        pair.why = on_left.contents ? on_right.why : on_left.why;
    }
    pair.sides = {priced(left, left_price, on_left, goods, choices),
                  priced(right, right_price, on_right, goods, choices)};
    if (pair.why == PriceWhy::Comparable)
        pair.order = cheaper_first(*pair.sides[0].unit, *pair.sides[1].unit);
    return pair;
}

} // namespace core
