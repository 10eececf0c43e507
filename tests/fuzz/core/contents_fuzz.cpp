// Any text as a net quantity and as a price: what comes out can be counted with, and its unit price is not negative.
#include "core/rules/unit_price.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    static_cast<void>(core::parse_price(text));
    const auto contents = core::contents_of(text);
    if (!contents)
        return 0;
    bool good = contents->packages >= 1 && !contents->each.empty();
    for (const auto& amount : contents->each) {
        good = good && amount.nano > 0;
        if (const auto price = core::unit_price(core::dearest, *contents, core::info(amount.unit).goods, {amount.unit},
                                                core::PriceRounding::TenthCent))
            good = good && price->shown.tenths >= 0 && core::cheaper_first(*price, *price) == 0;
    }
    if (!good)
        std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    return 0;
}
