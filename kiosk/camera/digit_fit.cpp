#include "kiosk/camera/digit_fit.h"

#include "kiosk/camera/even_out.h"
#include "kiosk/camera/shapes.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace kiosk {
namespace {

/// The pieces of a code are all seven modules: guards with what stands beside them, and digits.
struct Piece {
    enum class Kind { Guard, Digit };
    Kind kind = Kind::Digit;
    Guard guard = Guard::Begin;
    std::size_t digit = 0;
    double centre = 0; ///< in modules from the first bar
};

constexpr std::size_t most_pieces = 15;
constexpr double half_piece = 3.5;

std::vector<Piece> pieces_of(const Layout& layout)
{
    std::vector<Piece> pieces{{Piece::Kind::Guard, Guard::Begin, 0, 0.5}};
    for (std::size_t digit = 0; digit < layout.digits(); ++digit) {
        const double begin = layout.begin_of(digit);
        if (digit == layout.left)
            pieces.push_back({Piece::Kind::Guard, Guard::Middle, 0, begin - layout.middle / 2.0});
        pieces.push_back({Piece::Kind::Digit, Guard::Begin, digit, begin + half_piece});
    }
    pieces.push_back({Piece::Kind::Guard, Guard::End, 0, layout.modules() - 0.5});
    return pieces;
}

std::vector<double> centres_of(const std::vector<Piece>& pieces)
{
    std::vector<double> centres;
    for (const Piece& piece : pieces)
        centres.push_back(piece.centre);
    return centres;
}

/// The side of a can: half the angle that a code goes round it, and how far its middle is turned away. Radians; flat
/// print goes round nothing.
struct Bent {
    double around = 0;
    double turned = 0;

    /// Where a place of the code is seen, both from 0 to 1.
    double seen(double place) const
    {
        if (around == 0)
            return place;
        const double first = std::sin(turned - around);
        return (std::sin(turned + around * (2 * place - 1)) - first) / (std::sin(turned + around) - first);
    }
};

/// Where the middle of each piece lies in a band, in values. Between them modules are evenly wide.
using Pose = std::array<double, most_pieces>;

/// A band as a running sum, so that the mean grey of any piece of it costs two looks.
class Band {
public:
    Band(const std::vector<float>& grey, bool backwards)
    {
        sums_.reserve(grey.size() + 1);
        sums_.push_back(0);
        for (std::size_t i = 0; i < grey.size(); ++i)
            sums_.push_back(sums_.back() + static_cast<double>(backwards ? grey[grey.size() - 1 - i] : grey[i]));
    }
    double sum_to(double x) const
    {
        const double at = std::clamp(x, 0.0, static_cast<double>(sums_.size() - 1) - 1e-6);
        const auto whole = static_cast<std::size_t>(at);
        return sums_[whole] + (sums_[whole + 1] - sums_[whole]) * (at - static_cast<double>(whole));
    }
    double size() const { return static_cast<double>(sums_.size() - 1); }

private:
    std::vector<double> sums_;
};

/// How the shapes of one place fit: correlations, from -1 to 1.
using Likeness = std::array<float, 20>;

/// How far the pieces may move from where a pose has them, and from one piece to the next. In modules.
struct Play {
    double reach;
    double step;
    double jump;
    double cost; ///< of a jump of one module, squared
};

struct Fitted {
    Pose pose{};
    double score = -1;
};

class Fitting {
public:
    Fitting(const Layout& layout, std::size_t spread)
        : layout_(layout), pieces_(pieces_of(layout)), even_out_(centres_of(pieces_)), spread_(spread)
    {
    }
    void set_spread(std::size_t spread) { spread_ = spread; }
    std::size_t spread() const { return spread_; }
    const std::vector<Piece>& pieces() const { return pieces_; }

