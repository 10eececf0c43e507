#include "tests/house/rules.h"

#include <algorithm>
#include <array>
#include <regex>

namespace test::house {
namespace {

struct Row {
    std::string_view room;
    std::vector<std::string_view> rooms;     // what it may include
    std::vector<std::string_view> libraries; // beginnings of what it may not include, beside the rooms
};

const std::array rows{
    Row{"core",
        {"core"},
        {"SDL", "imgui", "SQLiteCpp", "sqlite", "ZXing", "gst", "csv.h", "nlohmann", "CLI", "fstream", "filesystem",
         "iostream", "locale", "ctime", "cmath"}},
    Row{"catalog", {"core", "catalog"}, {"SDL", "imgui", "ZXing", "gst", "CLI"}}, // JSON is a form on its disks
    Row{"ui", {"core", "ui"}, {"SDL", "SQLiteCpp", "sqlite", "ZXing", "gst", "csv.h", "CLI"}},
    Row{"kiosk", {"core", "catalog", "ui", "kiosk"}, {"csv.h"}},
    Row{"tests", {"core", "catalog", "ui", "kiosk", "tests"}, {}},
};

std::string fault_of(const Row& row, const Tree& tree, bool quoted, const std::string& what)
{
    if (!quoted) {
        const auto begins = [&](std::string_view library) { return what.starts_with(library); };
        return std::ranges::any_of(row.libraries, begins) ? std::string(row.room) + " may not include <" + what + ">"
                                                          : "";
    }
    const auto room = room_of(what);
    if (std::ranges::find(row.rooms, room) == row.rooms.end())
        return std::string(row.room) + " may not include \"" + what + "\"";
    return tree.contains(what) ? "" : "includes \"" + what + "\", which is not there";
}

bool is_cpp(const std::string& path)
{
    return path.ends_with(".h") || path.ends_with(".cpp");
}

} // namespace

Complaints includes_point_down(const Tree& tree)
{
    static const std::regex include{R"(^\s*#\s*include\s*([<"])([^>"]+)[>"].*)"};
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        const auto row = std::ranges::find(rows, room_of(path), &Row::room);
        if (!is_cpp(path) || row == rows.end())
            continue;
        const auto lines = lines_of(text);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            std::match_results<std::string_view::const_iterator> found;
            if (!std::regex_match(lines[i].begin(), lines[i].end(), found, include))
                continue;
            const auto fault = fault_of(*row, tree, found[1] == "\"", found[2]);
            if (!fault.empty())
                wrong.push_back(complaint(path, i + 1, fault));
        }
    }
    return wrong;
}

Complaints versions_in_compat_only(const Tree& tree)
{
    static const std::regex version{R"(\b(IMGUI_VERSION\w*|ZXING_VERSION\w*|SDL_VERSION_ATLEAST|SDL_COMPILEDVERSION|)"
                                    R"(SQLITECPP_VERSION\w*|SQLITE_VERSION_NUMBER|GST_CHECK_VERSION|__has_include)\b)"};
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        const auto stem = path.substr(0, path.rfind('.'));
        if (!is_cpp(path) || stem.ends_with("_compat") || stem.ends_with("_compat_test"))
            continue;
        const auto code = bare_code(text);
        const auto lines = lines_of(code);
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (std::regex_search(lines[i].begin(), lines[i].end(), version))
                wrong.push_back(
                    complaint(path, i + 1, "asks for a library's version; that belongs into a _compat file"));
    }
    return wrong;
}

} // namespace test::house
