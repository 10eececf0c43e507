// A small catalog for commands, and a run of `pairstand compare` on it.
#pragma once

#include "catalog/store/store.h"
#include "core/code/gtin.h"
#include "core/label/label.h"
#include "kiosk/command/compare.h"
#include "tests/support/label_maker.h"
#include "tests/support/temp_folder.h"

#include <optional>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace test {

using N = core::Nutrient;

/// Two labels that between them have every field that there is.
inline core::Label rich_label()
{
    auto label = make_label("30 g", "about 9",
                            {{N::Calories, "130"},
                             {N::TotalFat, "7", "9%"},
                             {N::SaturatedFat, "5.5"},
                             {N::Sodium, "55", "2%"},
                             {N::DietaryFiber, "less than 1"},
                             {N::Iron, "2", "10%"}});
    label.per_serving.not_significant = {N::Calcium};
    label.serving.household = "1 oz";
    label.net_quantity = core::parse_net_quantity("NET WT 9 OZ (255 g)");
    label.second = core::SecondColumn{
        core::SecondColumn::Kind::AsPrepared,
        make_label(
            "", "",
            {{N::Calories, "190"}, {N::DietaryFiber, "less than 1"}, {N::Sodium, "110", "5%"}, {N::Iron, "", "10%"}})
            .per_serving};
    label.ingredients =
        "Enriched corn flour, sugar, apple juice concentrate, partially hydrogenated soybean oil, natural "
        "flavor, whey. Contains: milk. May contain almonds.";
    label.contains = "Milk";
    return label;
}

inline core::Label plain_label()
{
    auto label = make_label("28 g", "2",
                            {{N::Calories, "150"},
                             {N::TotalFat, "3"},
                             {N::SaturatedFat, "1"},
                             {N::Sodium, "60"},
                             {N::TotalCarbohydrate, "less than 1"},
                             {N::TotalSugars, "1"}});
    label.net_quantity = core::parse_net_quantity("2 - 1 OZ BAGS");
    label.ingredients = "Salt";
    label.contains = "";
    return label;
}

inline core::Label without_size()
{
    return make_label("", "varied", {{N::TotalFat, "3"}, {N::SaturatedFat, "5"}});
}

/// A catalog with the three, and a run of the command on two of them.
struct Shop {
    TempFolder folder;
    std::string path = folder.file("shop");
    core::Product rich = make_product("952000000001", "Corn chips", rich_label());
    core::Product plain = make_product("952000000002", "Rice chips", plain_label());
    core::Product bulk = make_product("952000000003", "Loose chips", without_size());
    std::string language = "en";
    bool json = true;
    std::optional<core::Money> left_price;
    std::optional<core::Money> right_price;
    std::optional<std::vector<core::RuleSet>> rules;
    std::ostringstream out;
    std::ostringstream err;

    Shop()
    {
        catalog::Store store(path);
        for (auto* product : {&rich, &plain, &bulk})
            product->reference_food = core::reference_amount("cereal_20_to_43_g_per_cup");
        store.put(std::vector{rich, plain, bulk});
        // 16300255 is an EAN-8, and as a UPC-E it stands for 163002000055: core/code/upc_e.h.
        for (const auto& [digits, name] : {std::pair("16300255", "Short"), std::pair("163002000055", "Long")}) {
            auto product = make_product("952000000004", name, plain_label());
            product.gtin = core::Gtin::parse(digits).value();
            store.put(product);
        }
    }

    int compare(const std::string& left, const std::string& right, std::optional<core::Basis> basis = std::nullopt)
    {
        out.str("");
        err.str("");
        return kiosk::compare({left, right, basis, {}, json, path, language, {}, left_price, right_price, rules}, out,
                              err);
    }
};

} // namespace test
