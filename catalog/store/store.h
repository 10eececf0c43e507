// The products that this station knows, in one SQLite file: the only door to them. SQL stays behind it.
#pragma once

#include "catalog/store/doubts.h"
#include "core/product.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

class NameSearch;

/// What a list to pick from shows of a product.
struct ListedProduct {
    core::Gtin gtin;
    std::string name;
    std::string brand;
    std::string aisle;
    bool operator==(const ListedProduct&) const = default;
};

/// An open catalog. A station serves from a file that is open for reading only; a load puts a new file in its place
/// (catalog/load/load.h), and the open one goes on serving the old products until it is opened again.
/// Every function may throw a std::runtime_error, with the path in it, when the file or its disk breaks under it.
/// For one thread at a time; every thread opens a Store of its own.
class Store {
public:
    enum class Mode {
        ReadOnly, ///< serves; writes nothing, also next to the file
        Write,    ///< takes products as well, makes the file where there is none, and keeps every other writer out
    };

    /// Opens a catalog file and looks it through once (half a second for 100,000 products).
    /// Errors: NoSuchFile, IsFolder, NoCatalog, NewerCatalog, TornCatalog, CannotRead, Busy, CannotWrite;
    /// `place.source` is the path.
    [[nodiscard]] static core::Result<Store> open(const std::filesystem::path& path, Mode mode);

    /// A catalog that lives in memory (":memory:"), or in a file that nobody else knows yet: no other writer is kept
    /// out. Throws std::runtime_error where `open` would return an error.
    explicit Store(const std::string& path);

    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    ~Store();

    /// The product with this number; nothing when the catalog does not have it.
    [[nodiscard]] std::optional<core::Product> find(const core::Gtin& gtin) const;

    /// Whether the catalog has this number.
    [[nodiscard]] bool holds(const core::Gtin& gtin) const;

    /// The product with the next higher number, by which all can be walked through; nullptr: the first one.
    [[nodiscard]] std::optional<core::Product> next_after(const core::Gtin* gtin) const;

    /// How many products there are.
    [[nodiscard]] std::size_t count() const;

    /// Whether there are more products than so many; looks at no more of them.
    [[nodiscard]] bool has_more_than(std::size_t products) const;

    /// A page of all products, by aisle, then name (letters A to Z without case), then number.
    [[nodiscard]] std::vector<ListedProduct> products_in_order(std::size_t limit, std::size_t offset = 0) const;

    /// A search by name (catalog/store/search.h); the store must outlive it.
    [[nodiscard]] NameSearch search() const;

    /// Puts one product in, in place of the one with its number. It is on the disk when this returns.
    void put(const core::Product& product);

    /// Puts all of them in or, when it throws, none. Returns how many stand in place of one with the same number,
    /// an earlier one of `products` included.
    std::size_t put(std::span<const core::Product> products);

    /// Shows every product once, by number, one in memory at a time; stops where `visit` says false.
    void for_each(const std::function<bool(const core::Product&)>& visit) const;

    /// What the leader has approved of the audit's doubts.
    [[nodiscard]] Approvals approvals() const;

    /// Writes down that the leader looked at the package on that day, and that it says what the rule doubts. False,
    /// with nothing written, for a number that the catalog does not have. On the disk when it returns.
    bool approve(const core::Gtin& gtin, std::string_view rule, core::Date on);

    /// The labels that the leader gave to numbers of this place only, by number.
    [[nodiscard]] std::vector<core::Product> this_place_only() const;

    /// Takes those out, and what only they said; returns how many there were. `copy_to` then leaves no trace of them.
    std::size_t remove_this_place_only();

    /// Writes all products into a new file, where none may lie. Throws std::runtime_error.
    void copy_to(const std::filesystem::path& path) const;

    /// Whether another file lies at the path by now, so that it is time to open it. Cheap: ask at every scan.
    /// A file that is gone is no change: the open one still serves.
    [[nodiscard]] bool changed_on_disk() const;

private:
    struct Inside;
    explicit Store(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
