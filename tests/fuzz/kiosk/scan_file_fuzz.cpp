// Any bytes as the beginning of a picture file: a size comes out or none, and nothing is read past the end.
#include "kiosk/camera/picture_size.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    (void)kiosk::picture_size({data, size});
    return 0;
}
