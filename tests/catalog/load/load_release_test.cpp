#include "catalog/load/duplicates.h"
#include "catalog/load/load_release.h"
#include "catalog/read/release_files.h"
#include "catalog/store/store.h"
#include "core/audit/audit.h"
#include "tests/catalog/products.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <fstream>
#include <map>

using catalog::Finding;
using catalog::load_release;
using Kind = core::Error::Kind;

namespace {

/// The newest record of every product, by number.
using Truth = std::map<std::string, test::MadeRecord>;

Truth make(const test::ReleaseShape& shape, const std::string& folder)
{
    Truth truth;
    test::make_release(shape, folder, [&](const test::MadeRecord& record) {
        if (record.newest && !record.gtin_14.empty())
            truth[record.gtin_14] = record;
    });
    return truth;
}

struct Agreement {
    std::size_t figures = 0;
    std::size_t certain = 0;
    std::size_t wrong = 0; ///< said to be certain, and not what the package prints
};

std::int64_t printed_by(const core::Line& line, const test::MadeFigure& made)
{
    if (line.amount)
        return line.amount->amount.nano();
    return made.printed_nano; // a percent: looked at by itself
}

void compare(const core::Product& product, const test::MadeRecord& made, Agreement& agreement)
{
    CHECK(product.name == made.name);
    CHECK(product.origin.row == made.fdc_id);
    CHECK(product.origin.entered_on.text() == made.published_on);
    for (const auto& figure : made.figures) {
        const auto* line = product.label.per_serving.find(figure.nutrient);
        REQUIRE(line != nullptr);
        ++agreement.figures;
        if (line->worked_back)
            continue;
        ++agreement.certain;
        const bool same = printed_by(*line, figure) == figure.printed_nano &&
                          (!line->amount || line->amount->less_than == figure.less_than) &&
                          figure.by_percent == !line->amount;
        agreement.wrong += same ? 0U : 1U;
    }
}

void write(const std::string& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

} // namespace

TEST_CASE("load release: every product of a release comes back as its package prints it")
{
    for (const auto year : {test::ReleaseYear::Of2019, test::ReleaseYear::Of2023, test::ReleaseYear::Of2026})
        for (const bool torn_apart : {false, true}) {
            CAPTURE(static_cast<int>(year));
            CAPTURE(torn_apart);
            const test::TempFolder folder;
            test::ReleaseShape shape;
            shape.year = year;
            shape.rows_torn_apart = torn_apart;
            const auto truth = make(shape, folder.file("release"));
            const auto loaded = load_release(folder.file("release"), folder.file("shop"));
            REQUIRE(loaded);
            const auto& report = loaded->report;
            CHECK(report.records == 1'050);
            CHECK(report.of(Finding::Case).count > 10);
            CHECK(report.of(Finding::WrongDigits).count == 2);
            CHECK(report.of(Finding::CodeCompleted).count > 10);
            CHECK(report.of(Finding::LostAmounts).count == 0); // cases and wrong codes have records too
            const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
            CHECK(store.count() == report.taken);
            Agreement agreement;
            std::size_t found = 0;
            for (const auto& [gtin, made] : truth)
                if (const auto product = store.find(core::Gtin::parse(gtin).value())) {
                    ++found;
                    compare(*product, made, agreement);
                }
            CHECK(found == report.taken);
            CHECK(found > 950);
            CHECK(agreement.wrong == 0);
            CHECK(agreement.certain * 10 > agreement.figures * 9);
        }
}

TEST_CASE("load release: of several records the newest is taken, and an older one where it has no amounts")
{
    const test::TempFolder folder;
    std::filesystem::create_directory(folder.file("r"));
    write(folder.file("r/food.csv"), "\"fdc_id\",\"data_type\",\"description\",\"publication_date\"\n"
                                     "\"1\",\"branded_food\",\"OATS OLD\",\"2019-04-01\"\n"
                                     "\"2\",\"branded_food\",\"OATS NEW\",\"2023-10-26\"\n"
                                     "\"3\",\"branded_food\",\"RYE OLD\",\"2019-04-01\"\n"
                                     "\"4\",\"branded_food\",\"RYE NEW\",\"2023-10-26\"\n"
                                     "\"5\",\"branded_food\",\"EMPTY\",\"2023-10-26\"\n"
                                     "\"6\",\"branded_food\",\"WITHOUT A DAY\",\"\"\n");
    const auto gtin_of = [](std::uint64_t number) { return test::gtin(number).digits().substr(1); };
    const auto row = [&](const std::string& record, std::uint64_t number, const std::string& modified) {
        return "\"" + record + "\",\"" + gtin_of(number) + "\",\"30.0\",\"g\",\"" + modified + "\"\n";
    };
    write(folder.file("r/branded_food.csv"),
          "\"fdc_id\",\"gtin_upc\",\"serving_size\",\"serving_size_unit\",\"modified_date\"\n" +
              row("1", 1, "2019-01-01") + row("2", 1, "2018-01-01") + row("3", 2, "") + row("4", 2, "") +
              row("5", 3, "") + row("6", 4, ""));
    write(folder.file("r/food_nutrient.csv"), "\"fdc_id\",\"nutrient_id\",\"amount\",\"derivation_id\"\n"
                                              "\"1\",\"1008\",\"333.0\",\"70\"\n\"2\",\"1008\",\"367.0\",\"70\"\n"
                                              "\"3\",\"1008\",\"333.0\",\"70\"\n\"9\",\"1008\",\"1.0\",\"70\"\n"
                                              "\"2\",\"1004\",\"n/a\",\"70\"\n"
                                              "\"6\",\"1008\",\"367.0\",\"70\"\n");
    const auto loaded = load_release(folder.file("r"), folder.file("shop"));
    REQUIRE(loaded);
    const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
    CHECK(store.find(test::gtin(1))->name == "OATS NEW");
    CHECK(store.find(test::gtin(2))->name == "RYE OLD");
    CHECK(store.find(test::gtin(4))->origin.entered_on.text() == "2023-10-26"); // the release's own day
    CHECK(store.count() == 3);
    const auto& report = loaded->report;
    CHECK(report.of(Finding::OlderRecord).count == 2);
    CHECK(report.of(Finding::OlderTaken).count == 1);
    CHECK(report.of(Finding::NoNutrients).count == 1);
    CHECK(report.of(Finding::NoNutrients).samples.front() == "fdc_id 5, " + test::gtin(3).digits() + ": EMPTY");
    CHECK(report.of(Finding::LostAmounts).count == 1);
    CHECK(report.of(Finding::BadAmounts).samples.front() == folder.file("r/food_nutrient.csv") + ":6: n/a");
}

TEST_CASE("load release: the leader's own entry stays, and what the release says differently is told")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 200;
    shape.odd_codes = false;
    const auto truth = make(shape, folder.file("release"));
    auto own = test::product(1, "Oat rounds of ours");
    own.gtin = core::Gtin::parse(truth.begin()->first).value();
    auto here = test::product(2, "Not in the release");
    auto older = own;
    older.gtin = core::Gtin::parse(truth.rbegin()->first).value();
    older.origin.kind = core::Origin::Kind::Release;
    catalog::Store(folder.file("shop")).put(std::vector{own, here, older});
    const auto loaded = load_release(folder.file("release"), folder.file("shop"));
    REQUIRE(loaded);
    const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
    CHECK(store.find(own.gtin) == own);
    CHECK(store.find(here.gtin) == here);
    CHECK(store.find(older.gtin)->name == truth.rbegin()->second.name);
    CHECK(store.count() == 201);
    CHECK(loaded->report.kept == 2);
    CHECK(loaded->report.replaced == 1);
    CHECK(loaded->report.taken == 199);
    REQUIRE(loaded->report.of(Finding::OwnEntryKept).count == 1);
    REQUIRE(loaded->report.own_kept().size() == 1);
    const auto& kept = loaded->report.own_kept().front();
    CHECK(kept.gtin == own.gtin);
    CHECK(kept.name == "Oat rounds of ours");
    CHECK_FALSE(kept.found.empty());
}

TEST_CASE("load release: the report has the audit of the whole catalog, what was there before included")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 400;
    make(shape, folder.file("release"));
    auto slipped = test::product(2, "Not in the release");
    slipped.label.per_serving.lines[core::Nutrient::Sodium].amount =
        core::parse_figure(core::Nutrient::Sodium, "1900").value();
    auto approved = slipped;
    approved.gtin = test::gtin(3);
    approved.name = "NOT in the release";
    {
        catalog::Store shop(folder.file("shop"));
        shop.put(std::vector{slipped, approved});
        REQUIRE(shop.approve(approved.gtin, "slipped_by_ten", core::Date::parse("2026-11-26").value()));
    }
    const auto loaded = load_release(folder.file("release"), folder.file("shop"));
    REQUIRE(loaded);
    const auto& audit = loaded->report.audit;
    const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
    CHECK(audit.labels() == store.count());
    CHECK(audit.approved() == 1);
    REQUIRE(audit.of(core::DoubtRule::DuplicateName).count >= 2);
    REQUIRE_FALSE(audit.of(core::DoubtRule::DuplicateName).samples.empty());
    for (const auto& sample : audit.of(core::DoubtRule::DuplicateName).samples)
        CHECK(catalog::same_name(store.find(sample.gtin).value(), store.find(sample.others.front()).value()));
    std::size_t doubts = 0;
    store.for_each([&](const core::Product& product) {
        doubts += core::audit(product).size();
        return true;
    });
    std::size_t told = 0;
    for (const auto& rule : core::doubt_rules())
        told += rule.rule == core::DoubtRule::DuplicateName ? 0 : audit.of(rule.rule).count;
    CHECK(told + audit.approved() == doubts);
}

