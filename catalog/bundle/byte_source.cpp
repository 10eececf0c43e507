#include "catalog/bundle/byte_source.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace catalog {
namespace {

using Kind = core::Error::Kind;

auto refuse(Kind kind, const std::filesystem::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

class FileBytes : public ByteSource {
public:
    explicit FileBytes(int handle) : handle_(handle) {}
    ~FileBytes() override { ::close(handle_); }
    void has(std::uint64_t size) { size_ = size; }
    [[nodiscard]] int handle() const { return handle_; }
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    [[nodiscard]] std::size_t read(std::span<std::uint8_t> into) override
    {
        std::size_t got = 0;
        while (got < into.size()) {
            const ssize_t more = ::read(handle_, into.data() + got, into.size() - got);
            if (more == 0)
                break;
            if (more > 0)
                got += static_cast<std::size_t>(more);
            else if (errno != EINTR)
                throw std::system_error(errno, std::generic_category());
        }
        return got;
    }

private:
    int handle_;
    std::uint64_t size_ = 0;
};

} // namespace

core::Result<std::unique_ptr<ByteSource>> open_bytes(const std::filesystem::path& path)
{
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK); // a pipe keeps nobody waiting
    if (handle < 0) {
        const int why = errno;
        const auto kind = why == ENOENT || why == ENOTDIR ? Kind::NoSuchFile : Kind::CannotRead;
        return refuse(kind, path, std::generic_category().message(why));
    }
    auto file = std::make_unique<FileBytes>(handle);
    struct stat found {};
    if (::fstat(handle, &found) != 0)
        return refuse(Kind::CannotRead, path, std::generic_category().message(errno));
    if (S_ISDIR(found.st_mode))
        return refuse(Kind::IsFolder, path, "it is a folder");
    if (!S_ISREG(found.st_mode))
        return refuse(Kind::CannotRead, path, "it is no file");
    file->has(static_cast<std::uint64_t>(found.st_size));
    return std::unique_ptr<ByteSource>(std::move(file));
}

} // namespace catalog
