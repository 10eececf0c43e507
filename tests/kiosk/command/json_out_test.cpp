// The JSON of `pairstand compare` is what docs/json.md says: each field, its type, when it is there, and each name.
#include "catalog/store/store.h"
#include "kiosk/command/compare.h"
#include "kiosk/command/json_out.h"
#include "kiosk/command/json_why.h"
#include "tests/kiosk/command/shop.h"
#include "tests/support/label_maker.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <utility>

namespace test {
namespace {

using Json = nlohmann::ordered_json;

/// A row of the page's table of fields.
struct Field {
    std::set<std::string> types;
    bool always;
};

std::string trimmed(std::string text)
{
    text.erase(0, text.find_first_not_of(" `"));
    return text.erase(text.find_last_not_of(" `") + 1);
}

std::vector<std::vector<std::string>> table_below(const std::string& heading)
{
    std::istringstream page(bytes_of(std::string(PAIRSTAND_SOURCE) + "/docs/json.md"));
    std::vector<std::vector<std::string>> rows;
    std::string line;
    bool below = false;
    while (std::getline(page, line)) {
        if (line.starts_with("## "))
            below = line == "## " + heading;
        if (!below || !line.starts_with("|"))
            continue;
        std::vector<std::string> cells;
        std::istringstream parts(line.substr(1));
        for (std::string cell; std::getline(parts, cell, '|');)
            cells.push_back(trimmed(cell));
        rows.push_back(cells);
    }
    REQUIRE(rows.size() > 2);
    rows.erase(rows.begin(), rows.begin() + 2); // the heading and its line
    return rows;
}

std::map<std::string, Field> documented_fields()
{
    std::map<std::string, Field> fields;
    for (const auto& row : table_below("Fields")) {
        std::set<std::string> types;
        std::istringstream words(row.at(1));
        for (std::string word; words >> word;)
            if (word != "or" && word != "false")
                types.insert(word == "true" ? "boolean" : word);
        CHECK((row.at(2) == "always" || row.at(2) == "sometimes"));
        CHECK(fields.emplace(row.at(0), Field{types, row.at(2) == "always"}).second);
    }
    return fields;
}

std::map<std::string, std::set<std::string>> documented_names()
{
    std::map<std::string, std::set<std::string>> names;
    for (const auto& row : table_below("Names"))
        names[row.at(0)].insert(row.at(1));
    return names;
}

std::string type_of(const Json& json)
{
    const std::map<std::string, std::string> words{{"string", "text"}, {"array", "list"}};
    const std::string name = json.type_name();
    const auto word = words.find(name);
    return word == words.end() ? name : word->second;
}

/// What was met in real output: every path with its types, and the objects of each kind by the names that they have.
struct Met {
    std::map<std::string, std::set<std::string>> types;
    std::map<std::string, std::vector<std::set<std::string>>> objects;

