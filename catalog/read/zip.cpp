#include "catalog/read/zip.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <set>
#include <sys/stat.h>
#include <system_error>
#include <zip.h>

namespace catalog {
namespace {

using core::Error;

Error fault(Error::Kind kind, const std::string& source, std::string detail)
{
    return {kind, std::move(detail), core::Place{source, 0, "", "", ""}};
}

Error fault(Error::Kind kind, const std::string& source, std::string found, std::string expected)
{
    return {kind, "zip", core::Place{source, 0, "", std::move(found), std::move(expected)}};
}

/// What the library says, as an error of ours: the disk's fault, or the file's.
Error told(zip_error_t& error, const std::string& source)
{
    const int code = zip_error_code_zip(&error);
    const int system = zip_error_code_system(&error);
    const bool of_disk = (code == ZIP_ER_READ || code == ZIP_ER_OPEN || code == ZIP_ER_SEEK) && system != 0;
    if (code == ZIP_ER_MEMORY)
        throw std::bad_alloc();
    if (of_disk)
        return fault(Error::Kind::CannotRead, source, std::generic_category().message(system));
    return fault(Error::Kind::TornFile, source, zip_error_strerror(&error));
}

/// Whether a member of this name would lie outside the folder that a zip file is unpacked into. Nothing is ever
/// unpacked here, but whoever made such a file meant harm, or the file is damaged.
bool leads_outside(std::string_view name)
{
    if (name.empty() || name.front() == '/' || name.find('\\') != std::string_view::npos ||
        name.find(':') != std::string_view::npos ||
        std::any_of(name.begin(), name.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20; }))
        return true;
    while (!name.empty()) {
        const auto end = name.find('/');
        if (name.substr(0, end) == "..")
            return true;
        name.remove_prefix(end == std::string_view::npos ? name.size() : end + 1);
    }
    return false;
}

constexpr std::uint64_t small_member = 1U << 20U; // its ratio says nothing: a small file of blanks packs well

struct Discard {
    void operator()(zip_t* zip) const { zip_discard(zip); }
};
struct CloseMember {
    void operator()(zip_file_t* member) const { zip_fclose(member); }
};

} // namespace

struct ZipFile::Inside {
    std::string source;
    std::unique_ptr<zip_t, Discard> zip;
    std::vector<ZipMember> members;

    /// Reads the directory and refuses what is beyond the limits.
    core::Result<void> list(const ZipLimits& limits)
    {
        const auto count = static_cast<std::uint64_t>(std::max<zip_int64_t>(zip_get_num_entries(zip.get(), 0), 0));
        if (count == 0) // the library also takes a file without a byte for a zip file
            return tl::make_unexpected(fault(Error::Kind::Empty, source, "", "packed files in it"));
        if (count > limits.most_members)
            return tl::make_unexpected(fault(Error::Kind::TooLarge, source, std::to_string(count) + " packed files",
                                             "at most " + std::to_string(limits.most_members)));
        std::uint64_t total = 0;
        std::set<std::string> names;
        for (std::uint64_t place = 0; place < count; ++place)
            if (auto listed = list_one(place, limits, total, names); !listed)
                return listed;
        return {};
    }

    core::Result<void> list_one(std::uint64_t place, const ZipLimits& limits, std::uint64_t& total,
                                std::set<std::string>& names)
    {
        zip_stat_t stat;
        if (zip_stat_index(zip.get(), place, ZIP_FL_ENC_RAW, &stat) != 0)
            return tl::make_unexpected(told(*zip_get_error(zip.get()), source));
        constexpr auto needed = ZIP_STAT_NAME | ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD;
        if ((stat.valid & needed) != needed)
            return tl::make_unexpected(fault(Error::Kind::TornFile, source, "a member without its size"));
        ZipMember member{stat.name, stat.size, stat.comp_size, place};
        if (auto refused = refusal(member, stat, limits, total); !refused)
            return refused;
        if (!names.insert(member.name).second)
            return tl::make_unexpected(fault(Error::Kind::BadEncoding, source,
                                             "the packed file \"" + member.name + "\" twice", "each name once"));
        if (!member.name.ends_with('/'))
            members.push_back(std::move(member));
        return {};
    }

