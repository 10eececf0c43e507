// What a cell of a workbook holds, as the text that the spreadsheet shows: numbers, percents, days.
// Sources: ECMA-376 part 1, sections 18.8.30 (number formats), 18.17.4 (days as numbers); OpenDocument 1.3 part 3,
// section 19.387 (value types).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace catalog {

/// How a number format shows a number, as far as it matters to labels.
struct NumberForm {
    enum class Kind { Plain, Percent, Day, Time };
    Kind kind = Kind::Plain;
    std::size_t least_digits = 0; ///< "000000000000" shows twelve: zeros are put in front
    bool operator==(const NumberForm&) const = default;
};

/// The form of a format's code: "0.0%", "yyyy\-mm\-dd", "[$-409]d\-mmm;@", "000000000000".
[[nodiscard]] NumberForm form_of_code(std::string_view code);

/// The form of a format that has a number and no code.
[[nodiscard]] NumberForm form_of_number(int built_in);

/// A number of XML ("0.08", "1E-3"); nothing for anything else, also for what is no finite number.
[[nodiscard]] std::optional<double> parse_number(std::string_view text);

/// The number with at most 15 digits that count, as spreadsheets show it, without exponent below 10^15: "0.29" of
/// 0.28999999999999998.
[[nodiscard]] std::string number_text(double number);

/// "8%" of 0.08.
[[nodiscard]] std::string percent_text(double number);

/// The day behind a number of days since 1899-12-30, or 1904-01-01: "2026-11-25" of 46351. Nothing before 1900-03-01,
/// where programs do not agree, and after 9999.
[[nodiscard]] std::optional<std::string> day_text(double days, bool since_1904);

/// The number as a format of this form shows it.
[[nodiscard]] std::string shown_as(double number, const NumberForm& form, bool since_1904);

} // namespace catalog
