// One typed word of a search: how well a word, a kind of food or a product of no list fits it.
#pragma once

#include "catalog/store/near_words.h"
#include "catalog/store/product_bits.h"
#include "catalog/store/search_memory.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// How well something fits, best first: a word of a name or a brand as it stands, the beginning of one, a kind of food
/// (as it stands or begun), or any of them with slips.
enum class Fit : std::uint8_t { Exact, Beginning, Kind, Slips, None };

/// A typed word.
class SearchTerm {
public:
    SearchTerm(std::string_view word, bool is_last, std::size_t products);

    [[nodiscard]] const std::string& word() const { return word_; }
    [[nodiscard]] bool is_last() const { return is_last_; }
    [[nodiscard]] bool forgives() const { return slips_ > 0; }
    [[nodiscard]] unsigned slips() const { return slips_; }

    /// How well a folded text fits; slips are looked for only on demand, they take longer.
    [[nodiscard]] Fit fit(std::string_view folded, bool with_slips);
    /// How well a kind of food fits, its Spanish words included: `Kind`, `Slips` or `None`.
    [[nodiscard]] Fit kind_fit(std::string_view folded_kind, bool with_slips);

    /// The products whose words fit so well or better.
    [[nodiscard]] ProductBits& products(Fit fit) { return products_[static_cast<std::size_t>(fit)]; }

    /// Whether it fits a product of no list, slips included.
    [[nodiscard]] bool fits_loose() const { return fits_loose_; }
    void set_fits_loose() { fits_loose_ = true; }

private:
    [[nodiscard]] Fit word_fit(std::string_view word, bool with_slips);
    void look_at_spanish(bool with_slips);

    /// What a typed Spanish word stands for, folded, and how well it fits.
    struct Meant {
        std::string_view english;
        Fit fit;
    };

    std::string word_;
    bool is_last_;
    unsigned slips_;
    NearWords near_;
    std::vector<Meant> meant_;
    bool meant_with_slips_ = false;
    bool fits_loose_ = false;
    std::array<ProductBits, 4> products_;
};

} // namespace catalog
