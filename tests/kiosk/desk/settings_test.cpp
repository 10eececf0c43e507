#include "kiosk/desk/settings.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <vector>

namespace {

using kiosk::read_settings;
using N = core::Nutrient;
using U = core::TradeUnit;

std::string page(const std::string& name)
{
    return test::bytes_of(std::string(PAIRSTAND_SOURCE) + name);
}

kiosk::Settings with(const std::string& line)
{
    const auto read = read_settings(line, "station.conf");
    CHECK(read.faults.empty());
    return read.settings;
}

} // namespace

TEST_CASE("settings: nothing and remarks are the defaults")
{
    CHECK(with("") == kiosk::Settings{});
    CHECK(with("# aims = label_2016\n\n   \t\r\n#") == kiosk::Settings{});
    CHECK(kiosk::Settings{}.choices == core::Choices{core::AimList::Class, {}});
}

TEST_CASE("settings: each key takes its values")
{
    CHECK(with("aims = class").choices.aims == core::AimList::Class);
    CHECK(with("aims=label_2016").choices.aims == core::AimList::Label2016);
    CHECK(with("\xEF\xBB\xBF"
               "  aims\t=  label_older # as in the old class\r\n")
              .choices.aims == core::AimList::LabelOlder);
    CHECK(with("first_nutrients = total_carbohydrate , protein,sodium,calcium").choices.first ==
          std::vector{N::TotalCarbohydrate, N::Protein, N::Sodium, N::Calcium});
    CHECK(with("first_nutrients =").choices.first.empty());
    CHECK(with("rules = wic , claims_sodium").rules == std::vector{core::RuleSet::SodiumClaims, core::RuleSet::Wic});
    CHECK(with("rules =").rules.empty());
    CHECK(with("unit_price_rounding = whole_cent").prices.rounding == core::PriceRounding::WholeCent);
    CHECK(with("unit_price_unit_weight = 100_g").prices.weight == core::PriceUnit{U::Gram, 100});
    CHECK(with("unit_price_unit_volume = gal").prices.liquid == core::PriceUnit{U::Gallon});
    CHECK(with("unit_price_unit_dry = L").prices.dry == core::PriceUnit{U::Litre});
    CHECK(with("unit_price_unit_count = dozen").prices.count == core::PriceUnit{U::Dozen});
    CHECK(with("camera = off").camera.which == "off");
    CHECK(with("camera = /dev/v4l/by-id/usb-one").camera.which == "/dev/v4l/by-id/usb-one");
    CHECK(with("camera_rotate = 270").camera.rotate == 270);
    CHECK(with("camera_mirror = no").camera.mirror == kiosk::Mirror::No);
    CHECK(with("camera_mirror = camera").camera.mirror == kiosk::Mirror::Camera);
    CHECK(with("power_line_hz = 50").camera.power_line_hz == 50);
    CHECK(with("scanner_prefix = STX \"~A\" # as its guide says").scanner == kiosk::ScannerKeys{"\x02~A", ""});
    CHECK(with("scanner_suffix = ETX").scanner == kiosk::ScannerKeys{"", "\x03"});
    CHECK(with("scanner_serial = off").scanner_serial == "off");
    CHECK(with("scanner_serial = /dev/serial/by-id/usb-scanner").scanner_serial == "/dev/serial/by-id/usb-scanner");
}

