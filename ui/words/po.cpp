#include "ui/words/po.h"

#include <optional>
#include <set>

namespace ui {
namespace {

using core::Error;
using core::Place;

std::string_view trimmed(std::string_view line)
{
    const auto first = line.find_first_not_of(" \t\r");
    if (first == std::string_view::npos)
        return {};
    return line.substr(first, line.find_last_not_of(" \t\r") - first + 1);
}

/// "text in quotes" with its escapes undone; nothing when it is not one whole quoted text.
std::optional<std::string> unquoted(std::string_view quoted)
{
    if (quoted.size() < 2 || quoted.front() != '"' || quoted.back() != '"')
        return std::nullopt;
    std::string text;
    const auto inner = quoted.substr(1, quoted.size() - 2);
    for (std::size_t i = 0; i < inner.size(); ++i) {
        if (inner[i] == '"')
            return std::nullopt;
        if (inner[i] != '\\') {
            text += inner[i];
            continue;
        }
        if (++i == inner.size())
            return std::nullopt;
        switch (inner[i]) {
        case 'n':
            text += '\n';
            break;
        case 't':
            text += '\t';
            break;
        case '"':
        case '\\':
            text += inner[i];
            break;
        default:
            return std::nullopt;
        }
    }
    return text;
}

/// Well-formed UTF-8 and no NUL. Source: The Unicode Standard, table 3-7 (well-formed byte sequences).
bool is_text(std::string_view bytes)
{
    while (!bytes.empty()) {
        const auto first = static_cast<unsigned char>(bytes.front());
        const std::size_t length = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
        if (first == 0 || (first >= 0x80 && first < 0xC2) || first > 0xF4 || bytes.size() < length)
            return false;
        for (std::size_t i = 1; i < length; ++i) {
            const auto next = static_cast<unsigned char>(bytes[i]);
            const unsigned least = i > 1 ? 0x80 : first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
            const unsigned most = i > 1 ? 0xBF : first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
            if (next < least || next > most)
                return false;
        }
        bytes.remove_prefix(length);
    }
    return true;
}

/// msgfmt insists on it: a translation that begins or ends a line where its key does not is taken for a slip.
bool same_line_ends(const PoMessage& message)
{
    return message.id.starts_with('\n') == message.text.starts_with('\n') &&
           message.id.ends_with('\n') == message.text.ends_with('\n');
}

class PoReader {
public:
    explicit PoReader(std::string_view source) : source_(source) {}

    core::Result<PoFile> read(std::string_view text)
    {
        if (text.starts_with("\xEF\xBB\xBF"))
            fail(1, "", "a file without a byte order mark in front");
        std::size_t number = 0;
        while (!text.empty() && !error_) {
            const auto end = text.find('\n');
            take(trimmed(text.substr(0, end)), ++number);
            text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        }
        close();
        if (!error_ && part_ == Part::Id)
            fail(number, "", "a msgstr behind the last msgid");
        if (error_)
            return tl::make_unexpected(*error_);
        return std::move(file_);
    }

private:
    enum class Part { None, Id, Text };

    void fail(std::size_t line, std::string_view found, std::string expected)
    {
        if (!error_)
            error_ = Error{Error::Kind::BadValue, "po",
                           Place{source_, line, "", std::string(found.substr(0, 60)), std::move(expected)}};
    }

    void close()
    {
        if (part_ == Part::Text && !message_.id.empty() && !fuzzy_)
            file_.messages.push_back(message_);
        if (part_ == Part::Text) {
            if (message_.id.empty())
                file_.header = message_.text;
            if (!ids_.insert(message_.id).second)
                fail(message_.line, message_.id, "each msgid once");
            if (!fuzzy_ && !message_.text.empty() && !message_.id.empty() && !same_line_ends(message_))
                fail(message_.line, message_.id, "a line end at the same ends of msgid and msgstr");
            message_ = {};
            fuzzy_ = false;
            part_ = Part::None;
        }
    }

    void take(std::string_view line, std::size_t number)
    {
        if (line.empty() || line.starts_with('#')) {
            close();
            if (part_ == Part::Id && !line.empty())
                return fail(number, line, "no comment between a msgid and its msgstr");
            if (line.starts_with("#,") && line.find("fuzzy") != std::string_view::npos)
                fuzzy_ = true;
            return;
        }
        if (line.starts_with("msgid ")) {
            close();
            if (part_ == Part::Id)
                return fail(number, line, "a msgstr before the next msgid");
            part_ = Part::Id;
            message_.line = number;
            return append(message_.id, line.substr(6), number);
        }
        if (line.starts_with("msgstr ") && part_ == Part::Id) {
            part_ = Part::Text;
            return append(message_.text, line.substr(7), number);
        }
        if (line.starts_with('"') && part_ != Part::None)
            return append(part_ == Part::Id ? message_.id : message_.text, line, number);
        fail(number, line, "msgid \"...\", msgstr \"...\" or a comment");
    }

    void append(std::string& to, std::string_view quoted, std::size_t number)
    {
        const auto text = unquoted(trimmed(quoted));
        if (text && !is_text(*text))
            fail(number, "", "text in UTF-8");
        else if (text)
            to += *text;
        else
            fail(number, quoted, "a text in double quotes, with \\\" for a quote in it");
    }

    std::string source_;
    Part part_ = Part::None;
    bool fuzzy_ = false;
    PoMessage message_;
    std::set<std::string> ids_;
    PoFile file_;
    std::optional<Error> error_;
};

} // namespace

core::Result<std::vector<PoMessage>> parse_po(std::string_view text, std::string_view source)
{
    auto file = parse_po_file(text, source);
    if (!file)
        return tl::make_unexpected(file.error());
    return std::move(file->messages);
}

core::Result<PoFile> parse_po_file(std::string_view text, std::string_view source)
{
    return PoReader(source).read(text);
}

std::string po_header_field(std::string_view header, std::string_view name)
{
    while (!header.empty()) {
        const auto end = header.find('\n');
        const auto line = header.substr(0, end);
        if (line.starts_with(name) && line.substr(name.size()).starts_with(':'))
            return std::string(trimmed(line.substr(name.size() + 1)));
        header = end == std::string_view::npos ? std::string_view{} : header.substr(end + 1);
    }
    return {};
}

} // namespace ui
