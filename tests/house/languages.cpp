#include "tests/house/rules.h"

#include <cstdlib>
#include <memory>
#include <regex>
#include <set>
#include <utf8proc.h>

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

// msgid, msgstr and continued lines; a doubled msgid is a complaint. The header has the empty msgid.
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
    return texts;
}

/// A draft may lack texts. The line as translators write it into the header, \n and all.
bool takes_draft(Texts& texts)
{
    const auto header = texts.extract("");
    return !header.empty() && header.mapped().words.find("X-Pairstand-State: draft\\n") != std::string::npos;
}

/// Unicode normalization form C, as the station wants it. Source: Unicode Standard Annex 15, by utf8proc.
bool is_composed(const std::string& words)
{
    const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> composed(
        utf8proc_NFC(reinterpret_cast<const utf8proc_uint8_t*>(words.c_str())), &std::free);
    return composed && words == reinterpret_cast<const char*>(composed.get());
}

std::multiset<std::string> placeholders_of(const std::string& words)
{
    static const std::regex placeholder{R"(\{\w*\})"};
    std::multiset<std::string> found;
    for (std::sregex_iterator at(words.begin(), words.end(), placeholder), end; at != end; ++at)
        found.insert(at->str());
    return found;
}

void compare(const std::string& path, const Texts& texts, bool draft, const Texts& wanted, Complaints& wrong)
{
    for (const auto& [id, text] : texts) {
        if (text.words.empty() && draft)
            continue;
        if (!is_composed(text.words))
            wrong.push_back(complaint(path, text.line, "\"" + id + "\" is not in Unicode normalization form C"));
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
        if (!draft && !texts.contains(id))
            wrong.push_back(complaint(path, 1, "\"" + id + "\" is missing"));
}

} // namespace

Complaints languages_are_complete(const Tree& tree)
{
    Complaints wrong;
    const auto first = tree.find(std::string(model));
    if (first == tree.end())
        return {complaint(model, 1, "is missing")};
    auto wanted = texts_of(first->first, first->second, wrong);
    if (takes_draft(wanted))
        wrong.push_back(complaint(model, 1, "is a draft, and all others are measured by it"));
    if (wanted.empty())
        wrong.push_back(complaint(model, 1, "holds no text"));
    compare(std::string(model), wanted, false, wanted, wrong);
    for (const auto& [path, po] : tree)
        if (path.starts_with("config/languages/") && path.ends_with(".po") && path != model) {
            auto texts = texts_of(path, po, wrong);
            const bool draft = takes_draft(texts);
            compare(path, texts, draft, wanted, wrong);
        }
    return wrong;
}

} // namespace test::house
