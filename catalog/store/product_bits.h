// One bit for every product of a catalog: a set of products that is quick to join and to walk through.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace catalog {

/// A set of products, by their places in the name search.
class ProductBits {
public:
    explicit ProductBits(std::size_t products = 0) : bits_((products + 63) / 64), products_(products) {}

    [[nodiscard]] std::size_t products() const { return products_; }
    void set(std::size_t place) { bits_[place / 64] |= std::uint64_t{1} << place % 64; }
    [[nodiscard]] bool has(std::size_t place) const { return (bits_[place / 64] >> place % 64 & 1U) != 0; }

    void add(const ProductBits& others)
    {
        for (std::size_t i = 0; i < bits_.size(); ++i)
            bits_[i] |= others.bits_[i];
    }
    void keep(const ProductBits& others)
    {
        for (std::size_t i = 0; i < bits_.size(); ++i)
            bits_[i] &= others.bits_[i];
    }
    void drop(const ProductBits& others)
    {
        for (std::size_t i = 0; i < bits_.size(); ++i)
            bits_[i] &= ~others.bits_[i];
    }

    [[nodiscard]] std::size_t count() const
    {
        std::size_t count = 0;
        for (const auto word : bits_)
            count += static_cast<std::size_t>(std::popcount(word));
        return count;
    }

    /// The first product at or behind a place; `products()` when there is none.
    [[nodiscard]] std::size_t next_from(std::size_t place) const
    {
        if (place >= products_)
            return products_;
        std::uint64_t word = bits_[place / 64] >> place % 64 << place % 64;
        for (std::size_t i = place / 64;;) {
            if (word != 0)
                return i * 64 + static_cast<std::size_t>(std::countr_zero(word));
            if (++i == bits_.size())
                return products_;
            word = bits_[i];
        }
    }

private:
    std::vector<std::uint64_t> bits_;
    std::size_t products_;
};

} // namespace catalog
