// Workbooks as sheets: the same header, rows, faults and products as those of a CSV file.
#include "catalog/read/sheet.h"
#include "tests/catalog/products.h"
#include "tests/support/workbook_maker.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

using core::Error;

namespace {

const test::TextRows good{{"gtin", "name", "entered_on", "serving_size", "calories", "sodium_mg", "sodium_percent_dv"},
                          {"9521234543213", "Oat rounds", "2026-11-25", "39 g", "140", "190", "8%"},
                          {},
                          {"9521234543220", "Rice, long grain", "2026-11-25", "45 g", "160", "0"}};

std::string as_csv(const test::TextRows& rows)
{
    std::string csv;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < rows[0].size(); ++i)
            line += (i == 0 ? "\"" : ",\"") + (i < row.size() ? row[i] : "") + "\"";
        csv += (row.empty() ? "" : line) + "\n";
    }
    return csv;
}

std::string as_workbook(bool xlsx, const test::TextRows& rows)
{
    if (xlsx)
        return test::xlsx_of({{"S", test::xlsx_rows(rows)}});
    return test::ods_of({{"S", test::ods_rows(rows)}});
}

} // namespace

TEST_CASE("workbook sheet: gives the products that the same CSV file gives")
{
    const auto csv = catalog::read_sheet(as_csv(good), "labels");
    REQUIRE(csv.products.size() == 2);
    for (const bool xlsx : {true, false}) {
        const auto sheet = catalog::read_sheet(as_workbook(xlsx, good), "labels");
        for (const auto& fault : sheet.faults.kept())
            FAIL_CHECK(fault.place.column, ": ", fault.place.expected);
        CHECK(sheet.products == csv.products);
        CHECK(sheet.products.at(1).origin.row == 4);
        CHECK(sheet.tab == "S");
        CHECK(sheet.other_tabs.empty());
    }
}

TEST_CASE("workbook sheet: gives the faults that the same CSV file gives")
{
    auto bad = good;
    bad[1][0] = "9521234543214";
    bad[1][4] = "";
    bad[3][5] = "12x";
    bad.push_back({"9521234543220", "Twice", "2026-11-25", "45 g", "160"});
    bad.push_back({"9521234543237", "Wide", "2026-11-25", "45 g", "160", "", "", "what is this"});
    const auto csv = catalog::read_sheet(as_csv(bad), "labels");
    for (const bool xlsx : {true, false}) {
        const auto sheet = catalog::read_sheet(as_workbook(xlsx, bad), "labels");
        CHECK(sheet.refused_rows == 4);
        REQUIRE(sheet.faults.kept().size() == 5);
        for (std::size_t i = 0; i < 4; ++i)
            CHECK(sheet.faults.kept()[i] == csv.faults.kept().at(i));
        CHECK(sheet.faults.kept()[4].kind == Error::Kind::BadRow);
    }
    auto misspelt = good;
    misspelt[0][5] = "sodum_mg";
    for (const bool xlsx : {true, false})
        CHECK(catalog::read_sheet(as_workbook(xlsx, misspelt), "labels").faults.kept() ==
              catalog::read_sheet(as_csv(misspelt), "labels").faults.kept());
}

TEST_CASE("workbook sheet: the first sheet with our columns is read and named")
{
    const test::TextRows notes{{"how to fill in"}, {"gtin is the number under the bars"}};
    const std::vector<test::Tab> tabs{
        {"Notes", test::xlsx_rows(notes)}, {"Labels", test::xlsx_rows(good)}, {"Old labels", test::xlsx_rows(good)}};
    const auto sheet = catalog::read_sheet(test::xlsx_of(tabs), "shop/book.xlsx");
    CHECK(sheet.products.size() == 2);
    CHECK(sheet.tab == "Labels");
    CHECK(sheet.other_tabs == std::vector<std::string>{"Old labels"});
    CHECK(sheet.products.at(0).origin.source == "book.xlsx");
    auto bad = good;
    bad[1][4] = "many";
    const auto faulty = catalog::read_sheet(test::xlsx_of({tabs[0], {"Labels", test::xlsx_rows(bad)}}), "book.xlsx");
    CHECK(faulty.faults.kept().at(0).place.source == "book.xlsx, sheet \"Labels\"");
    auto no_gtin = good;
    no_gtin[0][0] = "gtn";
    const auto misspelt =
        catalog::read_sheet(test::xlsx_of({tabs[0], {"Labels", test::xlsx_rows(no_gtin)}}), "book.xlsx");
    CHECK(misspelt.faults.kept().at(0).place.source == "book.xlsx, sheet \"Labels\"");
    CHECK(misspelt.faults.kept().at(0).place.expected == "gtin");
}

