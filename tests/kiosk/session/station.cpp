#include "tests/kiosk/session/station.h"

#include "kiosk/files/languages.h"
#include "tests/support/label_maker.h"

namespace test {
namespace {

core::Product food(const std::string& digits, const std::string& name, const std::string& aisle, const std::string& fat)
{
    using N = core::Nutrient;
    auto product = make_product(digits.substr(0, digits.size() - 1), name,
                                make_label("30 g", "2", {{N::Calories, "100"}, {N::TotalFat, fat}}));
    product.aisle = aisle;
    return product;
}

} // namespace

std::span<const ui::Language> station_languages()
{
    static const auto files = kiosk::read_language_files(std::string(PAIRSTAND_SOURCE) + "/config");
    return files.languages;
}

catalog::Store small_store(const std::string& brand)
{
    catalog::Store store(":memory:");
    for (auto product :
         {food(shelf::oats, "Oat rounds", "Cereal", "2"), food(shelf::wheat, "Wheat squares", "Cereal", "3"),
          food(shelf::rice, "Rice puffs", "", "4"), food(shelf::cookies_ean8, "Cocoa bar", "Snacks", "9"),
          food(shelf::juice_upca, "Apple juice", "Drinks", "0")}) {
        product.brand = brand;
        store.put(product);
    }
    return store;
}

void Station::scan(const std::string& digits, core::Symbology symbology)
{
    session.take({digits, symbology, kiosk::Scan::From::Scanner, {}});
}

std::string Station::on(ui::Side side) const
{
    const auto& held = session.state().sides[ui::index_of(side)];
    return held ? held->product.name : "";
}

} // namespace test
