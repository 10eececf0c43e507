// How long a generated release takes to load, against what sqlite3 needs to import and index the same files.
// release_bench [PRODUCTS [FOLDER]]: 400,000 where nothing is said; a folder keeps the release for the next run.
#include "catalog/load/load_release.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <stdexcept>
#include <string>

namespace {

double seconds_since(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Memory that is this program's own, at its most: VmHWM counts pages of files too, so it is an upper bound.
double peak_megabytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::stod(line.substr(6)) / 1024;
    return 0;
}

double sqlite3_seconds(const std::string& folder)
{
    const std::string script = folder + "/import.sql";
    std::ofstream(script) << ".mode csv\n"
                          << ".import " << folder << "/food.csv food\n"
                          << ".import " << folder << "/branded_food.csv branded_food\n"
                          << ".import " << folder << "/food_nutrient.csv food_nutrient\n"
                          << "CREATE INDEX by_gtin ON branded_food (gtin_upc);\n"
                          << "CREATE INDEX by_food ON food_nutrient (fdc_id);\n";
    const std::string database = folder + "/import.db";
    const auto start = std::chrono::steady_clock::now();
    if (std::system(("sqlite3 " + database + " < " + script).c_str()) != 0)
        throw std::runtime_error("sqlite3 did not import");
    const double seconds = seconds_since(start);
    std::filesystem::remove(database);
    std::filesystem::remove(script);
    return seconds;
}

void measure(std::size_t products, const std::string& folder)
{
    if (!std::filesystem::exists(folder + "/food_nutrient.csv")) {
        test::ReleaseShape shape;
        shape.products = products;
        test::make_release(shape, folder);
    }
    const auto catalog = folder + "/catalog.pairstand";
    std::filesystem::remove(catalog);
    const auto start = std::chrono::steady_clock::now();
    const auto loaded = catalog::load_release(folder, catalog);
    const double ours = seconds_since(start);
    if (!loaded)
        throw std::runtime_error(loaded.error().detail);
    const auto& report = loaded->report;
    const auto size = static_cast<double>(std::filesystem::file_size(catalog));
    std::printf("%zu records, %zu amounts, %.1f MB of CSV; %zu products taken\n", report.records, report.amounts,
                static_cast<double>(report.bytes) / 1e6, report.taken);
    std::printf("  peak memory %.0f MB\n", peak_megabytes());
    std::printf("  catalog %.1f MB, x %.3f of the CSV, %.0f bytes a product\n", size / 1e6,
                size / static_cast<double>(report.bytes), size / static_cast<double>(report.taken));
    const double theirs = sqlite3_seconds(folder);
    std::printf("  sqlite3: import and two indices %8.2f s   x 1.000\n", theirs);
    std::printf("  load_release                    %8.2f s   x %.3f\n", ours, ours / theirs);
    std::filesystem::remove(catalog);
}

} // namespace

int main(int count, char** words)
{
    try {
        const test::TempFolder own;
        measure(count > 1 ? std::strtoull(words[1], nullptr, 10) : 400'000, count > 2 ? words[2] : own.file("release"));
        return 0;
    } catch (const std::exception& broken) {
        std::fprintf(stderr, "%s\n", broken.what());
        return 2;
    }
}