TEST_CASE("load release: a download still in its zip file gives the same catalog as the folder")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 300;
    make(shape, folder.file("release"));
    std::vector<test::Packed> members;
    std::vector<std::string> contents;
    const std::vector<std::string> names = {"food.csv", "branded_food.csv", "food_nutrient.csv", "nutrient.csv"};
    for (const auto& name : names)
        contents.push_back(test::bytes_of(folder.file("release/" + name)));
    std::vector<std::string> inside;
    for (const auto& name : names)
        inside.push_back("FoodData_Central_csv_2026-04-30/" + name);
    for (std::size_t i = 0; i < names.size(); ++i)
        members.push_back({inside[i], contents[i]});
    const auto zip = test::zip_of(members);
    const auto path = folder.write("download.zip", zip);
    CHECK(catalog::is_release(path));
    REQUIRE(load_release(path, folder.file("of_zip")));
    REQUIRE(load_release(folder.file("release"), folder.file("of_folder")));
    CHECK(test::bytes_of(folder.file("of_zip")) == test::bytes_of(folder.file("of_folder")));
    const auto torn = folder.write("torn.zip", zip.substr(0, zip.size() / 2));
    CHECK_FALSE(catalog::is_release(torn));
    auto damaged = zip;
    damaged[damaged.find("FoodData_Central_csv_2026-04-30/branded_food.csv") + 500] ^= 0x55;
    const auto refused = load_release(folder.write("damaged.zip", damaged), folder.file("never"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().kind == Kind::TornFile);
    CHECK_FALSE(std::filesystem::exists(folder.file("never")));
}