    [[nodiscard]] core::Result<void> refusal(const ZipMember& member, const zip_stat_t& stat, const ZipLimits& limits,
                                             std::uint64_t& total) const
    {
        const auto refuse = [&](Error::Kind kind, std::string found, std::string expected) {
            return tl::make_unexpected(fault(kind, source, std::move(found), std::move(expected)));
        };
        if (leads_outside(member.name))
            return refuse(Error::Kind::BadEncoding, "a packed file whose name leads outside (\"" + member.name + "\")",
                          "names of files and folders inside");
        if ((stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE)
            return refuse(Error::Kind::BadEncoding, "a file locked with a password",
                          "one without: save it again without a password");
        if (zip_compression_method_supported(stat.comp_method, 0) == 0)
            return refuse(Error::Kind::BadEncoding, "a packed file (\"" + member.name + "\") in a rare packing",
                          "the usual one (deflate): pack it again");
        if (member.size > limits.largest_total - total)
            return refuse(Error::Kind::TooLarge,
                          "more than " + std::to_string(limits.largest_total) + " bytes unpacked", "at most that many");
        total += member.size;
        if (member.size > small_member && member.size / limits.highest_ratio > member.packed)
            return refuse(Error::Kind::TooLarge,
                          "a packed file that grows more than " + std::to_string(limits.highest_ratio) +
                              " times when unpacked",
                          "no such file: it is damaged, or made to fill the memory");
        return {};
    }

    static core::Result<ZipFile> opened(zip_source_t* bytes, const std::string& source, const ZipLimits& limits)
    {
        zip_error_t error;
        zip_error_init(&error);
        std::unique_ptr<zip_t, Discard> zip(zip_open_from_source(bytes, ZIP_RDONLY, &error));
        if (!zip) {
            zip_source_free(bytes);
            auto refused = told(error, source);
            zip_error_fini(&error);
            return tl::make_unexpected(std::move(refused));
        }
        auto inside = std::make_unique<Inside>(Inside{source, std::move(zip), {}});
        if (auto listed = inside->list(limits); !listed)
            return tl::make_unexpected(std::move(listed).error());
        return ZipFile(std::move(inside));
    }
};

struct ZipReader::Inside {
    std::string source;
    std::unique_ptr<zip_file_t, CloseMember> member;
    std::uint64_t size = 0;
    std::uint64_t done = 0;
};

ZipReader::ZipReader(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
ZipReader::ZipReader(ZipReader&&) noexcept = default;
ZipReader& ZipReader::operator=(ZipReader&&) noexcept = default;
ZipReader::~ZipReader() = default;

core::Result<std::size_t> ZipReader::read(char* to, std::size_t size)
{
    auto& in = *inside_;
    if (size == 0)
        return 0U;
    const auto length = zip_fread(in.member.get(), to, size);
    if (length < 0)
        return tl::make_unexpected(told(*zip_file_get_error(in.member.get()), in.source));
    in.done += static_cast<std::uint64_t>(length);
    // The directory's word was checked against the limits, so what comes is held to it.
    if (in.done > in.size || (length == 0 && in.done != in.size))
        return tl::make_unexpected(fault(Error::Kind::TornFile, in.source, "a member of another size than it says"));
    return static_cast<std::size_t>(length);
}

std::uint64_t ZipReader::done() const
{
    return inside_->done;
}

std::uint64_t ZipReader::size() const
{
    return inside_->size;
}

ZipFile::ZipFile(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
ZipFile::ZipFile(ZipFile&&) noexcept = default;
ZipFile& ZipFile::operator=(ZipFile&&) noexcept = default;
ZipFile::~ZipFile() = default;

core::Result<ZipFile> ZipFile::open(const std::string& path, const ZipLimits& limits)
{
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return tl::make_unexpected(
            fault(errno == ENOENT ? Error::Kind::NoSuchFile : Error::Kind::CannotRead, path, std::strerror(errno)));
    if (S_ISDIR(status.st_mode))
        return tl::make_unexpected(fault(Error::Kind::IsFolder, path, "a folder"));
    zip_error_t error;
    zip_error_init(&error);
    auto* bytes = zip_source_file_create(path.c_str(), 0, -1, &error);
    if (bytes == nullptr)
        return tl::make_unexpected(told(error, path));
    return Inside::opened(bytes, path, limits);
}

core::Result<ZipFile> ZipFile::of_bytes(std::string_view bytes, const std::string& source, const ZipLimits& limits)
{
    zip_error_t error;
    zip_error_init(&error);
    auto* read = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    if (read == nullptr)
        return tl::make_unexpected(told(error, source));
    return Inside::opened(read, source, limits);
}

std::span<const ZipMember> ZipFile::members() const
{
    return inside_->members;
}

const ZipMember* ZipFile::member(std::string_view name) const
{
    const auto& all = inside_->members;
    const auto found = std::find_if(all.begin(), all.end(), [name](const auto& member) { return member.name == name; });
    return found == all.end() ? nullptr : &*found;
}

core::Result<ZipReader> ZipFile::read(const ZipMember& member) const
{
    std::unique_ptr<zip_file_t, CloseMember> opened(zip_fopen_index(inside_->zip.get(), member.place, 0));
    if (!opened)
        return tl::make_unexpected(told(*zip_get_error(inside_->zip.get()), inside_->source));
    auto reading = std::make_unique<ZipReader::Inside>();
    reading->source = inside_->source;
    reading->member = std::move(opened);
    reading->size = member.size;
    return ZipReader(std::move(reading));
}

bool is_zip(std::string_view first_bytes)
{
    return first_bytes.starts_with("PK\x03\x04") || first_bytes.starts_with("PK\x05\x06");
}

} // namespace catalog
