#include "kiosk/files/languages.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

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

TEST_CASE("languages: a broken file is named with its place")
{
    const test::TempFolder folder;
    std::filesystem::create_directory(folder.file("languages"));
    folder.write("languages/en.po", "msgid \"nobody_knows_this\"\nmsgstr \"?\"\n");
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_languages(folder.file(""))),
                         doctest::Contains("languages/en.po row 1"), std::runtime_error);
    folder.write("languages/en.po", "msgid \"left\"\nmsgstr \"Left\"\n");
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_languages(folder.file(""))),
                         doctest::Contains("languages/en.po: the text language_name is missing"), std::runtime_error);
}
