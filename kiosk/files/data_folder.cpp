#include "kiosk/files/data_folder.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <system_error>

namespace kiosk {
namespace {

std::filesystem::path this_program()
{
    std::error_code unknown;
    return std::filesystem::read_symlink("/proc/self/exe", unknown);
}

} // namespace

std::optional<std::string> process_environment(const std::string& name)
{
    const char* value = std::getenv(name.c_str());
    if (!value || !*value)
        return std::nullopt;
    return value;
}

std::vector<std::filesystem::path> data_folders(const Environment& environment, const std::filesystem::path& program)
{
    if (const auto given = environment("PAIRSTAND_DATA"))
        return {*given};
    std::vector<std::filesystem::path> folders;
    if (!program.empty())
        folders.push_back(program.parent_path().parent_path() / "share" / "pairstand");
    folders.emplace_back(PAIRSTAND_BUILT_FROM);
    return folders;
}

std::filesystem::path data_folder(const Environment& environment)
{
    std::string looked_in;
    for (const auto& folder : data_folders(environment, this_program())) {
        if (std::filesystem::exists(folder / "languages" / "en.po"))
            return folder;
        looked_in += (looked_in.empty() ? "" : ", ") + folder.string();
    }
    throw std::runtime_error("the program's own data (languages/en.po) is in none of: " + looked_in +
                             "; set PAIRSTAND_DATA to the folder that has it");
}

std::string read_file(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    if (!file || std::filesystem::is_directory(path))
        throw std::runtime_error("the file " + path.string() + " cannot be read");
    return bytes;
}

} // namespace kiosk
