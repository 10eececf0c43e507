#include "tests/house/tree.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>

namespace test::house {
namespace fs = std::filesystem;
namespace {

constexpr std::array pictures_and_sounds{".png", ".jpg", ".gif", ".wav", ".ttf", ".pgm", ".gray"};

bool is_left_out(const std::string& top)
{
    return top == ".git" || top.starts_with("build");
}

bool is_text(const fs::path& file)
{
    return std::ranges::find(pictures_and_sounds, file.extension().string()) == pictures_and_sounds.end();
}

std::string read(const fs::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

Tree read_tree(const fs::path& root)
{
    Tree tree;
    for (const auto& top : fs::directory_iterator(root)) {
        if (is_left_out(top.path().filename().string()))
            continue;
        if (top.is_regular_file())
            tree[top.path().filename().string()] = read(top.path());
        if (!top.is_directory())
            continue;
        for (const auto& entry : fs::recursive_directory_iterator(top))
            if (entry.is_regular_file() && is_text(entry.path()))
                tree[entry.path().lexically_relative(root).generic_string()] = read(entry.path());
    }
    return tree;
}

std::vector<std::string> top_level(const fs::path& root)
{
    std::vector<std::string> names;
    for (const auto& top : fs::directory_iterator(root)) {
        const auto name = top.path().filename().string();
        if (!is_left_out(name))
            names.push_back(top.is_directory() ? name + "/" : name);
    }
    std::ranges::sort(names);
    return names;
}

std::vector<std::string_view> lines_of(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

std::string_view room_of(std::string_view path)
{
    const auto slash = path.find('/');
    return slash == std::string_view::npos ? std::string_view{} : path.substr(0, slash);
}

std::string complaint(std::string_view path, std::size_t line, std::string_view what)
{
    return std::string(path) + ":" + std::to_string(line) + ": " + std::string(what);
}

namespace {

// Where the literal or comment that begins at `at` ends; `at` itself when none begins there.
std::size_t end_of_blank(std::string_view text, std::size_t at)
{
    const auto rest = text.substr(at);
    const auto past = [&](std::string_view mark, std::size_t from) {
        const auto found = text.find(mark, from);
        return found == std::string_view::npos ? text.size() : found + mark.size();
    };
    if (rest.starts_with("//"))
        return std::min(text.find('\n', at), text.size());
    if (rest.starts_with("/*"))
        return past("*/", at + 2);
    if (rest.starts_with("R\"")) {
        const auto open = text.find('(', at);
        if (open == std::string_view::npos)
            return text.size();
        return past(")" + std::string(text.substr(at + 2, open - at - 2)) + "\"", open);
    }
    const bool separator = rest.starts_with("'") && at > 0 && std::isalnum(static_cast<unsigned char>(text[at - 1]));
    if (!rest.starts_with("\"") && (!rest.starts_with("'") || separator))
        return at;
    auto end = at + 1;
    while (end < text.size() && text[end] != rest.front() && text[end] != '\n')
        end += text[end] == '\\' ? 2 : 1;
    return std::min(end + 1, text.size());
}

} // namespace

std::string bare_code(std::string_view text)
{
    std::string code(text);
    std::size_t at = 0;
    while (at < text.size()) {
        const auto end = end_of_blank(text, at);
        for (auto i = at; i < end; ++i)
            if (code[i] != '\n')
                code[i] = ' ';
        at = std::max(end, at + 1);
    }
    return code;
}

} // namespace test::house
