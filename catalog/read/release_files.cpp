#include "catalog/read/release_files.h"

namespace catalog {
namespace {

namespace fs = std::filesystem;

constexpr const char* branded_name = "branded_food.csv";

/// The folder in which a release's files lie: this one, or the only one in it that has them.
std::optional<fs::path> folder_of_release(const fs::path& source)
{
    std::error_code error;
    if (!fs::is_directory(source, error))
        return std::nullopt;
    if (fs::exists(source / branded_name, error))
        return source;
    for (fs::directory_iterator entry(source, error), end; !error && entry != end; entry.increment(error))
        if (entry->is_directory(error) && fs::exists(entry->path() / branded_name, error))
            return entry->path();
    return std::nullopt;
}

ReleaseFile file_in(const fs::path& folder, const char* name, std::string& missing)
{
    const auto path = folder / name;
    std::error_code error;
    const auto size = fs::file_size(path, error);
    if (error)
        missing.append(missing.empty() ? "" : ", ").append(name);
    return {path.string(), path, error ? 0 : size};
}

} // namespace

core::Result<std::unique_ptr<ByteStream>> ReleaseFile::open() const
{
    return open_file(path);
}

bool is_release(const fs::path& source)
{
    return folder_of_release(source).has_value();
}

core::Result<ReleaseFiles> find_release(const fs::path& source)
{
    std::string missing;
    const auto folder = folder_of_release(source).value_or(source);
    ReleaseFiles files{file_in(folder, "food.csv", missing), file_in(folder, branded_name, missing),
                       file_in(folder, "food_nutrient.csv", missing)};
    if (!missing.empty())
        return core::refuse(core::Error::Kind::NoSuchFile, missing,
                            core::Place{(folder / missing).string(), 0, {}, {}, missing});
    return files;
}

} // namespace catalog
