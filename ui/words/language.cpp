#include "ui/words/language.h"

#include "ui/words/po.h"

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <optional>
#include <utf8proc.h>

namespace ui {

using core::Error;
using core::Place;

namespace {

/// "{all} {n}": the same for two texts exactly if they have the same placeholders, each as often.
std::string sorted_placeholders(std::string_view text)
{
    auto names = placeholders(text);
    std::ranges::sort(names);
    std::string all;
    for (const auto& name : names)
        all.append(all.empty() ? "{" : " {").append(name).append("}");
    return all;
}

/// Whether every brace belongs to a placeholder: a pair around a name of small letters, digits and underscores.
bool braces_are_whole(std::string_view text)
{
    const auto is_name = [](std::string_view name) {
        return !name.empty() && name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == name.npos;
    };
    const auto names = placeholders(text);
    const auto count = static_cast<std::ptrdiff_t>(names.size());
    return std::ranges::count(text, '{') == count && std::ranges::count(text, '}') == count &&
           std::ranges::all_of(names, is_name);
}

/// What is wrong with one message of its own, whatever language it is in.
std::optional<Error> fault_of(const PoMessage& message, const std::string& file)
{
    const auto fault = [&](std::string expected) {
        return Error{Error::Kind::BadValue, "po", Place{file, message.line, "", message.id, std::move(expected)}};
    };
    if (!text_by_name(message.id))
        return fault("the name of a text of this program, as in en.po");
    if (!braces_are_whole(message.text))
        return fault("whole placeholders, such as {name}, with nothing changed between their braces");
    if (!is_composed(message.text))
        return fault("text in Unicode normalization form C, as most editors write it (uconv -x nfc makes it so)");
    return std::nullopt;
}

/// What is wrong with a translation beside the English text; a draft's empty one has nothing to compare.
std::optional<Error> fault_beside(const PoMessage& message, const std::string& english, const std::string& file)
{
    const auto wanted = sorted_placeholders(english);
    if (message.text.empty() || sorted_placeholders(message.text) == wanted)
        return std::nullopt;
    return Error{Error::Kind::BadValue, "po",
                 Place{file, message.line, "", message.id,
                       wanted.empty() ? "no placeholder, as in en.po" : "the placeholders of en.po, " + wanted}};
}

} // namespace

bool is_composed(std::string_view text)
{
    const std::string whole(text);
    const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> composed(
        utf8proc_NFC(reinterpret_cast<const utf8proc_uint8_t*>(whole.c_str())), &std::free);
    return composed && whole == reinterpret_cast<const char*>(composed.get());
}

core::Result<Language> Language::parse(std::string_view po, std::string_view code, std::string_view source)
{
    return read(po, code, source, nullptr);
}

core::Result<Language> Language::parse(std::string_view po, std::string_view code, std::string_view source,
                                       const Language& english)
{
    return read(po, code, source, &english);
}

core::Result<Language> Language::read(std::string_view po, std::string_view code, std::string_view source,
                                      const Language* english)
{
    const auto parsed = parse_po_file(po, source);
    if (!parsed)
        return tl::make_unexpected(parsed.error());
    const std::string file(source);
    const auto state = po_header_field(parsed->header, "X-Pairstand-State");
    if (!state.empty() && state != "draft")
        return core::refuse(Error::Kind::BadValue, "po",
                            Place{file, 0, "", "X-Pairstand-State: " + state, "\"draft\" there, or no such line"});
    Language language;
    language.code_ = code;
    language.draft_ = english && state == "draft";
    language.texts_.resize(text_names().size());
    std::vector<std::size_t> lines(text_names().size());
    for (const auto& message : parsed->messages) {
        auto fault = fault_of(message, file);
        if (!fault && english)
            fault = fault_beside(message, english->text(*text_by_name(message.id)), file);
        if (fault)
            return tl::make_unexpected(std::move(*fault));
        const auto at = static_cast<std::size_t>(*text_by_name(message.id));
        lines[at] = message.line;
        language.texts_[at] = message.text;
    }
    for (std::size_t i = 0; i < language.texts_.size(); ++i) {
        auto& text = language.texts_[i];
        if (text.empty() && !language.draft_)
            return core::refuse(Error::Kind::MissingValue, "po",
                                Place{file, lines[i], std::string(text_names()[i]), "", "a translation"});
        if (text.empty())
            text = english->texts_[i];
    }
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
