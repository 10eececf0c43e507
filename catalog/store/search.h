// Search by name while typing: by name, brand, category and aisle; accents and case are ignored, slips forgiven.
// Works in portions, so that a screen never waits for it.
#pragma once

#include "core/code/gtin.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace catalog {

/// What a search shows of a product.
struct FoundProduct {
    core::Gtin gtin;
    std::string name;
    std::string brand;
    std::string kind; ///< its aisle; without one its category
    bool operator==(const FoundProduct&) const = default;
};

/// How many products must match as typed, or no slip is looked for.
inline constexpr std::size_t enough_without_slips = 20;

/// The search of one open catalog (Store::search), which it must not outlive. Remembers the catalog's words: kept for
/// one question after the other. Every function may throw std::runtime_error when the file breaks.
///
/// A product is found when every typed word is in its name, brand, category or aisle, in any order; the last one may be
/// a beginning. Little words (little_words.h) are passed over. Only where fewer than `enough_without_slips` are found
/// so, words with slips count too (near_words.h); and only where nothing is found so, words that fit no product at all
/// are left out. Order: all words as they stand in name and brand, then the last one begun, then those where a category
/// or an aisle is needed for a word, then slips; among those by name (fold.h), then by number.
class NameSearch {
public:
    /// More products than a page are never found at once; whoever wants more of them asks (`want`).
    static constexpr std::size_t first_wanted = 20;

    NameSearch(SQLite::Database& database, int version, std::string path);
    NameSearch(NameSearch&&) noexcept;
    NameSearch& operator=(NameSearch&&) noexcept;
    ~NameSearch();

    /// A new question; the answers to the one before are gone. Of the text at most 8 words count.
    void ask(std::string_view typed);

    /// How many of the answers are wanted so far, from the first one on.
    void want(std::size_t answers);

    /// Works on, one portion (under a millisecond on a desk machine) after the other, as long as `go_on` says so;
    /// at least one. Returns whether all is done that was asked and wanted.
    bool step(const std::function<bool()>& go_on);

    /// The answers so far, the wanted ones at most: they only become more.
    [[nodiscard]] const std::vector<FoundProduct>& found() const;

    /// How many products match, as far as it is known; all of them when `counted`.
    [[nodiscard]] std::size_t count() const;
    [[nodiscard]] bool counted() const;

    /// The words, folded, that fit no product: what is found has the others.
    [[nodiscard]] const std::vector<std::string>& left_out() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
