#include "catalog/read/release_files.h"

#include "catalog/read/zip.h"

#include <array>
#include <fstream>
#include <optional>

namespace catalog {
namespace {

namespace fs = std::filesystem;

constexpr const char* food_name = "food.csv";
constexpr const char* branded_name = "branded_food.csv";
constexpr const char* amounts_name = "food_nutrient.csv";

/// Whether any of a release's files lies there.
bool has_some(const fs::path& folder)
{
    std::error_code error;
    for (const char* name : {branded_name, amounts_name, food_name})
        if (fs::exists(folder / name, error))
            return true;
    return false;
}

/// The folder in which a release's files lie: this one, or the one in it that has them, all or some.
std::optional<fs::path> folder_of_release(const fs::path& source)
{
    std::error_code error;
    if (!fs::is_directory(source, error))
        return std::nullopt;
    if (fs::exists(source / branded_name, error))
        return source;
    std::optional<fs::path> some;
    if (has_some(source))
        some = source;
    for (fs::directory_iterator entry(source, error), end; !error && entry != end; entry.increment(error)) {
        if (!entry->is_directory(error))
            continue;
        if (fs::exists(entry->path() / branded_name, error))
            return entry->path();
        if (!some && has_some(entry->path()))
            some = entry->path();
    }
    return some;
}

ReleaseFile file_in(const fs::path& folder, const char* name, std::string& missing)
{
    const auto path = folder / name;
    std::error_code error;
    const auto size = fs::file_size(path, error);
    if (error)
        missing.append(missing.empty() ? "" : ", ").append(name);
    return {path.string(), error ? 0 : size, [path] { return open_file(path); }};
}

/// A member of a zip file as a stream.
class ZipStream : public ByteStream {
public:
    ZipStream(std::shared_ptr<ZipFile> zip, ZipReader reader) : zip_(std::move(zip)), reader_(std::move(reader)) {}
    core::Result<std::size_t> read(char* bytes, std::size_t size) override { return reader_.read(bytes, size); }
    [[nodiscard]] std::uint64_t size() const override { return reader_.size(); }

private:
    std::shared_ptr<ZipFile> zip_; // before its reader: it must outlive it
    ZipReader reader_;
};

/// The member of this name, in whatever folder of the zip file.
const ZipMember* member_named(const ZipFile& zip, const std::string& name)
{
    for (const auto& member : zip.members())
        if (member.name == name || member.name.ends_with("/" + name))
            return &member;
    return nullptr;
}

ReleaseFile file_of(const std::shared_ptr<ZipFile>& zip, const fs::path& source, const ZipMember& member)
{
    auto open = [zip, &member]() -> core::Result<std::unique_ptr<ByteStream>> { // a member lives as long as its file
        auto reader = zip->read(member);
        if (!reader)
            return tl::make_unexpected(reader.error());
        return std::make_unique<ZipStream>(zip, *std::move(reader));
    };
    return {source.string() + ": " + member.name, member.size, std::move(open)};
}

ReleaseFile file_in(const std::shared_ptr<ZipFile>& zip, const fs::path& source, const char* name, std::string& missing)
{
    if (const auto* member = member_named(*zip, name))
        return file_of(zip, source, *member);
    missing.append(missing.empty() ? "" : ", ").append(name);
    return {};
}

bool begins_as_zip(const fs::path& source)
{
    std::error_code error;
    if (!fs::is_regular_file(source, error))
        return false;
    std::array<char, 4> first{};
    std::ifstream(source, std::ios::binary).read(first.data(), first.size());
    return is_zip({first.data(), first.size()});
}

bool is_json_name(const std::string& name)
{
    return name.ends_with(".json") || name.ends_with(".JSON");
}

/// Whether a zip file holds any of a release's tables.
bool has_some(const ZipFile& zip)
{
    return member_named(zip, branded_name) != nullptr || member_named(zip, amounts_name) != nullptr ||
           member_named(zip, food_name) != nullptr;
}

/// The largest JSON file in a zip file, if it has no CSV of a release.
const ZipMember* json_member(const ZipFile& zip)
{
    const ZipMember* largest = nullptr;
    for (const auto& member : zip.members())
        if (is_json_name(member.name) && (largest == nullptr || member.size > largest->size))
            largest = &member;
    return largest;
}

bool is_json_file(const fs::path& source)
{
    std::error_code error;
    return is_json_name(source.string()) && fs::is_regular_file(source, error);
}

ReleaseFiles json_alone(ReleaseFile json)
{
    ReleaseFiles files;
    files.json = std::move(json);
    return files;
}

template<class Place>
core::Result<ReleaseFiles> found_in(const fs::path& source, Place file)
{
    std::string missing;
    ReleaseFiles files{file(food_name, missing), file(branded_name, missing), file(amounts_name, missing),
                       std::nullopt};
    if (!missing.empty())
        return core::refuse(core::Error::Kind::NoSuchFile, "not all files of a release",
                            core::Place{source.string(), 0, {}, missing, {}});
    return files;
}

} // namespace

bool is_release(const fs::path& source)
{
    if (!begins_as_zip(source))
        return is_json_file(source) || folder_of_release(source).has_value();
    const auto zip = ZipFile::open(source.string()); // workbooks are zip files too
    return zip && (has_some(*zip) || json_member(*zip) != nullptr);
}

core::Result<ReleaseFiles> find_release(const fs::path& source)
{
    if (is_json_file(source)) {
        std::error_code error;
        const auto size = fs::file_size(source, error);
        return json_alone({source.string(), error ? 0 : size, [source] { return open_file(source); }});
    }
    if (!begins_as_zip(source)) {
        const auto folder = folder_of_release(source).value_or(source);
        return found_in(folder, [&](const char* name, std::string& missing) { return file_in(folder, name, missing); });
    }
    auto zip = ZipFile::open(source.string());
    if (!zip)
        return tl::make_unexpected(zip.error());
    const auto shared = std::make_shared<ZipFile>(*std::move(zip));
    if (const auto* json = json_member(*shared); json != nullptr && member_named(*shared, branded_name) == nullptr)
        return json_alone(file_of(shared, source, *json));
    return found_in(source,
                    [&](const char* name, std::string& missing) { return file_in(shared, source, name, missing); });
}

} // namespace catalog
