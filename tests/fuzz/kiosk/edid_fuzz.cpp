// Any bytes as what a panel says of itself: a size that a panel can have, or none. Its first bytes and its sum are put
// right, for nothing behind them is read otherwise.
#include "kiosk/files/edid.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <numeric>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static constexpr std::uint8_t head[] = {0x00, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00};
    constexpr std::size_t block = 128; // the last byte makes the sum of all a multiple of 256
    static_cast<void>(kiosk::size_in_edid({data, size}));
    std::vector<std::uint8_t> bytes(data, data + size);
    bytes.resize(std::max(size, block));
    std::copy(std::begin(head), std::end(head), bytes.begin());
    const auto sum = std::accumulate(bytes.begin(), bytes.begin() + block - 1, 0U);
    bytes[block - 1] = static_cast<std::uint8_t>(256 - sum % 256);
    const auto told = kiosk::size_in_edid(bytes);
    const auto can_be = [](int mm) { return mm >= 60 && mm <= 3000; };
    if (told && (!can_be(told->width) || !can_be(told->height)))
        std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    return 0;
}
