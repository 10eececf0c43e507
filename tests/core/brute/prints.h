// What a label may print for a true amount, said a second time in plain numbers; includes nothing of the program.
// Source: 21 CFR 101.9(c), (b)(7)(ii), (b)(8)(i) and (d)(7)(ii), paragraph by paragraph in prints.cpp.
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>

namespace brute {

__extension__ using Wide = __int128;

/// Everything is counted in billionths: of a gram, a calorie, a percent, a serving.
inline constexpr std::int64_t one = 1'000'000'000;

/// A number that stands on a label, and whether "less than" stands before it.
struct Print {
    std::int64_t nano = 0;
    bool less_than = false;
    auto operator<=>(const Print&) const = default;
};

/// A few prints, each once.
class Prints {
public:
    void add(Print print);
    [[nodiscard]] bool contains(Print print) const;
    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] const Print* begin() const { return all_.data(); }
    [[nodiscard]] const Print* end() const { return all_.data() + size_; }

private:
    std::array<Print, 12> all_{};
    std::size_t size_ = 0;
};

/// What becomes of a value that is exactly half way: the Code says "nearest" and is silent on it.
enum class Halves { Up, Either };

/// A family of figures that rounds in bands.
enum class Kind {
    Calories,
    Fat,
    Cholesterol,
    Sodium,
    Carbohydrate,
    Fluoride,
    WholePercent,
    VitaminPercent,
    Servings,
    ServingSize,
};

/// A true value; `exact` is false where something was cut off behind it, so that it cannot be a half.
struct Value {
    std::int64_t nano = 0;
    bool exact = true;
};

/// All lawful prints of a value.
[[nodiscard]] Prints prints(Kind kind, Value value, Halves halves);

/// The places of one vitamin or mineral.
struct Places {
    std::int64_t rdi;      ///< of adults, 21 CFR 101.9(c)(8)(iv): below 2 percent of it 0 may be printed
    std::int64_t code;     ///< the place of that RDI
    std::int64_t guidance; ///< FDA's draft guidance of January 2017
};

/// All lawful prints of an amount of a vitamin: to either place, or to a finer one.
[[nodiscard]] Prints prints(const Places& places, Value value, Halves halves);

/// What percent of the Daily Value an amount is.
[[nodiscard]] Value percent_of(std::int64_t amount, std::int64_t daily_value);

/// "Not a significant source of": below this a label may say so.
[[nodiscard]] std::int64_t may_be_left_out_below(Kind kind);

} // namespace brute
