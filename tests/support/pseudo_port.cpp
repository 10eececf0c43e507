#include "tests/support/pseudo_port.h"

#include <array>
#include <cstdlib>
#include <fcntl.h>
#include <stdexcept>
#include <unistd.h>
#include <utility>

namespace test {

PseudoPort::PseudoPort(std::string link)
    : link_(std::move(link)), scanner_(posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC))
{
    if (scanner_ < 0 || grantpt(scanner_) != 0 || unlockpt(scanner_) != 0)
        throw std::runtime_error("no pseudo terminal");
    std::array<char, 64> name{};
    if (ptsname_r(scanner_, name.data(), name.size()) != 0 || symlink(name.data(), link_.c_str()) != 0)
        throw std::runtime_error("no link to the pseudo terminal");
}

PseudoPort::~PseudoPort()
{
    unlink(link_.c_str());
    close(scanner_);
}

void PseudoPort::send(std::string_view bytes) const
{
    while (!bytes.empty()) {
        const auto sent = write(scanner_, bytes.data(), bytes.size());
        if (sent > 0)
            bytes.remove_prefix(static_cast<std::size_t>(sent));
        else
            usleep(1'000); // the terminal is full until somebody reads
    }
}

std::string PseudoPort::heard() const
{
    std::array<char, 256> bytes{};
    const auto count = read(scanner_, bytes.data(), bytes.size());
    return count > 0 ? std::string(bytes.data(), static_cast<std::size_t>(count)) : "";
}

} // namespace test