    /// A code from one place to another, printed on `bent`.
    Pose spread_out(double first, double across, const Bent& bent) const
    {
        Pose pose{};
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            pose[i] = first + across * bent.seen(pieces_[i].centre / layout_.modules());
        return pose;
    }
    /// The same on the smooth curve that most pieces follow.
    Pose evened(Pose pose) const
    {
        constexpr double near = 0.1;
        even_out_.apply(std::span(pose).first(pieces_.size()), near * module_of(pose));
        return pose;
    }
    double module_of(const Pose& pose) const
    {
        const std::size_t last = pieces_.size() - 1;
        return (pose[last] - pose[0]) / (pieces_[last].centre - pieces_[0].centre);
    }
    Likeness likeness(const Band& band, const Pose& pose, std::size_t piece) const
    {
        return compare(values_of(band, places_of(pose, piece), 0), pieces_[piece].digit >= layout_.left);
    }
    /// How dark a piece is: its mean grey, turned round.
    double ink(const Band& band, const Pose& pose, std::size_t piece) const
    {
        const Places places = places_of(pose, piece);
        return (band.sum_to(places.front()) - band.sum_to(places.back())) / (places.back() - places.front());
    }
    /// The best correlation at a piece.
    double score(const Band& band, const Pose& pose, std::size_t piece) const
    {
        return best_of(band, places_of(pose, piece), 0, pieces_[piece]);
    }
    double score(const Band& band, const Pose& pose) const
    {
        double sum = 0;
        for (std::size_t piece = 0; piece < pieces_.size(); ++piece)
            sum += score(band, pose, piece);
        return sum;
    }
    /// The pose near this one that fits best: each piece moves, but hardly otherwise than the one before it.
    Fitted settle(const Band& band, const Pose& near, const Play& play) const
    {
        const double module = module_of(near);
        const int reach = static_cast<int>(std::lround(play.reach / play.step));
        const auto states = static_cast<std::size_t>(2 * reach + 1);
        const int jump = static_cast<int>(std::lround(play.jump / play.step));
        std::vector<double> best(states, 0);
        std::vector<std::vector<int>> came(pieces_.size(), std::vector<int>(states, 0));
        for (std::size_t piece = 0; piece < pieces_.size(); ++piece) {
            const Places places = places_of(near, piece);
            std::vector<double> next(states);
            for (int state = 0; state < static_cast<int>(states); ++state) {
                const auto at = static_cast<std::size_t>(state);
                const double here = best_of(band, places, (state - reach) * play.step * module, pieces_[piece]);
                double most = -1e9;
                for (int from = std::max(0, state - jump);
                     piece > 0 && from <= std::min(static_cast<int>(states) - 1, state + jump); ++from) {
                    const double moved = (state - from) * play.step;
                    const double sum = best[static_cast<std::size_t>(from)] - play.cost * moved * moved;
                    if (sum > most) {
                        most = sum;
                        came[piece][at] = from;
                    }
                }
                next[at] = here + (piece > 0 ? most : 0);
            }
            best = std::move(next);
        }
        return walk_back(near, play.step * module, reach, best, came);
    }

private:
    using Values = std::array<float, values_in_digit>;
    using Places = std::array<double, values_in_digit + 1>;

