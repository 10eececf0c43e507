// The answers of a name search: sets of products that fit equally well, told one product after the other.
#pragma once

#include "catalog/store/product_bits.h"
#include "catalog/store/search.h"
#include "catalog/store/search_memory.h"
#include "catalog/store/search_rows.h"

#include <cstddef>
#include <vector>

namespace catalog {

/// Tells the better ones first; among those that fit equally well by name, then by number.
class SearchAnswers {
public:
    SearchAnswers(SQLite::Database& database, int version) : rows_(database, version) {}

    /// A new question: nothing is known.
    void clear();

    /// Adds the products that fit less well than all before; those that were there already are left out. The loose ones
    /// must stay where they are until `clear`.
    void add_tier(ProductBits listed, std::vector<const LooseProduct*> loose);

    /// Tells one more answer, when fewer than `wanted` are told and one is known. Whether it did.
    bool tell_one(std::size_t wanted);

    [[nodiscard]] const std::vector<FoundProduct>& found() const { return found_; }
    [[nodiscard]] std::size_t count() const { return count_; }

private:
    /// The products that fit equally well, and how far they are told.
    struct Tier {
        ProductBits listed;
        std::vector<const LooseProduct*> loose; // by name
        std::size_t next_listed = 0;
        std::size_t next_loose = 0;
    };

    [[nodiscard]] std::size_t told_tiers() const; ///< how many are told to their ends
    bool tell_from(Tier& tier);

    SearchRows rows_;
    std::vector<Tier> tiers_;
    std::size_t count_ = 0;
    std::vector<FoundProduct> found_;
};

} // namespace catalog
