#include "core/figure/daily_values.h"

#include "core/figure/daily_values_table.h"

namespace core {

std::optional<Content> daily_value(Nutrient nutrient, Panel panel, Audience audience)
{
    for (const auto& row : daily_value_rows())
        if (row.nutrient == nutrient && row.panel == panel && row.audience == audience)
            return Content::from_nano(row.nano);
    return std::nullopt;
}

} // namespace core
