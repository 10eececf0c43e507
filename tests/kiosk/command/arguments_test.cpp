#include "kiosk/command/arguments.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

using kiosk::read_arguments;

template<class What>
What as(const std::vector<std::string>& arguments)
{
    const auto command = read_arguments(arguments);
    REQUIRE(std::holds_alternative<What>(command));
    return std::get<What>(command);
}

} // namespace

TEST_CASE("arguments: nothing at all opens the station in a window of 1280x800")
{
    const auto station = as<kiosk::StationArguments>({});
    CHECK(station.width == 1280);
    CHECK(station.height == 800);
    CHECK_FALSE(station.fullscreen);
    CHECK(station.camera.empty()); // as the settings say
    CHECK(station.catalog.empty());
    CHECK(station.theme == "paper");
}

TEST_CASE("arguments: of the station")
{
    const auto station = as<kiosk::StationArguments>(
        {"--fullscreen", "--size", "800x1280", "--lang", "es", "--text-size", "150", "--theme", "night", "--camera",
         "off", "--trace", "t", "--catalog", "c.db", "--silent", "--settings", "s.conf"});
    CHECK(station.fullscreen);
    CHECK(station.width == 800);
    CHECK(station.height == 1280);
    CHECK(station.language == "es");
    CHECK(station.text_percent == 150);
    CHECK(station.theme == "night");
    CHECK(station.camera == "off");
    CHECK(station.trace == "t");
    CHECK(station.settings == "s.conf");
    CHECK(as<kiosk::CompareArguments>({"compare", "1", "2", "--settings", "s"}).settings == "s");
    CHECK(as<kiosk::RenderArguments>({"render", "pair", "--out", "o", "--settings", "s"}).settings == "s");
    CHECK(station.catalog == "c.db");
    CHECK(station.silent);
}

TEST_CASE("arguments: a camera is auto, off or a device")
{
    CHECK(as<kiosk::StationArguments>({"--camera", "/dev/video3"}).camera == "/dev/video3");
    CHECK(as<kiosk::StationArguments>({"--camera", "auto"}).camera == "auto");
    for (const std::string wrong : {"front", "/dev/", "video0", "Off"}) {
        CAPTURE(wrong);
        CHECK(as<kiosk::Misused>({"--camera", wrong}).sentence.find(wrong) != std::string::npos);
    }
}

