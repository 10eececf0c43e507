// Any text as an ingredient list and as a statement: it is taken apart into parts of itself, and a word for an allergen
// that is put before it is still read.
#include "core/label/allergens.h"
#include "core/label/grains.h"
#include "core/label/sugars.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

bool is_sound(const core::IngredientList& list, std::size_t size)
{
    std::size_t bytes = 0;
    for (std::size_t i = 0; i < list.all.size(); ++i) {
        const auto& ingredient = list.all[i];
        bytes += ingredient.printed.size();
        if (ingredient.printed.empty() || (ingredient.within && *ingredient.within >= i) || ingredient.depth > size)
            return false;
    }
    for (const auto* texts : {&list.contains, &list.may_contain, &list.footnotes})
        for (const auto& text : *texts)
            bytes += text.size();
    return bytes <= size;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto list = core::take_apart(text);
    bool good = is_sound(list, size);
    static_cast<void>(core::first_grain(list));
    static_cast<void>(core::sugars_in(list));
    static_cast<void>(core::partially_hydrogenated(list));
    static const auto day = core::Date::parse("2022-12-31").value();
    core::Label label;
    label.ingredients = "casein, " + text;
    label.contains = text;
    const auto reading = core::allergens_of(label, day);
    good = good && reading.names(core::Allergen::Milk, core::AllergenPlace::Ingredients);
    for (const auto& naming : reading.named)
        good = good && !naming.printed.empty();
    if (!good)
        std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    return 0;
}
