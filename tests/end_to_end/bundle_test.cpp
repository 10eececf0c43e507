// A leader's bundle on its way: made at her desk, carried, installed beside a running station, gone back from.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/support/words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace {

namespace fs = std::filesystem;

/// The digits behind the last colon: those that the leader reads aloud.
std::string fingerprint_in(const std::string& words)
{
    auto digits = words.substr(words.rfind(": ") + 2);
    digits.erase(digits.find('\n'));
    return digits;
}

/// Runs a command that must do its work.
std::string done(const std::vector<std::string>& arguments)
{
    const auto ended = test::pairstand(arguments);
    CAPTURE(ended.err);
    REQUIRE(ended.status == 0);
    return ended.out;
}

/// Whether a frame came that shows these words.
bool shows(test::Station& station, const std::string& words)
{
    return test::becomes_true(
        [&] {
            const auto& trace = station.trace();
            const auto last =
                std::find_if(trace.rbegin(), trace.rend(), [](const auto& line) { return line.kind == "frame"; });
            return last != trace.rend() && last->words.find(words) != std::string::npos;
        },
        std::chrono::seconds(20));
}

} // namespace

TEST_CASE("end to end: a sealed bundle comes to a running station, a damaged one does not, and there is a way back")
{
    const auto products = test::demo_products();
    const test::TempFolder desk;
    const auto demo = (fs::path(PAIRSTAND_SOURCE) / "config/demo/cedar_hollow.csv").string();
    const auto shop = desk.file("shop.db");
    const auto bundle = desk.file("winter.bundle");
    done({"load", demo, "--into", shop});
    const auto fingerprint = fingerprint_in(done({"keys", "make", "--into", desk.file("keys")}));
    CHECK(fingerprint.size() == 29);
    done({"seal", "--catalog", shop, "--key", desk.file("keys"), "--name", "Cedar Hollow, winter", "--maker",
          "Saltwhistle Pantry", "--out", bundle});

    test::Station station;
    CHECK_FALSE(station.trace().back().words.find("Saltwhistle Pantry") != std::string::npos);
    const auto data = (fs::path(station.folder().file("")) / ".local/share/pairstand").string();
    const auto unknown = test::pairstand({"install", bundle, "--into", data});
    CHECK(unknown.status == 2);
    CHECK(unknown.err.find(fingerprint) != std::string::npos);
    done({"install", bundle, "--into", data, "--accept", fingerprint});
    CHECK(shows(station, "Labels: “Cedar Hollow, winter”, made "));
    CHECK(shows(station, "by Saltwhistle Pantry."));
    station.scan(products[0].digits);
    const auto answer = station.answer(1);
    REQUIRE(answer);
    CHECK(answer->words.find(products[0].name) != std::string::npos);

    auto bytes = test::bytes_of(bundle);
    bytes[bytes.size() / 2] ^= 1;
    const auto damaged = test::pairstand({"install", desk.write("damaged", bytes), "--into", data});
    CHECK(damaged.status == 2);
    CHECK(damaged.err.find("is not as it was sealed") != std::string::npos);
    station.scan(products[1].digits);
    REQUIRE(station.answer(2));
    CHECK(station.answer(2)->words.find(products[1].name) != std::string::npos);

    CHECK(done({"install", "--go-back", "--into", data}).find("No bundle is in place now") == 0);
    CHECK(station.program().end() == 0);
}
