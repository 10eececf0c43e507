#include "tests/house/rules.h"

#include <algorithm>
#include <regex>
#include <set>

namespace test::house {
namespace {

constexpr std::string_view model = "config/languages/en.po"; // the others must have what this one has

struct Text {
    std::string words;
    std::size_t line;
};
using Texts = std::map<std::string, Text>;

std::string between_quotes(std::string_view line)
{
    const auto first = line.find('"');
    const auto last = line.rfind('"');
    return first == last ? std::string{} : std::string(line.substr(first + 1, last - first - 1));
}

// msgid, msgstr and continued lines; a doubled msgid is a complaint. The header (empty msgid) is left out.
Texts texts_of(const std::string& path, std::string_view po, Complaints& wrong)
{
    Texts texts;
    std::string id;
    std::string* target = nullptr;
    std::size_t number = 0;
    for (const auto line : lines_of(po)) {
        ++number;
        if (line.starts_with("msgid ")) {
            id = between_quotes(line);
            target = &id;
        } else if (line.starts_with("msgstr ")) {
            if (texts.contains(id))
                wrong.push_back(complaint(path, number, "\"" + id + "\" stands here twice"));
            texts[id] = {between_quotes(line), number};
            target = &texts[id].words;
        } else if (line.starts_with("\"") && target) {
            *target += between_quotes(line);
        } else {
            target = nullptr;
        }
    }
    texts.erase("");
    return texts;
}

std::multiset<std::string> placeholders_of(const std::string& words)
{
    static const std::regex placeholder{R"(\{\w*\})"};
    std::multiset<std::string> found;
    for (std::sregex_iterator at(words.begin(), words.end(), placeholder), end; at != end; ++at)
        found.insert(at->str());
    return found;
}

void compare(const std::string& path, const Texts& texts, const Texts& wanted, Complaints& wrong)
{
    for (const auto& [id, text] : texts) {
        if (text.words.empty())
            wrong.push_back(complaint(path, text.line, "\"" + id + "\" is empty"));
        const auto other = wanted.find(id);
        if (other == wanted.end())
            wrong.push_back(complaint(path, text.line, "\"" + id + "\" is not in " + std::string(model)));
        else if (placeholders_of(text.words) != placeholders_of(other->second.words))
            wrong.push_back(
                complaint(path, text.line, "\"" + id + "\" has other placeholders than " + std::string(model)));
    }
    for (const auto& [id, text] : wanted)
        if (!texts.contains(id))
            wrong.push_back(complaint(path, 1, "\"" + id + "\" is missing"));
}

} // namespace

Complaints languages_are_complete(const Tree& tree)
{
    Complaints wrong;
    const auto first = tree.find(std::string(model));
    if (first == tree.end())
        return {complaint(model, 1, "is missing")};
    const auto wanted = texts_of(first->first, first->second, wrong);
    if (wanted.empty())
        wrong.push_back(complaint(model, 1, "holds no text"));
    for (const auto& [path, po] : tree)
        if (path.starts_with("config/languages/") && path.ends_with(".po"))
            compare(path, path == model ? wanted : texts_of(path, po, wrong), wanted, wrong);
    return wrong;
}

} // namespace test::house
