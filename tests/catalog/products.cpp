#include "tests/catalog/products.h"

namespace test {
namespace {

std::string digits(std::uint64_t number)
{
    const auto tail = std::to_string(number);
    std::string body = "952" + std::string(9 - tail.size(), '0') + tail;
    return body + core::check_digit(body);
}

core::Line line(core::Nutrient nutrient, const char* amount, const char* percent)
{
    core::Line line;
    if (*amount != '\0')
        line.amount = core::parse_figure(nutrient, amount).value();
    if (*percent != '\0')
        line.percent = core::parse_percent(percent).value();
    return line;
}

} // namespace

core::Gtin gtin(std::uint64_t number)
{
    return core::Gtin::parse(digits(number)).value();
}

core::Product product(std::uint64_t number, const std::string& name)
{
    using N = core::Nutrient;
    core::Label label;
    label.serving = {"1 cup", core::parse_measure("39 g").value()};
    label.servings = core::parse_servings("about 8").value();
    label.per_serving.lines = {{N::Calories, line(N::Calories, "140", "")},
                               {N::TotalFat, line(N::TotalFat, "2.5", "3%")},
                               {N::Sodium, line(N::Sodium, "190", "8%")}};
    return {gtin(number),
            name,
            "Millbrook",
            "Cereal",
            "",
            label,
            {"cereals.csv", 7, core::Date::parse("2026-03-02").value()}};
}

core::Product full_product()
{
    using N = core::Nutrient;
    auto full = product(4711, "Crème d\u2019avoine \u201Cdouce\u201D");
    full.note = "New recipe; see the shelf";
    full.reference_food = core::reference_amount("milk");
    auto& label = full.label;
    label.panel = core::Panel::Older;
    label.audience = core::Audience::Ages1To3;
    label.serving = {"2/3 cup", core::parse_measure("160 mL").value()};
    label.per_serving.lines[N::DietaryFiber] = line(N::DietaryFiber, "<1", "<1");
    label.per_serving.lines[N::Iron] = line(N::Iron, "", "10%");
    label.per_serving.lines[N::VitaminB12] = line(N::VitaminB12, "0.60", "");
    label.per_serving.not_significant = {N::TransFat, N::VitaminD};
    core::Column prepared;
    prepared.lines = {{N::Calories, line(N::Calories, "210", "")}, {N::Sodium, line(N::Sodium, "less than 5", "")}};
    prepared.not_significant = {N::Fluoride};
    label.second = core::SecondColumn{core::SecondColumn::Kind::AsPrepared, prepared};
    label.ingredients = "Oats, \"natural\" flavor; salt";
    label.contains = "Oats, Milk";
    label.net_quantity = core::parse_net_quantity("1.5 QT (1.42 L)");
    return full;
}

std::vector<core::Product> products(std::size_t count, std::uint64_t first)
{
    std::vector<core::Product> all;
    for (std::size_t i = 0; i < count; ++i)
        all.push_back(product(first + i, "Oat rounds " + std::to_string(first + i)));
    return all;
}

std::string good_sheet(std::size_t rows, std::uint64_t first)
{
    std::string sheet = "gtin,name,entered_on,serving_size,calories,sodium_mg\n";
    for (std::size_t i = 0; i < rows; ++i)
        sheet += digits(first + i) + ",Oat rounds,2026-03-02,39 g,140,190\n";
    return sheet;
}

} // namespace test
