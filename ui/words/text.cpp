#include "ui/words/text.h"

namespace ui {
namespace {

constexpr std::string_view names[] = {
#define PAIRSTAND_TEXT_NAME(name) #name,
    PAIRSTAND_TEXTS(PAIRSTAND_TEXT_NAME)
#undef PAIRSTAND_TEXT_NAME
};

} // namespace

std::span<const std::string_view> text_names()
{
    return names;
}

std::optional<TextId> text_by_name(std::string_view name)
{
    for (std::size_t i = 0; i < std::size(names); ++i)
        if (names[i] == name)
            return static_cast<TextId>(i);
    return std::nullopt;
}

} // namespace ui
