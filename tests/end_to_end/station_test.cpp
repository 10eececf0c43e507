// The whole program from outside: what a shopper, a leader and a machine without a display see of it.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/support/words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>

namespace {

namespace fs = std::filesystem;

std::vector<std::string> read_screen(test::Station& station)
{
    const auto picture = station.screenshot("screen");
    const auto ended =
        test::run({"tesseract", picture, "stdout", "-l", "eng", "--psm", "11"}, {{"OMP_THREAD_LIMIT", "1"}});
    REQUIRE(ended.status == 0);
    return test::plain_words(ended.out);
}

/// Whether all words of the text were read, each with one letter wrong at most, or two of eight and more.
bool sees(const std::vector<std::string>& read, const std::string& text)
{
    return std::ranges::all_of(test::plain_words(text), [&](const std::string& word) {
        const std::size_t most = word.size() >= 8 ? 2 : 1;
        return std::ranges::any_of(read, [&](const auto& seen) { return test::letters_apart(word, seen) <= most; });
    });
}

/// The last frame drawn so far.
test::TraceLine last_frame(test::Station& station)
{
    const auto& trace = station.trace();
    return *std::find_if(trace.rbegin(), trace.rend(), [](const auto& line) { return line.kind == "frame"; });
}

} // namespace

TEST_CASE("end to end: two scans, and the screen shows both products and a finding")
{
    const auto products = test::demo_products();
    test::Station station;
    CHECK(station.trace().front().screen == "welcome");
    station.scan(products[0].digits);
    station.scan(products[1].digits);
    const auto answer = station.answer(2);
    REQUIRE(answer);
    CHECK(answer->screen == "pair");
    REQUIRE(station.frame_of_notice(answer->notice));
    const auto read = read_screen(station);
    std::string all;
    for (const auto& word : read)
        all += word + " ";
    CAPTURE(all);
    CHECK(sees(read, products[0].name));
    CHECK(sees(read, products[1].name));
    CHECK(sees(read, "Calories"));
    CHECK((sees(read, "Left has more") || sees(read, "Left has less") || sees(read, "Left has fewer") ||
           sees(read, "Same figure")));
    CHECK(station.program().end() == 0);
}

TEST_CASE("end to end: an unknown, a wrong and an unreadable code are each answered on the screen")
{
    test::Station station;
    struct Scan {
        std::string why;
        std::vector<std::string> keys;
        std::string screen;
    };
    const Scan cases[] = {
        {"right digits, not in this catalog",
         {"9", "5", "2", "9", "9", "9", "9", "9", "9", "9", "9", "9", "3", "Return"},
         "not_found"},
        {"a wrong check digit",
         {"9", "5", "2", "0", "5", "8", "8", "0", "0", "8", "0", "1", "1", "Return"},
         "welcome"}, // what Not found said large was about the earlier code
        {"letters", {"a", "b", "c", "d", "e", "f", "g", "h", "Return"}, "welcome"},
    };
    long nth = 0;
    for (const auto& c : cases) {
        CAPTURE(c.why);
        station.press(c.keys);
        const auto answer = station.answer(++nth);
        REQUIRE(answer);
        CHECK(answer->screen == c.screen);
        CHECK(answer->words.substr(answer->words.find(" | ")).size() > 10);
        const auto frame = station.frame_of_notice(answer->notice);
        REQUIRE(frame);
        CHECK(frame->words.find(answer->words.substr(answer->words.find(" | ") + 3)) != std::string::npos);
    }
}

TEST_CASE("end to end: on a French keyboard, whose digits need Shift, a scan is as right as ever")
{
    const auto products = test::demo_products();
    test::Station station;
    const std::map<std::string, std::string> there{{"DISPLAY", station.display().name()}};
    REQUIRE(test::run({"setxkbmap", "fr"}, there).status == 0);
    REQUIRE(test::run({"setxkbmap", "-query"}, there).out.find("fr") != std::string::npos);
    // A scanner presses keys by their place: on a French keyboard these give "&", "e acute", ...
    std::vector<std::string> keys;
    for (const char digit : products[2].digits)
        keys.push_back(std::to_string(digit == '0' ? 19 : digit - '1' + 10)); // key codes of X: 10 is the key "1"
    keys.emplace_back("36");                                                  // Return
    station.press(keys);
    const auto answer = station.answer(1);
    REQUIRE(answer);
    CHECK(answer->left == products[2].gtin);
}

TEST_CASE("end to end: a person's keys move about on the screen and are no scan")
{
    test::Station station;
    const auto before = last_frame(station).number;
    station.press_as_person({"Tab", "Down", "1", "2"});
    CHECK(test::becomes_true([&] { return last_frame(station).number > before; }, std::chrono::seconds(20)));
    CHECK(std::ranges::none_of(station.trace(), [](const auto& line) { return line.kind == "answer"; }));
    station.press_as_person({"ctrl+q"});
    CHECK(test::becomes_true([&] { return !station.program().alive(); }));
    CHECK(station.program().end() == 0);
}

TEST_CASE("end to end: an idle station draws nothing")
{
    test::Station station;
    std::this_thread::sleep_for(std::chrono::seconds(2)); // whatever opening brought about is over
    const auto before = last_frame(station).number;
    std::this_thread::sleep_for(std::chrono::seconds(8)); // longer than the pause between two looks for a new catalog
    CHECK(last_frame(station).number == before);
}

