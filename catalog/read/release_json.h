// The JSON form of a release: {"BrandedFoods": [ {...}, ... ]}, read food by food, however large the file is; or one
// food by itself, as the web service gives it.
// Source: FoodData Central, JSON downloads of July 2021 and later, and the answers of its web service (field names;
// amounts with three digits; numbers such as 0E-8). RFC 8259.
#pragma once

#include "catalog/file/byte_stream.h"
#include "catalog/read/release_food.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace catalog {

/// One food of the file; its texts in the order of ReleaseText.
struct JsonFood {
    std::uint32_t fdc_id = 0;
    std::string code;
    std::array<std::string, release_text_count> texts;
    std::string market;
    std::uint32_t published_on = 0; ///< 20231026; 0: unknown
    std::uint32_t modified_on = 0;
    std::vector<ReleaseRow> amounts;
    std::size_t bad_amounts = 0; ///< amounts that are no numbers

    [[nodiscard]] ReleaseTexts views() const;
};

/// How many digits the amounts of a JSON download have.
inline constexpr int json_digits = 3;

/// Calls `take` for every food. `go_on` is asked now and then with the bytes read; false ends the reading, and the
/// answer is false. Errors: TornFile (no JSON, or cut off; `place.found` says where), TooLarge (a value without end),
/// NoFoods, CannotRead.
[[nodiscard]] core::Result<bool> read_release_json(ByteStream& bytes, const std::string& source,
                                                   const std::function<void(const JsonFood&)>& take,
                                                   const std::function<bool(std::uint64_t)>& go_on);

} // namespace catalog
