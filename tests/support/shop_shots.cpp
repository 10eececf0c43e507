#include "tests/support/shop_shots.h"

#include "tests/support/barcode_frames.h"
#include "tests/support/throws.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace test {
namespace {

using core::Symbology;

struct Span {
    double least;
    double most;
};

/// How hard a level is: from what to what each flaw goes.
struct Hardship {
    Span module; ///< pixels
    double turn; ///< degrees to either side
    double tilt; ///< lean and yaw, to either side
    Span disc;   ///< pixels
    Span motion; ///< pixels
    Span exposure;
    Span grain; ///< grey levels
    Span jpeg;
    double glare;
    double shade;
    double banding;
    double skew;   ///< pixels, to either side
    double can;    ///< chance of a can
    Span contrast; ///< paper less ink
    Span bars;     ///< their height, in modules; shops cut them short
    double margin; ///< least light margin, in modules
    double bell;   ///< chance that what is out of focus becomes a bell curve, not a disc
};

// A row a level.
// clang-format off
constexpr std::array<Hardship, levels> hardships{{
    {{2.2, 4.0}, 8, 10, {0, 0.6}, {0, 0.5}, {0.8, 1.1}, {1, 3}, {85, 95}, 0.1, 0.2, 0.02, 5, 0.15, {0.6, 0.8},
     {40, 70}, 7, 0.8},
    {{2.15, 3.25}, 18, 12, {0.8, 2.1}, {0, 1.3}, {0.6, 1.1}, {2, 5},
     {70, 92}, 0.3, 0.4, 0.06, 8, 0.15, {0.5, 0.75}, {45, 70}, 8, 0.8},
    {{1.7, 2.9}, 90, 24, {0.5, 1.75}, {0, 2.0}, {0.5, 1.0}, {2, 7},
     {55, 90}, 0.4, 0.4, 0.1, 20, 0.25, {0.45, 0.7}, {28, 60}, 7, 0.1},
    {{1.65, 3.0}, 90, 28, {0.8, 2.4}, {0, 2.8}, {0.35, 0.9}, {3, 8},
     {40, 80}, 0.5, 0.5, 0.12, 30, 0.3, {0.4, 0.7}, {28, 60}, 6, 0.8},
}};
// clang-format on

double within(Throws& dice, const Span& span)
{
    return dice.between(span.least, span.most);
}

/// What shops sell in North America: mostly UPC-A, many EAN-13, few of the short kinds (common practice).
Symbology kind_of(Throws& dice)
{
    const double at = dice.between(0, 1);
    return at < 0.5 ? Symbology::UpcA : at < 0.84 ? Symbology::Ean13 : at < 0.92 ? Symbology::UpcE : Symbology::Ean8;
}

PrintedCode print(const kiosk::Reading& truth, const Hardship& hard, Throws& dice)
{
    PrintedCode code;
    code.modules = modules_of(truth.symbology, truth.text);
    code.bar_height = within(dice, hard.bars);
    code.margin_left = dice.between(hard.margin, 12);
    code.margin_right = dice.between(hard.margin, 10);
    code.ink_gain = dice.around(0.15);
    return code;
}

void pose(Scene& scene, const Hardship& hard, Throws& dice)
{
    scene.module = within(dice, hard.module);
    scene.turn = dice.around(hard.turn);
    scene.lean = dice.around(hard.tilt);
    scene.yaw = dice.around(hard.tilt);
    if (dice.chance(hard.can)) {
        scene.face = dice.chance(0.5) ? Face::CanUpright : Face::CanLying;
        scene.radius = dice.between(90, 200);
    }
    // The whole code stays in the frame.
    scene.off_x = dice.around(std::max(0.0, scene.width / 2.0 - 60 * scene.module));
    scene.off_y = dice.around(std::max(0.0, scene.height / 2.0 - 60 * scene.module));
    scene.skew = dice.around(hard.skew);
}

void light(Scene& scene, const Hardship& hard, Throws& dice)
{
    const double contrast = within(dice, hard.contrast);
    scene.paper = dice.between(contrast + 0.04, 0.92);
    scene.ink = scene.paper - contrast;
    scene.package = dice.between(0.1, 0.8);
    scene.behind = dice.between(0.1, 0.6);
    scene.clutter = dice.between(0.2, 0.9);
    scene.shade = dice.between(0, hard.shade);
    scene.shade_turn = dice.between(0, 360);
    scene.glare = dice.between(0, hard.glare);
    scene.glare_x = dice.around(60);
    scene.glare_y = dice.around(40);
    scene.glare_size = dice.between(10, 40);
}

Lens lens_of(const Hardship& hard, Throws& dice)
{
    Lens lens;
    lens.softness = dice.between(0.4, 0.7);
    // A bell curve, or a disc of about the same width: lenses do both, and readers mind them differently.
    lens.disc = within(dice, hard.disc);
    if (dice.chance(hard.bell))
        lens.softness = std::hypot(lens.softness, std::exchange(lens.disc, 0) * 0.6);
    lens.motion = within(dice, hard.motion);
    lens.motion_turn = dice.between(0, 180);
    lens.exposure = within(dice, hard.exposure);
    lens.banding = dice.between(0, hard.banding);
    lens.banding_rows = dice.between(150, 600);
    lens.banding_begins = dice.between(0, 1);
    lens.grain = within(dice, hard.grain);
    lens.shot_grain = within(dice, hard.grain);
    lens.gamma = dice.chance(0.5) ? 1 : dice.between(1.4, 2.2);
    lens.sharpening = dice.chance(0.5) ? 0 : dice.between(0, 1);
    lens.jpeg = static_cast<int>(within(dice, hard.jpeg));
    return lens;
}

} // namespace

Setting setting_of(int level, std::uint64_t number, FrameSize size)
{
    const Hardship& hard = hardships.at(static_cast<std::size_t>(level - 1));
    Throws dice(number * 16 + static_cast<std::uint64_t>(level));
    Setting setting;
    setting.scene.width = size.width;
    setting.scene.height = size.height;
    setting.truth.symbology = kind_of(dice);
    setting.truth.text = some_digits(setting.truth.symbology, number * 8 + static_cast<std::uint64_t>(level));
    setting.scene.codes.push_back(print(setting.truth, hard, dice));
    pose(setting.scene, hard, dice);
    light(setting.scene, hard, dice);
    setting.lens = lens_of(hard, dice);
    setting.scene.seed = number;
    setting.lens.seed = number;
    return setting;
}

Shot shot_of(const Setting& setting)
{
    return {picture_of(light_of(setting.scene), setting.lens), setting.truth};
}

} // namespace test
