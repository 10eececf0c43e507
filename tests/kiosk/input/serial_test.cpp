// Scanners on serial ports that are pseudo terminals: plugged in, pulled out, refused, busy, and what is no scanner.
#include "kiosk/input/product_text.h"
#include "kiosk/input/serial.h"
#include "tests/support/process.h"
#include "tests/support/pseudo_port.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <atomic>
#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <string>
#include <sys/file.h>
#include <unistd.h>
#include <utility>
#include <vector>

namespace {

using kiosk::PortTrouble;
using kiosk::SerialTrouble;
using test::becomes_true;
using test::PseudoPort;
using Texts = std::vector<std::string>;

const std::string number = "9521234543213";
const std::string another = "614141007349";

/// A folder in the place of /dev, and a source that listens there.
struct Listening {
    explicit Listening(kiosk::SerialOptions wanted = {})
        : source(in_folder(std::move(wanted)), scans, [this] { ++woken; })
    {
        source.start();
    }

    /// What was scanned since this was asked last, once there are so many of them.
    Texts texts(std::size_t count)
    {
        Texts texts;
        CHECK(becomes_true([&] {
            for (const auto& scan : scans.take_all())
                texts.push_back(scan.text);
            return texts.size() >= count;
        }));
        return texts;
    }
    /// Whether so many troubles have been told since the beginning; they are in `told`.
    bool told_so_many(std::size_t count)
    {
        return becomes_true([&] {
            for (auto& trouble : source.troubles())
                told.push_back(std::move(trouble));
            return told.size() >= count;
        });
    }
    bool open(std::size_t ports)
    {
        return becomes_true([&] { return source.open_ports() == ports; });
    }

    test::TempFolder folder;
    const std::string port = folder.file("ttyACM0");
    kiosk::Every<kiosk::Scan> scans;
    std::atomic<int> woken{0};
    std::vector<SerialTrouble> told;
    kiosk::SerialSource source;

private:
    kiosk::SerialOptions in_folder(kiosk::SerialOptions options) const
    {
        options.devices = folder.file("");
        options.first_pause = kiosk::Milliseconds{5};
        options.longest_pause = kiosk::Milliseconds{20};
        if (options.port != "auto")
            options.port = folder.file(options.port);
        return options;
    }
};

} // namespace

TEST_CASE("serial: a scanner is found when it is plugged in, pulled out and plugged in again")
{
    Listening station;
    for (int i = 0; i < 3; ++i) {
        REQUIRE(station.open(0));
        PseudoPort scanner(station.port);
        REQUIRE(station.open(1));
        scanner.send(number + "\r\n");
        CHECK(station.texts(1) == Texts{number});
        scanner.send("95212"); // torn: pulled out in the middle of a code, of which nothing is left
        CHECK(scanner.heard().empty());
    }
    CHECK(station.open(0));
    CHECK(station.woken == 3);
    CHECK(station.scans.take_all().empty());
    CHECK(station.source.troubles().empty());
}

TEST_CASE("serial: one that is there already, in pieces, with an identifier, without an end, and 4 KB")
{
    const test::TempFolder folder;
    kiosk::Every<kiosk::Scan> scans;
    kiosk::SerialOptions options;
    options.devices = folder.file("");
    options.around = {"~", ""};
    PseudoPort scanner(folder.file("ttyACM3"));
    kiosk::SerialSource source(options, scans, {});
    source.start();
    CHECK(becomes_true([&] { return source.open_ports() == 1; }));
    std::vector<kiosk::Scan> taken;
    const auto next = [&] {
        CHECK(becomes_true([&] {
            for (auto& scan : scans.take_all())
                taken.push_back(scan);
            return !taken.empty();
        }));
        const auto scan = taken.at(0);
        taken.erase(taken.begin());
        return scan;
    };
    for (const char byte : "~]E0" + number + "\r")
        scanner.send({&byte, 1});
    const auto first = next();
    CHECK(first.text == number);
    CHECK(first.symbology == core::Symbology::Ean13);
    CHECK(first.from == kiosk::Scan::From::Scanner);
    scanner.send(another);
    CHECK(next().text == another);
    scanner.send(std::string(4096, 'x') + "\x1b\x11\x03" + number + "\r");
    CHECK(next().text == std::string(513, 'x'));
    auto last = next();
    while (last.text != number && !kiosk::holds_number(last)) // a terminal that was full for a while makes a pause
        last = next();
    CHECK(last.text == number);
    CHECK(scanner.heard().empty());
}

TEST_CASE("serial: what sends no product number is not answered, and left alone in the end")
{
    kiosk::SerialOptions options;
    options.patience = 3;
    Listening station(options);
    PseudoPort scanner(station.port);
    PseudoPort board(station.folder.file("ttyACM1"));
    PseudoPort other(station.folder.file("ttyS0")); // no such name as a USB scanner has
    REQUIRE(station.open(2));
    board.send("temperature 21\r\nOK\r\n");
    scanner.send("HELLO\r");
    scanner.send(number + "\rHELLO\r\x1b\r"); // a scanner, then: now everything is answered
    CHECK(station.texts(3) == Texts{number, "HELLO", "\x1b"});
    CHECK(station.source.open_ports() == 2);
    board.send("temperature 22\r\n");
    CHECK(station.open(1));
    PseudoPort later(station.folder.file("ttyACM2")); // the ports are looked through again
    CHECK(station.open(2));
    board.send(number + "\r");
    scanner.send(another + "\r");
    CHECK(station.texts(1) == Texts{another});
}

