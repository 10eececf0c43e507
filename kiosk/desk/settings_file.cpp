#include "kiosk/desk/settings_file.h"

#include "ui/words/error_words.h"

#include <cerrno>
#include <fstream>
#include <system_error>

namespace kiosk {
namespace {

namespace fs = std::filesystem;

fs::path user_settings(const Environment& environment)
{
    if (const auto given = environment("XDG_CONFIG_HOME"))
        return *given;
    if (const auto home = environment("HOME"))
        return fs::path(*home) / ".config";
    return {};
}

SettingsRead unread(core::Error::Kind kind, const fs::path& file, const std::string& detail)
{
    return {{}, {{kind, detail, {file.string(), 0, "", "", ""}}}};
}

} // namespace

fs::path settings_place(const std::string& given, const Environment& environment)
{
    if (!given.empty())
        return given;
    if (const auto named = environment("PAIRSTAND_SETTINGS"))
        return *named;
    const auto folder = user_settings(environment);
    std::error_code unknown;
    if (!folder.empty() && fs::exists(folder / "pairstand" / "station.conf", unknown))
        return folder / "pairstand" / "station.conf";
    return {};
}

SettingsRead read_settings_file(const fs::path& file)
{
    if (file.empty())
        return {};
    std::error_code unknown;
    if (!fs::exists(file, unknown) && !unknown)
        return unread(core::Error::Kind::NoSuchFile, file, file.string());
    if (fs::is_directory(file, unknown))
        return unread(core::Error::Kind::IsFolder, file, file.string());
    if (const auto size = fs::file_size(file, unknown); !unknown && size > largest_settings)
        return too_large_settings(file.string(), size);
    errno = 0;
    std::ifstream bytes(file, std::ios::binary);
    std::string text(largest_settings + 1, '\0'); // one byte more than is taken: enough to refuse it
    bytes.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (bytes.bad() || (bytes.gcount() == 0 && !bytes.eof()))
        return unread(core::Error::Kind::CannotRead, file, std::generic_category().message(errno));
    text.resize(static_cast<std::size_t>(bytes.gcount()));
    return read_settings(text, file.string());
}

std::vector<std::string> settings_trouble(const SettingsRead& read, const ui::Language& language)
{
    std::vector<std::string> sentences;
    for (const auto& fault : read.faults)
        sentences.push_back(ui::settings_sentence(fault, language));
    return sentences;
}

std::vector<std::size_t> lines_with_faults(const SettingsRead& read)
{
    std::vector<std::size_t> lines;
    for (const auto& fault : read.faults)
        if (fault.place.row != 0)
            lines.push_back(fault.place.row);
    return lines;
}

} // namespace kiosk
