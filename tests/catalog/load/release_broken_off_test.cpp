// Loads of a release that are killed, or whose stick is pulled: the catalog is the old or the new one, and whole.
#include "catalog/load/load_release.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/own_disk.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <chrono>
#include <csignal>
#include <fstream>
#include <random>
#include <sys/resource.h>
#include <sys/wait.h>
#include <system_error>
#include <unistd.h>

using catalog::load_release;
using catalog::Store;

namespace {

constexpr std::size_t own_products = 30;

std::size_t count_in(const std::string& path)
{
    const auto store = Store::open(path, Store::Mode::ReadOnly);
    REQUIRE(store);
    return store->count();
}

/// A release of 600 products, none with an odd code.
std::string release_in(const test::TempFolder& folder)
{
    return test::make_plain_release(folder.file("release"), 600);
}

/// Breaks a load off at its last step.
struct DiskThatKeepsTheOldFile : catalog::Disk {
    void rename(const std::filesystem::path& from, const std::filesystem::path&) override
    {
        throw std::system_error(EIO, std::generic_category(), from.string());
    }
};

/// Loads in a process of its own, and kills it after a while. Whether the load said that it was done.
bool load_and_kill(const std::string& release, const std::string& shop, useconds_t after)
{
    const auto child = ::fork();
    if (child == 0)
        ::_exit(load_release(release, shop) ? 0 : 1);
    ::usleep(after);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    CHECK((WIFSIGNALED(status) || WEXITSTATUS(status) == 0)); // what an earlier one left must not stop it
    return WIFEXITED(status);
}

} // namespace

TEST_CASE("load release, broken off: killed two hundred times, the old or the new catalog lies there")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const auto shop = folder.file("shop");
    Store(shop).put(test::products(own_products));
    const auto old = test::bytes_of(shop);
    REQUIRE(load_release(release, folder.file("whole")));
    const std::size_t of_both = count_in(folder.file("whole")) + own_products;
    const auto start = std::chrono::steady_clock::now();
    REQUIRE(load_release(release, folder.file("timed")));
    const auto whole =
        std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - start).count();
    std::mt19937 dice(11);
    int cut_off = 0;
    constexpr int times = 200 / PAIRSTAND_ONE_IN;
    for (int i = 0; i < times; ++i) {
        CAPTURE(i);
        folder.write("shop", old);
        const auto after = static_cast<useconds_t>(dice() % static_cast<unsigned long>(whole));
        const bool acknowledged = load_and_kill(release, shop, after);
        const auto count = count_in(shop);
        CHECK((count == of_both || (count == own_products && !acknowledged)));
        cut_off += count == own_products ? 1 : 0;
    }
    CHECK(cut_off > times / 10); // else nothing was cut off
    folder.write("shop", old);
    const auto last = load_release(release, shop); // leftovers are in nobody's way
    CAPTURE(last ? std::string() : last.error().detail + " " + last.error().place.source);
    REQUIRE(last);
    CHECK(count_in(shop) == of_both);
    CHECK_FALSE(std::filesystem::exists(shop + ".loading"));
}

TEST_CASE("load release, broken off: what was set aside and is gone in part is read anew")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    REQUIRE(load_release(release, folder.file("whole")));
    for (const char* gone : {"texts", "heads", "left_out", "amounts-0"}) {
        CAPTURE(gone);
        DiskThatKeepsTheOldFile disk;
        REQUIRE_FALSE(load_release(release, folder.file("shop"), {}, disk));
        REQUIRE(std::filesystem::remove(folder.file("shop.loading") + "/" + gone));
        const auto loaded = load_release(release, folder.file("shop"));
        CAPTURE(loaded ? std::string() : loaded.error().detail);
        REQUIRE(loaded);
        CHECK(test::bytes_of(folder.file("shop")) == test::bytes_of(folder.file("whole")));
        std::filesystem::remove(folder.file("shop"));
    }
}

TEST_CASE("load release, broken off: a stick that was pulled leaves no catalog, and the next load is whole")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    REQUIRE(load_release(release, folder.file("whole")));
    // The amounts cannot be read, as from a stick that was pulled: the records are chosen by then.
    const auto amounts = folder.file("release/food_nutrient.csv");
    const auto content = test::bytes_of(amounts);
    const auto time = std::filesystem::last_write_time(amounts);
    std::filesystem::resize_file(amounts, 0);
    std::filesystem::last_write_time(amounts, time);
    REQUIRE_FALSE(load_release(release, folder.file("shop")));
    CHECK(std::filesystem::exists(folder.file("shop.loading/heads")));
    CHECK_FALSE(std::filesystem::exists(folder.file("shop")));
    // The same stick again: a file of another size is another release, and all of it is read again.
    std::ofstream(amounts, std::ios::binary) << content;
    std::filesystem::last_write_time(amounts, time);
    REQUIRE(load_release(release, folder.file("shop")));
    CHECK(test::bytes_of(folder.file("shop")) == test::bytes_of(folder.file("whole")));
    CHECK_FALSE(std::filesystem::exists(folder.file("shop.loading")));
}

