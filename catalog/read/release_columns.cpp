#include "catalog/read/release_columns.h"

#include <algorithm>
#include <cctype>

namespace catalog {
namespace {

constexpr ReleaseColumn food[] = {
    {"fdc_id", true}, {"data_type", false}, {"description", true}, {"publication_date", false}};

constexpr ReleaseColumn branded[] = {{"fdc_id", true},
                                     {"gtin_upc", true},
                                     {"brand_owner", false},
                                     {"brand_name", false},
                                     {"ingredients", false},
                                     {"not_a_significant_source_of", false},
                                     {"serving_size", true},
                                     {"serving_size_unit", true},
                                     {"household_serving_fulltext", false},
                                     {"branded_food_category", false},
                                     {"package_weight", false},
                                     {"preparation_state_code", false},
                                     {"modified_date", false},
                                     {"market_country", false}};

constexpr ReleaseColumn amounts[] = {{"fdc_id", true},
                                     {"nutrient_id", true},
                                     {"amount", true},
                                     {"derivation_id", false},
                                     {"percent_daily_value", false}};

/// Letters of either case are one column.
bool same_name(std::string_view a, std::string_view b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) == std::tolower(static_cast<unsigned char>(y));
    });
}

} // namespace

std::span<const ReleaseColumn> food_columns()
{
    return food;
}
std::span<const ReleaseColumn> branded_columns()
{
    return branded;
}
std::span<const ReleaseColumn> amount_columns()
{
    return amounts;
}

core::Result<ColumnPlaces> find_columns(std::span<const ReleaseColumn> columns, const std::vector<std::string>& header,
                                        const std::string& source)
{
    std::vector<std::size_t> places;
    std::string missing;
    for (const auto& column : columns) {
        const auto found = std::find_if(header.begin(), header.end(),
                                        [&](const std::string& name) { return same_name(name, column.name); });
        if (found == header.end() && column.needed)
            missing.append(missing.empty() ? "" : ", ").append(column.name);
        places.push_back(found == header.end() ? ColumnPlaces::absent
                                               : static_cast<std::size_t>(found - header.begin()));
    }
    if (!missing.empty())
        return core::refuse(core::Error::Kind::MissingColumn, missing, core::Place{source, 1, missing, {}, missing});
    ColumnPlaces found;
    found.wanted = places;
    std::sort(found.wanted.begin(), found.wanted.end());
    found.wanted.erase(std::unique(found.wanted.begin(), found.wanted.end()), found.wanted.end());
    if (!found.wanted.empty() && found.wanted.back() == ColumnPlaces::absent)
        found.wanted.pop_back();
    for (const auto place : places)
        found.field_of.push_back(
            place == ColumnPlaces::absent
                ? ColumnPlaces::absent
                : static_cast<std::size_t>(std::lower_bound(found.wanted.begin(), found.wanted.end(), place) -
                                           found.wanted.begin()));
    return found;
}

} // namespace catalog
