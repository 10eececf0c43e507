#include "tests/support/temp_folder.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace test {

TempFolder::TempFolder()
{
    std::string name = (std::filesystem::temp_directory_path() / "pairstand-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw std::runtime_error("no folder for a test: " + name);
    path_ = name;
}

TempFolder::~TempFolder()
{
    std::error_code ignored; // what stays behind is in the folder for such things
    std::filesystem::remove_all(path_, ignored);
}

std::string TempFolder::file(std::string_view name) const
{
    return (path_ / name).string();
}

std::string TempFolder::write(std::string_view name, std::string_view bytes) const
{
    const auto path = file(name);
    std::ofstream out(path, std::ios::binary);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!out.flush())
        throw std::runtime_error("cannot write " + path);
    return path;
}

std::string bytes_of(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    if (!in)
        throw std::runtime_error("cannot read " + file.string());
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace test
