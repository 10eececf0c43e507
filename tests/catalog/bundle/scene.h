// A station with bundles in place and a newer one at hand, for tests that break an install off.
#pragma once

#include "tests/catalog/bundle/leader.h"

#include <filesystem>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace test {

namespace fs = std::filesystem;

/// A station with a bundle of 3 products in place, another of 2 before it, and a newer one of 200 at hand.
struct Scene {
    Leader leader;
    Station station;
    std::string newer;

    Scene()
    {
        REQUIRE(station.install(leader.seal("first", 2), leader.fingerprint()));
        REQUIRE(station.install(leader.seal("second", 3)));
        newer = leader.seal("newer", 200);
    }

    /// Whatever happened: one of the two is in place, whole, and there is a way back to a whole one.
    void check(bool acknowledged) const
    {
        const auto products = station.serves();
        CHECK((products == 200 || (products == 3 && !acknowledged)));
        const auto installed = catalog::read_installed(station.data);
        REQUIRE(installed);
        REQUIRE(installed->before);
        const auto before =
            catalog::Store::open(catalog::catalog_of(station.data, *installed->before), catalog::Store::Mode::ReadOnly);
        REQUIRE(before);
        CHECK(before->count() == (products == 200 ? 3 : 2));
    }
};

/// Sets a station's folder back to what it was.
class Snapshot {
public:
    explicit Snapshot(const std::string& data) : data_(data), kept_(data + ".kept")
    {
        fs::copy(data_, kept_, fs::copy_options::recursive);
    }
    void restore() const
    {
        fs::remove_all(data_);
        fs::copy(kept_, data_, fs::copy_options::recursive);
    }

private:
    std::string data_;
    std::string kept_;
};

/// For what is killed: what a killed program had written is there, synced or not, and syncing takes most of the time.
struct Unsynced : catalog::Disk {
    void sync_file(const fs::path&) override {}
    void sync_folder(const fs::path&) override {}
};

inline pid_t start_install(const Scene& scene)
{
    const pid_t child = ::fork();
    if (child == 0) {
        Unsynced disk;
        ::_exit(catalog::install({scene.newer, scene.station.data, {}}, disk) ? 0 : 1);
    }
    REQUIRE(child > 0);
    return child;
}

inline bool ended_well(pid_t child)
{
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace test
