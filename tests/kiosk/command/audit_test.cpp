#include "catalog/load/load.h"
#include "core/audit/doubt.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/audit.h"
#include "kiosk/command/audit_arguments.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <sstream>

namespace {

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run audit(const std::string& source, bool json = false, int samples = 5)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::audit({.source = source, .json = json, .samples = samples}, "2026-11-26", out, err);
    return {status, out.str(), err.str()};
}

const std::string head = "gtin,name,brand,entered_on,serving_size,calories,total_fat_g,sodium_mg,sodium_percent_dv,"
                         "total_carbohydrate_g,protein_g\n";
const std::string sound = "9521234543213,Oat rounds,Cedar Hollow,2026-11-25,39 g,140,1,160,7,31,3\n";
const std::string slipped = "9520141001083,Oat rings,Cedar Hollow,2026-11-25,39 g,140,1,1600,7,31,3\n";
const std::string twice = "9520141001120,OAT  ROUNDS,cedar hollow,2026-11-25,39 g,140,1,160,7,31,3\n";

} // namespace

TEST_CASE("audit command: its arguments")
{
    CHECK(std::get<kiosk::AuditArguments>(kiosk::read_arguments({"audit", "a.csv", "--json", "--lang", "es"})) ==
          kiosk::AuditArguments{.source = "a.csv", .json = true, .samples = 5, .language = "es"});
    CHECK(std::get<kiosk::AuditArguments>(kiosk::read_arguments({"audit", "c", "--approve", "1", "--rule", "calories"}))
              .rule == "calories");
    for (const std::vector<std::string>& wrong : {std::vector<std::string>{"audit"}, {"audit", "c", "--approve", "1"}})
        CHECK(std::holds_alternative<kiosk::Misused>(kiosk::read_arguments(wrong)));
    CHECK(std::get<kiosk::Printed>(kiosk::read_arguments({"audit", "--help"})).text.find("Exit status") !=
          std::string::npos);
}

TEST_CASE("audit command: a sheet without a doubt")
{
    const test::TempFolder folder;
    const auto run = audit(folder.write("a.csv", head + sound));
    CHECK(run.out == "Labels looked through: 1. No doubt was found.\n");
    CHECK(run.err.empty());
    CHECK(run.status == 0);
}

TEST_CASE("audit command: a catalog with a slip, in words and in JSON")
{
    const test::TempFolder folder;
    const auto catalog = folder.file("shop");
    REQUIRE(catalog::load({folder.write("a.csv", head + sound + slipped)}, catalog));
    const auto run = audit(catalog);
    CHECK(run.status == 1);
    CHECK(run.out ==
          "Labels looked through: 2. With something to look at on the package: 1.\n"
          "  slipped_by_ten: 1 (most likely a slip; 21 CFR 101.9(d)(7)(ii), (c)(1)(i))\n"
          "    09520141001083 Oat rings: Sodium: 1,600 mg does not fit 7%, but 160 mg would. A decimal point "
          "may have slipped by one or two places.\n");
    const auto json = nlohmann::json::parse(audit(catalog, true).out);
    CHECK(json.at("form") == "pairstand audit");
    CHECK(json.at("labels") == 2);
    CHECK(json.at("doubted") == 1);
    const auto& sample = json.at("rules").at(0).at("samples").at(0);
    CHECK(sample.at("gtin") == "09520141001083");
    CHECK(sample.at("nutrient") == "sodium");
    CHECK(sample.at("found").at("amount") == "1600");
    CHECK(sample.at("likely").at("amount") == "160");
}

TEST_CASE("audit command: names that stand twice, samples are capped, counts are not")
{
    const test::TempFolder folder;
    const auto run = audit(folder.write("a.csv", head + sound + slipped + twice), false, 1);
    CHECK(run.status == 1);
    CHECK(run.out.find("Labels looked through: 3. With something to look at on the package: 3") != std::string::npos);
    CHECK(run.out.find("duplicate_name: 2 (worth a look; common practice)\n") != std::string::npos);
    CHECK(run.out.find("  ... and 1 more\n") != std::string::npos);
}

TEST_CASE("audit command: what a leader looked at is not told again until the label changes")
{
    const test::TempFolder folder;
    const auto catalog = folder.file("shop");
    REQUIRE(catalog::load({folder.write("a.csv", head + sound + slipped)}, catalog));
    const auto approve = [&](const std::string& source, const std::string& code, const std::string& rule) {
        std::ostringstream out;
        std::ostringstream err;
        const int status = kiosk::audit({.source = source, .approve = code, .rule = rule}, "2026-11-26", out, err);
        return Run{status, out.str(), err.str()};
    };
    CHECK(approve(catalog, "9520141001083", "nothing").err ==
          "pairstand audit: \"nothing\" is no rule of the audit; docs/audit.md names them.\n");
    CHECK(
        approve(catalog, "9520141001083", "calories").err ==
        "pairstand audit: the audit does not doubt Oat rings by the rule calories, so there is nothing to approve.\n");
    CHECK(approve(catalog, "9520141001120", "slipped_by_ten").status == 2);
    CHECK(approve(folder.file("a.csv"), "9520141001083", "slipped_by_ten").err.find("is a sheet; load it first") !=
          std::string::npos);
    CHECK(audit(catalog).status == 1);
    const auto done = approve(catalog, "9520141001083", "slipped_by_ten");
    CHECK(done.status == 0);
    CHECK(done.out == "slipped_by_ten is not told of Oat rings again until its label changes.\n");
    const auto quiet = audit(catalog);
    CHECK(quiet.status == 0);
    CHECK(quiet.out == "Doubts that are not told, because you looked at the package and it says so: 1.\n"
                       "Labels looked through: 2. No doubt was found.\n");
    CHECK(nlohmann::json::parse(audit(catalog, true).out).at("approved") == 1);
    // Another figure: what was looked at says nothing of it.
    auto other = slipped;
    other.replace(other.find("1600"), 4, "1610");
    REQUIRE(catalog::load({folder.write("b.csv", head + other)}, catalog));
    CHECK(audit(catalog).status == 1);
}

TEST_CASE("audit command: what cannot be read")
{
    const test::TempFolder folder;
    const auto missing = audit(folder.file("nothing.csv"));
    CHECK(missing.status == 2);
    CHECK(missing.out.empty());
    CHECK(missing.err.starts_with("pairstand audit: "));
    CHECK(audit(folder.write("empty.csv", "")).status == 2);
}

TEST_CASE("audit guide: docs/audit.md has every rule with its severity and source")
{
    std::ifstream file(std::string(PAIRSTAND_SOURCE) + "/docs/audit.md");
    std::stringstream guide;
    guide << file.rdbuf();
    std::size_t rows = 0;
    for (const auto& rule : core::doubt_rules()) {
        const auto row = "\n| `" + std::string(rule.name) + "` | " + std::string(core::severity_name(rule.severity)) +
                         " | " + std::string(rule.citation) + " | ";
        CAPTURE(row);
        CHECK(guide.str().find(row) != std::string::npos);
    }
    for (auto at = guide.str().find("\n| `"); at != std::string::npos; at = guide.str().find("\n| `", at + 1))
        ++rows;
    CHECK(rows == core::doubt_rule_count);
}
