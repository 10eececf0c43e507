// Programs that a test starts and ends again: by their own process number, never by name.
#pragma once

#include <chrono>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <sys/types.h>
#include <vector>

namespace test {

/// What a program that has ended left.
struct Ended {
    int status = -1; ///< exit status; 128 and the signal's number when a signal ended it
    std::string out;
    std::string err;
};

/// Runs a program to its end. `environment` is set on top of ours; an empty value takes a variable away.
/// Throws std::runtime_error when it cannot be started.
[[nodiscard]] Ended run(const std::vector<std::string>& command,
                        const std::map<std::string, std::string>& environment = {});

/// A program that runs beside the test; ended, and waited for, with the scope.
class Running {
public:
    /// `out` and `err` are files that its output goes into; empty: nowhere.
    explicit Running(const std::vector<std::string>& command,
                     const std::map<std::string, std::string>& environment = {}, const std::string& err = {},
                     int keep_open = -1);
    ~Running();
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;

    [[nodiscard]] pid_t pid() const { return pid_; }
    /// Asks it to end (SIGTERM) and waits; its exit status as in Ended. Kills it after ten seconds.
    int end();
    /// Whether it is still there.
    [[nodiscard]] bool alive();

private:
    pid_t pid_;
    std::optional<int> status_;
};

/// Asks again and again until something holds; false when it did not within that time.
[[nodiscard]] bool becomes_true(const std::function<bool()>& holds,
                                std::chrono::milliseconds within = std::chrono::seconds(60));

} // namespace test
