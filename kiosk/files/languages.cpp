#include "kiosk/files/languages.h"

#include "kiosk/files/data_folder.h"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace kiosk {
namespace {

/// "languages/es.po row 12: a text twice (other_language)": for whoever translates.
std::string told(const core::Error& error)
{
    std::string words = error.place.source;
    if (error.place.row > 0)
        words += " row " + std::to_string(error.place.row);
    words += ": ";
    if (error.kind == core::Error::Kind::MissingValue)
        return words + "the text " + error.place.column + " is missing";
    words += error.detail;
    return error.place.found.empty() ? words : words + " (" + error.place.found + ")";
}

/// English first, the others by their code.
std::vector<std::filesystem::path> files_in(const std::filesystem::path& data_folder)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(data_folder / "languages"))
        if (entry.path().extension() == ".po")
            files.push_back(entry.path());
    std::ranges::sort(files, {}, [](const auto& file) { return std::pair(file.stem() != "en", file.stem()); });
    return files;
}

std::string joined(std::string list, const std::string& code)
{
    return list.empty() ? code : list + ", " + code;
}

} // namespace

std::vector<ui::Language> read_languages(const std::filesystem::path& data_folder)
{
    std::vector<ui::Language> languages;
    for (const auto& file : files_in(data_folder)) {
        auto language = ui::Language::parse(read_file(file), file.stem().string(), file.string());
        if (!language)
            throw std::runtime_error("a language file is broken: " + told(language.error()));
        languages.push_back(std::move(*language));
    }
    if (languages.empty())
        throw std::runtime_error("there is no language file in " + (data_folder / "languages").string());
    return languages;
}

const ui::Language& language_named(std::string_view code, const std::vector<ui::Language>& languages)
{
    std::string codes;
    for (const auto& language : languages) {
        if (language.code() == code)
            return language;
        codes = joined(codes, language.code());
    }
    throw std::invalid_argument("this station has no language \"" + std::string(code) + "\"; it has: " + codes);
}

std::string language_codes(const std::filesystem::path& data_folder)
{
    std::string codes;
    try {
        for (const auto& file : files_in(data_folder))
            codes = joined(codes, file.stem().string());
    } catch (const std::filesystem::filesystem_error&) { // help is there all the same
    }
    return codes;
}

} // namespace kiosk
