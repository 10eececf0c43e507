#include "kiosk/session/aisles.h"

namespace kiosk {
namespace {

constexpr std::size_t most_listed = 5'000; // a list for fingers; longer catalogs are searched by name

} // namespace

std::vector<Aisle> aisles_of(const catalog::Store& store)
{
    std::vector<Aisle> aisles;
    for (const auto& product : store.products_in_order(most_listed)) {
        if (aisles.empty() || aisles.back().name != product.aisle)
            aisles.push_back({product.aisle, 0});
        ++aisles.back().products;
    }
    return aisles;
}

bool is_for_leafing(const catalog::Store& store)
{
    return !store.has_more_than(most_listed) && aisles_of(store).size() > 1;
}

std::vector<ui::PickAisle> aisle_words(const std::vector<Aisle>& aisles, const ui::Language& language)
{
    using ui::TextId;
    std::vector<ui::PickAisle> words;
    for (const Aisle& aisle : aisles) {
        const TextId count = aisle.products == 1 ? TextId::pick_count_one : TextId::pick_count_many;
        words.push_back({aisle.name, aisle.name.empty() ? language.text(TextId::pick_no_aisle) : aisle.name,
                         language.fill(count, {{"n", std::to_string(aisle.products)}})});
    }
    return words;
}

std::vector<ui::PickEntry> products_in(const catalog::Store& store, const std::string& aisle)
{
    std::vector<ui::PickEntry> products;
    for (const auto& product : store.products_in_order(most_listed))
        if (product.aisle == aisle)
            products.push_back({product.gtin, product.name, product.brand});
    return products;
}

} // namespace kiosk
