#include "kiosk/sound/sound.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <thread>
#include <vector>

namespace {

using kiosk::Milliseconds;
using kiosk::Sound;

/// SDL's driver for the time of a test: "dummy" plays into nothing, an unknown one stands for a missing card.
class Driver {
public:
    explicit Driver(const char* name) { setenv("SDL_AUDIODRIVER", name, 1); }
    ~Driver() { unsetenv("SDL_AUDIODRIVER"); }
    Driver(const Driver&) = delete;
    Driver& operator=(const Driver&) = delete;
};

Sound::State settled(const Sound& sound)
{
    for (int i = 0; i < 1'000 && sound.state() == Sound::State::Opening; ++i)
        std::this_thread::sleep_for(Milliseconds{5});
    return sound.state();
}

} // namespace

TEST_CASE("sound: without a card the station is silent, says so once, and never waits")
{
    const Driver none("there_is_no_such_driver");
    std::vector<std::string> said;
    {
        Sound sound([&said](const std::string& sentence) { said.push_back(sentence); });
        CHECK(settled(sound) == Sound::State::Silent);
        const auto before = kiosk::Clock::now();
        for (int i = 0; i < 100; ++i)
            sound.play(kiosk::Tone::Found);
        CHECK(kiosk::Clock::now() - before < Milliseconds{500});
    }
    REQUIRE(said.size() == 1);
    CHECK(said[0].find("silent") != std::string::npos);
}

TEST_CASE("sound: with a card it plays, and ends at once when the station does")
{
    const Driver dummy("dummy");
    const auto before = kiosk::Clock::now();
    {
        Sound sound;
        CHECK(settled(sound) == Sound::State::Playing);
        sound.play(kiosk::Tone::Found);
        sound.play(kiosk::Tone::Refused);
    }
    CHECK(kiosk::Clock::now() - before < Milliseconds{10'000}); // far below the minute that it rests between looks
}