TEST_CASE("arguments: each command takes its own")
{
    CHECK(as<kiosk::ExportArguments>({"export", "c.db", "--out", "o.csv", "--typed-here", "--lang", "es"}) ==
          kiosk::ExportArguments{.catalog = "c.db", .out = "o.csv", .typed_here = true, .language = "es"});
    CHECK(as<kiosk::ExportArguments>({"export", "--template", "--out", "o.csv"}).blank);
    CHECK(as<kiosk::Misused>({"export", "c.db", "--template", "--out", "o"}).sentence.find("--template") !=
          std::string::npos);
    CHECK(as<kiosk::LoadArguments>({"load", "a.csv", "b.csv", "--into", "c.db", "--keep-good-rows"}) ==
          kiosk::LoadArguments{.sources = {"a.csv", "b.csv"}, .into = "c.db", .keep_good_rows = true});
    CHECK(as<kiosk::DecodeArguments>({"decode", "a.png", "b.png"}) == kiosk::DecodeArguments{{"a.png", "b.png"}});

    const auto compare = as<kiosk::CompareArguments>({"compare", "1", "2", "--per", "package", "--json"});
    CHECK(compare.left == "1");
    CHECK(compare.right == "2");
    CHECK(compare.basis == core::Basis::Package);
    CHECK(compare.json);
    CHECK(as<kiosk::CompareArguments>({"compare", "1", "2"}).basis == std::nullopt);
    CHECK(as<kiosk::CompareArguments>({"compare", "1", "2", "--per", "same"}).basis == core::Basis::SameAmount);

    CHECK(as<kiosk::KeysArguments>({"keys", "make", "--into", "k"}) ==
          kiosk::KeysArguments{kiosk::KeysArguments::What::Make, "k", "", "en"});
    CHECK(as<kiosk::KeysArguments>({"keys", "show", "--key", "k", "--lang", "es"}) ==
          kiosk::KeysArguments{kiosk::KeysArguments::What::Show, "", "k", "es"});
    CHECK(as<kiosk::KeysArguments>({"keys", "forget", "--into", "d"}) ==
          kiosk::KeysArguments{kiosk::KeysArguments::What::Forget, "d", "", "en"});
    CHECK(as<kiosk::SealArguments>({"seal", "--catalog", "c.db", "--key", "k", "--name", "Winter", "--maker", "Cedar",
                                    "--out", "b", "--tour", "t.csv", "--texts", "t", "--counter", "7"}) ==
          kiosk::SealArguments{"c.db", "k", "Winter", "Cedar", "b", "t.csv", "t", 7, "en"});
    CHECK(
        as<kiosk::SealArguments>({"seal", "--catalog", "c", "--key", "k", "--name", "n", "--maker", "m", "--out", "b"})
            .counter == std::nullopt);
    CHECK(as<kiosk::InstallArguments>({"install", "b", "--into", "d", "--accept", "1234 5678"}) ==
          kiosk::InstallArguments{"b", "d", "1234 5678", false, "en"});
    CHECK(as<kiosk::InstallArguments>({"install", "--go-back"}).go_back);

    const auto render = as<kiosk::RenderArguments>(
        {"render", "pair", "--out",  "p.png",     "--left", "1",  "--right",     "2",   "--basis", "package",
         "--page", "2",    "--size", "1920x1080", "--lang", "es", "--text-size", "200", "--theme", "plain"});
    CHECK(render.screen == "pair");
    CHECK(render.out == "p.png");
    CHECK(render.left == "1");
    CHECK(render.right == "2");
    CHECK(render.basis == core::Basis::Package);
    CHECK(render.page == 2);
    CHECK(render.width == 1920);
    CHECK(render.height == 1080);
    CHECK(render.language == "es");
    CHECK(render.text_percent == 200);
    CHECK(render.theme == "plain");
    CHECK(as<kiosk::RenderArguments>({"render", "find_by_name", "--out", "p", "--words", "oat r"}).words == "oat r");
}

TEST_CASE("arguments: --rules of compare and render; without it those of the settings")
{
    const std::vector both{core::RuleSet::Wic, core::RuleSet::Cacfp};
    CHECK(as<kiosk::CompareArguments>({"compare", "1", "2", "--rules", "cacfp,wic"}).rules == both);
    CHECK(as<kiosk::RenderArguments>({"render", "pair", "--out", "p", "--rules", "wic,cacfp"}).rules == both);
    CHECK(as<kiosk::CompareArguments>({"compare", "1", "2"}).rules == std::nullopt);
}

TEST_CASE("arguments: what stands before a command counts for the command")
{
    const auto compare = as<kiosk::CompareArguments>({"--catalog", "c.db", "--lang=es", "compare", "1", "2", "--json"});
    CHECK(compare.catalog == "c.db");
    CHECK(compare.language == "es");
    CHECK(compare.json);
    const auto render = as<kiosk::RenderArguments>(
        {"--size", "800x1280", "--text-size", "200", "--theme", "night", "render", "pair", "--out", "p.png"});
    CHECK(render.width == 800);
    CHECK(render.height == 1280);
    CHECK(render.text_percent == 200);
    CHECK(render.theme == "night");
}

