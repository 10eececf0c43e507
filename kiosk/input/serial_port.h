// One serial port, opened to listen: never written to, nobody else's while it is ours. The only file pair that knows
// terminals of the system.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <variant>

namespace kiosk {

/// Why a port cannot be listened to.
enum class PortTrouble {
    Absent,       ///< nothing there
    Pulled,       ///< it was listened to, and is gone
    Refused,      ///< this user may not read it
    Busy,         ///< another program has it
    NoSerialPort, ///< something else lies there
};

/// Opens a path for reading, without waiting: a file descriptor, or -1 and errno.
using OpenPort = std::function<int(const std::string& path)>;

/// As the system does it.
[[nodiscard]] int open_port(const std::string& path);

/// A port that is open: bytes come as they are, 9600 baud, 8 bits, no parity, one stop bit (a scanner's usual ones;
/// over USB they mean nothing).
class SerialPort {
public:
    [[nodiscard]] static std::variant<SerialPort, PortTrouble> open(const std::string& path,
                                                                    const OpenPort& opener = open_port);
    ~SerialPort();
    SerialPort(SerialPort&& other) noexcept;
    SerialPort& operator=(SerialPort&& other) noexcept;
    SerialPort(const SerialPort&) = delete;
    SerialPort& operator=(const SerialPort&) = delete;

    /// To wait for bytes with poll(2).
    [[nodiscard]] int descriptor() const { return descriptor_; }
    /// The bytes that are there by now, at most a few thousand; nothing when the port is gone.
    [[nodiscard]] std::optional<std::string> read() const;

private:
    explicit SerialPort(int descriptor) : descriptor_(descriptor) {}
    int descriptor_;
};

} // namespace kiosk
