// See and hear: what can be chosen there, and what is told.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <string>

namespace {

std::string ways(int idle_seconds, const std::string& code)
{
    test::Headless screen({1920, 1080}, 100, code);
    auto state = test::state_of(ui::ScreenId::Ways, test::language(code));
    state.idle_seconds = idle_seconds;
    std::string all;
    for (state.page = 0; state.page < 2; ++state.page) {
        screen.frame(state);
        all += screen.words();
    }
    return all;
}

bool tells(const std::string& all, const std::string& words)
{
    return all.find(words) != std::string::npos;
}

} // namespace

// WCAG 2.2, success criterion 2.2.6.
TEST_CASE("ways: tells how long one may do nothing, and nothing of it where that has no end")
{
    CHECK(tells(ways(300, "en"), "for 5 minutes, it asks if you are still here"));
    CHECK(tells(ways(300, "es"), "por 5 minutos, pregunta si usted sigue aquí"));
    CHECK(tells(ways(90, "en"), "for 90 seconds"));
    CHECK(tells(ways(60, "es"), "por 60 segundos"));
    CHECK_FALSE(tells(ways(0, "en"), "still here"));
}
