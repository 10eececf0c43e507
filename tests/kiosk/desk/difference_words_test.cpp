#include "kiosk/desk/difference_words.h"
#include "kiosk/desk/load_words.h"
#include "kiosk/files/languages.h"

#include <doctest/doctest.h>

using kiosk::Standing;

namespace {

const ui::Language& language(const std::string& code)
{
    static const auto languages = kiosk::read_languages(std::string(PAIRSTAND_SOURCE) + "/config");
    return kiosk::language_named(code, languages);
}

catalog::EntryDifference difference(std::size_t things)
{
    const std::vector<catalog::LabelDifference> all = {{"sodium", "190 mg", "160 mg"},
                                                       {"serving_size", "39 g", "40 g"},
                                                       {"iron", "8%", "10%"},
                                                       {"calcium", "20 mg", "30 mg"}};
    return {core::Gtin::parse("9521234543213").value(), "Oat rounds", {all.begin(), all.begin() + things}};
}

} // namespace

TEST_CASE("difference words: what stands now comes first, whoever wrote it")
{
    CHECK(kiosk::difference_words(difference(2), Standing::Loaded, language("en")) ==
          "09521234543213 Oat rounds: Sodium 160 mg, before 190 mg; Serving size 40 g, before 39 g.");
    CHECK(kiosk::difference_words(difference(1), Standing::Own, language("en")) ==
          "09521234543213 Oat rounds: Sodium 190 mg here, 160 mg in the release.");
    CHECK(kiosk::difference_words(difference(1), Standing::Own, language("es")) ==
          "09521234543213 Oat rounds: Sodio 190 mg aquí, 160 mg en la publicación.");
    CHECK(kiosk::difference_words(difference(4), Standing::Loaded, language("en")).ends_with("; and 1 more."));
}

TEST_CASE("difference words: a load that replaced nothing else says nothing of it")
{
    catalog::LoadReport report;
    report.taken = 3;
    CHECK(kiosk::replaced_words(report, language("en")).empty());
    report.replaced = report.differing = 7;
    report.differences = {difference(1)};
    const auto words = kiosk::replaced_words(report, language("es"));
    REQUIRE(words.size() == 2);
    CHECK(words[0] == "7 de las etiquetas reemplazadas decían otra cosa antes:");
    CHECK(words[1] == "09521234543213 Oat rounds: Sodio 160 mg, antes 190 mg.");
}
