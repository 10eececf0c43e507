// Names that stand under several numbers: a doubt that no label shows alone.
#pragma once

#include "core/product.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace catalog {

/// One number of a group.
struct NamedAlike {
    core::Gtin gtin;
    bool doubted; ///< as it was told to `add`
};

/// Numbers that share one name and brand, by rising number.
using SameName = std::vector<NamedAlike>;

/// Collects names of many products, 16 bytes each: of two million that is 32 MB.
class Duplicates {
public:
    /// Takes name and brand of a product in; capitals, blanks and signs are ignored. `doubted` is only kept.
    void add(const core::Product& product, bool doubted = false);

    /// Calls `visit` with every group of two and more that look the same, in an order that is always the same. Names
    /// are told apart by 64-bit hashes: whoever shows a group looks with `same_name`.
    void each_group(const std::function<void(const SameName&)>& visit);

private:
    struct Named {
        std::uint64_t hash;
        std::uint64_t number; ///< the 14 digits, then one bit: doubted
    };
    std::vector<Named> all_;
};

/// Whether two products have the same name and brand, capitals, blanks and signs ignored.
[[nodiscard]] bool same_name(const core::Product& a, const core::Product& b);

} // namespace catalog
