// Where an entry comes from, so that every figure can answer "who says so, and since when".
#pragma once

#include "core/error.h"

#include <compare>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace core {

/// A calendar day, valid by construction.
class Date {
public:
    /// Reads "2026-11-25" (ISO 8601). Errors: BadValue, also for days that do not exist.
    [[nodiscard]] static Result<Date> parse(std::string_view text);
    /// The day of a number such as 20261125. Errors: BadValue, also for days that do not exist.
    [[nodiscard]] static Result<Date> of_number(std::int64_t number);
    /// 20261125: later days have larger numbers.
    [[nodiscard]] std::int64_t number() const { return year_ * 10'000LL + month_ * 100LL + day_; }
    /// "2026-11-25".
    [[nodiscard]] std::string text() const;
    auto operator<=>(const Date&) const = default;

private:
    Date(int year, int month, int day) : year_(year), month_(month), day_(day) {}
    int year_;
    int month_;
    int day_;
};

/// Where a product was read from, and the day on which its label was written down.
struct Origin {
    /// What kind of source it is; decides who is believed where two disagree (catalog/load/merge.h).
    enum class Kind {
        Sheet,     ///< a leader's own sheet
        Release,   ///< a published release of FoodData Central, Branded Foods
        TypedHere, ///< typed at a station
    };
    std::string source;  ///< the sheet's file name, without folders; the name of the release
    std::size_t row = 0; ///< the sheet's row; the release's record number (fdc_id)
    Date entered_on;     ///< of a release: the day on which the record was published
    Kind kind = Kind::Sheet;
    bool operator==(const Origin&) const = default;
};

} // namespace core
