#include "catalog/read/sheet.h"
#include "catalog/write/sheet_export.h"
#include "tests/catalog/odd_products.h"
#include "tests/catalog/products.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <random>

using catalog::Store;
using core::Nutrient;

namespace {

/// What the sheets of an export hold.
std::vector<core::Product> read_back(const catalog::ExportReport& report)
{
    std::vector<core::Product> all;
    for (const auto& file : report.files) {
        auto sheet = catalog::read_sheet_file(file);
        for (const auto& fault : sheet.faults.kept())
            FAIL_CHECK(fault.place.row, ' ', fault.place.column, ": ", fault.place.found, ", ", fault.place.expected);
        all.insert(all.end(), sheet.products.begin(), sheet.products.end());
    }
    return all;
}

std::vector<core::Product> all_of(const Store& store)
{
    std::vector<core::Product> all;
    for (auto product = store.next_after(nullptr); product; product = store.next_after(&product->gtin))
        all.push_back(*product);
    return all;
}

/// Checks that a catalog comes back whole.
catalog::ExportReport comes_back(const Store& store, const test::TempFolder& folder,
                                 const catalog::ExportOptions& options = {})
{
    auto report = catalog::export_sheets(store, folder.file("sheet.csv"), options);
    REQUIRE(report.has_value());
    for (const auto& fault : report->not_carried.kept())
        FAIL_CHECK(store.find(core::Gtin::parse(fault.place.found).value())->note, fault.place.column);
    const auto before = all_of(store);
    const auto after = read_back(*report);
    REQUIRE(after.size() == before.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        CAPTURE(before[i].name);
        CHECK(after[i] == before[i]);
    }
    return *std::move(report);
}

std::string random_text(std::mt19937& random)
{
    const char* const pieces[] = {"=",    "+",     "-", "@",  "'",   "\"", ",", ";",
                                  "oats", "Crème", " ", "12", "1/2", "|",  "#", "none"};
    std::string text;
    for (auto count = random() % 6; count > 0; --count)
        text += pieces[random() % std::size(pieces)];
    while (text.find("  ") != std::string::npos)
        text.erase(text.find("  "), 1);
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    while (!text.empty() && text.front() == ' ')
        text.erase(0, 1);
    return text;
}

core::Column random_column(std::mt19937& random)
{
    core::Column column;
    for (const auto& nutrient : core::nutrients()) {
        if (random() % 3 != 0)
            continue;
        core::Line line;
        const int decimals = static_cast<int>(random() % 3);
        auto text = std::to_string(1 + random() % 899) +
                    (decimals == 0 ? ""
                                   : "." + std::string(static_cast<std::size_t>(decimals),
                                                       static_cast<char>('0' + random() % 10)));
        if (random() % 4 != 0)
            line.amount = core::parse_figure(nutrient.nutrient, (random() % 5 == 0 ? "<" : "") + text).value();
        if (nutrient.percent != core::PercentRounding::None && random() % 2 == 0)
            line.percent = core::PrintedPercent{static_cast<int>(1 + random() % 300), random() % 9 == 0};
        line.worked_back = random() % 10 == 0;
        column.lines[nutrient.nutrient] = line;
        if (random() % 20 == 0)
            column.not_significant.insert(nutrient.nutrient);
    }
    return column;
}

core::Product random_product(std::mt19937& random, std::uint64_t number)
{
    auto product = test::full_product();
    product.gtin = test::gtin(number);
    product.name = "x" + random_text(random);
    product.brand = random_text(random);
    product.aisle = random_text(random);
    product.note = random_text(random);
    product.category = random_text(random);
    product.label.serving.household = random_text(random);
    product.label.per_serving = random_column(random);
    product.label.second->column = random_column(random);
    if (random() % 2 == 0)
        product.label.second.reset();
    product.label.ingredients = "y" + random_text(random);
    product.label.net_quantity = core::parse_net_quantity("z" + random_text(random));
    product.origin.kind = static_cast<core::Origin::Kind>(random() % 3);
    product.origin.source = "s" + random_text(random);
    product.origin.row = random() % 3'000'000;
    return product;
}

} // namespace

TEST_CASE("export: every odd product comes back as it was")
{
    for (const auto& odd : test::odd_products()) {
        CAPTURE(odd.why);
        Store store(":memory:");
        store.put(odd.product);
        const test::TempFolder folder;
        if (!odd.beyond_labels) {
            comes_back(store, folder);
            continue;
        }
        // What no label prints a sheet does not take: it is told by its number, never changed in silence.
        const auto report = catalog::export_sheets(store, folder.file("sheet.csv"));
        REQUIRE(report.has_value());
        CHECK(report->written == 0);
        REQUIRE(report->not_carried.count() == 1);
        CHECK(report->not_carried.kept()[0].place.found == odd.product.gtin.digits());
    }
}

