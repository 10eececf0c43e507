#include "tests/house/rules.h"

#include <algorithm>
#include <regex>

namespace test::house {
namespace {

/// The files of tests by their name without folders; two folders may have files of one name.
std::multimap<std::string, const std::string*> test_files(const Tree& tree)
{
    std::multimap<std::string, const std::string*> files;
    for (const auto& [path, text] : tree)
        if (path.starts_with("tests/") && path.ends_with("_test.cpp"))
            files.emplace(path.substr(path.rfind('/') + 1), &text);
    return files;
}

/// Whether a line that begins a case of one of these files has these words.
bool is_a_case(std::string_view words, const std::string& file,
               const std::multimap<std::string, const std::string*>& files)
{
    const auto [first, last] = files.equal_range(file);
    return std::any_of(first, last, [words](const auto& named) {
        const auto lines = lines_of(*named.second);
        return std::ranges::any_of(lines, [words](std::string_view line) {
            return line.starts_with("TEST_CASE(") && line.find(words) != line.npos;
        });
    });
}

} // namespace

Complaints named_tests_exist(const Tree& tree)
{
    // `boxes_test.cpp` "every screen at 800x1280": a file, and words of one of its cases.
    static const std::regex named{"`([a-z0-9_]+_test\\.cpp)`( \"([^\"]+)\")?"};
    const auto files = test_files(tree);
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        if (!path.ends_with(".md"))
            continue;
        std::size_t number = 0;
        for (const auto line : lines_of(text)) {
            ++number;
            const std::string whole(line);
            for (std::sregex_iterator at(whole.begin(), whole.end(), named), end; at != end; ++at) {
                const std::string file = (*at)[1];
                const std::string words = (*at)[3];
                if (!files.contains(file))
                    wrong.push_back(complaint(path, number, "there is no test file " + file));
                else if (!words.empty() && !is_a_case(words, file, files))
                    wrong.push_back(complaint(path, number, file + " has no case \"" + words + "\""));
            }
        }
    }
    return wrong;
}

} // namespace test::house