TEST_CASE("arguments: what makes no sense is refused in one sentence that says where help is")
{
    struct Case {
        std::string why;
        std::vector<std::string> arguments;
        std::string names;
    };
    const Case cases[] = {
        {"an unknown command", {"bake"}, "bake"},
        {"an unknown option", {"--louder"}, "--louder"},
        {"load without a target", {"load", "a.csv"}, "--into"},
        {"load without a sheet", {"load", "--into", "c.db"}, "SOURCE"},
        {"compare with one code", {"compare", "1"}, "RIGHT"},
        {"an unknown basis", {"compare", "1", "2", "--per", "dozen"}, "--per"},
        {"an unknown set of rules", {"compare", "1", "2", "--rules", "wick"}, "claims_calories, claims_fat"},
        {"decode without a picture", {"decode"}, "IMAGE"},
        {"render without a file", {"render", "pair"}, "--out"},
        {"a size of one number", {"render", "pair", "--out", "p", "--size", "1280"}, "1280"},
        {"a size of words", {"--size", "largexsmall"}, "largexsmall"},
        {"a size of nothing", {"--size", "0x0"}, "0x0"},
        {"a size for giants", {"--size", "9999x9999"}, "9999x9999"},
        {"a size with a sign", {"--size", "-800x600"}, "--size"},
        {"a text size between", {"--text-size", "110"}, "110"},
        {"page 0", {"render", "pair", "--out", "p", "--page", "0"}, "--page"},
        {"an unknown theme", {"--theme", "neon"}, "neon"},
        {"an option that the command does not have",
         {"--size", "800x1280", "compare", "1", "2"},
         "--size stands before 'compare', which does not have"},
        {"a flag of the station", {"--fullscreen", "decode", "a.png"}, "--fullscreen stands before 'decode'"},
        {"the same before and behind", {"--lang", "es", "compare", "1", "2", "--lang", "en"}, "give it once"},
        {"keys for nothing", {"keys"}, "subcommand"},
        {"keys to nowhere", {"keys", "make"}, "--into"},
        {"seal without a key", {"seal", "--catalog", "c", "--name", "n", "--maker", "m", "--out", "b"}, "--key"},
        {"seal without a name", {"seal", "--catalog", "c", "--key", "k", "--maker", "m", "--out", "b"}, "--name"},
        {"install of nothing", {"install"}, "BUNDLE or --go-back"},
        {"install and go back", {"install", "b", "--go-back"}, "excludes"},
        {"going back with a key", {"install", "--go-back", "--accept", "1"}, "excludes"},
        {"two commands", {"decode", "a.png", "--json"}, "--json"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sentence = as<kiosk::Misused>(c.arguments).sentence;
        CAPTURE(sentence);
        CHECK(sentence.find(c.names) != std::string::npos);
        CHECK(sentence.find("--help'") != std::string::npos);
        CHECK(sentence.find('\n') == std::string::npos);
    }
}

TEST_CASE("arguments: --help of the program and of each command, and --version")
{
    const auto text = [](const std::vector<std::string>& arguments) { return as<kiosk::Printed>(arguments).text; };
    const auto all = text({"--help"});
    for (const std::string command : {"load", "compare", "decode", "render", "keys", "seal", "install"}) {
        CAPTURE(command);
        CHECK(all.find(command) != std::string::npos);
        CHECK(text({command, "--help"}).find("Exit status") != std::string::npos);
        CHECK(text({command, "--help"}).ends_with('\n'));
        CHECK(text({command, "--help"}).find("Usage: pairstand " + command) != std::string::npos);
    }
    CHECK(text({"compare", "--help"}).find("--per") != std::string::npos);
    const auto help = [](const std::vector<std::string>& arguments) {
        return std::get<kiosk::Printed>(read_arguments(arguments, "en, es")).text;
    };
    CHECK(help({"--help"}).find("language to begin with: en, es") != std::string::npos);
    CHECK(help({"compare", "--help"}).find("language of the answer: en, es") != std::string::npos);
    CHECK(help({"render", "--help"}).find("language of the picture: en, es") != std::string::npos);
    CHECK(text({"--version"}).starts_with("pairstand "));
}