TEST_CASE("end to end: a catalog that is replaced while the station runs is used for the next scan")
{
    const auto products = test::demo_products();
    test::Station station;
    station.scan(products[0].digits);
    REQUIRE(station.answer(1));

    // One product of its own, under the number of a demo product, loaded as the leader would.
    std::ifstream demo(fs::path(PAIRSTAND_SOURCE) / "config/demo/cedar_hollow.csv");
    std::string sheet;
    std::string line;
    for (int i = 0; i < 2 && std::getline(demo, line); ++i)
        sheet += line + "\n";
    const auto name = sheet.find(',', sheet.find('\n')) + 1;
    sheet.replace(name, sheet.find(',', name) - name, "Replaced puffs");
    const auto csv = station.folder().write("new.csv", sheet);
    const auto own = fs::path(station.folder().file("")) / ".local/share/pairstand";
    fs::create_directories(own);
    const auto loaded = test::pairstand({"load", csv, "--into", (own / "catalog.db").string()});
    CAPTURE(loaded.err);
    REQUIRE(loaded.status == 0);

    const auto digits = sheet.substr(sheet.find('\n') + 1, sheet.find(',', sheet.find('\n')) - sheet.find('\n') - 1);
    station.scan(digits);
    const auto answer = station.answer(2);
    REQUIRE(answer);
    CHECK(answer->words.find("Replaced puffs") != std::string::npos);
    station.scan(products[5].digits); // the demo is gone
    const auto unknown = station.answer(3);
    REQUIRE(unknown);
    CHECK(unknown->screen == "not_found");
}

TEST_CASE("end to end: it fills the screen, also where no window manager helps, and goes back to its window")
{
    test::Station station({"--fullscreen"}, {}, "1920x1080");
    // The ground's colour in each corner, and every word of the screen on it.
    const auto fills = [&station] {
        const auto picture = station.screenshot("full");
        const auto corners =
            test::run({"convert", picture, "-format",
                       "%[pixel:p{0,0}] %[pixel:p{1919,0}] %[pixel:p{0,1079}] %[pixel:p{1919,1079}]", "info:"});
        REQUIRE(corners.status == 0);
        return corners.out.find("(0,0,0)") == std::string::npos && corners.out.find("black") == std::string::npos &&
               corners.out.find("gray(0)") == std::string::npos;
    };
    CHECK(test::becomes_true(fills, std::chrono::seconds(20)));
    CHECK(sees(read_screen(station), "Second package"));
    station.press({"F11"});
    CHECK(test::becomes_true([&] { return !fills(); }, std::chrono::seconds(20)));
    station.press({"F11"});
    CHECK(test::becomes_true(fills, std::chrono::seconds(20)));
    CHECK(sees(read_screen(station), "Second package"));
}

TEST_CASE("end to end: without a display the station says so in one sentence that names what works")
{
    const auto ended = test::pairstand({});
    CHECK(ended.status == 2);
    CHECK(ended.out.empty());
    CHECK(std::ranges::count(ended.err, '\n') == 1);
    CHECK(ended.err.find("pairstand render") != std::string::npos);
    CHECK(ended.err.find("pairstand --help") != std::string::npos);
}

TEST_CASE("end to end: a catalog that cannot be opened is one sentence and status 2")
{
    const auto ended = test::pairstand({"--catalog", "/nowhere/catalog.db"});
    CHECK(ended.status == 2);
    CHECK(std::ranges::count(ended.err, '\n') == 1);
    CHECK(ended.err.find("/nowhere/catalog.db") != std::string::npos);
}

TEST_CASE("end to end: a language that the station does not speak is one sentence that names those it does")
{
    const auto ended = test::pairstand({"--lang", "tlh"});
    CHECK(ended.status == 2);
    CHECK(std::ranges::count(ended.err, '\n') == 1);
    CHECK(ended.err.find("tlh") != std::string::npos);
    CHECK(ended.err.find("en, es") != std::string::npos);
}

TEST_CASE("end to end: the commands work without a display, with the exit status of the guide")
{
    const auto products = test::demo_products();
    const test::TempFolder folder;
    struct Call {
        std::string why;
        std::vector<std::string> arguments;
        int status;
    };
    const Call calls[] = {
        {"help", {"--help"}, 0},
        {"two products", {"compare", products[0].digits, products[1].digits}, 0},
        {"the same as JSON", {"compare", products[0].digits, products[1].digits, "--json"}, 0},
        {"an unknown code", {"compare", products[0].digits, "9529999999993"}, 2},
        {"a picture of a screen", {"render", "pair", "--out", folder.file("pair.png")}, 0},
        {"no such screen", {"render", "kitchen", "--out", folder.file("k.png")}, 2},
        {"no such command", {"bake"}, 2},
        {"a picture without a code", {"decode", folder.file("pair.png")}, 1},
        {"no such picture", {"decode", folder.file("none.png")}, 2},
    };
    for (const auto& c : calls) {
        CAPTURE(c.why);
        const auto ended = test::pairstand(c.arguments);
        CAPTURE(ended.err);
        CHECK(ended.status == c.status);
        CHECK((c.status != 0 || !ended.out.empty() || fs::exists(folder.file("pair.png"))));
        CHECK((c.status != 2 || std::ranges::count(ended.err, '\n') == 1));
    }
}
