// Installs that are killed, lose power or meet another one: the station has the old or the new one, and whole.
#include "tests/catalog/bundle/scene.h"
#include "tests/support/broken_disk.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <random>

using core::Error;
using test::ended_well;
using test::Scene;
using test::Snapshot;
using test::start_install;
using Kind = Error::Kind;

TEST_CASE("install broken off: killed 200 times at random moments, the old or the new one is in place")
{
    const Scene scene;
    const Snapshot snapshot(scene.station.data);
    std::chrono::duration<double, std::micro> whole = std::chrono::seconds(10);
    for (int i = 0; i < 5; ++i) { // the first one takes longer
        snapshot.restore();
        const auto begin = std::chrono::steady_clock::now();
        REQUIRE(ended_well(start_install(scene)));
        whole = std::min<decltype(whole)>(whole, std::chrono::steady_clock::now() - begin);
    }
    std::mt19937 chance(20261126); // the same moments in every run, as far as a machine can keep them
    std::uniform_real_distribution<> share(0.0, 1.2);
    int found_old = 0;
    int found_new = 0;
    for (int i = 0; i < 200; ++i) {
        CAPTURE(i);
        snapshot.restore();
        const auto child = start_install(scene);
        ::usleep(static_cast<useconds_t>(whole.count() * share(chance)));
        ::kill(child, SIGKILL);
        scene.check(ended_well(child));
        (scene.station.serves() == 3 ? found_old : found_new) += 1;
    }
    CHECK(found_old > 0); // else nothing was cut off
    CHECK(found_new > 0);
    MESSAGE("old in place: ", found_old, ", new: ", found_new);
    CHECK(scene.station.install(scene.newer)); // leftovers are in nobody's way
    scene.check(true);
}

TEST_CASE("install broken off: the power may go at any step")
{
    const Scene scene;
    const Snapshot snapshot(scene.station.data);
    for (const auto unsynced : {test::BrokenDisk::Rename::Kept, test::BrokenDisk::Rename::Undone}) {
        std::size_t steps = 0;
        for (bool finished = false; !finished; ++steps) {
            CAPTURE(steps);
            REQUIRE(steps < 100);
            snapshot.restore();
            const auto before = test::all_under(scene.station.data);
            test::BrokenDisk disk(steps, unsynced);
            try {
                finished = scene.station.install(scene.newer, {}, disk).has_value();
                CHECK(finished);
            } catch (const test::PowerCut&) {
            }
            disk.restart(scene.station.data, before);
            scene.check(finished);
        }
        CHECK(steps >= 8); // two files and the record, three folders, the rename
    }
}

TEST_CASE("install broken off: the power may go at any step of the first one, and of going back")
{
    test::Leader leader;
    const auto bundle = leader.seal("first", 3);
    const Scene scene;
    const Snapshot snapshot(scene.station.data);
    for (const auto unsynced : {test::BrokenDisk::Rename::Kept, test::BrokenDisk::Rename::Undone}) {
        for (std::size_t steps = 0; steps < 20; ++steps) {
            CAPTURE(steps);
            const test::Station station;
            test::BrokenDisk disk(steps, unsynced);
            bool done = false;
            try {
                done = station.install(bundle, leader.fingerprint(), disk).has_value();
            } catch (const test::PowerCut&) {
            }
            disk.restart(station.folder.file(""), {});
            const auto serves = station.serves();
            CHECK((serves == 3 || (!serves && !done)));
        }
        for (std::size_t steps = 0; steps < 6; ++steps) {
            CAPTURE(steps);
            snapshot.restore();
            const auto before = test::all_under(scene.station.data);
            test::BrokenDisk disk(steps, unsynced);
            bool done = false;
            try {
                done = catalog::go_back(scene.station.data, disk).has_value();
            } catch (const test::PowerCut&) {
            }
            disk.restart(scene.station.data, before);
            const auto serves = scene.station.serves();
            CHECK((serves == 2 || (serves == 3 && !done)));
        }
    }
}

TEST_CASE("install broken off: two at once, and one of them waits or wins")
{
    const Scene scene;
    {
        const auto other = catalog::FolderLock::take(catalog::bundles_folder(scene.station.data));
        REQUIRE(other);
        CHECK(scene.station.install(scene.newer).error().kind == Kind::Busy);
        CHECK(catalog::go_back(scene.station.data).error().kind == Kind::Busy);
    }
    const Snapshot snapshot(scene.station.data);
    for (int i = 0; i < 10; ++i) {
        snapshot.restore();
        const auto one = start_install(scene);
        const auto two = start_install(scene);
        const bool first = ended_well(one);
        const bool second = ended_well(two);
        CHECK((first || second));
        scene.check(true);
    }
}
