#include "kiosk/files/languages.h"

#include "kiosk/files/data_folder.h"
#include "ui/words/po.h"

#include <algorithm>
#include <span>
#include <stdexcept>
#include <string>

namespace kiosk {
namespace {

/// "languages/es.po row 12: found ... where ... was expected": for whoever translates, with what to do.
std::string told(const core::Error& error)
{
    const auto& place = error.place;
    std::string words = place.source;
    if (place.row > 0)
        words += " row " + std::to_string(place.row);
    words += ": ";
    if (error.kind == core::Error::Kind::MissingValue)
        return words + "the text " + place.column +
               " is missing, empty or marked fuzzy; translate it, or mark the file with the line "
               "\"X-Pairstand-State: draft\\n\" in its header, so that English stands in for it";
    return words + "found " + (place.found.empty() ? "something else" : "\"" + place.found + "\"") + " instead of " +
           place.expected + "; correct that row or take it out";
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

/// As its header says, whatever else is in it.
bool is_draft_file(const std::filesystem::path& file)
{
    try {
        const auto po = ui::parse_po_file(read_file(file), file.string());
        return po && ui::po_header_field(po->header, "X-Pairstand-State") == "draft";
    } catch (const std::runtime_error&) { // who wants that language is told why it cannot be read
        return false;
    }
}

std::string joined(std::string list, const std::string& code)
{
    return list.empty() ? code : list + ", " + code;
}

} // namespace

namespace {

/// One language that is not English, or why it cannot be used.
core::Result<ui::Language> translation(const std::filesystem::path& file, const ui::Language& english)
{
    std::string bytes;
    try {
        bytes = read_file(file);
    } catch (const std::runtime_error&) {
        return core::refuse(core::Error::Kind::BadValue, "po",
                            {file.string(), 0, "", "", "a file that this user may read"});
    }
    return ui::Language::parse(bytes, file.stem().string(), file.string(), english);
}

} // namespace

LanguageFiles read_language_files(const std::filesystem::path& data_folder)
{
    const auto files = files_in(data_folder);
    if (files.empty() || files.front().stem() != "en")
        throw std::runtime_error("there is no language file en.po in " + (data_folder / "languages").string() +
                                 "; put it there as it came with the program");
    LanguageFiles read;
    auto english = ui::Language::parse(read_file(files.front()), "en", files.front().string());
    if (!english)
        throw std::runtime_error("the English texts are broken, and nothing goes without them: " +
                                 told(english.error()));
    read.languages.push_back(std::move(*english));
    for (const auto& file : std::span(files).subspan(1)) {
        if (auto language = translation(file, read.languages.front()))
            read.languages.push_back(std::move(*language));
        else
            read.refused.push_back({file.stem().string(), "a language is left out: " + told(language.error()) + "."});
    }
    // Clang 14 cannot compile what std::ranges would return here.
    std::stable_partition(read.languages.begin(), read.languages.end(),
                          [](const auto& language) { return !language.is_draft(); });
    return read;
}

std::vector<ui::Language> read_languages(const std::filesystem::path& data_folder)
{
    auto languages = read_language_files(data_folder).languages;
    std::erase_if(languages, [](const auto& language) { return language.is_draft(); });
    return languages;
}

namespace {

std::string codes_of(const std::vector<ui::Language>& languages)
{
    std::string codes;
    for (const auto& language : languages)
        if (!language.is_draft())
            codes = joined(codes, language.code());
    return codes;
}

} // namespace

const ui::Language& language_named(std::string_view code, const LanguageFiles& files)
{
    for (const auto& refused : files.refused)
        if (refused.code == code)
            throw std::invalid_argument(refused.sentence);
    return language_named(code, files.languages);
}

const ui::Language& first_language(std::string_view code, const LanguageFiles& files)
{
    const bool broken = std::ranges::find(files.refused, code, &LanguageFiles::Refused::code) != files.refused.end();
    return broken ? files.languages.front() : language_named(code, files);
}

const ui::Language& language_named(std::string_view code, const std::vector<ui::Language>& languages)
{
    const auto found = std::ranges::find(languages, code, &ui::Language::code);
    if (found == languages.end())
        throw std::invalid_argument("this station has no language \"" + std::string(code) +
                                    "\"; it has: " + codes_of(languages));
    if (found->is_draft())
        throw std::invalid_argument(
            "the language \"" + std::string(code) +
            "\" is a draft, which only the leader desk offers; this station has: " + codes_of(languages));
    return *found;
}

std::string language_codes(const std::filesystem::path& data_folder)
{
    std::string codes;
    try {
        for (const auto& file : files_in(data_folder))
            if (!is_draft_file(file))
                codes = joined(codes, file.stem().string());
    } catch (const std::filesystem::filesystem_error&) { // help is there all the same
    }
    return codes;
}

} // namespace kiosk
