// A serial port that no hardware is behind: a pseudo terminal, with a link to it where ports are looked for.
#pragma once

#include <string>
#include <string_view>

namespace test {

/// Plugged in when it is made, pulled out with the scope. What is sent comes out at the link as a scanner's bytes do.
class PseudoPort {
public:
    /// `link` is what stands for the device file. Throws std::runtime_error when the system has no pseudo terminal.
    explicit PseudoPort(std::string link);
    ~PseudoPort();
    PseudoPort(const PseudoPort&) = delete;
    PseudoPort& operator=(const PseudoPort&) = delete;

    void send(std::string_view bytes) const;
    /// What the other side has written: nothing, if it keeps to listening and sends no echo.
    [[nodiscard]] std::string heard() const;

private:
    std::string link_;
    int scanner_;
};

} // namespace test
