#include "catalog/file/open_to_read.h"

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

} // namespace

core::Result<OpenFile> open_to_read(const std::filesystem::path& path)
{
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK); // a pipe keeps nobody waiting
    if (handle < 0) {
        const int why = errno;
        const auto kind = why == ENOENT || why == ENOTDIR ? Kind::NoSuchFile : Kind::CannotRead;
        return refuse(kind, path, std::generic_category().message(why));
    }
    struct stat found {};
    const int why = ::fstat(handle, &found) == 0 ? 0 : errno;
    if (why == 0 && S_ISREG(found.st_mode))
        return OpenFile{handle, static_cast<std::uint64_t>(found.st_size)};
    ::close(handle);
    if (why != 0)
        return refuse(Kind::CannotRead, path, std::generic_category().message(why));
    if (S_ISDIR(found.st_mode))
        return refuse(Kind::IsFolder, path, "it is a folder");
    return refuse(Kind::CannotRead, path, "it is no file");
}

} // namespace catalog