TEST_CASE("serial: a row of bytes that never ends is left alone as well")
{
    kiosk::SerialOptions options;
    options.patience = 3;
    Listening station(options);
    PseudoPort board(station.port);
    REQUIRE(station.open(1));
    for (int i = 0; i < 3; ++i)
        board.send(std::string(1024, 'x'));
    CHECK(station.open(0));
    CHECK(station.scans.take_all().empty());
}

TEST_CASE("serial: a port that was named is listened to alone, and all it sends is answered")
{
    kiosk::SerialOptions options;
    options.port = "by-id";
    Listening station(options);
    PseudoPort other(station.port);
    CHECK(station.source.troubles().empty()); // not there yet: it may be plugged in later
    PseudoPort scanner(station.folder.file("by-id"));
    REQUIRE(station.open(1));
    other.send(number + "\r");
    scanner.send("HELLO\r");
    CHECK(station.texts(1) == Texts{"HELLO"});
}

TEST_CASE("serial: a port that was named is told once when it is not there, when it is pulled, and when it is back")
{
    kiosk::SerialOptions options;
    options.port = "by-id";
    options.absent_patience = kiosk::Milliseconds{20};
    Listening station(options);
    CHECK(station.told_so_many(1));
    {
        PseudoPort scanner(station.folder.file("by-id"));
        REQUIRE(station.open(1));
        CHECK(station.told_so_many(2));
        scanner.send(number + "\r");
        CHECK(station.texts(1) == Texts{number});
    }
    CHECK(station.told_so_many(3)); // pulled out
    PseudoPort scanner(station.folder.file("by-id"));
    CHECK(station.told_so_many(4));
    const auto port = station.folder.file("by-id");
    CHECK(station.told == std::vector<SerialTrouble>{{PortTrouble::Absent, port},
                                                     {PortTrouble::Absent, port, true},
                                                     {PortTrouble::Pulled, port},
                                                     {PortTrouble::Pulled, port, true}});
}

TEST_CASE("serial: a port that may not be read is told once, and used as soon as it may")
{
    std::atomic<bool> allowed{false};
    kiosk::SerialOptions options;
    options.open = [&](const std::string& path) {
        errno = EACCES; // as of a user who is not in the group of serial ports
        return allowed ? kiosk::open_port(path) : -1;
    };
    Listening station(options);
    {
        PseudoPort scanner(station.port);
        CHECK(station.told_so_many(1));
        CHECK(becomes_true([&] { return station.woken == 1; }));
    }
    const auto second = station.folder.file("ttyACM1");
    PseudoPort other(second);
    CHECK(station.told_so_many(2)); // so it was seen that the first is gone
    PseudoPort scanner(station.port);
    CHECK(station.told_so_many(3)); // plugged in again: told again
    allowed = true;
    CHECK(station.open(2));
    scanner.send(number + "\r");
    CHECK(station.texts(1) == Texts{number});
    const SerialTrouble first{PortTrouble::Refused, station.port};
    CHECK(station.told == std::vector{first, SerialTrouble{PortTrouble::Refused, second}, first});
}

TEST_CASE("serial: a port that another program has is told after a while, and used when that one has left")
{
    kiosk::SerialOptions options;
    std::atomic<int> tries{0};
    options.open = [&](const std::string& path) {
        ++tries;
        return kiosk::open_port(path);
    };
    Listening patient(options); // a minute, as it comes
    options.busy_patience = kiosk::Milliseconds{20};
    Listening station(options);
    const auto hidden = station.folder.file("hidden");
    PseudoPort scanner(hidden);
    const int program = open(hidden.c_str(), O_RDWR | O_NOCTTY | O_CLOEXEC);
    REQUIRE(flock(program, LOCK_EX | LOCK_NB) == 0);
    std::filesystem::copy_symlink(hidden, patient.port);
    CHECK(becomes_true([&] { return tries > 9; }));
    CHECK(patient.source.troubles().empty());
    patient.source.stop();
    std::filesystem::copy_symlink(hidden, station.port);
    std::vector<SerialTrouble> told;
    CHECK(becomes_true([&] { return !(told = station.source.troubles()).empty(); }));
    CHECK(told == std::vector{SerialTrouble{PortTrouble::Busy, station.port}});
    close(program);
    CHECK(station.open(1));
    if (geteuid() != 0) // ours alone; root may open everything
        CHECK(open(hidden.c_str(), O_RDWR | O_NOCTTY | O_CLOEXEC) == -1);
}

TEST_CASE("serial: what is no serial port is told, and a source that never began ends")
{
    kiosk::SerialOptions options;
    options.port = "ttyACM9";
    Listening station(options);
    (void)station.folder.write("ttyACM9", "a file");
    std::vector<SerialTrouble> told;
    CHECK(becomes_true([&] { return !(told = station.source.troubles()).empty(); }));
    CHECK(told == std::vector{SerialTrouble{PortTrouble::NoSerialPort, station.folder.file("ttyACM9")}});
    station.source.stop();
    station.source.stop();
    kiosk::SerialSource never({}, station.scans, {});
    never.stop();
}
