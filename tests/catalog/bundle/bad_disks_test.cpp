// Installs that run out of disk or of stick, or are handed what cannot be right: nothing changes on the station.
#include "tests/catalog/bundle/scene.h"
#include "tests/support/broken_disk.h"
#include "tests/support/own_disk.h"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <fstream>
#include <system_error>

using core::Error;
using test::Scene;
using Kind = Error::Kind;

namespace fs = std::filesystem;

namespace {

/// A disk that takes so many bytes and then no more.
class FullDisk : public catalog::Disk {
public:
    explicit FullDisk(std::size_t takes) : left_(takes) {}
    void write(int handle, std::span<const std::uint8_t> bytes) override
    {
        const auto fits = std::min(left_, bytes.size());
        catalog::Disk::write(handle, bytes.first(fits));
        left_ -= fits;
        if (fits < bytes.size())
            throw std::system_error(ENOSPC, std::generic_category());
    }

private:
    std::size_t left_;
};

/// A disk that says how much room it has.
class SmallDisk : public catalog::Disk {
public:
    explicit SmallDisk(std::uint64_t room) : room_(room) {}
    std::uint64_t room(const fs::path&) override { return room_; }

private:
    std::uint64_t room_;
};

/// A stick that is pulled out after so many bytes: reading fails, or there is nothing more.
class PulledStick : public catalog::ByteStream {
public:
    PulledStick(const std::string& file, std::uint64_t reads, bool fails)
        : file_(file, std::ios::binary), size_(fs::file_size(file)), left_(reads), fails_(fails)
    {
    }
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    [[nodiscard]] core::Result<std::size_t> read(char* bytes, std::size_t size) override
    {
        const auto wanted = std::min<std::uint64_t>(size, left_);
        if (wanted < size && fails_)
            return core::refuse(Kind::CannotRead, std::generic_category().message(EIO));
        file_.read(bytes, static_cast<std::streamsize>(wanted));
        left_ -= static_cast<std::uint64_t>(file_.gcount());
        return static_cast<std::size_t>(file_.gcount());
    }

private:
    std::ifstream file_;
    std::uint64_t size_;
    std::uint64_t left_;
    bool fails_;
};

/// Says that there is room whatever there is: the disk fills up while it is written to.
struct FillsUp : catalog::Disk {
    std::uint64_t room(const fs::path&) override { return ~0ULL; }
};

} // namespace

TEST_CASE("install bad disk: a disk that fills up is an error, and nothing is left on it")
{
    const Scene scene;
    const auto before = test::all_under(scene.station.data);
    const auto size = fs::file_size(scene.newer);
    for (std::size_t takes = 0; takes < size; takes += size / 23) {
        CAPTURE(takes);
        FullDisk disk(takes);
        const auto refused = scene.station.install(scene.newer, {}, disk);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == Kind::CannotWrite);
        CHECK(test::all_under(scene.station.data) == before);
        scene.check(false);
    }
    CHECK(scene.station.serves() == 3);
}

TEST_CASE("install bad disk: too little room is seen before anything is written")
{
    const Scene scene;
    SmallDisk disk(fs::file_size(scene.newer));
    const auto refused = scene.station.install(scene.newer, {}, disk);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().kind == Kind::NoRoom);
    CHECK(refused.error().place.found == "0");
    CHECK(refused.error().place.expected == "9"); // 8 MB that are always left, and the bundle
    CHECK(scene.station.serves() == 3);
}

