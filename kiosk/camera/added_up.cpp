#include "kiosk/camera/added_up.h"

#include <algorithm>
#include <utility>

namespace kiosk {

/// A few pictures last as long as their pace asks for: one long pause among short ones is none of a slow machine.
void AddedUp::drop_old(TimePoint now)
{
    const auto pause = now - last_;
    const auto pace = std::min(pause, std::exchange(pause_, pause));
    last_ = now;
    const auto lasts = std::clamp<Clock::duration>(pace * (limits_.frames + 1), limits_.lasts, limits_.longest);
    std::erase_if(moments_, [&](const Moment& moment) { return now - moment.when > lasts; });
}

std::optional<Reading> AddedUp::see(const Look& look, TimePoint now)
{
    drop_old(now);
    if (look.reading) {
        moments_.clear();
        return look.reading;
    }
    if (!look.unsure || look.unsure->fit.likeness < limits_.least_like)
        return std::nullopt;
    moments_.push_back({*look.unsure, now});
    if (moments_.size() > limits_.most)
        moments_.pop_front();
    return sure_of(*look.unsure->layout);
}

AddedUp::Sum AddedUp::sum_of(const Layout& layout) const
{
    Sum sum{Evidence(layout.digits())};
    for (const Moment& moment : moments_) {
        if (moment.unsure.layout != &layout)
            continue;
        for (std::size_t digit = 0; digit < sum.evidence.size(); ++digit)
            for (std::size_t shape = 0; shape < sum.evidence[digit].size(); ++shape)
                sum.evidence[digit][shape] += moment.unsure.fit.evidence[digit][shape];
        sum.weakest += moment.unsure.fit.weakest;
        ++sum.frames;
    }
    return sum;
}

std::optional<Reading> AddedUp::sure_of(const Layout& layout) const
{
    const Sum sum = sum_of(layout);
    if (is_short(layout) || sum.frames < limits_.frames)
        return std::nullopt;
    const Choice choice = choose(sum.evidence, layout);
    const auto frames = static_cast<double>(sum.frames);
    const bool sure = choice.ahead >= std::max(limits_.ahead, limits_.ahead_each * frames) &&
                      choice.lost <= limits_.lost && sum.weakest >= limits_.weakest * frames;
    return sure ? std::optional(choice.best) : std::nullopt;
}

std::vector<Reading> AddedUp::likely() const
{
    std::vector<Reading> codes;
    if (moments_.empty())
        return codes;
    const Layout& layout = *moments_.back().unsure.layout;
    const Sum sum = sum_of(layout);
    if (sum.frames < limits_.frames)
        return codes;
    const auto ranks = likeliest(sum.evidence, layout);
    for (const Weighed& code : ranks)
        if (ranks.front().weight - code.weight <= limits_.behind * static_cast<double>(sum.frames))
            codes.push_back(code.reading);
    return codes;
}

} // namespace kiosk
