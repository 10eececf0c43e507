#include "kiosk/desk/release_words.h"
#include "kiosk/files/languages.h"

#include <doctest/doctest.h>

using catalog::Finding;
using catalog::LoadProgress;
using kiosk::Milliseconds;
using Kind = kiosk::ReportLine::Kind;

namespace {

const ui::Language& language(const std::string& code)
{
    static const auto languages = kiosk::read_languages(std::string(PAIRSTAND_SOURCE) + "/config");
    return kiosk::language_named(code, languages);
}

} // namespace

TEST_CASE("release words: the report names what happened, and nothing else")
{
    catalog::ReleaseLoaded loaded;
    loaded.report.records = 12;
    loaded.report.amounts = 160;
    loaded.report.taken = 9;
    loaded.report.replaced = 2;
    loaded.report.note(Finding::Case, [] { return std::string("record 7, 10012345678902: OATS"); });
    loaded.report.note(Finding::WorkedBack, [] { return std::string("record 8"); });
    const std::vector<kiosk::ReportLine> expected = {
        {Kind::Sentence, "Read: 12 records and 160 amounts."},
        {Kind::Sentence, "9 products of the release were taken into shop.db."},
        {Kind::Sentence, "2 of them stand in place of an older entry."},
        {Kind::Heading, "Not taken:"},
        {Kind::Count, "1 cases of several packages, which no shopper holds"},
        {Kind::Sample, "such as record 7, 10012345678902: OATS"},
        {Kind::Heading, "Taken, with something to know:"},
        {Kind::Count, "1 with a figure that the amount per 100 does not tell for certain"},
        {Kind::Sample, "such as record 8"},
    };
    CHECK(kiosk::release_words(loaded, "shop.db", language("en")) == expected);
    CHECK(kiosk::release_words(loaded, "shop.db", language("es")).front().words ==
          "Se leyeron 12 registros y 160 cantidades.");
}

TEST_CASE("release words: the audit's doubts stand under what was loaded")
{
    const auto gtin = core::Gtin::parse("9521234543213").value();
    catalog::ReleaseLoaded loaded;
    loaded.report.taken = 2;
    loaded.report.audit.add({gtin, "OATS", "", "", 0, {core::DoubtRule::SlippedByTen}}, true);
    const auto words = kiosk::release_words(loaded, "shop.db", language("en"));
    CHECK(words.size() == 2); // no label was looked through: the audit says nothing
    loaded.report.audit.add({gtin, "OATS", "", "", "", {}, {"", 0, core::Date::parse("2026-11-26").value()}}, {});
    const auto audited = kiosk::release_words(loaded, "shop.db", language("es"));
    REQUIRE(audited.size() > 5);
    CHECK(audited[2] == kiosk::ReportLine{Kind::Heading, "Lo que halló la revisión:"});
    CHECK(audited[3].kind == Kind::Sentence);
    CHECK(audited[4].kind == Kind::Count);
    CHECK(audited[4].words.starts_with("slipped_by_ten: 1 ("));
    CHECK(audited[5].kind == Kind::Sample);
    CHECK(audited[5].words.starts_with("09521234543213 OATS: "));
}

TEST_CASE("release words: what was asked for and is not there is told with what is")
{
    using catalog::NotThere;
    catalog::ReleaseLoaded loaded;
    loaded.report.not_there = {{NotThere::What::Category, "Ceral", {"Cereal", "Snacks"}, 20},
                               {NotThere::What::Market, "US", {"United States"}, 0},
                               {NotThere::What::Market, "US", {}, 0}};
    loaded.report.note(Finding::NoCode, [] { return std::string("fdc_id 2: OATS"); });
    const auto words = kiosk::release_words(loaded, "shop.db", language("en"));
    REQUIRE(words.size() == 8);
    CHECK(words[2].words == "No product of the release is in the category \"Ceral\"; its categories are: \"Cereal\", "
                            "\"Snacks\" and 20 more.");
    CHECK(words[3].words == "No product of the release is sold in \"US\"; its markets are: \"United States\".");
    CHECK(words[4].words == "The release does not say where its products are sold: leave out the market \"US\".");
    CHECK(words[6].words == "1 without a product number");
    CHECK(kiosk::release_words(loaded, "shop.db", language("es"))[2].words.find("y 20 m\xC3\xA1s.") !=
          std::string::npos);
}

TEST_CASE("release words: five samples of a kind, however often it was found")
{
    catalog::ReleaseLoaded loaded;
    for (int i = 0; i < 1'000; ++i)
        loaded.report.note(Finding::NoName, [&] { return "record " + std::to_string(i); });
    const auto words = kiosk::release_words(loaded, "shop.db", language("en"));
    CHECK(words.size() == 2 + 1 + 1 + 5);
    CHECK(words[1].words == "No product was taken. The catalog is as it was.");
    CHECK(words[3].words == "1000 without a name");
}

TEST_CASE("release words: a cancelled load says nothing of records")
{
    catalog::ReleaseLoaded loaded;
    loaded.cancelled = true;
    CHECK(kiosk::release_words(loaded, "shop.db", language("en")) ==
          std::vector<kiosk::ReportLine>{{Kind::Sentence, "The load was ended. The catalog is as it was."}});
}

TEST_CASE("release words: how far a load is, and the time that is left once it can be told")
{
    const auto words = [](std::uint64_t done, std::uint64_t whole, int seconds, const char* code = "en") {
        return kiosk::progress_words({LoadProgress::Stage::Amounts, done, whole}, Milliseconds(seconds * 1'000),
                                     language(code));
    };
    CHECK(words(0, 0, 0) == "Reading the amounts: 0 %");
    CHECK(words(10, 100, 2) == "Reading the amounts: 10 %");
    CHECK(words(25, 100, 10) == "Reading the amounts: 25 %, about 31 seconds left");
    CHECK(words(10, 100, 60) == "Reading the amounts: 10 %, about 10 minutes left");
    CHECK(words(200, 100, 10) == "Reading the amounts: 100 %, about 1 seconds left");
    CHECK(words(25, 100, 10, "es") == "Leyendo las cantidades: 25 %, faltan unos 31 segundos");
}