TEST_CASE("settings: what cannot be taken is told with its place, and only that key keeps its default")
{
    struct Case {
        const char* line;
        const char* key;
        const char* found;
        const char* expected; ///< how it begins
        core::Error::Kind kind = core::Error::Kind::BadValue;
    };
    const Case cases[] = {
        {"aims = clas", "aims", "clas", "class, label_2016 or label_older"},
        {"aims =", "aims", "aims =", "class, label_2016"},
        {"aims = Class", "aims", "Class", "class, label_2016"},
        {"aims", "", "aims", "key = value"},
        {"aim = class", "", "aim", "aims, first_nutrients, rules, unit_price_rounding"},
        {"= class", "", "= class", "aims, first_nutrients, rules"},
        {"first_nutrients = protein, protein", "first_nutrients", "protein, protein", "up to four"},
        {"first_nutrients = calories", "first_nutrients", "calories", "up to four"},
        {"first_nutrients = protein,", "first_nutrients", "protein,", "up to four"},
        {"first_nutrients = protein sodium", "first_nutrients", "protein sodium", "up to four"},
        {"first_nutrients = protein, sodium, iron, calcium, total_fat", "first_nutrients",
         "protein, sodium, iron, calcium, total_fat", "up to four"},
        {"rules = wick", "rules", "wick", "sets of published rules with commas between, none twice: claims_calories"},
        {"rules = wic, wic", "rules", "wic, wic", "sets of published rules"},
        {"rules = wic,", "rules", "wic,", "sets of published rules"},
        {"unit_price_unit_weight = fl_oz", "unit_price_unit_weight", "fl_oz", "oz, lb, 100_g or kg"},
        {"unit_price_unit_dry = qt", "unit_price_unit_dry", "qt", "dry_pt, dry_qt, 100_mL or L"},
        {"unit_price_unit_count = 3", "unit_price_unit_count", "3", "each, dozen or 100_count"},
        {"unit_price_rounding = 0.1", "unit_price_rounding", "0.1", "tenth_cent or whole_cent"},
        {"scanner_prefix = stx", "scanner_prefix", "stx", "up to eight keys"},
        {"scanner_suffix = \"9\"", "scanner_suffix", "\"9\"", "up to eight keys"},
        {"scanner_serial = COM3", "scanner_serial", "COM3", "auto, off, or a port"},
        {"aims = \xFF\x01", "aims", "\xEF\xBF\xBD\xEF\xBF\xBD", "class"},
        {"unit_price_rounding = whole_cent\nunit_price_rounding = tenth_cent", "unit_price_rounding", "tenth_cent",
         "this key once", core::Error::Kind::DoubledValue},
    };
    for (const auto& c : cases) {
        CAPTURE(c.line);
        const auto read = read_settings("\n" + std::string(c.line) + "\nunit_price_unit_volume = qt", "here.conf");
        REQUIRE(read.faults.size() == 1);
        const auto& fault = read.faults.front();
        CHECK(fault.kind == c.kind);
        CHECK(fault.place.source == "here.conf");
        CHECK(fault.place.row == (c.kind == core::Error::Kind::DoubledValue ? 3 : 2));
        CHECK(fault.place.column == c.key);
        CHECK(fault.place.found == c.found);
        CHECK(fault.place.expected.starts_with(c.expected));
        kiosk::Settings rest;
        rest.prices.liquid = {U::Quart};
        if (c.kind == core::Error::Kind::DoubledValue)
            rest.prices.rounding = core::PriceRounding::WholeCent; // the first line counts
        CHECK(read.settings == rest);
    }
}

TEST_CASE("settings: too much is refused, and no more faults are kept than people read")
{
    const auto large = read_settings("aims = label_2016\n" + std::string(kiosk::largest_settings, '#'), "s");
    REQUIRE(large.faults.size() == 1);
    CHECK(large.faults[0].kind == core::Error::Kind::TooLarge);
    CHECK(large.settings == kiosk::Settings{});
    std::string many;
    for (int i = 0; i < 500; ++i)
        many += "x\n";
    CHECK(read_settings(many, "s").faults.size() == kiosk::most_setting_faults);
    const auto longer = read_settings("aims = " + std::string(300, 'x'), "s");
    REQUIRE(longer.faults.size() == 1);
    CHECK(longer.faults[0].place.found == std::string(60, 'x') + " ...");
}

TEST_CASE("settings: config/station.conf holds every setting with its default")
{
    const auto text = page("/config/station.conf");
    const auto read = read_settings(text, "station.conf");
    CHECK(read.faults.empty());
    CHECK(read.settings == kiosk::Settings{});
    for (const auto& row : kiosk::settings_table()) {
        CAPTURE(row.key);
        const std::string line = "\n" + std::string(row.key) + " =" +
                                 (row.by_default.empty() ? "" : " " + std::string(row.by_default)) + "\n";
        CHECK(text.find(line) != std::string::npos);
        kiosk::Settings settings;
        CHECK(row.take(row.by_default, settings));
        CHECK(settings == kiosk::Settings{}); // the default of the table is the default of the value
        CHECK_FALSE(row.take("?", settings));
    }
}

TEST_CASE("settings: docs/settings.md tells every key with what it takes and its default, and no other")
{
    const auto text = page("/docs/settings.md");
    std::string table;
    for (const auto& row : kiosk::settings_table())
        table += "| `" + std::string(row.key) + "` | " + row.expected + " | " +
                 (row.by_default.empty() ? "none" : "`" + std::string(row.by_default) + "`") + " |\n";
    CHECK(text.find("| key | takes | default |\n|---|---|---|\n" + table + "\n") != std::string::npos);
}
