// Several pictures of one package say more than the best of them: what speaks for each digit is added up.
#pragma once

#include "kiosk/camera/digit_choice.h"
#include "kiosk/camera/look.h"
#include "kiosk/clock.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <vector>

namespace kiosk {

/// When a sum counts: common practice, tried on drawn runs of frames. Of 39 sums that chose a wrong code none was more
/// than 39 ahead. A package that lies still is misread in the same way by each picture: so the sum must also be as far
/// ahead, by picture, as no wrong picture is. Short codes are not added up, for of them some wrong picture is.
struct AddedUpLimits {
    Milliseconds lasts{700};    ///< an older picture may show another package
    Milliseconds longest{6000}; ///< on a machine that needs long for each picture, where a few of them may last longer
    std::size_t most = 24;      ///< pictures
    double least_like = 0.75;   ///< a picture in which shapes fit less says nothing
    std::size_t frames = 3;     ///< so many must take part
    double ahead = 80;          ///< as in Choice, of the sum
    double ahead_each = 40;     ///< and of the sum divided by the number of pictures
    double lost = 5;            ///< of the sum
    double weakest = 0.35;      ///< as in Fit, on the average: glare hides one digit here and another one there
    double behind = 25;         ///< how much less likely than the best, by picture, a code may be to be asked about
};

/// What was seen in the last moments, without the pictures.
class AddedUp {
public:
    explicit AddedUp(AddedUpLimits limits = {}) : limits_(limits) {}

    /// Takes what a picture says and returns the code: the picture's own where it is sure, else that of the sum where
    /// the sum is, else nothing. A sure code forgets what came before: another package may come next.
    [[nodiscard]] std::optional<Reading> see(const Look& look, TimePoint now);

    /// Whether enough of the last pictures show bars of which none is sure.
    [[nodiscard]] bool unsure() const { return moments_.size() >= limits_.frames; }
    /// Codes that the last pictures leave, likeliest first, at most twenty; none while too few pictures take part. For
    /// a question, never for an answer. Takes some milliseconds.
    [[nodiscard]] std::vector<Reading> likely() const;

private:
    struct Moment {
        Unsure unsure;
        TimePoint when;
    };
    struct Sum {
        Evidence evidence;
        double weakest = 0;
        std::size_t frames = 0;
    };
    void drop_old(TimePoint now);
    [[nodiscard]] Sum sum_of(const Layout& layout) const;
    [[nodiscard]] std::optional<Reading> sure_of(const Layout& layout) const;

    AddedUpLimits limits_;
    std::deque<Moment> moments_;
    TimePoint last_{};
    Clock::duration pause_{}; ///< before the last picture
};

} // namespace kiosk
