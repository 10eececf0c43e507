#include "core/rules/categories.h"

#include <algorithm>
#include <vector>

namespace core {

const ReferenceAmount* reference_of_category(std::string_view category)
{
    static const auto foods = [] {
        std::vector<const ReferenceAmount*> all;
        for (const auto& row : category_rows())
            all.push_back(reference_amount(row.reference_food));
        return all;
    }();
    const auto rows = category_rows();
    const auto found = std::ranges::lower_bound(rows, category, {}, &CategoryRow::category);
    if (found == rows.end() || found->category != category)
        return nullptr;
    return foods[static_cast<std::size_t>(found - rows.begin())];
}

} // namespace core
