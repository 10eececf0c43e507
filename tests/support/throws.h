// Throws of dice that are the same on every run and with every standard library: mt19937_64 is fixed by the standard,
// the distributions are not.
#pragma once

#include <cstdint>
#include <random>
#include <string>

namespace test {

/// One row of throws for a seed.
class Throws {
public:
    explicit Throws(std::uint64_t seed) : engine_(seed) {}

    /// Even between the two.
    double between(double least, double most)
    {
        return least + (most - least) * static_cast<double>(engine_() >> 11) / 9007199254740992.0;
    }
    /// Even from -most to most.
    double around(double most) { return between(-most, most); }
    bool chance(double part) { return between(0, 1) < part; }
    /// From 0 to most - 1.
    std::uint64_t below(std::uint64_t most) { return engine_() % most; }
    std::string digits(std::size_t count) { return some(count, '0', 10); }
    std::string letters(std::size_t count) { return some(count, 'A', 26); }

private:
    std::string some(std::size_t count, char first, std::uint64_t kinds)
    {
        std::string text;
        for (std::size_t i = 0; i < count; ++i)
            text += static_cast<char>(first + static_cast<char>(below(kinds)));
        return text;
    }

    std::mt19937_64 engine_;
};

} // namespace test
