// How long a generated release takes to load, against what sqlite3 needs to import and index the same files.
// release_bench [PRODUCTS [FOLDER [cold]]]: 400,000 where nothing is said; a folder keeps the release for the next run.
// cold: what the system remembers of the files is forgotten before each, as after a restart. The processor's seconds
// stand beside the clock's: they say the same on a machine that others use.
#include "catalog/load/load_release.h"
#include "tests/bench/timing.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fcntl.h>
#include <fstream>
#include <stdexcept>
#include <string>
#include <sys/resource.h>
#include <unistd.h>

namespace {

double seconds_since(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

struct Taken {
    double seconds;
    double processor;
};

double processor_seconds(int of)
{
    rusage used{};
    ::getrusage(of, &used);
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

/// Makes the system forget the files of a release, so that they are read from the disk again.
void forget(const std::string& folder)
{
    ::sync();
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const int file = ::open(entry.path().c_str(), O_RDONLY | O_CLOEXEC);
        if (file < 0)
            continue;
        ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
        ::close(file);
    }
}

template<class Work>
Taken take_time(int of, Work work)
{
    const double before = processor_seconds(of);
    const auto start = std::chrono::steady_clock::now();
    work();
    return {seconds_since(start), processor_seconds(of) - before};
}

Taken sqlite3_time(const std::string& folder)
{
    const std::string script = folder + "/import.sql";
    std::ofstream(script) << ".mode csv\n"
                          << ".import " << folder << "/food.csv food\n"
                          << ".import " << folder << "/branded_food.csv branded_food\n"
                          << ".import " << folder << "/food_nutrient.csv food_nutrient\n"
                          << "CREATE INDEX by_gtin ON branded_food (gtin_upc);\n"
                          << "CREATE INDEX by_food ON food_nutrient (fdc_id);\n";
    const std::string database = folder + "/import.db";
    const auto taken = take_time(RUSAGE_CHILDREN, [&] {
        if (std::system(("sqlite3 " + database + " < " + script).c_str()) != 0)
            throw std::runtime_error("sqlite3 did not import");
    });
    std::filesystem::remove(database);
    std::filesystem::remove(script);
    return taken;
}

void row(const char* what, const Taken& taken, const Taken& theirs)
{
    std::printf("  %-31s %8.2f s   x %.3f   processor %8.2f s   x %.3f\n", what, taken.seconds,
                taken.seconds / theirs.seconds, taken.processor, taken.processor / theirs.processor);
}

void measure(std::size_t products, const std::string& folder, bool cold)
{
    if (!std::filesystem::exists(folder + "/food_nutrient.csv")) {
        test::ReleaseShape shape;
        shape.products = products;
        test::make_release(shape, folder);
    }
    const auto catalog = folder + "/catalog.pairstand";
    std::filesystem::remove(catalog);
    if (cold)
        forget(folder);
    core::Result<catalog::ReleaseLoaded> loaded;
    const auto ours = take_time(RUSAGE_SELF, [&] { loaded = catalog::load_release(folder, catalog); });
    if (!loaded)
        throw std::runtime_error(loaded.error().detail);
    const auto& report = loaded->report;
    const auto size = static_cast<double>(std::filesystem::file_size(catalog));
    std::printf("%zu records, %zu amounts, %.1f MB of CSV; %zu products taken\n", report.records, report.amounts,
                static_cast<double>(report.bytes) / 1e6, report.taken);
    std::printf("  peak memory %.0f MB\n", bench::peak_megabytes());
    std::printf("  catalog %.1f MB, x %.3f of the CSV, %.0f bytes a product\n", size / 1e6,
                size / static_cast<double>(report.bytes), size / static_cast<double>(report.taken));
    if (cold)
        forget(folder);
    const auto theirs = sqlite3_time(folder);
    row("sqlite3: import and two indices", theirs, theirs);
    row("load_release", ours, theirs);
    std::filesystem::remove(catalog);
}

} // namespace

int main(int count, char** words)
{
    try {
        const test::TempFolder own;
        measure(count > 1 ? std::strtoull(words[1], nullptr, 10) : 400'000, count > 2 ? words[2] : own.file("release"),
                count > 3);
        return 0;
    } catch (const std::exception& broken) {
        std::fprintf(stderr, "%s\n", broken.what());
        return 2;
    }
}
