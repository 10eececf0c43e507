// Makes a release in the published layout of FoodData Central, Branded Foods, of any size: invented foods of invented
// makers, with the odd forms of codes, blanks, units and several records in the shares in which the published files
// have them. Source of the layout and the shares: FoodData Central downloads of April 2019, October 2023 and April 2026
// (columns, shares of the forms counted in 9,541 rows of October 2023).
#pragma once

#include "core/label/nutrient.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace test {

/// Which year's columns.
enum class ReleaseYear { Of2019, Of2023, Of2026 };

/// What is made.
struct ReleaseShape {
    std::size_t products = 1000; ///< different products; some have older records beside the newest
    ReleaseYear year = ReleaseYear::Of2026;
    std::uint64_t seed = 4711;
    bool rows_torn_apart = false; ///< the nutrients of one food lie all over the file, not one behind the other
    bool odd_codes = true;        ///< codes in every form that was seen; otherwise 12 digits each
};

/// One figure as the package prints it, and as the release keeps it.
struct MadeFigure {
    core::Nutrient nutrient;
    std::int64_t printed_nano; ///< in the nutrient's base unit
    bool less_than = false;
    bool by_percent = false; ///< the package prints a percent and no amount
    int published_id = 0;    ///< the nutrient's number in the release
    std::string per_100;     ///< as the release prints it
};

/// One record.
struct MadeRecord {
    std::uint32_t fdc_id = 0;
    std::string gtin_14; ///< what the code stands for
    std::string code;    ///< as the release writes it
    std::string name;
    std::string published_on; ///< 2023-10-26
    std::int64_t serving_micro = 0;
    bool in_milliliters = false;
    bool newest = true; ///< no later record of the same product
    std::vector<MadeFigure> figures;
};

/// What came of it.
struct MadeRelease {
    std::size_t records = 0;
    std::size_t nutrient_rows = 0;
    std::uintmax_t bytes = 0;
};

/// Writes food.csv, branded_food.csv, food_nutrient.csv and nutrient.csv into `folder`, which is made; `see` gets every
/// record as it is written. Throws std::runtime_error when the disk refuses.
MadeRelease make_release(const ReleaseShape& shape, const std::filesystem::path& folder,
                         const std::function<void(const MadeRecord&)>& see = {});

/// The same of so many products, none with an odd code. Returns the folder.
std::string make_plain_release(const std::filesystem::path& folder, std::size_t products);

} // namespace test