    static Fitted walk_back(const Pose& near, double step, int reach, const std::vector<double>& best,
                            const std::vector<std::vector<int>>& came)
    {
        const auto top = std::ranges::max_element(best);
        Fitted fitted{near, *top};
        auto state = static_cast<int>(top - best.begin());
        for (std::size_t piece = came.size(); piece-- > 0;) {
            fitted.pose[piece] = near[piece] + (state - reach) * step;
            state = came[piece][static_cast<std::size_t>(state)];
        }
        return fitted;
    }
    /// Where the values of a piece begin and end.
    Places places_of(const Pose& pose, std::size_t piece) const
    {
        const std::size_t last = pieces_.size() - 1;
        const std::size_t before = piece == 0 ? 0 : piece - 1;
        const std::size_t behind = piece == last ? last - 1 : piece;
        const double left = (pose[before + 1] - pose[before]) / (pieces_[before + 1].centre - pieces_[before].centre);
        const double right = (pose[behind + 1] - pose[behind]) / (pieces_[behind + 1].centre - pieces_[behind].centre);
        Places places;
        for (std::size_t i = 0; i < places.size(); ++i) {
            const double away = static_cast<double>(i) / values_in_module - half_piece;
            places[i] = pose[piece] + away * (away < 0 ? left : right);
        }
        return places;
    }
    /// Seven modules of grey with mean 0. Ink is dark, so the grey is turned round.
    static Values values_of(const Band& band, const Places& places, double moved)
    {
        Values values;
        double before = band.sum_to(places[0] + moved);
        float mean = 0;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const double sum = band.sum_to(places[i + 1] + moved);
            values[i] = static_cast<float>((before - sum) / std::max(places[i + 1] - places[i], 1e-3));
            mean += values[i] / values_in_digit;
            before = sum;
        }
        for (float& value : values)
            value -= mean;
        return values;
    }
    double best_of(const Band& band, const Places& places, double moved, const Piece& piece) const
    {
        const Values values = values_of(band, places, moved);
        if (piece.kind == Piece::Kind::Guard)
            return guard(values, piece.guard);
        const Likeness all = compare(values, piece.digit >= layout_.left);
        const bool two_sets = piece.digit < layout_.left && layout_.symbology != core::Symbology::Ean8;
        return static_cast<double>(*std::max_element(all.begin(), all.begin() + (two_sets ? 20 : 10)));
    }
    double guard(const Values& values, Guard guard) const
    {
        const auto& shape = shape_of(guard, spread_);
        float sum = 0;
        float square = flat;
        for (std::size_t i = 0; i < values.size(); ++i) {
            sum += values[i] * shape[i];
            square += values[i] * values[i];
        }
        return static_cast<double>(sum / std::sqrt(square));
    }
    Likeness compare(const Values& values, bool right_half) const
    {
        Likeness sums{};
        float square = flat;
        const Shapes& shapes = shapes_of(right_half, spread_);
        for (std::size_t i = 0; i < values.size(); ++i) {
            square += values[i] * values[i];
            for (std::size_t shape = 0; shape < sums.size(); ++shape)
                sums[shape] += values[i] * shapes.at[i][shape];
        }
        const float scale = 1 / std::sqrt(square);
        for (float& sum : sums)
            sum *= scale;
        return sums;
    }

    static constexpr float flat = 1.0F; ///< a grey level: flat paper fits nothing
    Layout layout_;
    std::vector<Piece> pieces_;
    EvenOut even_out_;
    std::size_t spread_;
};

/// From where the pieces roughly are to where they fit best, with the spread that fits best there.
Fitted closely(Fitting& fitting, const Band& band, const Pose& rough)
{
    constexpr Play close{0.75, 0.125, 0.25, 0.8};
    std::size_t chosen = fitting.spread();
    double most = -1;
    for (std::size_t spread = 0; spread < spreads.size(); ++spread) {
        fitting.set_spread(spread);
        if (const double score = fitting.score(band, rough); score > most) {
            most = score;
            chosen = spread;
        }
    }
    fitting.set_spread(chosen);
    return fitting.settle(band, fitting.evened(rough), close);
}

/// From where the region says that the code is to where its pieces are: far and roughly on flat and on bent print, then
/// closely. Leaves the spread that fits best.
Fitted first_fit(Fitting& fitting, const Band& band, const Strip& strip, double middle)
{
    struct Guess {
        double width;
        Bent bent;
    };
    constexpr Guess guesses[] = {{1.0, {}},          {0.9, {}},         {1.1, {}},
                                 {1.0, {0.5, -0.4}}, {1.0, {0.5, 0.0}}, {1.0, {0.5, 0.4}}};
    constexpr Play far{12, 0.25, 1, 0.1};
    constexpr double good_enough = 0.95;
    const std::size_t begun_with = fitting.spread();
    std::size_t chosen = begun_with;
    Fitted best;
    for (const Guess& guess : guesses) {
        const double across = strip.across * guess.width;
        fitting.set_spread(begun_with);
        const Fitted rough = fitting.settle(band, fitting.spread_out(middle - across / 2, across, guess.bent), far);
        const Fitted one = closely(fitting, band, rough.pose);
        if (one.score > best.score) {
            best = one;
            chosen = fitting.spread();
        }
        if (best.score > good_enough * static_cast<double>(fitting.pieces().size()))
            break;
    }
    fitting.set_spread(chosen);
    return best;
}

