#include "tests/house/rules.h"

#include <algorithm>
#include <array>
#include <regex>
#include <utility>

namespace test::house {

Complaints types_have_one_home(const Tree& tree)
{
    static const std::regex type{R"(^(struct|class|enum class|enum) (\w+)( final)?( : .*)?( ?\{.*)?$)"};
    constexpr std::array rooms{"core", "catalog", "ui", "kiosk"};
    std::map<std::pair<std::string_view, std::string>, std::string> homes;
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        const auto room = room_of(path);
        if (!path.ends_with(".h") || std::ranges::find(rooms, room) == rooms.end())
            continue;
        const auto code = bare_code(text);
        const auto lines = lines_of(code);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            std::match_results<std::string_view::const_iterator> found;
            if (!std::regex_match(lines[i].begin(), lines[i].end(), found, type))
                continue;
            const auto [home, first] = homes.try_emplace({room, found[2].str()}, path);
            if (!first)
                wrong.push_back(complaint(path, i + 1, found[2].str() + " is another thing in " + home->second));
        }
    }
    return wrong;
}

} // namespace test::house
