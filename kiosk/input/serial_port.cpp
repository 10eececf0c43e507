#include "kiosk/input/serial_port.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/ioctl.h>
#include <termios.h>
#include <unistd.h>
#include <utility>

namespace kiosk {
namespace {

PortTrouble trouble_of(int error)
{
    switch (error) {
    case EACCES:
    case EPERM:
        return PortTrouble::Refused;
    case EBUSY:
    case EWOULDBLOCK: // of flock
        return PortTrouble::Busy;
    case ENOTTY:
    case EISDIR:
        return PortTrouble::NoSerialPort;
    default:
        return PortTrouble::Absent;
    }
}

/// Bytes as they come: no echo back to the scanner, no signals, no line editing.
bool make_raw(int descriptor)
{
    termios settings{};
    if (tcgetattr(descriptor, &settings) != 0)
        return false;
    cfmakeraw(&settings);
    settings.c_cflag |= CLOCAL | CREAD; // whatever the modem lines say
    settings.c_cc[VMIN] = 1;
    settings.c_cc[VTIME] = 0;
    return cfsetspeed(&settings, B9600) == 0 && tcsetattr(descriptor, TCSANOW, &settings) == 0 &&
           tcflush(descriptor, TCIFLUSH) == 0; // what was scanned before we listened is nobody's now
}

/// Programs tell one another by a lock on the file that a port is theirs; TIOCEXCL keeps out those that do not ask.
bool make_ours(int descriptor)
{
    return flock(descriptor, LOCK_EX | LOCK_NB) == 0 && ioctl(descriptor, TIOCEXCL) == 0;
}

} // namespace

int open_port(const std::string& path)
{
    return ::open(path.c_str(), O_RDONLY | O_NOCTTY | O_NONBLOCK | O_CLOEXEC);
}

std::variant<SerialPort, PortTrouble> SerialPort::open(const std::string& path, const OpenPort& opener)
{
    const int descriptor = opener(path);
    if (descriptor < 0)
        return trouble_of(errno);
    SerialPort port(descriptor);
    if (!make_ours(descriptor) || !make_raw(descriptor))
        return trouble_of(errno);
    return port;
}

SerialPort::~SerialPort()
{
    if (descriptor_ < 0)
        return;
    ioctl(descriptor_, TIOCNXCL);
    ::close(descriptor_);
}

SerialPort::SerialPort(SerialPort&& other) noexcept : descriptor_(std::exchange(other.descriptor_, -1)) {}

SerialPort& SerialPort::operator=(SerialPort&& other) noexcept
{
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

std::optional<std::string> SerialPort::read() const
{
    std::string bytes(4096, '\0');
    const auto count = ::read(descriptor_, bytes.data(), bytes.size());
    if (count > 0) {
        bytes.resize(static_cast<std::size_t>(count));
        return bytes;
    }
    const bool later = count < 0 && (errno == EAGAIN || errno == EINTR);
    return later ? std::optional(std::string()) : std::nullopt; // the end, or an error: pulled out
}

} // namespace kiosk
