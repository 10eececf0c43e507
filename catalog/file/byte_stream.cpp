#include "catalog/file/byte_stream.h"

#include "catalog/file/open_to_read.h"

#include <cerrno>
#include <fcntl.h>
#include <system_error>
#include <unistd.h>

namespace catalog {
namespace {

using core::Error;

auto refuse(Error::Kind kind, const std::filesystem::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

class FileBytes : public ByteStream {
public:
    FileBytes(std::filesystem::path path, const OpenFile& file)
        : path_(std::move(path)), handle_(file.handle), size_(file.size)
    {
        ::posix_fadvise(handle_, 0, 0, POSIX_FADV_SEQUENTIAL); // a wish; what comes of it does not matter
    }
    FileBytes(const FileBytes&) = delete;
    FileBytes& operator=(const FileBytes&) = delete;
    ~FileBytes() override { ::close(handle_); }

    core::Result<std::size_t> read(char* bytes, std::size_t size) override
    {
        for (;;) {
            const auto got = ::read(handle_, bytes, size);
            if (got >= 0)
                return static_cast<std::size_t>(got);
            if (errno != EINTR)
                return refuse(Error::Kind::CannotRead, path_, std::generic_category().message(errno));
        }
    }
    [[nodiscard]] std::uint64_t size() const override { return size_; }

private:
    std::filesystem::path path_;
    int handle_;
    std::uint64_t size_;
};

} // namespace

core::Result<std::size_t> fill(ByteStream& from, std::span<std::uint8_t> into)
{
    std::size_t filled = 0;
    while (filled < into.size()) {
        const auto got = from.read(reinterpret_cast<char*>(into.data()) + filled, into.size() - filled);
        if (!got)
            return got;
        if (*got == 0)
            break;
        filled += *got;
    }
    return filled;
}

core::Result<std::unique_ptr<ByteStream>> open_file(const std::filesystem::path& path)
{
    const auto file = open_to_read(path);
    if (!file)
        return tl::make_unexpected(file.error());
    return std::make_unique<FileBytes>(path, *file);
}

} // namespace catalog
