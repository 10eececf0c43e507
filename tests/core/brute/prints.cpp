#include "tests/core/brute/prints.h"

#include <algorithm>
#include <stdexcept>

namespace brute {
namespace {

constexpr std::int64_t mg = one / 1'000;

/// The nearest multiple of `step`.
void add_nearest(Prints& prints, Value value, std::int64_t step, Halves halves)
{
    const std::int64_t below = value.nano - value.nano % step;
    const std::int64_t rest = value.nano - below;
    prints.add({2 * rest >= step ? below + step : below});
    if (halves == Halves::Either && value.exact && 2 * rest == step)
        prints.add({below});
}

/// 21 CFR 101.9(c)(1): "to the nearest 5-calorie increment up to and including 50 calories, and 10-calorie increment
/// above 50 calories, except that amounts less than 5 calories may be expressed as zero".
void add_calories(Prints& prints, Value value, Halves halves)
{
    add_nearest(prints, value, value.nano <= 50 * one ? 5 * one : 10 * one, halves);
    if (value.nano < 5 * one)
        prints.add({});
}

/// 21 CFR 101.9(c)(2): "to the nearest 0.5 (1/2) gram increment below 5 grams and to the nearest gram increment above 5
/// grams. If the serving contains less than 0.5 gram, the content shall be expressed as zero".
void add_fat(Prints& prints, Value value, Halves halves)
{
    if (value.nano < one / 2)
        prints.add({});
    else
        add_nearest(prints, value, value.nano < 5 * one ? one / 2 : one, halves);
}

/// 21 CFR 101.9(c)(3): "to the nearest 5-milligram increment"; "less than 2 milligrams ... may be stated as zero";
/// "2 to 5 milligrams ... may be stated as less than 5 milligrams".
void add_cholesterol(Prints& prints, Value value, Halves halves)
{
    add_nearest(prints, value, 5 * mg, halves);
    if (value.nano < 2 * mg)
        prints.add({});
    else if (value.nano <= 5 * mg)
        prints.add({5 * mg, true});
}

/// 21 CFR 101.9(c)(4): "zero when the serving contains less than 5 milligrams", "to the nearest 5-milligram increment
/// when ... 5 to 140 milligrams", "to the nearest 10-milligram increment when ... greater than 140 milligrams".
void add_sodium(Prints& prints, Value value, Halves halves)
{
    if (value.nano < 5 * mg)
        prints.add({});
    else
        add_nearest(prints, value, value.nano <= 140 * mg ? 5 * mg : 10 * mg, halves);
}

/// 21 CFR 101.9(c)(6) and (c)(7): "to the nearest gram, except that if a serving contains less than 1 gram, the
/// statement ... 'less than 1 gram' may be used as an alternative, or if ... less than 0.5 gram, the content may be
/// expressed as zero".
void add_carbohydrate(Prints& prints, Value value, Halves halves)
{
    add_nearest(prints, value, one, halves);
    if (value.nano < one)
        prints.add({one, true});
    if (value.nano < one / 2)
        prints.add({});
}

/// 21 CFR 101.9(c)(5): zero below 0.1 mg, to 0.1 mg up to 0.8 mg, to 0.2 mg above.
void add_fluoride(Prints& prints, Value value, Halves halves)
{
    if (value.nano < mg / 10)
        prints.add({});
    else
        add_nearest(prints, value, value.nano <= 8 * mg / 10 ? mg / 10 : 2 * mg / 10, halves);
}

/// 21 CFR 101.9(d)(7)(ii): "to the nearest whole percent"; "<1%" stands on labels as well (common practice).
void add_whole_percent(Prints& prints, Value value, Halves halves)
{
    add_nearest(prints, value, one, halves);
    if (value.nano < one)
        prints.add({one, true});
}

/// 21 CFR 101.9(c)(8)(iii): "to the nearest 2-percent increment up to and including the 10-percent level, the nearest
/// 5-percent increment above 10 percent and up to and including the 50-percent level, and the nearest 10-percent
/// increment above"; "less than 2 percent ... may be declared by a zero" or "less than 2 percent".
void add_vitamin_percent(Prints& prints, Value value, Halves halves)
{
    const std::int64_t step = value.nano <= 10 * one ? 2 * one : value.nano <= 50 * one ? 5 * one : 10 * one;
    add_nearest(prints, value, step, halves);
    if (value.nano >= 2 * one)
        return;
    prints.add({});
    prints.add({2 * one, true});
}

} // namespace

void Prints::add(Print print)
{
    if (!contains(print))
        all_.at(size_++) = print;
}

bool Prints::contains(Print print) const
{
    return std::find(begin(), end(), print) != end();
}

Prints prints(Kind kind, Value value, Halves halves)
{
    Prints all;
    switch (kind) {
    case Kind::Calories:
        add_calories(all, value, halves);
        break;
    case Kind::Fat:
        add_fat(all, value, halves);
        break;
    case Kind::Cholesterol:
        add_cholesterol(all, value, halves);
        break;
    case Kind::Sodium:
        add_sodium(all, value, halves);
        break;
    case Kind::Carbohydrate:
        add_carbohydrate(all, value, halves);
        break;
    case Kind::Fluoride:
        add_fluoride(all, value, halves);
        break;
    case Kind::WholePercent:
        add_whole_percent(all, value, halves);
        break;
    case Kind::VitaminPercent:
        add_vitamin_percent(all, value, halves);
        break;
    case Kind::Servings: // 21 CFR 101.9(b)(8)(i): to the whole, between 2 and 5 to the half
        add_nearest(all, value, value.nano >= 2 * one && value.nano <= 5 * one ? one / 2 : one, halves);
        break;
    case Kind::ServingSize: // 21 CFR 101.9(b)(7)(ii): to 0.1 below 2, to 0.5 below 5, else to the whole
        add_nearest(all, value, value.nano < 2 * one ? one / 10 : value.nano < 5 * one ? one / 2 : one, halves);
        break;
    }
    return all;
}

Prints prints(const Places& places, Value value, Halves halves)
{
    Prints all;
    for (const std::int64_t place : {places.code, places.guidance})
        add_nearest(all, value, place, halves);
    const std::int64_t finest = std::max<std::int64_t>(places.code / 1'000, 1);
    for (std::int64_t finer = places.code / 10; finer >= finest; finer /= 10)
        add_nearest(all, value, finer, halves);
    if (value.nano < places.rdi / 50)
        all.add({});
    return all;
}

Value percent_of(std::int64_t amount, std::int64_t daily_value)
{
    const Wide hundredfold = Wide{amount} * 100 * one;
    return {static_cast<std::int64_t>(hundredfold / daily_value), hundredfold % daily_value == 0};
}

std::int64_t may_be_left_out_below(Kind kind)
{
    switch (kind) { // the sentence on the statement in each paragraph
    case Kind::Calories:
        return 5 * one;
    case Kind::Fat:
        return one / 2;
    case Kind::Cholesterol:
        return 2 * mg;
    case Kind::Sodium:
        return 5 * mg;
    case Kind::Carbohydrate:
        return one;
    case Kind::Fluoride:
        return mg / 10;
    case Kind::WholePercent:
    case Kind::VitaminPercent:
    case Kind::Servings:
    case Kind::ServingSize:
        break;
    }
    throw std::logic_error("no such statement is made of it");
}

} // namespace brute
