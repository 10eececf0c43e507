// Any text as a household measure and as an amount to eat: what is read can be counted with, and two such labels are
// compared by it.
#include "core/compare/comparison.h"
#include "core/compare/my_amount.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    static_cast<void>(core::household_times(text, core::Count::whole(1'000)));
    const auto amount = core::parse_my_amount(text);
    bool good = !amount || core::is_sound(*amount);
    if (const auto read = core::parse_household(text))
        good = good && read->count.over > 0 && read->count.under > 0;
    core::Label label;
    label.serving.household = text;
    label.serving.metric = core::Mass::whole(30);
    label.per_serving.lines[core::Nutrient::TotalFat].amount = core::Figure{core::Content::whole(3)};
    for (const auto basis : {core::Basis::SameMeasure, core::Basis::MyAmount})
        for (const auto of : {core::MyAmount::Of::Cups, core::MyAmount::Of::Tablespoons, core::MyAmount::Of::Pieces}) {
            const auto both = core::compare(label, label, basis, {}, amount ? *amount : core::MyAmount{of, {7, 8}});
            for (const auto& row : both.rows) // a food is never less than itself
                good = good && row.finding != core::Finding::LeftLess && row.finding != core::Finding::LeftMore;
        }
    if (!good)
        std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    return 0;
}
