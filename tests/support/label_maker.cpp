#include "tests/support/label_maker.h"

namespace test {

core::Column make_column(const std::vector<Printed>& lines)
{
    core::Column column;
    for (const auto& printed : lines) {
        core::Line& line = column.lines[printed.nutrient];
        if (!printed.amount.empty())
            line.amount = core::parse_figure(printed.nutrient, printed.amount).value();
        if (!printed.percent.empty())
            line.percent = core::parse_percent(printed.percent).value();
    }
    return column;
}

core::Label make_label(const std::string& size, const std::string& servings, const std::vector<Printed>& lines)
{
    core::Label label;
    if (!size.empty())
        label.serving.metric = core::parse_measure(size).value();
    if (!servings.empty())
        label.servings = core::parse_servings(servings).value();
    label.per_serving = make_column(lines);
    return label;
}

core::Product make_product(const std::string& digits, const std::string& name, core::Label label)
{
    const auto gtin = core::Gtin::parse(digits + core::check_digit(digits)).value();
    return {gtin,
            name,
            "Millbrook",
            "Snacks",
            "",
            std::move(label),
            {"test.csv", 2, core::Date::parse("2026-03-02").value()}};
}

} // namespace test
