#include "kiosk/camera/added_up.h"

namespace kiosk {

std::optional<Reading> AddedUp::see(const Look& look, TimePoint now)
{
    if (look.reading) {
        moments_.clear();
        return look.reading;
    }
    std::erase_if(moments_, [&](const Moment& moment) { return now - moment.when > limits_.lasts; });
    if (!look.unsure || look.unsure->fit.likeness < limits_.least_like)
        return std::nullopt;
    moments_.push_back({*look.unsure, now});
    if (moments_.size() > limits_.most)
        moments_.pop_front();
    return sum_of(*look.unsure->layout);
}

std::optional<Reading> AddedUp::sum_of(const Layout& layout) const
{
    Evidence sum(layout.digits());
    double weakest = 0;
    std::size_t frames = 0;
    for (const Moment& moment : moments_) {
        if (moment.unsure.layout != &layout)
            continue;
        for (std::size_t digit = 0; digit < sum.size(); ++digit)
            for (std::size_t shape = 0; shape < sum[digit].size(); ++shape)
                sum[digit][shape] += moment.unsure.fit.evidence[digit][shape];
        weakest += moment.unsure.fit.weakest;
        ++frames;
    }
    if (frames < limits_.frames)
        return std::nullopt;
    const Choice choice = choose(sum, layout);
    const bool sure = choice.ahead >= limits_.ahead && choice.lost <= limits_.lost &&
                      weakest >= limits_.weakest * static_cast<double>(frames);
    return sure ? std::optional(choice.best) : std::nullopt;
}

} // namespace kiosk
