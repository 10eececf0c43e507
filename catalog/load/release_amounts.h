// The second pass over a release: its amounts, thirty million rows in any order, sorted into parts that fit into memory
// one after the other.
#pragma once

#include "catalog/load/release_heads.h"
#include "catalog/read/release_json.h"

#include <array>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <vector>

namespace catalog {

/// An amount as it is set aside.
struct SpilledAmount {
    std::uint32_t place; ///< of its record among the sorted heads
    std::uint32_t mantissa;
    std::uint8_t nutrient;
    std::uint8_t derivation;
    std::int8_t decimals;
    std::uint8_t percent; ///< 255: none
};
static_assert(sizeof(SpilledAmount) == 12);

/// Which place a record has, by its number.
class PlaceOfRecord {
public:
    explicit PlaceOfRecord(const std::vector<RecordHead>& heads);
    static constexpr std::uint32_t none = 0xFFFFFFFF;
    [[nodiscard]] std::uint32_t operator[](std::uint32_t fdc_id) const;

private:
    std::uint32_t first_ = 0;
    std::vector<std::uint32_t> direct_; ///< by number, where numbers lie close enough
    std::vector<std::pair<std::uint32_t, std::uint32_t>> sorted_;
};

/// The amounts of a release, by parts of the sorted heads. All records of one product lie in one part.
class AmountParts {
public:
    /// Parts for these heads; their files lie in `folder`. With `again` opens what an earlier load wrote.
    AmountParts(const std::vector<RecordHead>& heads, const std::filesystem::path& folder, bool again = false);

    /// Sets one amount aside. A record with more rows than any label has lines loses the last ones.
    void add(std::uint32_t place, SpilledAmount amount);
    void flush();

    [[nodiscard]] std::size_t parts() const { return starts_.size() - 1; }
    /// The heads of a part: [first, last).
    [[nodiscard]] std::size_t first_of(std::size_t part) const { return starts_[part]; }
    [[nodiscard]] std::size_t last_of(std::size_t part) const { return starts_[part + 1]; }
    /// All amounts of a part, by place; those of one record in the order in which they came.
    [[nodiscard]] std::vector<SpilledAmount> read(std::size_t part) const;
    /// How many amounts each record has.
    [[nodiscard]] std::uint8_t count_of(std::size_t place) const { return counts_[place]; }

private:
    std::vector<std::size_t> starts_;
    std::vector<std::uint8_t> counts_;
    std::vector<Spill> spills_;
};

/// Reads food_nutrient.csv into `parts`. Amounts of records that were left out are passed over; those of foods without
/// a record are counted. Errors: those of ReleaseTable. False where `go_on` ended it.
[[nodiscard]] core::Result<bool> read_amounts(ByteStream& bytes, const std::string& source,
                                              const PlaceOfRecord& place_of, const RecordSet& left_out,
                                              AmountParts& parts, ReleaseReport& report,
                                              const std::function<bool(std::uint64_t)>& go_on);

/// The amounts of one food of the JSON form; nothing for one that was left out.
void add_amounts(const JsonFood& food, const PlaceOfRecord& place_of, AmountParts& parts, ReleaseReport& report);

} // namespace catalog
