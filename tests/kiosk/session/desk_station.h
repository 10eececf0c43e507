// A station whose leader desk works in folders of its own, and short words for touches there.
#pragma once

#include "kiosk/desk/desk.h"
#include "tests/kiosk/session/station.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <thread>
#include <utility>

namespace test {

/// A sheet with two good rows.
inline const std::string header = "gtin,name,entered_on,serving_size,calories,total_fat_g\n";
inline const std::string two_rows =
    header + "9520000000998,Corn stars,2026-03-02,30 g,110,1\n9520000001117,Rye thins,2026-03-02,30 g,120,2.5\n";

/// A station whose desk works in folders of its own.
struct DeskStation : Station {
    explicit DeskStation(bool named = false, std::function<std::optional<kiosk::Frame>()> take_picture = {})
    {
        std::filesystem::create_directories(stick());
        kiosk::DeskPlaces places;
        places.catalog = shop();
        places.catalog_named = named;
        places.data = folder.file("data");
        places.folders = {stick()};
        places.look_at_sticks = false;
        places.take_picture = std::move(take_picture);
        places.today = [] { return std::string("2026-11-26"); };
        desk.emplace(std::move(places));
        session.open_desk(*desk);
    }
    [[nodiscard]] std::string stick() const { return folder.file("STICK"); }
    [[nodiscard]] std::string data() const { return folder.file("data"); }
    [[nodiscard]] std::string shop() const { return folder.file("data/catalog.db"); }
    void put(const std::string& name, const std::string& bytes) const { (void)folder.write("STICK/" + name, bytes); }

    /// One touch at the desk, and what came of it.
    void touch(const ui::DeskAction& action)
    {
        ask(ui::AskDesk{action});
        wait();
    }
    void wait()
    {
        const auto until = kiosk::Clock::now() + std::chrono::seconds(60);
        while (desk->busy()) {
            REQUIRE(kiosk::Clock::now() < until);
            (void)session.follow_desk();
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
    }
    void open(const std::string& name)
    {
        touch(ui::LookForFiles{});
        const auto& choices = page().choices;
        const auto found = std::ranges::find(choices, name, &ui::DeskChoice::name);
        REQUIRE(found != choices.end());
        touch(ui::DeskAction(found->asked));
    }
    [[nodiscard]] const ui::DeskPage& page() const
    {
        REQUIRE(state().desk);
        return *state().desk;
    }
    [[nodiscard]] std::string lead() const
    {
        std::string words;
        for (const auto& line : page().lead)
            words += (words.empty() ? "" : "\n") + line;
        return words;
    }
    [[nodiscard]] bool offers(ui::TextId words) const
    {
        return std::ranges::count(page().buttons, words, &ui::DeskButton::words) > 0 ||
               std::ranges::count(page().choices, session.language().text(words), &ui::DeskChoice::name) > 0;
    }
    [[nodiscard]] std::size_t loaded() const
    {
        const auto own = catalog::Store::open(shop(), catalog::Store::Mode::ReadOnly);
        return own ? own->count() : 0;
    }

    TempFolder folder;
    std::optional<kiosk::Desk> desk;
};

} // namespace test
