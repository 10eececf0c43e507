#include "catalog/read/sheet.h"
#include "tests/catalog/read/one_row.h"

#include <doctest/doctest.h>

#include <set>

using catalog::read_sheet;
using core::Nutrient;
using test::OneRow;
using test::told;
using namespace std::string_literals;

namespace {

core::Product read_one(const OneRow& row, char separator = ',')
{
    const auto sheet = row.read(separator);
    REQUIRE(sheet.faults.empty());
    REQUIRE(sheet.products.size() == 1);
    return sheet.products.front();
}

core::Figure figure(Nutrient nutrient, const char* text)
{
    return core::parse_figure(nutrient, text).value();
}

} // namespace

TEST_CASE("sheet: the fewest cells make a product, and what is not written is absent")
{
    const auto product = read_one(OneRow());
    CHECK(product.gtin == core::Gtin::parse("9521234543213").value());
    CHECK(product.name == "Oat rounds");
    CHECK(product.brand.empty());
    CHECK(product.origin == core::Origin{"cereals.csv", 2, core::Date::parse("2026-03-02").value()});
    const auto& label = product.label;
    CHECK(label.panel == core::Panel::Of2016);
    CHECK(label.audience == core::Audience::Adult);
    CHECK(label.servings.kind == core::ServingsPerContainer::Kind::NotPrinted);
    CHECK(label.per_serving.lines.size() == 1);
    CHECK(label.per_serving.find(Nutrient::Calories)->amount == figure(Nutrient::Calories, "140"));
    CHECK_FALSE(label.second);
    CHECK_FALSE(label.ingredients);
    CHECK_FALSE(label.contains);
    CHECK_FALSE(label.net_quantity);
}

// 21 CFR 101.9(c)(9): 8 g of fat are 10% of 78 g, and were 12% of 65 g before 2016.
TEST_CASE("sheet: a panel that is not written is told from the figures, and a written one is kept")
{
    const auto told = [](const std::string& percent, const std::string& panel) {
        auto row = OneRow().with("total_fat_g", "8").with("total_fat_percent_dv", percent);
        return read_one(row.with("panel", panel)).label.panel;
    };
    CHECK(told("10", "") == core::Panel::Of2016);
    CHECK(told("12", "") == core::Panel::Older);
    CHECK(told("12", "2016") == core::Panel::Of2016); // the label contradicts itself, and says so
    CHECK(told("10", "older") == core::Panel::Older);
}

TEST_CASE("sheet: every column reaches its place")
{
    const auto product = read_one(OneRow()
                                      .with("brand", "Millbrook")
                                      .with("aisle", "Cereal")
                                      .with("note", "new")
                                      .with("panel", "Older")
                                      .with("audience", "ages_1_3")
                                      .with("serving_household", "2/3 cup")
                                      .with("serving_size", "160 mL")
                                      .with("servings_per_container", "about 9")
                                      .with("net_quantity", "12 oz (340 g)")
                                      .with("dietary_fiber_g", "less than 1 g")
                                      .with("sodium_mg", "0")
                                      .with("iron_percent_dv", "<2%")
                                      .with("vitamin_b12_mcg", "0.60")
                                      .with("not_significant", "trans_fat; Vitamin_D ;")
                                      .with("second_column", "per_container")
                                      .with("second_calories", "280")
                                      .with("second_sodium_percent_dv", "4")
                                      .with("ingredients", "Oats,\nsalt")
                                      .with("contains", "Oats")
                                      .with("reference_food", "Cereal_43_g_or_more_per_cup"));
    CHECK(product.reference_food == core::reference_amount("cereal_43_g_or_more_per_cup"));
    CHECK(product.brand == "Millbrook");
    CHECK(product.aisle == "Cereal");
    CHECK(product.note == "new");
    const auto& label = product.label;
    CHECK(label.panel == core::Panel::Older);
    CHECK(label.audience == core::Audience::Ages1To3);
    CHECK(label.serving == core::Serving{"2/3 cup", core::Volume::whole(160)});
    CHECK(label.servings == core::parse_servings("about 9").value());
    CHECK(label.net_quantity == core::parse_net_quantity("12 oz (340 g)"));
    CHECK(label.per_serving.find(Nutrient::DietaryFiber)->amount == figure(Nutrient::DietaryFiber, "<1"));
    CHECK(label.per_serving.find(Nutrient::Sodium)->amount == figure(Nutrient::Sodium, "0")); // printed, not absent
    CHECK_FALSE(label.per_serving.find(Nutrient::Iron)->amount);
    CHECK(label.per_serving.find(Nutrient::Iron)->percent == core::PrintedPercent{2, true});
    CHECK(label.per_serving.find(Nutrient::VitaminB12)->amount->decimals == 2);
    CHECK(label.per_serving.not_significant == std::set{Nutrient::TransFat, Nutrient::VitaminD});
    REQUIRE(label.second);
    CHECK(label.second->kind == core::SecondColumn::Kind::PerContainer);
    CHECK(label.second->column.lines.size() == 2);
    CHECK(label.second->column.find(Nutrient::Sodium)->percent == core::PrintedPercent{4, false});
    CHECK(label.ingredients == "Oats, salt");
    CHECK(label.contains == "Oats");
}

