// A load taken back: one whole catalog lies in place at every step, and what is not kept is not offered.
#include "catalog/load/load.h"
#include "catalog/load/undo.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <string>
#include <system_error>

namespace {

namespace fs = std::filesystem;

/// Ends like a killed program: at one step nothing more is done, and nothing is put right.
struct Killed {};

class KilledDisk : public catalog::Disk {
public:
    explicit KilledDisk(std::size_t steps) : steps_left_(steps) {}
    void sync_file(const fs::path& file) override
    {
        step();
        Disk::sync_file(file);
    }
    void rename(const fs::path& from, const fs::path& to) override
    {
        step();
        Disk::rename(from, to);
    }
    void link(const fs::path& file, const fs::path& other_name) override
    {
        step();
        Disk::link(file, other_name);
    }
    void sync_folder(const fs::path& folder) override
    {
        step();
        Disk::sync_folder(folder);
    }

private:
    void step()
    {
        if (steps_left_ == 0)
            throw Killed{};
        --steps_left_;
    }
    std::size_t steps_left_;
};

/// A disk that has no second names for files, as sticks have it, and then no room for a copy.
class FullDisk : public catalog::Disk {
public:
    void link(const fs::path&, const fs::path&) override
    {
        throw std::system_error(std::make_error_code(std::errc::no_space_on_device));
    }
};

std::size_t count(const std::string& catalog)
{
    const auto store = catalog::Store::open(catalog, catalog::Store::Mode::ReadOnly);
    REQUIRE(store);
    return store->count();
}

void load(const std::string& sheet, const std::string& catalog, bool keep = true,
          catalog::Disk& disk = catalog::real_disk())
{
    const auto report = catalog::load({sheet}, catalog, {false, keep, {}}, disk);
    REQUIRE(report);
    REQUIRE(report->taken > 0);
}

/// Outside of a check, which would take what is thrown for a fault.
void undone_by(const std::string& catalog, catalog::Disk& disk)
{
    const auto undone = catalog::undo_load(catalog, disk);
    REQUIRE(undone);
}

} // namespace

TEST_CASE("undo: brings the catalog back as it was before the last load, and a second time undoes that")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    CHECK(catalog::can_undo(shop));
    load(folder.write("b.csv", test::good_sheet(2, 100)), shop);
    CHECK(count(shop) == 5);
    REQUIRE(catalog::undo_load(shop));
    CHECK(count(shop) == 3);
    REQUIRE(catalog::undo_load(shop));
    CHECK(count(shop) == 5);
}

TEST_CASE("undo: before the first load there was no label")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    CHECK(!catalog::can_undo(shop));
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    REQUIRE(catalog::undo_load(shop));
    CHECK(count(shop) == 0);
    REQUIRE(catalog::undo_load(shop));
    CHECK(count(shop) == 3);
}

TEST_CASE("undo: nothing is copied: the former catalog keeps its place on the disk under a second name")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    const auto before = folder.file("before.db");
    fs::create_hard_link(shop, before);
    load(folder.write("b.csv", test::good_sheet(2, 100)), shop);
    CHECK(fs::equivalent(before, catalog::former_of(shop)));
}

TEST_CASE("undo: a load that keeps nothing leaves nothing to go back to, not even what is two loads old")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    load(folder.write("b.csv", test::good_sheet(2, 100)), shop, false);
    CHECK(!catalog::can_undo(shop));
    const auto undone = catalog::undo_load(shop);
    REQUIRE(!undone);
    CHECK(undone.error().kind == core::Error::Kind::NothingBefore);
    CHECK(count(shop) == 5);
}

TEST_CASE("undo: a kept catalog that is no good is refused, and the one in place stays")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    fs::remove(catalog::former_of(shop));
    folder.write("shop.db.pairstand-before", "no catalog");
    CHECK(!catalog::undo_load(shop));
    CHECK(count(shop) == 3);
}

TEST_CASE("undo: a kill at any step of load and undo leaves a whole catalog in place, and loading goes on")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    const auto first = folder.write("a.csv", test::good_sheet(3));
    const auto second = folder.write("b.csv", test::good_sheet(2, 100));
    bool done = false;
    for (std::size_t steps = 0; !done; ++steps) {
        CAPTURE(steps);
        REQUIRE(steps < 30);
        for (const bool undo : {false, true}) {
            CAPTURE(undo);
            for (const char* name : {"shop.db", "shop.db.pairstand-before", "shop.db.pairstand-new"})
                fs::remove(folder.file(name));
            load(first, shop);
            if (undo)
                load(second, shop);
            KilledDisk disk(steps);
            done = true;
            try {
                if (undo)
                    undone_by(shop, disk);
                else
                    load(second, shop, true, disk);
            } catch (const Killed&) {
                done = false;
            }
            const auto labels = count(shop);
            CHECK((labels == 3 || labels == 5));
            for (int times = 0; times < 2 && catalog::can_undo(shop); ++times) { // whatever is offered can be had
                const auto undone = catalog::undo_load(shop);
                CHECK(undone);
            }
            CHECK(count(shop) == labels);
            load(second, shop);
            CHECK(count(shop) == 5);
        }
    }
}

TEST_CASE("undo: where the former catalog cannot be kept nothing is loaded, and the sentence has the system's word")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    FullDisk disk;
    const auto report = catalog::load({folder.write("b.csv", test::good_sheet(2, 100))}, shop, {false, true, {}}, disk);
    REQUIRE(!report);
    CHECK(report.error().kind == core::Error::Kind::CannotWrite);
    CHECK(report.error().detail == std::make_error_code(std::errc::no_space_on_device).message());
    CHECK(count(shop) == 3);
}

TEST_CASE("load: is ended between its steps, and then nothing is changed")
{
    const test::TempFolder folder;
    const auto shop = folder.file("shop.db");
    load(folder.write("a.csv", test::good_sheet(3)), shop);
    const auto more = folder.write("b.csv", test::good_sheet(2, 100));
    int asked = 0;
    for (int last = 0;; ++last) {
        asked = 0;
        const auto report = catalog::load({more}, shop, {false, true, [&] { return asked++ < last; }});
        REQUIRE(report);
        if (!report->cancelled)
            break;
        REQUIRE(last < 20);
        CHECK(report->taken == 0);
        CHECK(count(shop) == 3);
    }
    CHECK(asked >= 3);
    CHECK(count(shop) == 5);
}
