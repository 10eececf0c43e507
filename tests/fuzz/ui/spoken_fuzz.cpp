// Any words of a label or a sheet as they are spoken: whole letters stay whole, and what is said stays in proportion.
#include "ui/words/spoken.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <utf8proc.h>

namespace {

ui::Language read(const std::string& code)
{
    std::ifstream file(std::string(PAIRSTAND_SOURCE) + "/config/languages/" + code + ".po");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    auto language = ui::Language::parse(text, code, code + ".po");
    if (!language)
        std::abort();
    return std::move(*language);
}

bool whole_letters(std::string_view text)
{
    const auto* at = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
    auto left = static_cast<utf8proc_ssize_t>(text.size());
    while (left > 0) {
        utf8proc_int32_t letter = 0;
        const auto length = utf8proc_iterate(at, left, &letter);
        if (length <= 0)
            return false;
        at += length;
        left -= length;
    }
    return true;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const ui::Language languages[] = {read("en"), read("es")};
    const std::string_view words(reinterpret_cast<const char*>(data), size);
    constexpr std::size_t longest_unit = 60; // "per 100 square centimeters": a sign of one letter becomes words
    for (const auto& language : languages) {
        const auto said = ui::spoken(words, language);
        if (said.size() > longest_unit * (words.size() + 1) || (whole_letters(words) && !whole_letters(said)))
            std::abort(); // an input that breaks a promise is a crash, so that the fuzzer keeps it
    }
    return 0;
}
