#include "tests/house/rules.h"

#include <array>
#include <cctype>
#include <regex>

// A reading of C++ that is good enough for our own headers: it knows namespaces, braces and statements, not types.
namespace test::house {
namespace {

struct Statement {
    std::size_t line; // of its first word, counted from 0
    std::size_t end;  // of its `;` or `}`
    std::string text; // its words, what stands in braces left out
};

std::string trimmed(std::string_view text)
{
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())))
        text.remove_prefix(1);
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.back())))
        text.remove_suffix(1);
    return std::string(text);
}

std::string without_directives(std::string code)
{
    bool directive = false;
    bool continued = false;
    bool at_line_start = true;
    for (char& c : code) {
        if (c == '\n') {
            directive = directive && continued;
            at_line_start = true;
            continue;
        }
        directive = directive || (at_line_start && c == '#');
        at_line_start = at_line_start && std::isspace(static_cast<unsigned char>(c));
        continued = c == '\\';
        if (directive)
            c = ' ';
    }
    return code;
}

/// The statements that stand directly in a namespace (or in none).
class Statements {
public:
    explicit Statements(std::string code) : code_(without_directives(std::move(code))) {}

    std::vector<Statement> all()
    {
        for (const char c : code_)
            step(c);
        return std::move(found_);
    }

private:
    void step(char c)
    {
        if (c == '\n')
            ++line_;
        if (depth_ > 0) {
            depth_ += c == '{' ? 1 : c == '}' ? -1 : 0;
            if (depth_ == 0)
                close();
            return;
        }
        if (c == ';')
            return finish();
        if (c == '{' && is_namespace())
            return words_.clear();
        if (c == '{') {
            words_ += "{}"; // so that it is told from a name declared beforehand
            depth_ = 1;
            return;
        }
        if (c == '}') // of a namespace
            return words_.clear();
        if (words_.empty() && std::isspace(static_cast<unsigned char>(c)))
            return;
        if (words_.empty())
            first_line_ = line_;
        words_ += c;
    }

    // A function ends at its brace; a type, or a value in braces, only at the semicolon that follows.
    void close()
    {
        static const std::regex type{R"((^|[>\s])(class|struct|enum|union)\s)"};
        const bool value = words_.find('=') != std::string::npos && words_.find("operator") == std::string::npos;
        const auto before_arguments = words_.substr(0, words_.find('('));
        if (!value && !(std::regex_search(before_arguments, type) && words_.find('(') == std::string::npos))
            finish();
    }

    bool is_namespace() const
    {
        static const std::regex space{R"(^(inline\s+)?namespace(\s[\w:\s]*)?$|^extern\s*$)"};
        return std::regex_match(trimmed(words_), space);
    }

    void finish()
    {
        const auto text = trimmed(words_);
        if (!text.empty())
            found_.push_back({first_line_, line_, text});
        words_.clear();
    }

    std::string code_;
    std::string words_;
    std::size_t line_ = 0;
    std::size_t first_line_ = 0;
    int depth_ = 0;
    std::vector<Statement> found_;
};

bool needs_docstring(const Statement& statement)
{
    static const std::regex exempt{R"(^(using\b|namespace\b|friend\b|static_assert\b|typedef\b|template\s*<\s*>|)"
                                   R"((template\s*<[^;]*>\s*)?(class|struct|union)\s+[\w:]+$|enum\s+(class\s+)?\w+$))"};
    static const std::regex type{R"((^|[>\s])(class|struct|enum|union)\s)"};
    if (std::regex_search(statement.text, exempt))
        return false;
    const auto arguments = statement.text.find('(');
    const auto value = statement.text.find('=');
    const bool function = arguments != std::string::npos && (value == std::string::npos || arguments < value ||
                                                             statement.text.find("operator") < arguments);
    return function || std::regex_search(statement.text.substr(0, arguments), type);
}

bool has_docstring(const std::vector<std::string_view>& lines, const Statement& statement)
{
    for (auto line = statement.line; line <= statement.end && line < lines.size(); ++line)
        if (line == statement.line && lines[line].find("///<") != std::string_view::npos)
            return true;
    auto line = statement.line;
    while (line > 0) {
        const auto above = trimmed(lines[--line]);
        if (above.starts_with("///"))
            return true;
        if (!above.starts_with("//"))
            return false;
    }
    return false;
}

} // namespace

Complaints declarations_have_docstrings(const Tree& tree)
{
    constexpr std::array rooms{"core", "catalog", "ui", "kiosk"};
    Complaints wrong;
    for (const auto& [path, text] : tree) {
        bool in_a_room = false;
        for (const std::string_view room : rooms)
            in_a_room = in_a_room || room_of(path) == room;
        if (!in_a_room || !path.ends_with(".h"))
            continue;
        const auto lines = lines_of(text);
        std::size_t documented_until = 0; // a group without a gap shares the docstring of its first
        for (const auto& statement : Statements(bare_code(text)).all()) {
            const bool in_group = documented_until > 0 && statement.line == documented_until + 1;
            const bool good = !needs_docstring(statement) || in_group || has_docstring(lines, statement);
            if (!good)
                wrong.push_back(complaint(path, statement.line + 1, "no /// line says what this is"));
            documented_until = in_group || has_docstring(lines, statement) ? statement.end : 0;
        }
    }
    return wrong;
}

} // namespace test::house