TEST_CASE("install bad disk: a real small disk that is full, and one that takes no writing")
{
    const Scene scene;
    const test::TempFolder place;
    const test::OwnDisk disk(place.file("disk"), "200k");
    if (!disk.is_there()) {
        MESSAGE("left out: no file system can be made here; the disks above stand in");
        return;
    }
    const auto data = place.file("disk/pairstand");
    fs::copy(scene.station.data, data, fs::copy_options::recursive);
    const auto first = catalog::install({scene.newer, data, {}});
    REQUIRE_FALSE(first);
    CHECK(first.error().kind == Kind::NoRoom); // seen by statvfs
    const auto filler = place.file("disk/filler");
    std::ofstream(filler) << std::string(400'000, 'x'); // as much of it as fits
    FillsUp fills_up;
    const auto full = catalog::install({scene.newer, data, {}}, fills_up); // met by write
    REQUIRE_FALSE(full);
    CHECK(full.error().kind == Kind::CannotWrite);
    CHECK(full.error().detail == std::generic_category().message(ENOSPC));
    fs::remove(filler);
    REQUIRE(disk.make_read_only());
    const auto read_only = catalog::install({scene.newer, data, {}}, fills_up);
    REQUIRE_FALSE(read_only);
    CHECK(read_only.error().kind == Kind::CannotWrite);
    CHECK(read_only.error().detail == std::generic_category().message(EROFS));
    const auto installed = catalog::read_installed(data);
    REQUIRE(installed);
    CHECK(catalog::Store::open(catalog::catalog_of(data, *installed->now), catalog::Store::Mode::ReadOnly)->count() ==
          3);
}

TEST_CASE("install bad disk: a place that takes nothing is one error")
{
    test::Leader leader;
    const auto bundle = leader.seal("first", 2);
    for (const std::string data : {"/proc/pairstand", "/dev/null/pairstand"}) {
        CAPTURE(data);
        const auto refused = catalog::install({bundle, data, leader.fingerprint()});
        REQUIRE_FALSE(refused);
        CHECK(refused.error().kind == Kind::CannotWrite);
    }
}

TEST_CASE("install bad disk: a stick that is pulled out is an error, wherever it was read")
{
    const Scene scene;
    const auto before = test::all_under(scene.station.data);
    const auto size = fs::file_size(scene.newer);
    for (const bool fails : {true, false})
        for (std::uint64_t reads = 0; reads < size; reads += size / 37) {
            CAPTURE(fails);
            CAPTURE(reads);
            PulledStick stick(scene.newer, reads, fails);
            const auto refused = catalog::install(stick, {scene.newer, scene.station.data, {}});
            REQUIRE_FALSE(refused);
            if (fails || reads > 1000)
                CHECK(refused.error().kind == Kind::CannotRead);
            CHECK(test::all_under(scene.station.data) == before);
        }
    PulledStick whole(scene.newer, size + 1, false);
    CHECK(catalog::install(whole, {scene.newer, scene.station.data, {}}));
    CHECK(scene.station.serves() == 200);
}

TEST_CASE("install bad disk: damaged and half copied bundles change nothing on the disk")
{
    const Scene scene;
    const auto before = test::all_under(scene.station.data);
    const auto bytes = test::bytes_of(scene.newer);
    const auto refused = [&](const std::string& other) {
        const auto result = scene.station.install(scene.leader.folder.write("other", other));
        REQUIRE_FALSE(result);
        CHECK(test::all_under(scene.station.data) == before);
        return result.error();
    };
    auto damaged = bytes;
    damaged[bytes.size() / 2] ^= 1;
    CHECK(refused(damaged).kind == Kind::DamagedBundle);
    CHECK(refused(damaged).place.found == "catalog.db");
    CHECK(refused(bytes.substr(0, bytes.size() / 2)).kind == Kind::CutBundle);
    CHECK(refused("").kind == Kind::NoBundle);
    CHECK(scene.station.install(scene.leader.folder.file("none")).error().kind == Kind::NoSuchFile);
    CHECK(scene.station.install(scene.leader.folder.file("")).error().kind == Kind::IsFolder);
    CHECK(scene.station.install("/dev/zero").error().kind == Kind::CannotRead);
    CHECK(scene.station.serves() == 3);
}

TEST_CASE("install bad disk: a record that was changed by hand stops the install, and is not written over")
{
    const Scene scene;
    const auto record = catalog::installed_file(scene.station.data);
    fs::resize_file(record, 40);
    CHECK(scene.station.install(scene.newer).error().kind == Kind::DamagedRecord);
    CHECK(catalog::go_back(scene.station.data).error().kind == Kind::DamagedRecord);
    CHECK(fs::file_size(record) == 40);
    fs::rename(record, scene.station.folder.file("away"));
    CHECK(scene.station.install(scene.newer, scene.leader.fingerprint()));
    CHECK(scene.station.serves() == 200);
}

// The clock of a station without network is anything: neither dates of files nor those in bundles decide.
TEST_CASE("install bad disk: a clock set back or forth changes nothing")
{
    test::Leader leader;
    const auto shop = leader.folder.file("shop.db");
    catalog::Store(shop).put(test::products(4));
    const auto sealed_on = [&](const char* day, std::uint64_t counter) {
        catalog::SealOrder order{shop,        {},       {},
                                 leader.keys, "Winter", "Cedar Hollow",
                                 day,         counter,  leader.folder.file(std::string("b") + std::to_string(counter))};
        REQUIRE(catalog::seal(order));
        const auto age = std::chrono::hours(24 * 365 * 20) * (counter % 2 == 0 ? 1 : -1);
        fs::last_write_time(order.out, fs::file_time_type::clock::now() + age);
        return order.out.string();
    };
    const test::Station station;
    const auto from_1970 = sealed_on("1970-01-01", 5);
    REQUIRE(station.install(sealed_on("2099-12-31", 4), leader.fingerprint()));
    fs::last_write_time(catalog::installed_file(station.data),
                        fs::file_time_type::clock::now() + std::chrono::hours(24 * 365 * 30));
    CHECK(station.install(from_1970)); // newer by its counter
    CHECK(station.install(sealed_on("2150-01-01", 3)).error().kind == Kind::OlderBundle);
    CHECK(station.install(sealed_on("not a day", 6)));
}
