#include "kiosk/sound/sound.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <thread>
#include <unistd.h>

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
    int said = 0;
    {
        Sound sound([&said] { ++said; });
        CHECK(settled(sound) == Sound::State::Silent);
        const auto before = kiosk::Clock::now();
        for (int i = 0; i < 100; ++i)
            sound.play(kiosk::Tone::Found);
        CHECK(kiosk::Clock::now() - before < Milliseconds{500});
    }
    CHECK(said == 1);
}

TEST_CASE("sound: where ALSA finds no card, the library's own lines stay unsaid")
{
    const test::TempFolder folder;
    const auto said = folder.write("stderr", "");
    setenv("ALSA_CONFIG_PATH", folder.write("asound.conf", "").c_str(), 1); // no card is configured
    const Driver alsa("alsa");
    const int before = ::dup(STDERR_FILENO);
    REQUIRE(std::freopen(said.c_str(), "w", stderr));
    {
        Sound sound;
        CHECK(settled(sound) == Sound::State::Silent);
    }
    std::fflush(stderr);
    ::dup2(before, STDERR_FILENO);
    ::close(before);
    unsetenv("ALSA_CONFIG_PATH");
    CHECK(test::bytes_of(said).empty());
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