TEST_CASE("workbook sheet: numbers, percents and days that a person types are taken")
{
    const auto header = test::xlsx_rows({good[0]});
    const auto sheet = catalog::read_sheet(
        test::xlsx_of({{"S", header + "<row><c><v>9521234543213</v></c><c t=\"inlineStr\"><is><t>Oats</t></is></c>"
                                      "<c s=\"2\"><v>46351</v></c><c t=\"inlineStr\"><is><t>39 g</t></is></c>"
                                      "<c><v>140</v></c><c><v>190</v></c><c s=\"1\"><v>0.08</v></c></row>"}}),
        "book.xlsx");
    for (const auto& fault : sheet.faults.kept())
        FAIL_CHECK(fault.place.column, ": ", fault.place.expected);
    REQUIRE(sheet.products.size() == 1);
    CHECK(sheet.products[0].gtin.digits() == "09521234543213");
    CHECK(sheet.products[0].origin.entered_on.text() == "2026-11-25");
    CHECK(sheet.products[0].label.per_serving.find(core::Nutrient::Sodium)->percent->percent == 8);
}

TEST_CASE("workbook sheet: what a spreadsheet made of typed words, and formulas without a value, are faults")
{
    const auto header = test::xlsx_rows({{"gtin", "name", "entered_on", "serving_household", "calories"}});
    const auto row = "<row><c t=\"inlineStr\"><is><t>9521234543213</t></is></c><c t=\"e\"><v>#REF!</v></c>"
                     "<c s=\"2\"><v>46351</v></c><c s=\"2\"><v>46024</v></c><c><f>A1</f></c></row>";
    const auto sheet = catalog::read_sheet(test::xlsx_of({{"S", header + row}}), "book.xlsx");
    REQUIRE(sheet.faults.kept().size() == 3);
    CHECK(sheet.faults.kept()[0].place.found == "#REF!");
    CHECK(sheet.faults.kept()[0].place.expected.starts_with("a value; the formula in this cell gives none"));
    CHECK(sheet.faults.kept()[1].place.column == "serving_household");
    CHECK(sheet.faults.kept()[1].place.expected.starts_with("no day or time; the spreadsheet has made one"));
    CHECK(sheet.faults.kept()[2].place.column == "calories");
    // A row of nothing but such formulas is no empty row.
    const auto only = catalog::read_sheet(test::xlsx_of({{"S", header + "<row><c><f>A1</f></c></row>"}}), "book.xlsx");
    CHECK(only.refused_rows == 1);
}

TEST_CASE("workbook sheet: other kinds of files are told in one sentence")
{
    const auto only = [](const std::string& bytes) {
        const auto sheet = catalog::read_sheet(bytes, "book");
        REQUIRE(sheet.faults.kept().size() == 1);
        CHECK(sheet.products.empty());
        return sheet.faults.kept()[0];
    };
    CHECK(only("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1").place.found ==
          "a workbook of an older kind (.xls), or one with a password");
    CHECK(only(test::zip_of({{"food.csv", "x"}})).place.expected == "a CSV file, or a workbook saved as .xlsx or .ods");
    CHECK(only(test::xlsx_of({})).kind == Error::Kind::Empty);
    CHECK(only(test::xlsx_of({{"S", ""}})).kind == Error::Kind::Empty);
    CHECK(only(test::xlsx_of({{"S", test::xlsx_rows(good)}}).substr(0, 900)).kind == Error::Kind::TornFile);
    CHECK(only(test::zip_of({{"content.xml", std::string(3U << 20U, ' ')}})).kind == Error::Kind::TooLarge);
    CHECK(only(test::zip_of({{"../content.xml", "x"}, {"content.xml", "x"}})).kind == Error::Kind::BadEncoding);
}

TEST_CASE("workbook sheet: one torn in the middle of its rows gives no product")
{
    auto rows = test::xlsx_rows(good);
    rows += "<row r=\"1\"/>"; // a row that was before: the file is damaged from here on
    const auto sheet = catalog::read_sheet(test::xlsx_of({{"S", rows}}), "book.xlsx");
    CHECK(sheet.products.empty());
    CHECK(sheet.refused_rows == 2);
    CHECK(sheet.faults.kept().at(0).kind == Error::Kind::TornFile);
}
