#include "tests/support/shop_runs.h"

#include "tests/support/throws.h"

#include <cmath>
#include <numbers>

namespace test {
namespace {

/// A swing that begins anywhere.
struct Swing {
    double reach;
    double hertz;
    double begins; ///< in parts of a swing

    Swing(double most, double slowest, double fastest, Throws& dice)
        : reach(dice.between(0.3 * most, most)), hertz(dice.between(slowest, fastest)), begins(dice.between(0, 1))
    {
    }
    double at(double seconds) const { return reach * std::sin(2 * std::numbers::pi * (hertz * seconds + begins)); }
    /// How fast it moves, from 0 to 1.
    double pace(double seconds) const { return std::abs(std::cos(2 * std::numbers::pi * (hertz * seconds + begins))); }
};

/// A swaying and a trembling.
struct Hand {
    Swing sway;
    Swing tremble;

    Hand(double most, Throws& dice) : sway(most, 0.5, 2, dice), tremble(most / 6, 8, 12, dice) {}
    double at(double seconds) const { return sway.at(seconds) + tremble.at(seconds); }
};

} // namespace

Setting setting_of_run(int level, std::uint64_t number, int frame, FrameSize size)
{
    Setting setting = setting_of(level, number, size);
    Throws dice(number * 64 + static_cast<std::uint64_t>(level) + 32);
    const double seconds = static_cast<double>(frame) / frames_a_second;
    // How steep a package is held, the level says; here is what changes within half a second.
    const Hand sideways(12, dice);
    const Hand upwards(12, dice);
    const Hand turn(3, dice);
    const Hand lean(3, dice);
    const Hand yaw(3, dice);
    const double turning = dice.around(15); // degrees a second
    const double flicker = dice.between(0, 1);
    Scene& scene = setting.scene;
    scene.off_x += sideways.at(seconds);
    scene.off_y += upwards.at(seconds);
    scene.turn += turn.at(seconds);
    scene.lean += lean.at(seconds);
    scene.yaw += yaw.at(seconds) + turning * seconds;
    // The level's smear is one moment's: at the ends of a swing a hand stands still, in its middle it is fastest.
    setting.lens.motion *= 1.5 * sideways.tremble.pace(seconds);
    setting.lens.motion_turn += 90 * upwards.sway.at(seconds) / 12;
    setting.lens.banding_begins = std::fmod(setting.lens.banding_begins + flicker * frame, 1.0);
    setting.lens.seed = number * 1000 + static_cast<std::uint64_t>(frame);
    return setting;
}

} // namespace test
