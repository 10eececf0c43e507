// Any bytes as a station.conf: what cannot be taken is told with its line, and reading never ends the program.
#include "kiosk/desk/settings.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const auto read = kiosk::read_settings({reinterpret_cast<const char*>(data), size}, "station.conf");
    bool good = read.settings.choices.first.size() <= core::most_first;
    good = good && read.faults.size() <= kiosk::most_setting_faults;
    for (const auto& fault : read.faults)
        good = good && fault.place.source == "station.conf" && !fault.place.expected.empty();
    if (!good)
        std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    return 0;
}
