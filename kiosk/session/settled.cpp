#include "kiosk/session/settled.h"

#include <algorithm>

namespace kiosk {

void Settled::settle(const core::Gtin& code, TimePoint now)
{
    std::erase_if(entries_, [&](const Entry& entry) { return entry.code == code || now - entry.seen >= quiet; });
    entries_.push_back({code, now});
}

bool Settled::sees(std::span<const core::Gtin> codes, TimePoint now)
{
    bool any = false;
    for (Entry& entry : entries_) {
        if (now - entry.seen >= quiet || std::ranges::find(codes, entry.code) == codes.end())
            continue;
        entry.seen = std::max(entry.seen, now);
        any = true;
    }
    return any;
}

} // namespace kiosk
