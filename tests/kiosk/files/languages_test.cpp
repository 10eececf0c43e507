#include "kiosk/files/languages.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <stdexcept>

namespace {

const std::filesystem::path config = std::filesystem::path(PAIRSTAND_SOURCE) / "config";

} // namespace

TEST_CASE("languages: those that help names are those that are read, English first")
{
    std::string codes;
    for (const auto& language : kiosk::read_languages(config))
        codes += (codes.empty() ? "" : ", ") + language.code();
    CHECK(codes.starts_with("en, "));
    CHECK(kiosk::language_codes(config) == codes);
}

TEST_CASE("languages: help is there without a folder of languages")
{
    CHECK(kiosk::language_codes("/nowhere").empty());
}

TEST_CASE("languages: one that is not there is refused with the names of those that are")
{
    const auto languages = kiosk::read_languages(config);
    CHECK(kiosk::language_named("es", languages).code() == "es");
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::language_named("tlh", languages)),
                         "this station has no language \"tlh\"; it has: en, es", std::invalid_argument);
}

TEST_CASE("languages: broken English is refused with its place")
{
    const test::TempFolder folder;
    std::filesystem::create_directory(folder.file("languages"));
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_languages(folder.file(""))),
                         doctest::Contains("there is no language file en.po in "), std::runtime_error);
    folder.write("languages/en.po", "msgid \"nobody_knows_this\"\nmsgstr \"?\"\n");
    CHECK_THROWS_WITH_AS(
        static_cast<void>(kiosk::read_languages(folder.file(""))),
        doctest::Contains("languages/en.po row 1: found \"nobody_knows_this\" instead of the name of a "
                          "text of this program"),
        std::runtime_error);
    folder.write("languages/en.po", "msgid \"left\"\nmsgstr \"Left\"\n");
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_languages(folder.file(""))),
                         doctest::Contains("languages/en.po: the text language_name is missing"), std::runtime_error);
}

TEST_CASE("languages: a broken translation is left out with one sentence, and the station speaks the others")
{
    const test::TempFolder folder;
    std::filesystem::create_directory(folder.file("languages"));
    const auto original = [](const std::string& code) {
        return test::bytes_of((config / "languages" / (code + ".po")).string());
    };
    folder.write("languages/en.po", original("en"));
    folder.write("languages/vi.po", original("vi"));
    const std::string good = original("es");
    const auto changed = [&good](const std::string& what, const std::string& with) {
        auto po = good;
        const auto at = po.find(what);
        REQUIRE(at != std::string::npos);
        return po.replace(at, what.size(), with);
    };
    const auto row_of = [&good](const std::string& id) {
        const auto before = good.begin() + static_cast<std::ptrdiff_t>(good.find("msgid \"" + id + "\""));
        return " row " + std::to_string(std::count(good.begin(), before, '\n') + 1);
    };
    struct Case {
        std::string why;
        std::string po;
        std::string sentence; ///< behind the file's name
    };
    const Case cases[] = {
        {"another placeholder", changed("{n} de {all}", "{n} de {todas}"),
         row_of("page_of") +
             ": found \"page_of\" instead of the placeholders of en.po, {all} {n}; correct that row or take it "
             "out."},
        {"an unknown name", changed("\"button_back\"", "\"button_bakc\""),
         row_of("button_back") +
             ": found \"button_bakc\" instead of the name of a text of this program, as in en.po; correct that row "
             "or "
             "take it out."},
        {"a text is missing", changed("msgstr \"Atrás\"", "msgstr \"\""),
         row_of("button_back") +
             ": the text button_back is missing, empty or marked fuzzy; translate it, or mark the file with the "
             "line "
             "\"X-Pairstand-State: draft\\n\" in its header, so that English stands in for it."},
        {"an accent beside its letter", changed("Atrás", "Atra\xCC\x81s"),
         row_of("button_back") +
             ": found \"button_back\" instead of text in Unicode normalization form C, as most editors write it "
             "(uconv "
             "-x nfc makes it so); correct that row or take it out."},
        {"no language file", "Atrás\n",
         " row 1: found \"Atrás\" instead of msgid \"...\", msgstr \"...\" or a comment; correct that row or take it "
         "out."},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto file = folder.write("languages/es.po", c.po);
        const auto files = kiosk::read_language_files(folder.file(""));
        REQUIRE(files.languages.size() == 2);
        CHECK(files.languages[0].code() == "en");
        CHECK(files.languages[1].code() == "vi");
        REQUIRE(files.refused.size() == 1);
        CHECK(files.refused[0].code == "es");
        const auto& sentence = files.refused[0].sentence;
        CHECK(sentence.starts_with("a language is left out: "));
        CHECK(sentence.ends_with("languages/es.po" + c.sentence));
        // Who asks for it by name is told why; a station opens in English all the same.
        CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::language_named("es", files)), sentence.c_str(),
                             std::invalid_argument);
        CHECK(kiosk::first_language("es", files).code() == "en");
        CHECK(kiosk::read_languages(folder.file("")).size() == 1);
    }
    folder.write("languages/es.po", good);
    const auto whole = kiosk::read_language_files(folder.file(""));
    CHECK(whole.refused.empty());
    CHECK(kiosk::first_language("es", whole).code() == "es");
}

TEST_CASE("languages: a draft comes last, no command takes it, and help does not name it")
{
    const auto files = kiosk::read_language_files(config);
    REQUIRE(files.refused.empty());
    CHECK(!files.languages.front().is_draft());
    CHECK(files.languages.back().is_draft());
    CHECK(files.languages.back().code() == "vi");
    for (const auto& language : kiosk::read_languages(config))
        CHECK(!language.is_draft());
    CHECK(kiosk::language_codes(config).find("vi") == std::string::npos);
    const auto* const sentence =
        "the language \"vi\" is a draft, which only the leader desk offers; this station has: en, es";
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::language_named("vi", files)), sentence, std::invalid_argument);
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::first_language("vi", files)), sentence, std::invalid_argument);
}