TEST_CASE("sheet: contains has three answers")
{
    CHECK(read_one(OneRow().with("contains", "None")).label.contains == "");
    CHECK_FALSE(read_one(OneRow().with("contains", "")).label.contains);
    CHECK(read_one(OneRow().with("contains", "Milk")).label.contains == "Milk");
}

TEST_CASE("sheet: a figure that no rounding rule prints is taken as it stands")
{
    CHECK(read_one(OneRow().with("total_fat_g", "5.5")).label.per_serving.find(Nutrient::TotalFat)->amount ==
          figure(Nutrient::TotalFat, "5.5"));
}

TEST_CASE("sheet: the same sheet in every form that spreadsheets save")
{
    const std::string semicolons = "gtin;name;entered_on;serving_size;calories;total_fat_g\r\n"
                                   "9521234543213;Cr\xC3\xA8me;2026-03-02;39 g;140;2,5\r\n";
    std::string tabs = semicolons;
    for (char& c : tabs)
        c = c == ';' ? '\t' : c;
    std::string latin = semicolons;
    latin.replace(latin.find("\xC3\xA8"), 2, "\xE8");
    std::string wide = "\xFF\xFE";
    for (const char c : tabs)
        if (c == '\xA8')
            wide += "\xE8\0"s;
        else if (c != '\xC3')
            wide += std::string{c, '\0'};
    struct Case {
        const char* why;
        std::string bytes;
    };
    const Case cases[] = {
        {"semicolons, UTF-8", semicolons},
        {"with a mark", "\xEF\xBB\xBF" + semicolons},
        {"Windows-1252", latin},
        {"tabs", tabs},
        {"Unicode text: tabs in UTF-16", wide},
        {"the separator told in a line of its own", "sep=;\r\n" + semicolons},
        {"commas, quotes, no line break at the end", "gtin,name,entered_on,serving_size,calories,total_fat_g\n"
                                                     "\"9521234543213\",Crème,2026-03-02,39 g,140,2.5"},
        {"names in capitals with blanks, columns in another order",
         "TOTAL_FAT_G , Name,ENTERED_ON,Serving_Size,calories,Gtin\n2.5,Crème,2026-03-02,39 g,140,9521234543213\n"},
        {"columns and rows without anything at the end", "gtin,name,entered_on,serving_size,calories,total_fat_g,,\n"
                                                         "9521234543213,Crème,2026-03-02,39 g,140,2.5,,\n,,,,,,,\n"},
        {"the letter and its mark apart", "gtin,name,entered_on,serving_size,calories,total_fat_g\n"
                                          "9521234543213,Cre\xCC\x80me,2026-03-02,39 g,140,2.5\n"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sheet = read_sheet(c.bytes, "x.csv");
        CHECK(told(sheet).empty());
        REQUIRE(sheet.products.size() == 1);
        CHECK(sheet.products[0].name == "Crème");
        CHECK(sheet.products[0].origin.row == 2);
        CHECK(sheet.products[0].label.per_serving.find(Nutrient::TotalFat)->amount ==
              figure(Nutrient::TotalFat, "2.5"));
    }
}
