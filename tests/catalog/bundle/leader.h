// A leader who seals and a station that installs, for tests of bundles.
#pragma once

#include "catalog/bundle/install.h"
#include "catalog/bundle/seal.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {

/// Holds a key; her catalogs have as many products as a test wants to tell them apart by.
struct Leader {
    TempFolder folder;
    std::string keys = folder.file("keys");
    catalog::PublicKey key = catalog::make_keys(keys).value();

    /// Seals a catalog with so many products; the bundle's path.
    std::string seal(const std::string& name, std::size_t products, std::optional<std::uint64_t> counter = std::nullopt)
    {
        const auto shop = folder.file(name + ".db");
        catalog::Store(shop).put(test::products(products));
        return seal_catalog(name, shop, counter);
    }

    std::string seal_catalog(const std::string& name, const std::string& shop,
                             std::optional<std::uint64_t> counter = std::nullopt)
    {
        catalog::SealOrder order{
            shop, {}, {}, keys, "Winter " + name, "Cedar Hollow", "2026-11-25", counter, folder.file(name)};
        const auto sealed = catalog::seal(order);
        REQUIRE_MESSAGE(sealed, (sealed ? "" : sealed.error().detail));
        return order.out.string();
    }

    [[nodiscard]] std::string fingerprint() const { return catalog::fingerprint(key); }
};

/// A station's data folder.
struct Station {
    TempFolder folder;
    std::string data = folder.file("pairstand");

    core::Result<catalog::Installing> install(const std::string& bundle, const std::string& accept = {},
                                              catalog::Disk& disk = catalog::real_disk()) const
    {
        return catalog::install({bundle, data, accept}, disk);
    }

    /// How many products the bundle in place has; nothing when none is. Whatever is in place must be whole.
    [[nodiscard]] std::optional<std::size_t> serves() const
    {
        const auto installed = catalog::read_installed(data);
        REQUIRE(installed);
        if (!installed->now)
            return std::nullopt;
        const auto manifest = catalog::manifest_of(data, *installed->now);
        REQUIRE(manifest);
        const auto store =
            catalog::Store::open(catalog::catalog_of(data, *installed->now), catalog::Store::Mode::ReadOnly);
        REQUIRE(store);
        CHECK(manifest->products == store->count());
        return store->count();
    }
};

} // namespace test