    void look(const Json& json, const std::string& path)
    {
        if (!path.empty() && !path.ends_with("[]"))
            types[path].insert(type_of(json));
        if (json.is_array())
            for (const auto& element : json)
                look(element, path + "[]");
        if (!json.is_object())
            return;
        std::set<std::string> own;
        for (const auto& [name, value] : json.items()) {
            const std::string side = name == "right" ? "left" : name; // documented once
            own.insert(side);
            look(value, path.empty() ? side : path + "." + side);
        }
        objects[path].push_back(own);
    }
};

} // namespace

TEST_CASE("json: real output has the fields that the page documents, and no others")
{
    Shop shop;
    Met met;
    for (const auto* right : {&shop.plain, &shop.bulk}) {
        REQUIRE(shop.compare(shop.rich.gtin.digits(), right->gtin.digits()) == 0);
        met.look(Json::parse(shop.out.str()), "");
        shop.left_price = core::cents(399);
        shop.right_price = right == &shop.plain ? shop.left_price : std::nullopt;
        REQUIRE(shop.compare(shop.rich.gtin.digits(), right->gtin.digits()) == 0);
        met.look(Json::parse(shop.out.str()), "");
        shop.left_price.reset();
        shop.right_price.reset();
        shop.rules = core::rule_sets_named(core::rule_set_keys());
        REQUIRE(shop.compare(shop.rich.gtin.digits(), right->gtin.digits()) == 0);
        met.look(Json::parse(shop.out.str()), "");
        shop.rules.reset();
    }
    const auto fields = documented_fields();
    for (const auto& [path, types] : met.types) {
        const auto& told_path = path;
        CAPTURE(told_path);
        REQUIRE(fields.contains(path));
        for (const auto& type : types) {
            CAPTURE(type);
            CHECK(fields.at(path).types.contains(type));
        }
    }
    for (const auto& [path, field] : fields) {
        const auto& told_path = path;
        CAPTURE(told_path);
        REQUIRE(met.types.contains(path)); // documented, and really there
        const auto dot = path.rfind('.');
        const std::string parent = dot == std::string::npos ? "" : path.substr(0, dot);
        const std::string name = dot == std::string::npos ? path : path.substr(dot + 1);
        bool everywhere = true;
        for (const auto& names : met.objects.at(parent))
            everywhere = everywhere && names.contains(name);
        CHECK(everywhere == field.always);
        CHECK(met.types.at(path) == field.types); // also null, where null may stand
    }
}

TEST_CASE("json: every name is documented, and every documented one is used")
{
    std::map<std::string, std::set<std::string>> names;
    const auto collect = [&](const std::string& kind, auto last) {
        for (int i = 0; i <= static_cast<int>(last); ++i)
            names[kind].insert(kiosk::json_name(static_cast<decltype(last)>(i)));
        CHECK(names[kind].size() == static_cast<std::size_t>(last) + 1); // no name twice
    };
    collect("basis", core::Basis::Prepared);
    collect("finding", core::Finding::NotComparable);
    collect("why", core::Why::PercentsOfUnlikeLabels);
    collect("contradiction", core::Contradiction::WorkedBack);
    collect("step", core::Step::Kind::PercentOnBasis);
    collect("source", core::Source::NotSignificant);
    collect("source kind", core::Origin::Kind::TypedHere);
    collect("reading", core::Reading::High);
    collect("aim", core::Aim::Neither);
    collect("audience", core::Audience::Infant);
    collect("second column", core::SecondColumn::Kind::PerContainer);
    collect("price why", core::PriceWhy::UnlikeGoods);
    collect("verdict", core::Verdict::NotForThisFood);
    collect("rule reason", core::Reason::ForYoungChildren);
    collect("bound", core::Bound::AtLeast);
    collect("counted", core::Counted::PercentOfCalories);
    collect("per", core::Per::Portion);
    collect("judged by", core::JudgedBy::PrintedFigure);
    collect("beyond", core::Beyond::PackageWords);
    collect("first grain", core::FirstGrain::Kind::NoneNamed);
    collect("sugar", core::SugarRow::Kind::Juice);
    collect("allergen", core::Allergen::Sesame);
    collect("allergen place", core::AllergenPlace::MayContain);
    CHECK(names == documented_names());
}

TEST_CASE("json: the page's version is the program's")
{
    Shop shop;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits()) == 0);
    const auto json = Json::parse(shop.out.str());
    CHECK(json.begin().key() == "form");
    CHECK(json["form"] == "pairstand comparison");
    CHECK(json["version"] == kiosk::json_version);
    const auto page = bytes_of(std::string(PAIRSTAND_SOURCE) + "/docs/json.md");
    CHECK(page.find("**version " + std::to_string(kiosk::json_version) + "**") != std::string::npos);
}

// Sodium 55 mg is 52.5 to 57.5 mg (21 CFR 101.9(c)(4)); "about 9" is 8.5 to 9.5 (b)(8)(i); 2300 mg a day (c)(9).
TEST_CASE("json: figures are exact text, ranges are half open")
{
    Shop shop;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits(), core::Basis::Package) == 0);
    const auto json = Json::parse(shop.out.str());
    REQUIRE(json["bases"].size() == 1);
    CHECK(json["bases"][0]["basis"] == "package");
    for (const auto& row : json["bases"][0]["rows"]) {
        if (row["nutrient"] != "sodium")
            continue;
        CHECK(row["unit"] == "mg");
        CHECK(row["aim"] == "less");
        CHECK(row["finding"] == "left_more");
        CHECK(row["left"]["amount"] == "495");
        // 255 g (254 to 256) in servings of 29.5 to 30.5 g are 8.33 to 8.68: "about 9" is 8.5 to 8.68 here.
        CHECK(row["left"]["range"] == Json({{"low", "446.25"}, {"below", "498.983051"}}));
        CHECK(row["left"]["daily_value"]["percent"] == 18);
        CHECK(row["left"]["daily_value"]["say_range"] == true);
        CHECK(row["left"]["daily_value"]["range"]["low"] == "19.402173913");
        CHECK(row["left"]["daily_value"]["range"]["below"] == "21.694915255");
        CHECK(row["left"]["daily_value"]["reading"].is_null()); // between or high: the label does not tell
        CHECK(row["left"]["daily_value"]["reading_of_one_serving"] == "low");
        return;
    }
    FAIL("no row for sodium");
}

