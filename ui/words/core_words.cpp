#include "ui/words/core_words.h"

#include <optional>
#include <utility>
#include <vector>

namespace ui {
namespace {

/// What stands in a phrase for each placeholder, by name.
using Values = std::vector<std::pair<std::string, std::string>>;

/// The values for which the pattern is these words; each as short as it can be, but the last, which takes the rest.
std::optional<Values> fit(std::string_view pattern, std::string_view words)
{
    Values values;
    while (true) {
        const auto open = pattern.find('{');
        if (open == std::string_view::npos)
            return words == pattern ? std::optional(values) : std::nullopt;
        if (!words.starts_with(pattern.substr(0, open)))
            return std::nullopt;
        words.remove_prefix(open);
        const auto close = pattern.find('}', open);
        const std::string name(pattern.substr(open + 1, close - open - 1));
        pattern.remove_prefix(close + 1);
        const auto literal = pattern.substr(0, pattern.find('{'));
        const bool last = literal.size() == pattern.size();
        if (last && (words.size() < literal.size() || !words.ends_with(literal)))
            return std::nullopt;
        const auto end = last ? words.size() - literal.size() : words.find(literal, 1);
        if (end == std::string_view::npos || end == 0)
            return std::nullopt;
        values.emplace_back(name, words.substr(0, end));
        words.remove_prefix(end);
    }
}

/// The text with these values, in the language as far as they are phrases themselves.
std::string filled(TextId id, const Values& values, const Language& language)
{
    std::string words = language.text(id);
    std::string done;
    for (auto open = words.find('{'); open != std::string::npos; open = words.find('{')) {
        const auto close = words.find('}', open);
        const auto name = words.substr(open + 1, close - open - 1);
        done.append(words, 0, open);
        for (const auto& [key, value] : values)
            if (key == name)
                done += core_words(value, language);
        words.erase(0, close == std::string::npos ? words.size() : close + 1);
    }
    return done + words;
}

/// "class, label_2016 or label_older": words without blanks, the last behind "or".
std::optional<Values> list_of_keys(std::string_view words)
{
    constexpr std::string_view before_last = " or ";
    const auto at = words.find(before_last);
    if (at == std::string_view::npos || at == 0)
        return std::nullopt;
    const auto last = words.substr(at + before_last.size());
    const auto list = words.substr(0, at);
    if (last.empty() || last.find(' ') != std::string_view::npos)
        return std::nullopt;
    for (auto blank = list.find(' '); blank != std::string_view::npos; blank = list.find(' ', blank + 1))
        if (blank == 0 || list[blank - 1] != ',')
            return std::nullopt;
    return Values{{"list", std::string(list)}, {"last", std::string(last)}};
}

} // namespace

std::string core_words(std::string_view english, const Language& language)
{
    for (const auto& phrase : core_phrases())
        if (phrase.english == english)
            return language.text(phrase.id);
    for (const auto& phrase : core_phrases())
        if (const auto values = fit(phrase.english, english); values && !values->empty())
            return filled(phrase.id, *values, language);
    if (const auto keys = list_of_keys(english))
        return language.fill(TextId::want_one_of, {{"list", (*keys)[0].second}, {"last", (*keys)[1].second}});
    return std::string(english);
}

} // namespace ui