TEST_CASE("load release, broken off: what was set aside is not read again")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    REQUIRE(load_release(release, folder.file("whole")));
    int resumed = 0;
    for (int i = 1; i <= 60 && resumed < 3; ++i) {
        load_and_kill(release, folder.file("shop"), static_cast<useconds_t>(i * 3'000));
        if (std::filesystem::exists(folder.file("shop")) || !std::filesystem::exists(folder.file("shop.loading/state")))
            continue;
        ++resumed;
        // Whoever goes on does not look into the files of the stage that is done.
        const auto branded = folder.file("release/branded_food.csv");
        const auto content = test::bytes_of(branded);
        const auto time = std::filesystem::last_write_time(branded);
        std::ofstream(branded, std::ios::binary) << std::string(content.size(), 'x');
        std::filesystem::last_write_time(branded, time);
        const auto loaded = load_release(release, folder.file("shop"));
        REQUIRE(loaded);
        CHECK(loaded->report.records == 630);
        CHECK(test::bytes_of(folder.file("shop")) == test::bytes_of(folder.file("whole")));
        std::ofstream(branded, std::ios::binary) << content;
        std::filesystem::last_write_time(branded, time);
        std::filesystem::remove(folder.file("shop"));
    }
    CHECK(resumed > 0);
}

TEST_CASE("load release, broken off: a full disk is an error, and the old catalog serves on")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const auto shop = folder.file("shop");
    Store(shop).put(test::products(own_products));
    const auto before = test::bytes_of(shop);
    for (const rlim_t room : {4'096U, 50'000U, 150'000U}) {
        CAPTURE(room);
        const auto child = ::fork();
        if (child == 0) {
            std::signal(SIGXFSZ, SIG_IGN); // then writing says "file too large" instead
            const rlimit limit{room, room};
            ::setrlimit(RLIMIT_FSIZE, &limit);
            const auto loaded = load_release(release, shop);
            ::_exit(!loaded && loaded.error().kind == core::Error::Kind::CannotWrite ? 0 : 1);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        CHECK(WIFEXITED(status));
        CHECK(WEXITSTATUS(status) == 0);
        CHECK(test::bytes_of(shop) == before);
    }
}

TEST_CASE("load release, broken off: two loads at once, the second is told to wait")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const auto held = catalog::SafeWrite::begin(folder.file("shop"));
    REQUIRE(held);
    const auto refused = load_release(release, folder.file("shop"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().kind == core::Error::Kind::Busy);
}

TEST_CASE("load release, broken off: a real small disk that is full, and one that takes no writing")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const test::OwnDisk disk(folder.file("disk"), "600k");
    if (!disk.is_there()) {
        MESSAGE("left out: no file system can be made here; the limits above stand in");
        return;
    }
    const auto shop = folder.file("disk/shop");
    Store(shop).put(test::products(own_products));
    const auto refused = [&] {
        const auto loaded = load_release(release, shop);
        REQUIRE_FALSE(loaded);
        CHECK(loaded.error().kind == core::Error::Kind::CannotWrite);
        CHECK(count_in(shop) == own_products);
        return loaded.error().detail;
    };
    CHECK_FALSE(refused().empty());
    REQUIRE(disk.make_read_only());
    CHECK_FALSE(refused().empty());
}

TEST_CASE("load release, broken off: a place that takes nothing is one error")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    for (const std::string shop : {"/proc/pairstand/shop", "/dev/null/shop"}) {
        CAPTURE(shop);
        const auto refused = load_release(release, shop);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == core::Error::Kind::CannotWrite);
    }
}

TEST_CASE("load release, broken off: a clock set back or forth changes nothing of what is loaded")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    REQUIRE(load_release(release, folder.file("whole")));
    for (const int years : {-56, 75}) { // 1970 and 2101
        CAPTURE(years);
        const auto time = std::filesystem::file_time_type::clock::now() + std::chrono::hours(24 * 365) * years;
        for (const auto& file : std::filesystem::directory_iterator(release))
            std::filesystem::last_write_time(file.path(), time);
        DiskThatKeepsTheOldFile disk;
        REQUIRE_FALSE(load_release(release, folder.file("shop"), {}, disk));
        std::filesystem::last_write_time(folder.file("shop.loading/state"), time);
        REQUIRE(load_release(release, folder.file("shop")));
        CHECK(test::bytes_of(folder.file("shop")) == test::bytes_of(folder.file("whole")));
        std::filesystem::remove(folder.file("shop"));
    }
}