namespace {

/// A record as the JSON download writes it, its amounts cut to three digits.
std::string json_of(const test::MadeRecord& record)
{
    std::string json = R"({"fdcId": )" + std::to_string(record.fdc_id) + R"(, "gtinUpc": ")" + record.code +
                       R"(", "description": ")" + record.name + R"(", "publicationDate": ")" + record.published_on +
                       R"(", "servingSize": )" + std::to_string(record.serving_micro / 10'000) +
                       R"(e-2, "servingSizeUnit": ")" + (record.in_milliliters ? "ml" : "g") +
                       R"(", "foodNutrients": [)";
    bool first = true;
    for (const auto& figure : record.figures) {
        char amount[32];
        std::snprintf(amount, sizeof amount, "%.3g", std::stod(figure.per_100));
        json += std::string(first ? "" : ", ") + R"({"nutrient": {"id": )" + std::to_string(figure.published_id) +
                R"(}, "foodNutrientDerivation": {"code": ")" +
                (figure.less_than    ? "LCSL"
                 : figure.by_percent ? "LCCD"
                                     : "LCCS") +
                R"("}, "amount": )" + amount + "}";
        first = false;
    }
    return json + "]}";
}

} // namespace

TEST_CASE("load release: the JSON form comes back as the packages print it, or says that it is not certain")
{
    const test::TempFolder folder;
    Truth truth;
    std::string json = R"({"BrandedFoods": [)";
    std::size_t written = 0;
    test::make_release({}, folder.file("release"), [&](const test::MadeRecord& record) {
        if (!record.newest || record.gtin_14.empty())
            return;
        json += (written++ == 0 ? "" : ",\n") + json_of(record);
        truth[record.gtin_14] = record;
    });
    const auto path = folder.write("foods.json", json + "]}");
    CHECK(catalog::is_release(path));
    const auto loaded = load_release(path, folder.file("shop"));
    REQUIRE(loaded);
    CHECK(loaded->report.records == written);
    const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
    CHECK(store.count() > 950);
    Agreement agreement;
    for (const auto& [gtin, made] : truth)
        if (const auto product = store.find(core::Gtin::parse(gtin).value()))
            compare(*product, made, agreement);
    CHECK(agreement.wrong == 0);
    CHECK(agreement.certain * 10 > agreement.figures * 8);
}

