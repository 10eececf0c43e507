// The part of the JSON form that tells shelf prices.
#include "core/figure/figure.h"
#include "kiosk/command/json_out.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>

namespace kiosk {

using Json = nlohmann::ordered_json;

const char* json_name(core::PriceWhy why)
{
    switch (why) {
    case core::PriceWhy::Comparable:
        return "comparable";
    case core::PriceWhy::PriceMissing:
        return "price_missing";
    case core::PriceWhy::NetQuantityMissing:
        return "net_quantity_missing";
    case core::PriceWhy::NetQuantityUnclear:
        return "net_quantity_unclear";
    case core::PriceWhy::UnlikeGoods:
        break;
    }
    return "unlike_goods";
}

namespace {

/// "3.99": dollars with their cents.
std::string dollars(core::Money money)
{
    return core::decimal_text(money.nano(), 2);
}

/// "33.3" or "250": cents as shown.
std::string cents_shown(const core::ShownPrice& price)
{
    const auto whole = std::to_string(price.tenths / 10);
    return price.with_tenth ? whole + "." + std::to_string(price.tenths % 10) : whole;
}

/// "100_g", "fl_oz": as settings name it.
std::string key_of(core::PriceUnit unit)
{
    const auto all = core::allowed_units();
    return std::string(std::ranges::find(all, unit, &core::AllowedUnit::unit)->key);
}

std::string number(std::int64_t nano)
{
    std::string text = core::decimal_text(nano, 9);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

Json unit_json(const core::UnitPrice& price)
{
    return {{"cents", cents_shown(price.shown)},
            {"per", key_of(price.unit)},
            {"packages", price.packages},
            {"amount", number(price.amount.nano)},
            {"unit", core::info(price.amount.unit).key}};
}

Json side_json(const core::PricedSide& side)
{
    Json json{{"price", side.price ? Json(dollars(*side.price)) : Json()}, {"why", json_name(side.why)}};
    if (side.unit)
        json["unit_price"] = unit_json(*side.unit);
    if (side.serving)
        json["serving"] = {{"cents", cents_shown(side.serving->shown)}, {"about", side.serving->about}};
    return json;
}

const char* finding_of(std::strong_ordering order)
{
    if (order == std::strong_ordering::equal)
        return "same";
    return order == std::strong_ordering::less ? "left_less" : "left_more";
}

} // namespace

Json prices_json(const core::PricePair& prices)
{
    Json json{{"why", json_name(prices.why)}};
    if (prices.order)
        json["finding"] = finding_of(*prices.order);
    json["left"] = side_json(prices.sides[0]);
    json["right"] = side_json(prices.sides[1]);
    return json;
}

} // namespace kiosk