TEST_CASE("compare command: what cannot be compared is one sentence, status 2 and no output")
{
    Shop shop;
    struct Case {
        std::string why, left, right, words;
    };
    const auto rich = shop.rich.gtin.digits();
    const Case cases[] = {
        {"an unknown number", rich, "9520000000998", "the catalog has no label for 9520000000998"},
        {"no number", "chips", rich, "\"chips\" is no product number, since it has other signs than digits"},
        {"a short number", "12345", rich, "has not 8, 12, 13 or 14 digits"},
        {"a wrong check digit", "9520000000999", rich, "its last digit does not fit the others"},
        {"an end of line in a number", "1\n2", rich, "\"1 2\" is no product number"},
        {"the same product twice", rich, rich, "both codes are Corn chips"},
        {"a case", "19520000000018", rich, "is the number of a case"},
        {"a store's own number", "2101234567890", rich, "names no product"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(shop.compare(c.left, c.right) == 2);
        CHECK(shop.out.str().empty());
        CHECK(shop.err.str().find(c.words) != std::string::npos);
        CHECK(shop.err.str().starts_with("pairstand compare: "));
        CHECK(shop.err.str().ends_with(".\n"));
        CHECK(std::ranges::count(shop.err.str(), '\n') == 1);
    }
}

TEST_CASE("compare command: every complaint is in the language that was asked for")
{
    Shop shop;
    shop.language = "es";
    struct Case {
        std::string why, left, right, words;
    };
    const auto rich = shop.rich.gtin.digits();
    const Case cases[] = {
        {"an unknown number", rich, "9520000000998", "el catálogo no tiene etiqueta para 9520000000998"},
        {"no number", "chips", rich, "\"chips\" no es un número de producto"},
        {"a wrong check digit", "9520000000999", rich, "su último dígito no va con los demás"},
        {"the same product twice", rich, rich, "los dos códigos son de Corn chips"},
        {"a case", "19520000000018", rich, "es el número de una caja"},
        {"a store's own number", "2101234567890", rich, "no es de un producto"},
        {"eight digits of two products", "16300255", rich, "es de dos productos"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(shop.compare(c.left, c.right) == 2);
        CHECK(shop.err.str().find(c.words) != std::string::npos);
    }
    shop.path = "/nowhere/catalog.db";
    CHECK(shop.compare(rich, rich) == 2);
    CHECK(shop.err.str().find("/nowhere/catalog.db: aquí no hay ningún catálogo") != std::string::npos);
}

TEST_CASE("compare command: eight digits of two products name both, with the digits to give for each")
{
    Shop shop;
    CHECK(shop.compare("16300255", shop.rich.gtin.digits()) == 2);
    CHECK(shop.err.str() ==
          "pairstand compare: 16300255 fits two products, as EAN-8 and as UPC-E; give 00000016300255 for Short, or "
          "00163002000055 for Long.\n");
    CHECK(shop.compare("00000016300255", "00163002000055") == 0);
}

TEST_CASE("compare command: a second column as prepared is told, and said not to be compared")
{
    Shop shop;
    shop.json = false;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits()) == 0);
    const auto told = shop.out.str().find("\n  Second column of the label, not compared. As prepared");
    REQUIRE(told != std::string::npos);
    CHECK(shop.out.str().find(": Calories 190; Sodium 110 mg 5%; Dietary fiber less than 1 g; Iron 10%\n", told) !=
          std::string::npos);
    REQUIRE(shop.compare(shop.bulk.gtin.digits(), shop.plain.gtin.digits()) == 0);
    CHECK(shop.out.str().find("Second column") == std::string::npos);
    shop.json = true;
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits()) == 0);
    const auto json = Json::parse(shop.out.str());
    CHECK(json["left"]["second_column"]["kind"] == "as_prepared");
    CHECK(json["left"]["second_column"]["rows"][1]["daily_value"]["percent"] == 5);
    CHECK(json["right"]["second_column"].is_null());
}

// core/compare/measured.h: what such a column prints is what the whole package shows.
TEST_CASE("compare command: a second column per container is said to be used for the whole package, and is")
{
    Shop shop;
    auto rich = rich_label();
    rich.servings = core::parse_servings("2").value();
    rich.net_quantity = core::parse_net_quantity("NET WT 2.1 OZ (60 g)"); // two servings of 30 g
    rich.second =
        core::SecondColumn{core::SecondColumn::Kind::PerContainer,
                           make_label("", "", {{N::Calories, "270"}, {N::SaturatedFat, "12", "60%"}}).per_serving};
    rich.per_serving.lines[N::SaturatedFat].amount = core::parse_figure(N::SaturatedFat, "6").value();
    catalog::Store(shop.path).put(make_product("952000000001", "Corn chips", rich));
    REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits(), core::Basis::Package) == 0);
    const auto json = Json::parse(shop.out.str());
    CHECK(json["left"]["second_column"]["kind"] == "per_container");
    for (const auto& row : json["bases"][0]["rows"])
        if (row["nutrient"] == "saturated_fat") {
            CHECK(row["left"]["source"] == "printed");
            CHECK(row["left"]["amount"] == "12"); // printed there, not worked out
            CHECK(row["finding"] == "left_more");
        }
    shop.json = false;
    for (const auto& [language, words] :
         {std::pair("en",
                    "\n  Second column of the label, used for the whole package: Calories 270; Saturated fat 12 g "
                    "60%\n"),
          std::pair("es", "\n  Segunda columna de la etiqueta, se usa para todo el paquete: Calorías 270; Grasa "
                          "saturada 12 g 60%\n")}) {
        const auto& told_language = language;
        CAPTURE(told_language);
        shop.language = language;
        REQUIRE(shop.compare(shop.rich.gtin.digits(), shop.plain.gtin.digits()) == 0);
        CHECK(shop.out.str().find(words) != std::string::npos);
        CHECK(shop.out.str().find(language == std::string("en") ? "not compared" : "no se compara") ==
              std::string::npos);
    }
}

} // namespace test
