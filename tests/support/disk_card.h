// A sound card that writes what it plays into a file: SDL's "disk" driver, for the time that it lives.
#pragma once

#include "tests/support/temp_folder.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace test {

/// Stands for the sound card of whatever opens one meanwhile; it plays no faster than a true one.
class DiskCard {
public:
    DiskCard();
    ~DiskCard();
    DiskCard(const DiskCard&) = delete;
    DiskCard& operator=(const DiskCard&) = delete;

    /// All that was played and has reached the file: mono, 48,000 samples a second, silence included. The last two
    /// buffers come only when the device is closed.
    [[nodiscard]] std::vector<std::int16_t> played() const;

private:
    TempFolder folder_;
    std::string file_;
};

/// Without silent samples: a card that waits for more plays silence, and how much of it is chance.
[[nodiscard]] std::vector<std::int16_t> without_silence(std::vector<std::int16_t> samples);

/// The loudest sample.
[[nodiscard]] int peak(const std::vector<std::int16_t>& samples);

} // namespace test
