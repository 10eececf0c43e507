#include "kiosk/desk/settings.h"

#include "catalog/read/text.h"

#include <algorithm>
#include <set>

namespace kiosk {
namespace {

using Kind = core::Error::Kind;

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blanks = " \t\r";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blanks) + 1 - first);
}

/// What was found, fit to be shown.
std::string shown(std::string_view found)
{
    constexpr std::size_t longest = 60;
    std::string text = catalog::shown(found.substr(0, longest));
    return found.size() > longest ? text + " ..." : text;
}

std::string all_keys()
{
    const auto rows = settings_table();
    std::string keys;
    for (std::size_t i = 0; i < rows.size(); ++i)
        keys.append(i == 0 ? "" : i + 1 == rows.size() ? " or " : ", ").append(rows[i].key);
    return keys;
}

/// Reads line by line and remembers which keys stood already.
class Reader {
public:
    explicit Reader(const std::string& source) : source_(source) {}

    void line(std::string_view text)
    {
        ++number_;
        text = trimmed(text.substr(0, text.find('#')));
        if (text.empty())
            return;
        const auto equals = text.find('=');
        if (equals == std::string_view::npos)
            return fault(Kind::BadValue, "", text, "key = value");
        take(text, trimmed(text.substr(0, equals)), trimmed(text.substr(equals + 1)));
    }

    SettingsRead done() { return std::move(read_); }

    void fault(Kind kind, std::string_view key, std::string_view found, std::string expected)
    {
        if (read_.faults.size() < most_setting_faults)
            read_.faults.push_back(
                {kind, std::string(key), {source_, number_, std::string(key), shown(found), std::move(expected)}});
    }

private:
    /// Where there is no key or value to show, the whole line is.
    void take(std::string_view line, std::string_view key, std::string_view value)
    {
        const auto rows = settings_table();
        const auto row = std::ranges::find(rows, key, &SettingRow::key);
        if (row == rows.end())
            fault(Kind::BadValue, "", key.empty() ? line : key, all_keys());
        else if (!seen_.insert(row->key).second)
            fault(Kind::DoubledValue, row->key, value.empty() ? line : value, "this key once");
        else if (!row->take(value, read_.settings))
            fault(Kind::BadValue, row->key, value.empty() ? line : value, row->expected);
    }

    std::string source_;
    std::size_t number_ = 0;
    std::set<std::string_view> seen_;
    SettingsRead read_;
};

} // namespace

SettingsRead too_large_settings(const std::string& source, std::uintmax_t bytes)
{
    Reader reader(source);
    reader.fault(Kind::TooLarge, "", std::to_string(bytes) + " bytes",
                 "at most " + std::to_string(largest_settings) + " bytes");
    return reader.done();
}

SettingsRead read_settings(std::string_view text, const std::string& source)
{
    if (text.size() > largest_settings)
        return too_large_settings(source, text.size());
    Reader reader(source);
    if (text.starts_with(byte_order_mark))
        text.remove_prefix(byte_order_mark.size());
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        reader.line(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return reader.done();
}

} // namespace kiosk
