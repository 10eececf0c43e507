// The first pass over a release: food.csv and branded_food.csv. What is needed to choose among records stays in memory,
// thirty-two bytes each; their texts are set aside.
#pragma once

#include "catalog/file/byte_stream.h"
#include "catalog/load/names_there.h"
#include "catalog/load/record_set.h"
#include "catalog/load/release_options.h"
#include "catalog/load/release_report.h"
#include "catalog/load/spill.h"
#include "catalog/read/release_food.h"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace catalog {

/// What is known of a record before its amounts are read.
struct RecordHead {
    std::uint64_t gtin; ///< 14 digits
    std::uint64_t texts_at;
    std::uint32_t texts_size;
    std::uint32_t fdc_id;
    std::uint32_t published_on; ///< 20231026; 0: unknown
    std::uint32_t modified_on;
};

/// Puts records of one product side by side, the one to take first: the newest day of publication, then the newest
/// change, then the highest number. Source: FoodData Central keeps every record ever published, one for each change.
[[nodiscard]] inline bool taken_before(const RecordHead& a, const RecordHead& b)
{
    if (a.gtin != b.gtin)
        return a.gtin < b.gtin;
    if (a.published_on != b.published_on)
        return a.published_on > b.published_on;
    if (a.modified_on != b.modified_on)
        return a.modified_on > b.modified_on;
    return a.fdc_id > b.fdc_id;
}

/// Texts as they are set aside, and back.
[[nodiscard]] std::string joined_texts(const ReleaseTexts& texts);
[[nodiscard]] ReleaseTexts split_texts(std::string_view joined);

/// Collects the records of a release.
class RecordHeads {
public:
    RecordHeads(Spill& texts, const ReleaseChoice& choice, ReleaseReport& report);

    /// Names and days of the branded foods. `go_on` is asked now and then with the bytes read; false ends the reading.
    /// Errors: those of ReleaseTable, TooLarge (more foods than memory is meant for).
    [[nodiscard]] core::Result<bool> read_foods(ByteStream& bytes, const std::string& source,
                                                const std::function<bool(std::uint64_t)>& go_on);

    /// The records. Call it behind read_foods.
    [[nodiscard]] core::Result<bool> read_branded(ByteStream& bytes, const std::string& source,
                                                  const std::function<bool(std::uint64_t)>& go_on);

    /// Takes one record, from whatever file.
    void take(std::string_view written_code, const ReleaseTexts& texts, std::string_view market, std::uint32_t fdc_id,
              std::uint32_t published_on, std::uint32_t modified_on);

    /// All records, in the order of taken_before. Nothing is left here.
    [[nodiscard]] std::vector<RecordHead> sorted();

    /// Records that were read and are not among the others. Nothing is left here.
    [[nodiscard]] RecordSet left_out() { return std::move(left_out_); }

    /// Puts into the report which categories and which market were asked for that no record has.
    void note_what_is_not_there();

private:
    struct Food {
        std::uint32_t fdc_id;
        std::uint32_t published_on;
        std::uint64_t name_at;
    };
    [[nodiscard]] const Food* food_of(std::uint32_t fdc_id) const;
    [[nodiscard]] std::string_view name_of(const Food& food) const;
    [[nodiscard]] bool is_chosen(const core::Gtin& gtin, const ReleaseTexts& texts, std::string_view market);
    [[nodiscard]] bool has_words(std::string_view name);
    void leave_out(Finding finding, std::uint32_t fdc_id, std::string_view written_code, std::string_view name);

    Spill* texts_;
    ReleaseChoice choice_;
    ReleaseReport* report_;
    std::vector<Food> foods_;
    std::string names_; ///< each ended by a line end
    std::vector<RecordHead> heads_;
    RecordSet left_out_;
    NamesThere categories_; ///< counted only where some are asked for
    NamesThere markets_;
    std::vector<std::string> words_; ///< that are asked for, folded
    std::string folded_;             ///< the name under way
};

} // namespace catalog
