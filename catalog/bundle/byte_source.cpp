#include "catalog/bundle/byte_source.h"

#include "catalog/file/open_to_read.h"

#include <cerrno>
#include <system_error>
#include <unistd.h>

namespace catalog {
namespace {

class FileBytes : public ByteSource {
public:
    explicit FileBytes(const OpenFile& file) : handle_(file.handle), size_(file.size) {}
    FileBytes(const FileBytes&) = delete;
    FileBytes& operator=(const FileBytes&) = delete;
    ~FileBytes() override { ::close(handle_); }
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
    std::uint64_t size_;
};

} // namespace

core::Result<std::unique_ptr<ByteSource>> open_bytes(const std::filesystem::path& path)
{
    const auto file = open_to_read(path);
    if (!file)
        return tl::make_unexpected(file.error());
    return std::make_unique<FileBytes>(*file);
}

} // namespace catalog
