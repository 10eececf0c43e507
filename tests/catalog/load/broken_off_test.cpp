// Loads that are killed, run out of disk or lose power: the catalog is the old or the new one, and whole.
#include "catalog/load/load.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/broken_disk.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <csignal>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using catalog::Store;

namespace {

std::string catalog_with(const test::TempFolder& folder, std::size_t count)
{
    const auto path = folder.file("shop.pairstand");
    Store(path).put(test::products(count));
    return path;
}

std::size_t count_in(const std::string& path)
{
    const auto store = Store::open(path, Store::Mode::ReadOnly);
    REQUIRE(store);
    return store->count();
}

} // namespace

TEST_CASE("load, broken off: killed at any time, the old or the new catalog lies there")
{
    const test::TempFolder folder;
    const auto shop = catalog_with(folder, 500);
    const auto sheet = folder.write("more.csv", test::good_sheet(2000, 1000));
    const auto old = test::bytes_of(shop);
    int found_old = 0;
    for (int milliseconds = 0; milliseconds < 400; milliseconds += 20) {
        CAPTURE(milliseconds);
        folder.write("shop.pairstand", old);
        const auto child = ::fork();
        if (child == 0) {
            const auto report = catalog::load({sheet}, shop);
            ::_exit(report ? 0 : 1);
        }
        ::usleep(static_cast<useconds_t>(milliseconds) * 1000);
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        const bool acknowledged = WIFEXITED(status) && WEXITSTATUS(status) == 0;
        const auto count = count_in(shop);
        CHECK((count == 2500 || (count == 500 && !acknowledged)));
        found_old += count == 500 ? 1 : 0;
    }
    CHECK(found_old > 0);                                      // else nothing was cut off
    CHECK(catalog::load({sheet}, shop).value().taken == 2000); // leftovers are in nobody's way
    CHECK(count_in(shop) == 2500);
}

TEST_CASE("load, broken off: a full disk is an error, and the old catalog serves on")
{
    const test::TempFolder folder;
    const auto shop = catalog_with(folder, 500);
    const auto before = test::bytes_of(shop);
    const auto sheet = folder.write("more.csv", test::good_sheet(2000, 1000));
    for (const rlim_t room : {0U, 4096U, 100'000U, 300'000U}) {
        CAPTURE(room);
        REQUIRE(room < before.size() + 300'000);
        const auto child = ::fork();
        if (child == 0) {
            std::signal(SIGXFSZ, SIG_IGN); // then writing says "file too large" instead
            const rlimit limit{room, room};
            ::setrlimit(RLIMIT_FSIZE, &limit);
            const auto report = catalog::load({sheet}, shop);
            const bool right = !report && report.error().kind == core::Error::Kind::CannotWrite &&
                               !std::filesystem::exists(shop + ".pairstand-new");
            ::_exit(right ? 0 : 1);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        CHECK(WIFEXITED(status));
        CHECK(WEXITSTATUS(status) == 0);
        CHECK(test::bytes_of(shop) == before);
    }
}

TEST_CASE("load, broken off: the power goes, and what was acknowledged is there")
{
    for (const auto unsynced : {test::BrokenDisk::Rename::Kept, test::BrokenDisk::Rename::Undone})
        for (std::size_t steps = 0; steps <= 4; ++steps) {
            CAPTURE(steps);
            const test::TempFolder folder;
            const auto shop = catalog_with(folder, 50);
            const auto sheet = folder.write("more.csv", test::good_sheet(20, 1000));
            test::BrokenDisk disk(steps, unsynced);
            bool acknowledged = false;
            try {
                acknowledged = catalog::load({sheet}, shop, {}, disk).has_value();
            } catch (const test::PowerCut&) {
                CHECK(steps < 3);
            }
            disk.restart();
            CHECK(acknowledged == (steps >= 3));
            const auto count = count_in(shop);
            CHECK((count == 70 || (count == 50 && !acknowledged)));
        }
}
