#include "kiosk/desk/settings_file.h"
#include "kiosk/files/languages.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <map>

namespace {

using kiosk::settings_place;

kiosk::Environment environment(std::map<std::string, std::string> variables)
{
    return [variables = std::move(variables)](const std::string& name) -> std::optional<std::string> {
        const auto found = variables.find(name);
        return found == variables.end() ? std::nullopt : std::optional(found->second);
    };
}

const ui::Language& language(const std::string& code)
{
    static const auto languages = kiosk::read_languages(std::string(PAIRSTAND_SOURCE) + "/config");
    return kiosk::language_named(code, languages);
}

} // namespace

TEST_CASE("settings file: option, then variable, then the user's own, then the defaults")
{
    const test::TempFolder home;
    const auto variables = environment({{"PAIRSTAND_SETTINGS", "/from/variable"}, {"XDG_CONFIG_HOME", home.file("")}});
    CHECK(settings_place("/from/option", variables) == "/from/option");
    CHECK(settings_place("", variables) == "/from/variable");
    const auto user = environment({{"XDG_CONFIG_HOME", home.file("")}, {"HOME", "/nowhere"}});
    CHECK(settings_place("", user).empty());
    std::filesystem::create_directories(home.file("pairstand"));
    home.write("pairstand/station.conf", "");
    CHECK(settings_place("", user) == std::filesystem::path(home.file("pairstand/station.conf")));
    std::filesystem::create_directories(home.file(".config/pairstand"));
    home.write(".config/pairstand/station.conf", "");
    CHECK(settings_place("", environment({{"HOME", home.file("")}})) ==
          std::filesystem::path(home.file(".config/pairstand/station.conf")));
    CHECK(settings_place("", environment({})).empty());
}

TEST_CASE("settings file: what cannot be read is a fault, and the defaults hold")
{
    const test::TempFolder folder;
    CHECK(kiosk::read_settings_file("").faults.empty());
    CHECK(kiosk::read_settings_file(folder.write("empty.conf", "")).faults.empty());
    CHECK(kiosk::read_settings_file(folder.write("a.conf", "aims = label_2016")).settings.choices.aims ==
          core::AimList::Label2016);
    struct Case {
        std::string file;
        core::Error::Kind kind;
    };
    const Case cases[] = {
        {folder.file("missing.conf"), core::Error::Kind::NoSuchFile},
        {folder.file(""), core::Error::Kind::IsFolder},
        {folder.write("large.conf", std::string(kiosk::largest_settings + 1, '\n')), core::Error::Kind::TooLarge},
    };
    for (const auto& c : cases) {
        CAPTURE(c.file);
        const auto read = kiosk::read_settings_file(c.file);
        REQUIRE(read.faults.size() == 1);
        CHECK(read.faults[0].kind == c.kind);
        CHECK(read.settings == kiosk::Settings{});
        const auto said = kiosk::settings_trouble(read, language("en"));
        CHECK(said.front().starts_with(c.file));
        CHECK(said.front().ends_with("."));
        CHECK(kiosk::lines_with_faults(read).empty());
    }
}

TEST_CASE("settings file: one that is too large is told with both sizes")
{
    const test::TempFolder folder;
    const auto file = folder.write("large.conf", std::string(70'000, '#'));
    const auto said = kiosk::settings_trouble(kiosk::read_settings_file(file), language("en"));
    REQUIRE(said.size() == 1);
    CHECK(said.front() == file + ": found \"70000 bytes\", expected at most 65536 bytes.");
}

TEST_CASE("settings file: a fault is one sentence with file, line, key, what was found and what was expected")
{
    const auto read = kiosk::read_settings(
        "\naims = clas\nunit_price_rounding = whole_cent\nunit_price_rounding =\nx\n", "station.conf");
    CHECK(kiosk::settings_trouble(read, language("en")) ==
          std::vector<std::string>{
              "station.conf, line 2, aims: found \"clas\", expected class, label_2016 or label_older.",
              "station.conf, line 4, unit_price_rounding: found \"unit_price_rounding =\", expected this key once.",
              "station.conf, line 5: found \"x\", expected key = value."});
    CHECK(kiosk::lines_with_faults(read) == std::vector<std::size_t>{2, 4, 5});
    CHECK(kiosk::settings_trouble(read, language("es")).front() ==
          "station.conf, línea 2, aims: dice \"clas\", se esperaba class, label_2016 o label_older.");
}
