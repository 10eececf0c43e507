// Serving size, servings per container and net quantity read together: each tells something of the other two.
// Sources: 21 CFR 101.9(b)(7)(ii), (b)(8)(i); net quantity: 21 CFR 101.7.
#pragma once

#include "core/label/label.h"

#include <cstdint>
#include <optional>

namespace core {

/// True values from low to high, in billionths; both are the same where the label prints an exact number.
struct Span {
    std::int64_t low = 0;
    std::int64_t high = 0;
    [[nodiscard]] constexpr bool exact() const { return low == high; }
    bool operator==(const Span&) const = default;
};

/// What the sizes of one label allow together.
struct Sizes {
    std::optional<Span> serving;    ///< one serving in grams or millilitres; nothing where none is printed
    std::optional<Span> servings;   ///< per container; nothing where varied, not printed, off the rule or contradicted
    std::optional<Span> net;        ///< the net quantity in the serving's own unit, where it says something of servings
    bool contradict = false;        ///< no serving and number of servings come to the net quantity
    bool serving_narrowed = false;  ///< by net quantity and servings
    bool servings_narrowed = false; ///< by net quantity and serving size
    bool operator==(const Sizes&) const = default;
};

/// Reads the three together. A number of servings without "about" is exact, unless the net quantity shows that it was
/// rounded all the same; then it is read as if "about" stood before it. Nothing is concluded from a net quantity in
/// another unit than the serving, nor where either speaks of drained weight.
[[nodiscard]] Sizes sizes_of(const Label& label);

} // namespace core