TEST_CASE("load release: a subset by category, words, numbers and market")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 300;
    shape.odd_codes = false;
    const auto truth = make(shape, folder.file("release"));
    const auto taken = [&](const catalog::ReleaseChoice& choice) {
        const auto loaded = load_release(folder.file("release"), folder.file("shop"), {choice, {}});
        REQUIRE(loaded);
        CHECK(loaded->report.taken + loaded->report.of(Finding::NotChosen).count +
                  loaded->report.of(Finding::OlderRecord).count ==
              loaded->report.records);
        std::vector<core::Product> products;
        if (loaded->report.taken > 0) {
            const auto store = catalog::Store::open(folder.file("shop"), catalog::Store::Mode::ReadOnly).value();
            for (auto next = store.next_after(nullptr); next; next = store.next_after(&next->gtin))
                products.push_back(*next);
            std::filesystem::remove(folder.file("shop"));
        }
        return products;
    };
    catalog::ReleaseChoice cereal;
    cereal.categories = {"cereal"};
    const auto cereals = taken(cereal);
    CHECK(cereals.size() > 5);
    for (const auto& product : cereals)
        CHECK(product.category == "Cereal");
    catalog::ReleaseChoice words;
    words.words = {"Chocolate", "cheese"};
    for (const auto& product : taken(words)) {
        std::string name = product.name;
        for (char& letter : name)
            letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
        CHECK(name.find("chocolate") != std::string::npos);
        CHECK(name.find("cheese") != std::string::npos);
    }
    catalog::ReleaseChoice numbers;
    numbers.numbers = {core::Gtin::parse(truth.begin()->first).value(), test::gtin(5)};
    CHECK(taken(numbers).size() == 1);
    catalog::ReleaseChoice market;
    market.market = "New Zealand";
    CHECK(taken(market).empty());
    CHECK_FALSE(std::filesystem::exists(folder.file("shop")));
}

TEST_CASE("load release: progress goes on to the end, and a cancelled load changes nothing")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 6'000; // enough rows to be told on the way
    make(shape, folder.file("release"));
    catalog::Store(folder.file("shop")).put(test::product(1));
    const auto before = test::bytes_of(folder.file("shop"));
    std::uint64_t last = 0;
    std::size_t told = 0;
    const auto loaded =
        load_release(folder.file("release"), folder.file("shop"), {{}, [&](const catalog::LoadProgress& far) {
                                                                       CHECK(far.done >= last);
                                                                       CHECK(far.done <= far.whole);
                                                                       last = far.done;
                                                                       return ++told < 2;
                                                                   }});
    REQUIRE(loaded);
    CHECK(loaded->cancelled);
    CHECK(told == 2);
    CHECK(test::bytes_of(folder.file("shop")) == before);
    CHECK_FALSE(std::filesystem::exists(folder.file("shop.loading")));
}