/// Correlations as logarithms of likelihoods: what is left unexplained is taken for grain. The modules of a digit count
/// as its independent values.
void add(const Likeness& likeness, std::array<float, 20>& evidence)
{
    constexpr float values = 7;
    constexpr float never_perfect = 1.02F;
    for (std::size_t i = 0; i < likeness.size(); ++i) {
        const float fits = std::max(0.0F, likeness[i]);
        evidence[i] -= values / 2 * std::log(never_perfect - fits * fits);
    }
}

/// Whether a piece must fit by itself. The bars in the middle are one module each: in a soft picture hardly anything is
/// left of them, and what is left resembles nothing.
bool counts_alone(const Piece& piece)
{
    return piece.kind == Piece::Kind::Digit || piece.guard != Guard::Middle;
}

Fit fit_one_way(const Strip& strip, const Layout& layout, const Start& begin, bool backwards)
{
    Fit fit;
    Fitting fitting(layout, begin.spread);
    std::vector<Band> bands;
    for (const auto& grey : strip.bands)
        bands.emplace_back(grey, backwards);
    const auto middle_band =
        std::min(static_cast<std::size_t>(begin.band * static_cast<double>(bands.size())), bands.size() - 1);
    const double middle = backwards ? bands.front().size() - strip.middle : strip.middle;
    const Fitted start = first_fit(fitting, bands[middle_band], strip, middle);
    const auto pieces = static_cast<double>(fitting.pieces().size());
    fit.likeness = start.score / pieces;
    fit.evidence.resize(layout.digits());
    fit.ink.resize(layout.digits());
    std::vector<double> fits(fitting.pieces().size(), 0);
    const auto follow = [&](std::size_t band, Fitted& near) {
        near = fitting.settle(bands[band], fitting.evened(near.pose), {0.5, 0.125, 0.25, 0.8});
        if (near.score / pieces < 0.5)
            return;
        ++fit.bands;
        const Pose even = fitting.evened(near.pose);
        for (std::size_t piece = 0; piece < fitting.pieces().size(); ++piece)
            fits[piece] += counts_alone(fitting.pieces()[piece]) ? fitting.score(bands[band], even, piece) : 1;
        for (std::size_t piece = 0; piece < fitting.pieces().size(); ++piece)
            if (const Piece& at = fitting.pieces()[piece]; at.kind == Piece::Kind::Digit) {
                add(fitting.likeness(bands[band], even, piece), fit.evidence[at.digit]);
                fit.ink[at.digit] += fitting.ink(bands[band], even, piece);
            }
    };
    Fitted near = start;
    for (std::size_t band = middle_band; band < bands.size(); ++band)
        follow(band, near);
    near = start;
    for (std::size_t band = middle_band; band-- > 0;)
        follow(band, near);
    if (fit.bands > 0)
        fit.weakest = *std::ranges::min_element(fits) / static_cast<double>(fit.bands);
    return fit;
}

} // namespace

Fit fit_digits(const Strip& strip, const Layout& layout, const Start& start)
{
    if (strip.bands.empty() || strip.bands.front().size() < static_cast<std::size_t>(layout.modules()))
        return {};
    Fit forward = fit_one_way(strip, layout, start, false);
    Fit backward = fit_one_way(strip, layout, start, true);
    return forward.likeness >= backward.likeness ? forward : backward;
}

} // namespace kiosk
