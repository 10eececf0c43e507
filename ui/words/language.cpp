#include "ui/words/language.h"

#include "ui/words/po.h"

namespace ui {

using core::Error;
using core::Place;

core::Result<Language> Language::parse(std::string_view po, std::string_view code, std::string_view source)
{
    const auto messages = parse_po(po, source);
    if (!messages)
        return tl::make_unexpected(messages.error());
    Language language;
    language.code_ = code;
    language.texts_.resize(text_names().size());
    const std::string file(source);
    for (const auto& message : *messages) {
        const auto id = text_by_name(message.id);
        if (!id)
            return core::refuse(Error::Kind::BadValue, "po",
                                Place{file, message.line, "", message.id, "the name of a text of this program"});
        language.texts_[static_cast<std::size_t>(*id)] = message.text;
    }
    for (std::size_t i = 0; i < language.texts_.size(); ++i)
        if (language.texts_[i].empty())
            return core::refuse(Error::Kind::MissingValue, "po",
                                Place{file, 0, std::string(text_names()[i]), "", "a translation"});
    return language;
}

std::string Language::fill(TextId id, std::initializer_list<Fill> fills) const
{
    std::string_view rest = text(id);
    std::string filled;
    while (!rest.empty()) {
        const auto open = rest.find('{');
        filled += rest.substr(0, open);
        if (open == std::string_view::npos)
            break;
        const auto close = rest.find('}', open);
        const auto name = rest.substr(open + 1, close - open - 1);
        for (const auto& [key, value] : fills)
            if (key == name)
                filled += value;
        rest = close == std::string_view::npos ? std::string_view{} : rest.substr(close + 1);
    }
    return filled;
}

std::vector<std::string> placeholders(std::string_view text)
{
    std::vector<std::string> names;
    for (auto open = text.find('{'); open != std::string_view::npos; open = text.find('{', open + 1)) {
        const auto close = text.find('}', open);
        if (close == std::string_view::npos)
            break;
        names.emplace_back(text.substr(open + 1, close - open - 1));
    }
    return names;
}

} // namespace ui
