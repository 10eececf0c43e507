#include "catalog/read/sheet_columns.h"

#include "core/rules/reference_amounts.h"

#include <algorithm>
#include <map>

namespace catalog {
namespace {

constexpr std::size_t figure_letters = 40;

SheetColumn amount_column(const core::NutrientInfo& nutrient, bool second)
{
    const std::string unit(core::unit_name(nutrient.unit));
    SheetColumn column{std::string(nutrient.key),
                       Field::Amount,
                       nutrient.nutrient,
                       second,
                       !second && nutrient.nutrient == core::Nutrient::Calories,
                       figure_letters,
                       "a number of calories, such as 140",
                       "140"};
    if (!unit.empty()) {
        column.name += "_" + unit;
        column.expected = "a number of " + unit + ", such as 3 or \"less than 1\"";
        column.example = "3";
    }
    return column;
}

SheetColumn percent_column(const core::NutrientInfo& nutrient, bool second)
{
    return {std::string(nutrient.key) + "_percent_dv",
            Field::Percent,
            nutrient.nutrient,
            second,
            false,
            figure_letters,
            "a whole percent, such as 8",
            "8"};
}

void add_figures(std::vector<SheetColumn>& columns, bool second)
{
    const auto add = [&](SheetColumn column) {
        if (second)
            column.name.insert(0, "second_");
        columns.push_back(std::move(column));
    };
    for (const auto& nutrient : core::nutrients()) {
        add(amount_column(nutrient, second));
        if (nutrient.percent != core::PercentRounding::None)
            add(percent_column(nutrient, second));
    }
}

std::vector<SheetColumn> make_columns()
{
    std::vector<SheetColumn> columns;
    for (const auto& row : sheet_columns_table())
        columns.push_back({std::string(row.name), row.field, std::nullopt, false, row.required, row.longest,
                           std::string(row.expected), std::string(row.example)});
    add_figures(columns, false);
    add_figures(columns, true);
    return columns;
}

/// The nearest of some names, if a slip of the pen explains the difference: a third of the letters, or a missing end
/// ("sodium" for "sodium_mg").
class Nearest {
public:
    explicit Nearest(std::string_view wanted) : wanted_(in_small_letters(wanted.substr(0, longest)))
    {
        std::replace_if(
            wanted_.begin(), wanted_.end(), [](char c) { return c == ' ' || c == '-'; }, '_');
        best_edits_ = std::max<std::size_t>(2, wanted_.size() / 3) + 1;
    }

    void offer(std::string_view name)
    {
        const bool unfinished = wanted_.size() > 2 && name.starts_with(wanted_ + "_");
        const std::size_t edits = unfinished ? 1 : edits_between(wanted_, name, best_edits_);
        if (edits < best_edits_) {
            best_edits_ = edits;
            best_ = name;
        }
    }

    [[nodiscard]] const std::string& best() const { return best_; }

private:
    static constexpr std::size_t longest = 60; // a hostile name is not worth more work
    std::string wanted_;
    std::string best_;
    std::size_t best_edits_;
};

} // namespace

const std::vector<SheetColumn>& sheet_columns()
{
    static const auto columns = make_columns();
    return columns;
}

const SheetColumn* sheet_column(std::string_view name)
{
    static const auto by_name = [] {
        std::map<std::string_view, const SheetColumn*> names;
        for (const auto& column : sheet_columns())
            names.emplace(column.name, &column);
        return names;
    }();
    const auto found = by_name.find(name);
    return found == by_name.end() ? nullptr : found->second;
}

std::size_t edits_between(std::string_view a, std::string_view b, std::size_t enough)
{
    if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) >= enough)
        return enough;
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U);
            diagonal = row[j];
            row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
            least = std::min(least, row[j]);
        }
        if (least >= enough)
            return enough;
    }
    return row[b.size()];
}

std::string nearest_column(std::string_view name)
{
    Nearest nearest(name);
    for (const auto& column : sheet_columns())
        nearest.offer(column.name);
    return nearest.best();
}

std::string nearest_nutrient(std::string_view key)
{
    Nearest nearest(key);
    for (const auto& nutrient : core::nutrients())
        nearest.offer(nutrient.key);
    return nearest.best();
}

std::string nearest_reference_food(std::string_view key)
{
    Nearest nearest(key);
    for (const auto& food : core::reference_amounts())
        nearest.offer(food.key);
    return nearest.best();
}

std::string in_small_letters(std::string_view text)
{
    std::string small(text);
    for (char& c : small)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return small;
}

} // namespace catalog
