#include "tests/house/rules.h"

#include <algorithm>
#include <array>
#include <set>

namespace test::house {
namespace {

constexpr std::array rooms{"core", "catalog", "ui", "kiosk"};

std::string_view folder_of(std::string_view path)
{
    const auto slash = path.rfind('/');
    return slash == std::string_view::npos ? std::string_view{} : path.substr(0, slash);
}

bool has_word(std::string_view text, std::string_view word)
{
    constexpr std::string_view around = " \t\n\r()\"";
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        const bool begins = at == 0 || around.find(text[at - 1]) != std::string_view::npos ||
                            text.substr(0, at).ends_with("}/") || text.substr(0, at).ends_with("../");
        if (begins && (end == text.size() || around.find(text[end]) != std::string_view::npos))
            return true;
    }
    return false;
}

bool is_listed(const Tree& tree, const std::string& path)
{
    for (auto folder = folder_of(path); !folder.empty(); folder = folder_of(folder)) {
        const auto list = tree.find(std::string(folder) + "/CMakeLists.txt");
        if (list != tree.end() && has_word(list->second, std::string_view(path).substr(folder.size() + 1)))
            return true;
    }
    const auto top = tree.find("CMakeLists.txt");
    return top != tree.end() && has_word(top->second, path);
}

// What several programs of tests are built from stands in their lists by its full path or with `../`.
bool is_shared(const Tree& tree, const std::string& path)
{
    const auto names_it = [&](const auto& file) {
        return file.first.starts_with("tests/") && file.first.ends_with("CMakeLists.txt") &&
               (has_word(file.second, path) || has_word(file.second, std::string_view(path).substr(6)));
    };
    return path.starts_with("tests/support/") && std::ranges::any_of(tree, names_it);
}

bool is_a_room(std::string_view name)
{
    return std::ranges::find(rooms, name) != rooms.end();
}

} // namespace

Complaints sources_are_listed(const Tree& tree)
{
    Complaints wrong;
    for (const auto& [path, text] : tree)
        if (path.ends_with(".cpp") && !is_listed(tree, path) && !is_shared(tree, path))
            wrong.push_back(complaint(path, 1, "stands in no CMakeLists.txt"));
    return wrong;
}

Complaints tests_mirror_rooms(const Tree& tree)
{
    Complaints wrong;
    std::set<std::string, std::less<>> shelves; // with code
    std::set<std::string, std::less<>> tested;  // with tests, as the folder that they are of
    for (const auto& [path, text] : tree) {
        if (path.ends_with(".cpp") && is_a_room(room_of(path)))
            shelves.emplace(folder_of(path));
        if (path.ends_with("_test.cpp") && path.starts_with("tests/") &&
            is_a_room(room_of(std::string_view(path).substr(6))))
            tested.emplace(folder_of(path).substr(6));
    }
    for (const auto& folder : tested) {
        const auto inside = [&](const auto& file) { return file.first.starts_with(folder + "/"); };
        if (std::ranges::none_of(tree, inside))
            wrong.push_back(complaint("tests/" + folder, 1, "mirrors a folder that is not there"));
    }
    for (const auto& shelf : shelves)
        if (!tested.contains(shelf))
            wrong.push_back(complaint(shelf, 1, "has code and no test in tests/" + shelf));
    return wrong;
}

} // namespace test::house
