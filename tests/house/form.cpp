#include "tests/house/rules.h"

#include <algorithm>
#include <array>
#include <regex>

namespace test::house {
namespace {

constexpr std::size_t longest_file = 400;

bool is_code(const std::string& path)
{
    return path.ends_with(".h") || path.ends_with(".cpp") || path.ends_with(".sh") ||
           path.ends_with("CMakeLists.txt") || path.ends_with(".cmake");
}

bool is_script(const std::string& path, const std::string& text)
{
    return text.starts_with("#!") || path.ends_with("CMakeLists.txt") || path.ends_with(".cmake") ||
           path.ends_with("packages.txt");
}

Complaints lines_with(const std::string& path, std::string_view text, const std::regex& what, std::string_view why)
{
    Complaints wrong;
    const auto lines = lines_of(text);
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (std::regex_search(lines[i].begin(), lines[i].end(), what))
            wrong.push_back(complaint(path, i + 1, why));
    return wrong;
}

void add(Complaints& to, const Complaints& more)
{
    to.insert(to.end(), more.begin(), more.end());
}

} // namespace

Complaints no_floating_point_in_core(const Tree& tree)
{
    static const std::regex floating{R"(\b(double|float)\b)"};
    Complaints wrong;
    for (const auto& [path, text] : tree)
        if (room_of(path) == "core" && is_code(path))
            add(wrong, lines_with(path, bare_code(text), floating, "core counts in exact integers"));
    return wrong;
}

Complaints files_are_short(const Tree& tree)
{
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        const auto lines = lines_of(text).size();
        if (is_code(path) && !path.ends_with("_table.cpp") && lines > longest_file)
            wrong.push_back(complaint(path, lines, "longer than " + std::to_string(longest_file) + " lines"));
    }
    return wrong;
}

Complaints top_level_is_agreed(const std::vector<std::string>& names)
{
    constexpr std::array agreed{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "kiosk/", "core/", "ui/",
                                "catalog/",       "tests/",    "config/",       "docs/"};
    Complaints wrong;
    for (const auto& name : names)
        if (!name.starts_with(".") && std::ranges::find(agreed, name) == agreed.end())
            wrong.push_back(complaint(name, 1, "does not belong to the top level"));
    return wrong;
}

Complaints headers_say_what_for(const Tree& tree)
{
    Complaints wrong;
    for (const auto& [path, text] : tree)
        if (path.ends_with(".h") && !(text.starts_with("// ") && lines_of(text).front().size() > 10))
            wrong.push_back(complaint(path, 1, "the first line of a header says in one sentence what the file is for"));
    return wrong;
}

Complaints no_notes_to_self(const Tree& tree)
{
    // Put together here, so that this file does not complain of itself.
    static const std::regex note{std::string("\\b(TO") + "DO|FIX" + "ME|XX" + "X|HA" + "CK)\\b"};
    Complaints wrong;
    for (const auto& [path, text] : tree)
        if (is_code(path) || is_script(path, text) || path.ends_with(".md"))
            add(wrong, lines_with(path, text, note, "a note to self"));
    return wrong;
}

Complaints no_registry_hosts(const Tree& tree)
{
    static const std::regex address{"[a-z]+:"
                                    "//"};
    static const std::regex host{std::string("\\b(deb|security|ftp[.0-9a-z]*|archive|snapshot)\\.(deb") +
                                 "ian|ubuntu)\\.|\\bpypi\\.|" + "registry\\.npm|crates\\.io|\\bproxy\\.golang"};
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        if (is_script(path, text))
            add(wrong, lines_with(path, text, address, "scripts and build files fetch nothing by address"));
        if (!path.starts_with("tests/house/"))
            add(wrong, lines_with(path, text, host, "names a host of a package registry"));
    }
    return wrong;
}

Complaints no_secret_keys(const Tree& tree)
{
    Complaints wrong;
    for (const auto& [path, text] : tree)
        if (text.starts_with("pairstand secret key"))
            wrong.push_back(complaint(path, 1, "a secret key"));
    return wrong;
}

} // namespace test::house
