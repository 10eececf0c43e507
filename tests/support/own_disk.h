// A small file system that a test fills up or makes read-only.
#pragma once

#include <filesystem>
#include <string>
#include <sys/mount.h>

namespace test {

/// A file system of its own, of so many bytes; only an administrator can make one.
class OwnDisk {
public:
    OwnDisk(const std::string& at, const std::string& size) : at_(at)
    {
        std::filesystem::create_directories(at);
        mounted_ = ::mount("tmpfs", at.c_str(), "tmpfs", 0, ("size=" + size).c_str()) == 0;
    }
    OwnDisk(const OwnDisk&) = delete;
    OwnDisk& operator=(const OwnDisk&) = delete;
    ~OwnDisk()
    {
        if (mounted_)
            ::umount2(at_.c_str(), MNT_DETACH);
    }
    [[nodiscard]] bool is_there() const { return mounted_; }
    [[nodiscard]] bool make_read_only() const
    {
        return ::mount("tmpfs", at_.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0;
    }

private:
    std::string at_;
    bool mounted_;
};

} // namespace test
