#include "kiosk/camera/reader.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/camera/digit_choice.h"
#include "kiosk/camera/regions.h"
#include "kiosk/camera/second_look.h"
#include "kiosk/camera/straighten.h"
#include "kiosk/camera/zxing_compat.h"

#include <algorithm>
#include <cstddef>
#include <functional>
#include <vector>

namespace kiosk {
namespace {

/// Smaller than a code can be in any direction, or so large that counting its pixels leaves the range of int.
bool has_no_use(const GreyView& picture)
{
    constexpr int least = 8;
    constexpr int most = 1 << 15;
    return picture.pixels == nullptr || picture.width < least || picture.height < least || picture.width > most ||
           picture.height > most || picture.stride < picture.width;
}

/// How many digits bars of this kind hold; 0 for bars that hold no product number.
std::size_t digits_of(core::Symbology symbology)
{
    switch (symbology) {
    case core::Symbology::Ean13:
        return 13;
    case core::Symbology::UpcA:
        return 12;
    case core::Symbology::Ean8:
    case core::Symbology::UpcE:
        return 8;
    case core::Symbology::Itf14:
        return 14; // shorter ones appear wherever there are stripes
    case core::Symbology::Unknown:
    case core::Symbology::Other:
        return 0;
    }
    return 0;
}

bool is_right(const Reading& reading)
{
    if (reading.text.size() != digits_of(reading.symbology))
        return false;
    if (reading.symbology == core::Symbology::UpcE)
        return core::expand_upc_e(reading.text).has_value();
    return core::Gtin::parse(reading.text).has_value();
}

std::optional<Reading> read_as_it_is(const GreyView& picture)
{
    auto reading = zxing_read(picture);
    // ITF has no strong beginning and end: part of one, or any stripes, read as a few digits. They must not hide an
    // EAN.
    if (reading && reading->symbology == core::Symbology::Itf14 && !is_right(*reading))
        reading = zxing_read(picture, {.cases_too = false});
    return reading && is_right(*reading) ? reading : std::nullopt;
}

std::optional<Reading> read_again(const GreyView& picture)
{
    const Frame clearer = second_look(picture);
    if (has_no_use(clearer.view()))
        return std::nullopt;
    // A row of it stands for four of the camera's, so three rows are not fewer than what the first try asks for.
    const auto reading = zxing_read(clearer.view(), {.cases_too = false, .try_rotate = false, .agreeing_lines = 3});
    return reading && is_right(*reading) ? reading : std::nullopt;
}

/// How sure a fit must be: common practice, tried on drawn frames. Of 30 fits to 720 frames that chose a wrong code, none
/// was more than 16 ahead.
bool is_sure(const Fit& fit, const Choice& choice)
{
    constexpr double ahead = 45;
    constexpr double likeness = 0.85;
    constexpr double weakest = 0.55;
    constexpr double lost = 5;
    return choice.ahead >= ahead && choice.lost <= lost && fit.likeness >= likeness && fit.weakest >= weakest &&
           fit.bands >= 3;
}

/// A layout on a strip, how well it fitted so far, and the code that it then was likeliest to be.
struct Attempt {
    const Strip* strip;
    const Layout* layout;
    double likeness = 0;
    Reading guess{};
};

/// What fitting shapes came to: a code, or codes that are likely and not sure.
struct ByShapes {
    std::optional<Reading> sure{};
    std::vector<Reading> guesses{};

    /// Where shapes fit well and the code is not sure, something is wrong with it: a digit that glare hides, a check
    /// digit that does not go with the others. Then the library's reading counts only if it is that code.
    bool speaks_against(const Reading& reading) const
    {
        return !guesses.empty() && std::ranges::find(guesses, reading) == guesses.end();
    }
};

std::optional<Reading> read_by_shapes(Attempt& attempt, const Start& start)
{
    const Fit fit = fit_digits(*attempt.strip, *attempt.layout, start);
    Choice choice = choose(fit.evidence, *attempt.layout);
    if (is_sure(fit, choice) && is_right(choice.best))
        return std::move(choice.best);
    if (fit.likeness > attempt.likeness) {
        attempt.likeness = fit.likeness;
        attempt.guess = std::move(choice.best);
    }
    return std::nullopt;
}

/// Every layout on every region; then once more, begun elsewhere, where something fits half-way: a band without glare
/// or softer shapes may show what the first look missed.
ByShapes read_by_shapes(const GreyView& picture)
{
    constexpr std::size_t most_regions = 3;
    constexpr double half_way = 0.8;
    constexpr double well = 0.9;
    std::vector<Strip> strips;
    for (const Region& region : find_bars(picture, most_regions))
        strips.push_back(straighten(picture, region));
    std::vector<Attempt> attempts;
    for (const Strip& strip : strips)
        for (const Layout* layout : {&ean_13, &upc_e, &ean_8})
            if (auto reading = read_by_shapes(attempts.emplace_back(Attempt{&strip, layout}), {}))
                return {std::move(reading)};
    std::erase_if(attempts, [](const Attempt& attempt) { return attempt.likeness < half_way; });
    std::ranges::stable_sort(attempts, std::ranges::greater{}, &Attempt::likeness);
    for (Attempt& attempt : attempts)
        for (const Start& start : {Start{0.2, 2}, Start{0.8, 2}, Start{0.5, 4}})
            if (auto reading = read_by_shapes(attempt, start))
                return {std::move(reading)};
    ByShapes unsure;
    for (Attempt& attempt : attempts)
        if (attempt.likeness >= well)
            unsure.guesses.push_back(std::move(attempt.guess));
    return unsure;
}

} // namespace

std::optional<Reading> read(const GreyView& picture)
{
    if (has_no_use(picture))
        return std::nullopt;
    ByShapes by_shapes = read_by_shapes(picture);
    if (by_shapes.sure)
        return std::move(by_shapes.sure);
    auto reading = read_as_it_is(picture);
    if (!reading)
        reading = read_again(picture);
    if (!reading)
        reading = read_again(laid_down(picture).view());
    return reading && by_shapes.speaks_against(*reading) ? std::nullopt : reading;
}

} // namespace kiosk
