#include "tests/support/process.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <poll.h>
#include <stdexcept>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace test {
namespace {

using Environment = std::map<std::string, std::string>;

int status_of(int waited)
{
    return WIFEXITED(waited) ? WEXITSTATUS(waited) : 128 + WTERMSIG(waited);
}

/// In the child: becomes the program. Nothing but what may be called between fork and exec.
[[noreturn]] void become(std::vector<char*>& arguments, std::vector<char*>& environment, int out, int err)
{
    if (out >= 0)
        dup2(out, STDOUT_FILENO);
    if (err >= 0)
        dup2(err, STDERR_FILENO);
    execvpe(arguments[0], arguments.data(), environment.data());
    _exit(127);
}

/// "NAME=value" of our environment with the changes.
std::vector<std::string> changed_environment(const Environment& changes)
{
    std::vector<std::string> all;
    for (char** at = environ; *at; ++at) {
        const std::string entry = *at;
        if (!changes.contains(entry.substr(0, entry.find('='))))
            all.push_back(entry);
    }
    for (const auto& [name, value] : changes)
        if (!value.empty())
            all.push_back(name + "=" + value);
    return all;
}

std::vector<char*> pointers(std::vector<std::string>& texts)
{
    std::vector<char*> all;
    for (auto& text : texts)
        all.push_back(text.data());
    all.push_back(nullptr);
    return all;
}

pid_t start(std::vector<std::string> command, const Environment& changes, int out, int err)
{
    auto arguments = pointers(command);
    auto texts = changed_environment(changes);
    auto environment = pointers(texts);
    const pid_t pid = fork();
    if (pid < 0)
        throw std::runtime_error("cannot start " + command[0]);
    if (pid == 0)
        become(arguments, environment, out, err);
    return pid;
}

/// Both ends of a pipe that no other child inherits.
std::array<int, 2> make_pipe()
{
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    return ends;
}

/// Reads both until both are closed at the other end.
void drain(int out, std::string& out_text, int err, std::string& err_text)
{
    std::array<pollfd, 2> ends{{{out, POLLIN, 0}, {err, POLLIN, 0}}};
    while (ends[0].fd >= 0 || ends[1].fd >= 0) {
        if (poll(ends.data(), ends.size(), -1) < 0 && errno != EINTR)
            return;
        for (auto& end : ends) {
            if (end.fd < 0 || end.revents == 0)
                continue;
            std::array<char, 4096> bytes{};
            const ssize_t got = read(end.fd, bytes.data(), bytes.size());
            if (got <= 0)
                end.fd = -1;
            else
                (&end == &ends[0] ? out_text : err_text).append(bytes.data(), static_cast<std::size_t>(got));
        }
    }
}

} // namespace

Ended run(const std::vector<std::string>& command, const Environment& environment)
{
    const auto out = make_pipe();
    const auto err = make_pipe();
    const pid_t pid = start(command, environment, out[1], err[1]);
    close(out[1]);
    close(err[1]);
    Ended ended;
    drain(out[0], ended.out, err[0], ended.err);
    close(out[0]);
    close(err[0]);
    int waited = 0;
    waitpid(pid, &waited, 0);
    ended.status = status_of(waited);
    return ended;
}

Running::Running(const std::vector<std::string>& command, const Environment& environment, const std::string& err,
                 int keep_open)
{
    const int file = open(err.empty() ? "/dev/null" : err.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
    if (keep_open >= 0)
        fcntl(keep_open, F_SETFD, 0);
    pid_ = start(command, environment, file, file);
    if (keep_open >= 0)
        fcntl(keep_open, F_SETFD, FD_CLOEXEC);
    close(file);
}

Running::~Running()
{
    end();
}

int Running::end()
{
    if (status_)
        return *status_;
    kill(pid_, SIGTERM);
    if (!becomes_true([this] { return !alive(); }, std::chrono::seconds(10))) {
        kill(pid_, SIGKILL);
        int waited = 0;
        waitpid(pid_, &waited, 0);
        status_ = status_of(waited);
    }
    return *status_;
}

bool Running::alive()
{
    int waited = 0;
    if (!status_ && waitpid(pid_, &waited, WNOHANG) == pid_)
        status_ = status_of(waited);
    return !status_;
}

bool becomes_true(const std::function<bool()>& holds, std::chrono::milliseconds within)
{
    const auto give_up = std::chrono::steady_clock::now() + within;
    while (!holds()) {
        if (std::chrono::steady_clock::now() > give_up)
            return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }
    return true;
}

} // namespace test