TEST_CASE("export: the demo comes back as it was")
{
    const auto sheet = catalog::read_sheet_file(std::string(PAIRSTAND_SOURCE) + "/config/demo/cedar_hollow.csv");
    REQUIRE(sheet.products.size() > 100);
    Store store(":memory:");
    store.put(sheet.products);
    const test::TempFolder folder;
    CHECK(comes_back(store, folder).written == sheet.products.size());
}

TEST_CASE("export: random products come back as they were, over several sheets")
{
    std::mt19937 random(11);
    std::vector<core::Product> products;
    for (std::uint64_t number = 1; number <= 300; ++number)
        products.push_back(random_product(random, number));
    Store store(":memory:");
    store.put(products);
    const test::TempFolder folder;
    CHECK(comes_back(store, folder).files == std::vector<std::string>{folder.file("sheet.csv")});
    const auto split = comes_back(store, folder, {.most_rows = 120});
    CHECK(split.files ==
          std::vector<std::string>{folder.file("sheet.csv"), folder.file("sheet-2.csv"), folder.file("sheet-3.csv")});
    const auto by_bytes = comes_back(store, folder, {.most_bytes = 40'000});
    CHECK(by_bytes.files.size() > 2);
    for (const auto& file : by_bytes.files)
        CHECK(std::filesystem::file_size(file) <= 40'000);
}

TEST_CASE("export: numbers keep their zeros, and formulas are harmless text")
{
    auto product = test::product(1, "=HYPERLINK(\"x\")");
    product.gtin = core::Gtin::parse("012345000065").value();
    Store store(":memory:");
    store.put(product);
    const test::TempFolder folder;
    const auto report = comes_back(store, folder);
    const auto bytes = test::bytes_of(report.files.at(0));
    CHECK(bytes.starts_with("\xEF\xBB\xBFgtin,name,"));
    CHECK(bytes.find("\r\n\"'012345000065\",\"'=HYPERLINK(\"\"x\"\")\",Millbrook,") != std::string::npos);
}

TEST_CASE("export: only what was typed at the station, when asked for")
{
    auto typed = test::product(2, "Typed");
    typed.origin.kind = core::Origin::Kind::TypedHere;
    Store store(":memory:");
    store.put(test::product(1));
    store.put(typed);
    const test::TempFolder folder;
    const auto report = catalog::export_sheets(store, folder.file("typed.csv"), {.typed_here_only = true});
    REQUIRE(report.has_value());
    CHECK(report->written == 1);
    CHECK(read_back(*report) == std::vector{typed});
}

TEST_CASE("export: a catalog without products gives a header alone")
{
    const Store store(":memory:");
    const test::TempFolder folder;
    const auto report = catalog::export_sheets(store, folder.file("sheet.csv"));
    REQUIRE(report.has_value());
    CHECK(test::bytes_of(report->files.at(0)) == "\xEF\xBB\xBFgtin,name,entered_on,serving_size,calories\r\n");
}

TEST_CASE("export: what cannot be written is said")
{
    Store store(":memory:");
    store.put(test::product(1));
    const test::TempFolder folder;
    CHECK(catalog::export_sheets(store, folder.file("no/such/sheet.csv")).error().kind ==
          core::Error::Kind::CannotWrite);
    CHECK(catalog::write_template(folder.file("no/such/sheet.csv")).error().kind == core::Error::Kind::CannotWrite);
    CHECK(catalog::export_sheets(store, std::filesystem::path(folder.file("x")).parent_path()).error().kind ==
          core::Error::Kind::IsFolder);
}

TEST_CASE("template: it has every column that a leader fills in, loads nothing as it is, and its example loads")
{
    const test::TempFolder folder;
    const auto path = folder.file("template.csv");
    REQUIRE(catalog::write_template(path));
    const auto empty = catalog::read_sheet_file(path);
    CHECK(empty.products.empty());
    REQUIRE(empty.faults.count() == 1);
    CHECK(empty.faults.kept()[0].kind == core::Error::Kind::Empty);
    auto filled = test::bytes_of(path);
    const auto example = filled.rfind("# ");
    filled.erase(example, 2);
    const auto sheet = catalog::read_sheet(filled, "template.csv");
    for (const auto& fault : sheet.faults.kept())
        FAIL_CHECK(fault.place.column, ": ", fault.place.expected);
    REQUIRE(sheet.products.size() == 1);
    CHECK(sheet.products[0].name == "Oat rounds, honey");
    CHECK(sheet.products[0].label.per_serving.lines.size() == 15);
    for (const auto* name :
         {"gtin", "contains", "reference_food", "this_place_only", "vitamin_d_mcg", "potassium_percent_dv"})
        CHECK(filled.find(name) != std::string::npos);
}
