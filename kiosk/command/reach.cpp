#include "kiosk/command/reach.h"

#include "core/code/upc_e.h"

#include <vector>

namespace kiosk {
namespace {

using ui::ScreenId;
using Trouble = std::optional<std::string>;

constexpr std::size_t most_looked_at = 100'000;

void scan(Session& session, const std::string& code)
{
    session.take({code, core::Symbology::Unknown, Scan::From::Scanner, {}});
}

Trouble no_products()
{
    return "the catalog has too few products for this screen";
}

/// The nth product of the catalog's order, as scanned; nothing where there are fewer.
std::optional<std::string> some_code(const catalog::Store& store, std::size_t nth)
{
    const auto listed = store.products_in_order(1, nth);
    if (listed.empty())
        return std::nullopt;
    return listed.front().gtin.digits();
}

/// A right product number that this catalog does not have, under GS1's demonstration prefix.
std::string unknown_code(const catalog::Store& store)
{
    for (int number = 999'999'999; number > 0; --number) {
        const std::string body = "952" + std::to_string(number);
        const std::string code = body + core::check_digit(body);
        if (!store.holds(*core::Gtin::parse(code)))
            return code;
    }
    return "";
}

/// Eight digits that are an EAN-8 and a UPC-E of this catalog.
std::optional<std::string> doubled_code(const catalog::Store& store)
{
    for (const auto& product : store.products_in_order(most_looked_at)) {
        if (!product.gtin.digits().starts_with("000000"))
            continue;
        const std::string eight = product.gtin.digits().substr(6);
        const auto upc_a = core::expand_upc_e(eight);
        const auto other = upc_a ? core::Gtin::parse(*upc_a) : core::Result<core::Gtin>(product.gtin);
        if (other && *other != product.gtin && store.holds(*other))
            return eight;
    }
    return std::nullopt;
}

Trouble put(Session& session, const catalog::Store& store, const std::string& given, std::size_t side)
{
    const auto code = given.empty() ? some_code(store, side) : std::optional(given);
    if (!code)
        return no_products();
    scan(session, *code);
    if (!session.state().sides[side])
        return *code + ": " + session.state().notice.words;
    return std::nullopt;
}

Trouble to_pair(Session& session, const catalog::Store& store, const Route& route)
{
    if (route.left.empty() != route.right.empty()) // whoever names one product does not want an unnamed one beside it
        return "the pair needs two codes: give --left and --right, or neither for two products of the catalog";
    if (const auto trouble = put(session, store, route.left, 0))
        return trouble;
    return put(session, store, route.right, 1);
}

/// Of the pair's first row, which is calories on nearly every label, or of the nutrient that was asked for.
Trouble to_why(Session& session, const catalog::Store& store, const Route& route)
{
    if (auto trouble = to_pair(session, store, route))
        return trouble;
    if (route.nutrient)
        session.apply({ui::OpenWhy{*route.nutrient, std::nullopt}});
    else if (!session.state().comparison->rows.empty())
        session.apply({ui::OpenWhy{session.state().comparison->rows.front().nutrient, std::nullopt}});
    return std::nullopt;
}

/// Of the pair, or of one label where only one code was given.
Trouble to_words(Session& session, const catalog::Store& store, const Route& route)
{
    const bool one = !route.left.empty() && route.right.empty();
    if (auto trouble = one ? put(session, store, route.left, 0) : to_pair(session, store, route))
        return trouble;
    session.apply({ui::AskAccess{ui::OpenWords{}}});
    return std::nullopt;
}

Trouble to_not_found(Session& session, const catalog::Store& store, const Route& route)
{
    scan(session, route.left.empty() ? unknown_code(store) : route.left);
    if (session.state().screen != ScreenId::NotFound)
        return route.left + " does not lead to this screen: " + session.state().notice.words;
    return std::nullopt;
}

Trouble to_which_product(Session& session, const catalog::Store& store, const Route& route)
{
    const auto code = route.left.empty() ? doubled_code(store) : std::optional(route.left);
    if (!code)
        return "no code of this catalog stands for two products";
    scan(session, *code);
    if (session.state().screen != ScreenId::WhichProduct)
        return *code + " stands for one product only: " + session.state().notice.words;
    return std::nullopt;
}

/// As though the camera could not tell the given products, or three of the catalog.
Trouble to_likely_product(Session& session, const catalog::Store& store, const Route& route)
{
    Likely likely;
    for (const std::string& code : {route.left, route.right})
        if (!code.empty())
            likely.codes.push_back({code, core::Symbology::Unknown});
    if (likely.codes.empty())
        for (const auto& product : store.products_in_order(3))
            likely.codes.push_back({product.gtin.digits(), core::Symbology::Unknown});
    if (session.consider(likely))
        return std::nullopt;
    return route.left.empty() ? *no_products() : "the catalog has no product of these codes: " + route.left;
}

Trouble to_pick_product(Session& session)
{
    session.apply({ui::ChooseAisle{}});
    if (session.state().aisles.empty())
        return no_products();
    session.apply({ui::OpenAisle{session.state().aisles.front().aisle}});
    return std::nullopt;
}

/// Types a price key by key, on whatever screen; nothing where there is none.
void type_price(Session& session, ui::Side side, std::optional<core::Money> price)
{
    if (!price)
        return;
    session.apply({ui::PickPriceSide{side}});
    for (const char digit : std::to_string(core::whole_cents(*price)))
        session.apply({ui::TypePriceDigit{digit - '0'}});
}

Trouble go(Session& session, const catalog::Store& store, const Route& route)
{
    switch (route.screen) {
    case ScreenId::Welcome:
        return std::nullopt;
    case ScreenId::OneLabel:
        return put(session, store, route.left, 0);
    case ScreenId::Pair:
        return to_pair(session, store, route);
    case ScreenId::NotFound:
        return to_not_found(session, store, route);
    case ScreenId::WhichProduct:
        return to_which_product(session, store, route);
    case ScreenId::LikelyProduct:
        return to_likely_product(session, store, route);
    case ScreenId::FindByName:
        session.apply({ui::FindByName{}, ui::TypeLetters{route.words}});
        while (session.search_on([] { return true; })) {
        }
        return std::nullopt;
    case ScreenId::PickAisle:
        session.apply({ui::ChooseAisle{}});
        return std::nullopt;
    case ScreenId::PickProduct:
        return to_pick_product(session);
    case ScreenId::Prices:
        if (auto trouble = to_pair(session, store, route))
            return trouble;
        session.apply({ui::OpenPrices{}});
        return std::nullopt;
    case ScreenId::Amounts:
        if (auto trouble = to_pair(session, store, route))
            return trouble;
        session.apply({ui::OpenAmounts{}});
        return std::nullopt;
    case ScreenId::Why:
        return to_why(session, store, route);
    case ScreenId::Words:
        return to_words(session, store, route);
    case ScreenId::GroupView:
        if (auto trouble = to_pair(session, store, route))
            return trouble;
        session.apply({ui::AskAccess{ui::OpenGroupView{}}});
        return std::nullopt;
    case ScreenId::StillThere:
        session.ask_whether_there(30);
        return std::nullopt;
    case ScreenId::Ways:
    case ScreenId::Measure:
    case ScreenId::Gallery:
        session.show(route.screen);
        return std::nullopt;
    case ScreenId::Desk:
    case ScreenId::DeskFiles:
    case ScreenId::DeskFile:
    case ScreenId::DeskWork:
    case ScreenId::DeskReport:
    case ScreenId::DeskKey:
    case ScreenId::DeskAudit:
    case ScreenId::DeskRule:
    case ScreenId::DeskDoubt:
    case ScreenId::DeskCamera:
        return route.desk ? route.desk->reach(session, route.screen) : "the desk is not open";
    }
    return std::nullopt;
}

} // namespace

Trouble reach(Session& session, const catalog::Store& store, const Route& route)
{
    if (auto trouble = go(session, store, route))
        return trouble;
    type_price(session, ui::Side::Left, route.left_price);
    type_price(session, ui::Side::Right, route.right_price);
    if (route.basis == core::Basis::MyAmount)
        session.apply({ui::ChooseMyAmount{route.amount}});
    else if (route.basis != core::Basis::Serving)
        session.apply({ui::ChooseBasis{route.basis}});
    if (route.page > 1)
        session.apply({ui::TurnPage{route.page - 1}});
    return std::nullopt;
}

} // namespace kiosk
