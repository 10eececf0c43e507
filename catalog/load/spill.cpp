#include "catalog/load/spill.h"

#include <cerrno>
#include <fcntl.h>
#include <stdexcept>
#include <system_error>
#include <unistd.h>

namespace catalog {
namespace {

constexpr std::size_t piece = 128U << 10U;

[[noreturn]] void refused(const std::filesystem::path& path)
{
    throw std::system_error(errno, std::generic_category(), path.string());
}

} // namespace

Spill::Spill(std::filesystem::path path, bool again)
    : path_(std::move(path)),
      handle_(::open(path_.c_str(), again ? O_RDWR | O_CLOEXEC : O_RDWR | O_CREAT | O_TRUNC | O_CLOEXEC, 0600))
{
    if (handle_ < 0)
        refused(path_);
    if (again)
        written_ = std::filesystem::file_size(path_);
}

Spill::Spill(Spill&& other) noexcept
    : path_(std::move(other.path_)), handle_(other.handle_), written_(other.written_),
      waiting_(std::move(other.waiting_))
{
    other.handle_ = -1;
}

Spill::~Spill()
{
    if (handle_ >= 0)
        ::close(handle_);
}

std::uint64_t Spill::append(std::string_view bytes)
{
    const auto at = size();
    waiting_ += bytes;
    if (waiting_.size() >= piece)
        flush();
    return at;
}

void Spill::flush()
{
    std::string_view rest = waiting_;
    while (!rest.empty()) {
        const auto got = ::write(handle_, rest.data(), rest.size());
        if (got < 0 && errno != EINTR)
            refused(path_);
        if (got > 0) {
            rest.remove_prefix(static_cast<std::size_t>(got));
            written_ += static_cast<std::uint64_t>(got);
        }
    }
    waiting_.clear();
}

void Spill::read(std::uint64_t at, std::size_t size, std::string& into) const
{
    into.resize(size);
    for (std::size_t done = 0; done < size;) {
        const auto got = ::pread(handle_, into.data() + done, size - done, static_cast<off_t>(at + done));
        if (got < 0 && errno != EINTR)
            refused(path_);
        if (got == 0)
            throw std::runtime_error(path_.string() + ": shorter than it was");
        if (got > 0)
            done += static_cast<std::size_t>(got);
    }
}

} // namespace catalog
