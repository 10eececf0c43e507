// Any grey picture through the reader: what is read is a right number, and nothing else happens.
#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "kiosk/camera/reader.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size < 2)
        return 0;
    // The first byte is the width, the second how often each row stands below itself: bars need height.
    const int width = data[0];
    const int times = 1 + data[1] % 32;
    const std::vector<std::uint8_t> rows(data + 2, data + size);
    const int height = width == 0 ? 0 : static_cast<int>(rows.size()) / width;
    kiosk::Frame frame;
    frame.width = width;
    frame.height = height * times;
    for (int y = 0; y < frame.height; ++y) {
        const auto row = rows.begin() + static_cast<std::ptrdiff_t>(y / times) * width;
        frame.pixels.insert(frame.pixels.end(), row, row + width);
    }
    if (const auto reading = kiosk::read(frame.view())) {
        const bool right = reading->symbology == core::Symbology::UpcE ? core::expand_upc_e(reading->text).has_value()
                                                                       : core::Gtin::parse(reading->text).has_value();
        if (!right)
            std::abort();
    }
    return 0;
}
