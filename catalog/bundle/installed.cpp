#include "catalog/bundle/installed.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <iterator>
#include <system_error>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;
using Kind = core::Error::Kind;

constexpr int form = 1;
constexpr std::size_t longest_record = 4096;

auto refuse(Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

/// At most `most` bytes of a file; nothing when it cannot be read or is longer.
std::optional<std::string> bytes_of(const fs::path& path, std::size_t most)
{
    std::error_code unknown;
    if (!fs::is_regular_file(path, unknown))
        return std::nullopt;
    std::ifstream file(path, std::ios::binary);
    std::string bytes(most + 1, '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    if (file.bad() || bytes.size() > most)
        return std::nullopt;
    return bytes;
}

Json json_of(const std::optional<InstalledBundle>& bundle)
{
    if (!bundle)
        return nullptr;
    return {{"folder", bundle->folder}, {"manifest", hex_of(bundle->manifest)}};
}

/// "b" and digits: a name that this program gave, and no way to anywhere else.
bool is_bundle_folder(const std::string& name)
{
    constexpr std::size_t longest = 20;
    return name.size() > 1 && name.size() <= longest && name.front() == 'b' &&
           std::all_of(name.begin() + 1, name.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// False when something else stands there than json_of writes.
bool read_bundle(const Json& json, std::optional<InstalledBundle>& into)
{
    if (json.is_null())
        return true;
    if (!json.is_object() || !json.contains("folder") || !json.contains("manifest") || !json["folder"].is_string() ||
        !json["manifest"].is_string())
        return false;
    const auto digest = bytes_of_hex(json["manifest"].get<std::string>());
    const auto folder = json["folder"].get<std::string>();
    if (!digest || !is_bundle_folder(folder))
        return false;
    into = InstalledBundle{folder, *digest};
    return true;
}

} // namespace

fs::path bundles_folder(const fs::path& data)
{
    return data / "bundles";
}

fs::path installed_file(const fs::path& data)
{
    return bundles_folder(data) / "in-place.json";
}

core::Result<Installed> read_installed(const fs::path& data)
{
    const auto path = installed_file(data);
    std::error_code error;
    const auto type = fs::status(path, error).type();
    if (type == fs::file_type::not_found)
        return Installed{};
    if (type == fs::file_type::none)
        return refuse(Kind::CannotRead, path, error.message());
    const auto text = bytes_of(path, longest_record);
    if (!text)
        return refuse(Kind::CannotRead, path, std::generic_category().message(errno));
    auto installed = installed_in(*text);
    if (!installed)
        return refuse(Kind::DamagedRecord, path, "it is not as it was written");
    return std::move(*installed);
}

std::optional<Installed> installed_in(std::string_view text)
{
    const Json json = Json::parse(text, nullptr, false);
    const auto has = [&json](const char* key) { return json.contains(key); };
    if (!json.is_object() || !has("format") || json["format"] != form || !has("now") || !has("before"))
        return std::nullopt;
    Installed installed;
    if (!read_bundle(json["now"], installed.now) || !read_bundle(json["before"], installed.before))
        return std::nullopt;
    if (!has("key") || !json["key"].is_string() || !has("newest") || !json["newest"].is_number_unsigned() ||
        !has("can_go_back") || !json["can_go_back"].is_boolean())
        return std::nullopt;
    const auto key = json["key"].get<std::string>();
    installed.key = bytes_of_hex(key);
    installed.newest = json["newest"].get<std::uint64_t>();
    installed.can_go_back = json["can_go_back"].get<bool>();
    if (!installed.key && !key.empty()) // empty: forgotten
        return std::nullopt;
    return installed;
}

std::string installed_text(const Installed& installed)
{
    const nlohmann::ordered_json json{
        {"format", form},
        {"key", installed.key ? hex_of(*installed.key) : ""},
        {"newest", installed.newest},
        {"now", json_of(installed.now)},
        {"before", json_of(installed.before)},
        {"can_go_back", installed.can_go_back},
    };
    return json.dump(1) + "\n";
}

fs::path catalog_of(const fs::path& data, const InstalledBundle& bundle)
{
    return bundles_folder(data) / bundle.folder / catalog_part;
}

std::optional<Manifest> manifest_of(const fs::path& data, const InstalledBundle& bundle)
{
    const auto text = bytes_of(bundles_folder(data) / bundle.folder / "manifest.json", longest_manifest);
    if (!text || digest_of(bytes_in(*text)) != bundle.manifest)
        return std::nullopt;
    auto manifest = read_manifest(*text);
    if (!manifest)
        return std::nullopt;
    return std::move(*manifest);
}

fs::path own_catalog(const fs::path& data)
{
    return data / "catalog.db";
}

} // namespace catalog
