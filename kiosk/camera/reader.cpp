#include "kiosk/camera/reader.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/camera/digit_choice.h"
#include "kiosk/camera/ink.h"
#include "kiosk/camera/look.h"
#include "kiosk/camera/regions.h"
#include "kiosk/camera/straighten.h"
#include "kiosk/camera/zxing_compat.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <functional>
#include <utility>
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

/// How sure a fit must be: common practice, tried on drawn frames. Of fits of twelve digits that chose a wrong code
/// none was more than 31 ahead. Six or eight digits find themselves in other bars more easily: 51 ahead in the worst of
/// 24,000 frames, with a likeness of 0.89 at most. Of 1,762 right ones 18 have less than what is asked for here.
struct Bounds {
    double ahead;
    double likeness;
};
constexpr Bounds for_long{50, 0.85};
constexpr Bounds for_short{60, 0.92};

/// What may speak against the digits that make it a code: more of it means that the check digit is not that of the
/// others.
constexpr double most_lost = 5;

bool is_sure(const Fit& fit, const Choice& choice, const Layout& layout)
{
    constexpr double weakest = 0.55;
    const Bounds& least = is_short(layout) ? for_short : for_long;
    return choice.ahead >= least.ahead && fit.likeness >= least.likeness && choice.lost <= most_lost &&
           fit.weakest >= weakest && fit.bands >= 3;
}

/// From here on bars are taken for those of a code.
constexpr double well = 0.9;

/// The bars of a UPC-E of number system 1 are those of the left half of an EAN-13, and of one such half in ten the
/// check digit is right, too: shapes cannot tell them apart. Packages hardly bear number system 1 (common practice); it
/// is left to the library, which looks for the light margin behind a code.
bool may_be_half(const Choice& choice)
{
    return choice.best.symbology == core::Symbology::UpcE && choice.best.text.starts_with('1');
}

/// What a region says: a code that is sure, or the best fit and the code that it would be.
struct ByShapes {
    std::optional<Reading> sure{};
    bool half = false;  ///< it would be sure, but may be half of another code
    bool aside = false; ///< it would be sure, but neighbouring digits may be others
    Unsure best{};
    Choice guess{};
    [[nodiscard]] bool ends_it() const { return sure || half || aside; }
};

/// Returns whether there is nothing more to look for: the code is sure, or would be but for what else it may be.
bool fit_once(const Strip& strip, const Layout& layout, const Start& start, ByShapes& found)
{
    Fit fit = fit_digits(strip, layout, start);
    Choice choice = choose(fit.evidence, layout);
    if (is_sure(fit, choice, layout) && is_right(choice.best)) {
        found.half = may_be_half(choice);
        found.aside = !found.half && may_be_drawn_aside(choice.best, fit, layout);
        if (!found.half && !found.aside)
            found.sure = choice.best;
    }
    if (found.ends_it() || fit.likeness > found.best.fit.likeness) {
        found.best = {&layout, std::move(fit)};
        found.guess = std::move(choice);
    }
    return found.ends_it();
}

constexpr std::array<const Layout*, 3> layouts{&ean_13, &upc_e, &ean_8};

/// Every layout; then once more, begun elsewhere, where something fits half-way: a band without glare or softer shapes
/// may show what the first look missed.
ByShapes read_by_shapes(const Strip& strip)
{
    constexpr double half_way = 0.8;
    ByShapes found;
    std::array<double, layouts.size()> likeness{};
    for (std::size_t i = 0; i < layouts.size(); ++i) {
        ByShapes one;
        if (fit_once(strip, *layouts[i], {}, one))
            return one;
        likeness[i] = one.best.fit.likeness;
        if (likeness[i] > found.best.fit.likeness)
            found = std::move(one);
    }
    for (std::size_t i = 0; i < layouts.size(); ++i)
        for (const Start& start : {Start{0.2, 2}, Start{0.8, 2}, Start{0.5, 4}})
            if (likeness[i] >= half_way && fit_once(strip, *layouts[i], start, found))
                return found;
    return found;
}

/// Whether it can only be the bars of a product code: letters and stripes hardly fit so well all along.
bool is_code(const Fit& fit)
{
    constexpr double weakest = 0.6;
    return fit.likeness >= well && fit.weakest >= weakest;
}

/// The order in which regions are read: those that have about as much to read as any, from the middle outwards, then
/// the others. Letters near the middle have little.
void sort_from_middle(const GreyView& picture, std::vector<Region>& regions)
{
    constexpr double about_as_much = 0.25;
    double most = 0;
    for (const Region& region : regions)
        most = std::max(most, region.energy);
    std::ranges::stable_sort(regions, std::ranges::less{}, [&](const Region& region) {
        const double away = std::hypot(region.x - picture.width / 2.0, region.y - picture.height / 2.0);
        return std::pair(region.energy < about_as_much * most, away);
    });
}

/// The region nearest to the middle that is a code, sure or not. Where shapes fit well and the code is not sure,
/// something is wrong with it: a digit that glare hides, a check digit that does not go with the others. Another code
/// farther out is not taken for it.
ByShapes read_by_shapes(const GreyView& picture)
{
    constexpr std::size_t most_regions = 3;
    auto regions = find_bars(picture, most_regions);
    sort_from_middle(picture, regions);
    ByShapes likeliest;
    for (const Region& region : regions) {
        ByShapes found = read_by_shapes(straighten(picture, region));
        if (found.ends_it() || is_code(found.best.fit))
            return found;
        if (found.best.fit.likeness > likeliest.best.fit.likeness)
            likeliest = std::move(found);
    }
    return likeliest;
}

/// Whether shapes that fit well say that the bars are of another code, or of none.
bool speaks_against(const ByShapes& shapes, const Reading& reading)
{
    return shapes.best.fit.likeness >= well && (shapes.guess.best != reading || shapes.guess.lost > most_lost);
}

/// Whether neighbouring digits of the guess may be others: the library mistakes them, too, and a sum repeats it.
bool guess_may_be_aside(const ByShapes& shapes)
{
    return shapes.best.layout != nullptr && may_be_drawn_aside(shapes.guess.best, shapes.best.fit, *shapes.best.layout);
}

} // namespace

Look look_at(const GreyView& picture)
{
    if (has_no_use(picture))
        return {};
    ByShapes by_shapes = read_by_shapes(picture);
    if (by_shapes.sure)
        return {std::move(by_shapes.sure), {}};
    if (by_shapes.aside)
        return {};
    const bool aside = guess_may_be_aside(by_shapes);
    auto reading = read_as_it_is(picture);
    if (reading && !speaks_against(by_shapes, *reading) && !(aside && *reading == by_shapes.guess.best))
        return {std::move(reading), {}};
    if (aside || by_shapes.best.layout == nullptr)
        return {};
    return {std::nullopt, std::move(by_shapes.best)};
}

std::optional<Reading> read(const GreyView& picture)
{
    return look_at(picture).reading;
}

} // namespace kiosk
