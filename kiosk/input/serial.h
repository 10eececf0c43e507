// Scanners on serial ports as a source of scans: found by themselves, pulled out and plugged in again as people like.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/key_names.h"
#include "kiosk/input/scan.h"
#include "kiosk/input/serial_port.h"
#include "kiosk/mailbox.h"

#include <atomic>
#include <functional>
#include <string>
#include <thread>
#include <vector>

namespace kiosk {

/// Where scanners are looked for.
struct SerialOptions {
    /// A port's path: only that one, and all it sends is answered. "auto": every "ttyACM..." in `devices` (USB scanners
    /// set to "CDC-ACM", "virtual COM port"). Modems and boards for tinkering are such ports as well, so there a port
    /// is a scanner from the first product number on that it sends; what it sent before is not answered, and it is left
    /// alone once it has sent `patience` texts without one.
    std::string port = "auto";
    std::string devices = "/dev";
    ScannerKeys around; ///< what the scanner puts before and behind each code
    std::size_t patience = 20;
    /// A port that another program has is told after so long: a desktop looks for modems in what was plugged in.
    Milliseconds busy_patience{60'000};
    /// A port that was named and is not there is told after so long: a scanner that begins anew, or is plugged into
    /// another socket, is away for a moment (common practice).
    Milliseconds absent_patience{2000};
    Milliseconds first_pause{250}; ///< before a port is tried again; doubles with each try
    Milliseconds longest_pause{5000};
    OpenPort open = open_port;
};

/// A port that cannot be listened to. Told once, until it is fit to use; one that nobody named also until it was pulled
/// out.
struct SerialTrouble {
    PortTrouble what = PortTrouble::Absent; ///< Absent and Pulled of a port that was named alone
    std::string port;
    bool over = false; ///< this was told, and now the port is listened to
    bool operator==(const SerialTrouble&) const = default;
};

/// Listens to serial ports in a thread of its own, and never writes to one. Scans go into the box; `wake` is called
/// after each, and after each trouble. While nothing is plugged in or out the thread sleeps.
class SerialSource {
public:
    /// `scans` must outlive this. `wake` is called in the source's thread; it may be empty.
    SerialSource(SerialOptions options, Every<Scan>& scans, std::function<void()> wake);
    ~SerialSource();
    SerialSource(const SerialSource&) = delete;
    SerialSource& operator=(const SerialSource&) = delete;

    void start();
    /// Returns when the thread has ended, at once.
    void stop();
    /// How many ports are open. Any thread.
    [[nodiscard]] std::size_t open_ports() const { return open_ports_; }
    /// The troubles since this was called last. Any thread.
    [[nodiscard]] std::vector<SerialTrouble> troubles() { return troubles_.take_all(); }

private:
    class Listener;
    void run();

    SerialOptions options_;
    Every<Scan>& scans_;
    std::function<void()> wake_;
    Every<SerialTrouble> troubles_;
    std::atomic<std::size_t> open_ports_{0};
    int stop_ = -1; ///< readable once the thread is to end
    std::thread thread_;
};

} // namespace kiosk
