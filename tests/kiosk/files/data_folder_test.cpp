#include "kiosk/files/data_folder.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <map>

namespace {

using kiosk::data_folder;
using kiosk::data_folders;

/// An environment with these variables and no others.
kiosk::Environment environment(std::map<std::string, std::string> variables)
{
    return [variables = std::move(variables)](const std::string& name) -> std::optional<std::string> {
        const auto found = variables.find(name);
        return found == variables.end() ? std::nullopt : std::optional(found->second);
    };
}

} // namespace

TEST_CASE("data folder: one that is named is the only choice")
{
    CHECK(data_folders(environment({{"PAIRSTAND_DATA", "/some/where"}}), "/usr/bin/pairstand") ==
          std::vector<std::filesystem::path>{"/some/where"});
}

TEST_CASE("data folder: beside an installed program before where it was built")
{
    const auto folders = data_folders(environment({}), "/usr/bin/pairstand");
    REQUIRE(folders.size() == 2);
    CHECK(folders[0] == "/usr/share/pairstand");
    CHECK(folders[1] == std::filesystem::path(PAIRSTAND_SOURCE) / "config");
}

TEST_CASE("data folder: found in the checkout, and a wrong one is named")
{
    CHECK(std::filesystem::exists(data_folder(environment({})) / "languages" / "en.po"));
    const test::TempFolder empty;
    try {
        static_cast<void>(data_folder(environment({{"PAIRSTAND_DATA", empty.file("")}})));
        FAIL("a folder without languages was taken");
    } catch (const std::runtime_error& error) {
        CHECK(std::string(error.what()).find(empty.file("")) != std::string::npos);
        CHECK(std::string(error.what()).find("PAIRSTAND_DATA") != std::string::npos);
    }
}

TEST_CASE("languages: English first, and a broken file is named with its place")
{
    const auto languages = kiosk::read_languages(data_folder());
    REQUIRE(languages.size() >= 2);
    CHECK(languages[0].code() == "en");
    CHECK(languages[1].code() == "es");

    const test::TempFolder broken;
    std::filesystem::create_directory(broken.file("languages"));
    broken.write("languages/en.po", "msgid \"nobody_knows_this\"\nmsgstr \"words\"\n");
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_languages(broken.file(""))),
                         doctest::Contains("languages/en.po"), std::runtime_error);
}

TEST_CASE("fonts: read, and a missing one is named with its package")
{
    const auto fonts = kiosk::read_fonts();
    CHECK(fonts.files().regular.size() > 100'000);
    const test::TempFolder empty;
    CHECK_THROWS_WITH_AS(static_cast<void>(kiosk::read_fonts(environment({{"PAIRSTAND_FONTS", empty.file("")}}))),
                         doctest::Contains("fonts-noto-core"), std::runtime_error);
}
