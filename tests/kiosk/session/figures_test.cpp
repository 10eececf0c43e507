// The figures of a pair at the station: other amounts, where a figure comes from, and the way back.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

namespace test {
namespace {

using core::Basis;
using core::Nutrient;
using ui::ScreenId;
using ui::Side;
using Of = core::MyAmount::Of;

struct Pair : Station {
    Pair()
    {
        scan(shelf::oats);
        scan(shelf::wheat);
    }
};

} // namespace

TEST_CASE("figures: an amount that was chosen is set side by side at once, and gone with Start over")
{
    Pair pair;
    pair.ask(ui::OpenAmounts{});
    CHECK(pair.state().screen == ScreenId::Amounts);
    pair.ask(ui::ChooseMyAmount{{Of::Servings, {2, 1}}});
    CHECK(pair.state().screen == ScreenId::Amounts); // it stays open for the next step
    CHECK(pair.state().basis == Basis::MyAmount);
    REQUIRE(pair.state().comparison);
    CHECK(pair.state().comparison->basis == Basis::MyAmount);
    CHECK(pair.state().amounts->words == "2 servings");
    pair.ask(ui::ChooseMyAmount{{Of::Servings, {0, 1}}}); // none at all is no amount
    CHECK(pair.state().amounts->words == "2 servings");
    pair.ask(ui::ChooseMyAmount{{Of::Servings, {1, 0}}});
    CHECK(pair.state().amounts->words == "2 servings");
    pair.ask(ui::StartOver{});
    CHECK(pair.state().basis == Basis::Serving);
    CHECK_FALSE(pair.state().amounts);
}

TEST_CASE("figures: where a row comes from opens from a page, and Back leads to that page")
{
    Pair pair;
    pair.ask(ui::TurnPage{2});
    pair.ask(ui::OpenWhy{Nutrient::Sodium, std::nullopt});
    CHECK(pair.state().screen == ScreenId::Why);
    CHECK(pair.state().page == 0);
    REQUIRE(pair.state().why);
    CHECK(pair.state().why->title.find("Sodium") != std::string::npos);
    pair.ask(ui::NextLanguage{});
    CHECK(pair.state().why->title.find("Sodio") != std::string::npos);
    pair.ask(ui::GoBack{});
    CHECK(pair.state().screen == ScreenId::Pair);
    CHECK(pair.state().page == 2);
    pair.ask(ui::OpenAmounts{});
    pair.ask(ui::ShowPair{});
    CHECK(pair.state().page == 0); // another amount is read from its first page on
}

TEST_CASE("figures: a line of one label opens as well; without its package there is nothing to tell")
{
    Pair pair;
    pair.ask(ui::OpenLabel{Side::Right});
    pair.ask(ui::OpenWhy{Nutrient::Calories, Side::Right});
    REQUIRE(pair.state().why);
    CHECK(pair.state().why->lines.front().words == pair.on(Side::Right));

    pair.ask(ui::GoBack{});
    pair.ask(ui::OpenWhy{std::nullopt, Side::Right}); // serving size and servings
    REQUIRE(pair.state().why);
    CHECK(pair.state().why->title == "Serving size: where this comes from");
    CHECK(pair.state().why->lines.front().words == pair.on(Side::Right));
    pair.ask(ui::OpenWhy{std::nullopt, std::nullopt}); // of no label: there is nothing to tell
    CHECK_FALSE(pair.state().why);

    Station empty;
    empty.ask(ui::OpenWhy{Nutrient::Calories, Side::Left});
    CHECK_FALSE(empty.state().why);
    empty.ask(ui::OpenWhy{Nutrient::Calories, std::nullopt});
    CHECK_FALSE(empty.state().why);
    empty.ask(ui::OpenAmounts{});
    CHECK_FALSE(empty.state().amounts);
}

TEST_CASE("figures: published rules stand behind a pair and a label where the settings name them, and nowhere else")
{
    const auto says_rules = [](const kiosk::Settings& settings) {
        Station station;
        kiosk::Session session(station.store, station_languages(), settings);
        for (const auto& code : {shelf::oats, shelf::wheat})
            session.take({code, core::Symbology::Unknown, kiosk::Scan::From::Scanner, {}});
        const auto starts = [](const std::string& words) { return words.starts_with("Published rules"); };
        const bool pair = std::ranges::any_of(session.state().pair->sections, starts, &ui::Section::heading);
        session.apply({ui::OpenLabel{ui::Side::Left}});
        const bool label = std::ranges::any_of(session.state().label->pieces, starts, &ui::LabelPiece::name);
        return std::pair{pair, label};
    };
    CHECK(says_rules({}) == std::pair{false, false});
    kiosk::Settings settings;
    settings.rules = {core::RuleSet::SodiumClaims};
    CHECK(says_rules(settings) == std::pair{true, true});
}

} // namespace test
