#include "tests/support/disk_card.h"

#include <algorithm>
#include <cstdlib>
#include <cstring>

namespace test {

DiskCard::DiskCard() : file_(folder_.write("played.raw", ""))
{
    setenv("SDL_AUDIODRIVER", "disk", 1);
    setenv("SDL_DISKAUDIOFILE", file_.c_str(), 1);
}

DiskCard::~DiskCard()
{
    unsetenv("SDL_DISKAUDIOFILE");
    unsetenv("SDL_AUDIODRIVER");
}

std::vector<std::int16_t> DiskCard::played() const
{
    const auto bytes = bytes_of(file_);
    std::vector<std::int16_t> samples(bytes.size() / sizeof(std::int16_t));
    if (!samples.empty())
        std::memcpy(samples.data(), bytes.data(), samples.size() * sizeof(std::int16_t));
    return samples;
}

std::vector<std::int16_t> without_silence(std::vector<std::int16_t> samples)
{
    std::erase(samples, std::int16_t{0});
    return samples;
}

int peak(const std::vector<std::int16_t>& samples)
{
    int loudest = 0;
    for (const int sample : samples)
        loudest = std::max(loudest, std::abs(sample));
    return loudest;
}

} // namespace test
