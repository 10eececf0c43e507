// Times small pieces of work: medians, so that one hiccup of a busy machine does not count. Nothing here judges.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <fstream>
#include <string>
#include <vector>

namespace bench {

/// The middle of the times that `repeats` runs took, in milliseconds, after one run to warm up.
template<class Work>
[[nodiscard]] double median_ms(int repeats, Work work)
{
    work();
    std::vector<double> times;
    for (int i = 0; i < repeats; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

/// Keeps the compiler from leaving out work whose result nobody uses.
template<class Value>
void keep(const Value& value)
{
    asm volatile("" : : "g"(&value) : "memory");
}

/// Memory that was this program's own, at its most: VmHWM counts pages of files too, so it is an upper bound.
[[nodiscard]] inline double peak_megabytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::stod(line.substr(6)) / 1024;
    return 0;
}

/// One row of a table: what, how long, and how that stands to the first row.
inline void row(const char* what, double ms, double first_ms)
{
    std::printf("  %-36s %9.3f ms   x %.3f\n", what, ms, ms / first_ms);
}

} // namespace bench
