#include "catalog/read/harmless.h"

#include <doctest/doctest.h>

#include <random>
#include <string>

using catalog::as_meant;
using catalog::made_harmless;

TEST_CASE("harmless: what a spreadsheet would run or rewrite gets an apostrophe, other text stays")
{
    // OWASP, CSV Injection: "=", "+", "-", "@", tab and carriage return, also behind a separator inside of a cell.
    struct Case {
        const char* text;
        const char* harmless;
    };
    const Case cases[] = {
        {"=1+1", "'=1+1"},
        {"+1", "'+1"},
        {"-1 cup", "'-1 cup"},
        {"@SUM(A1)", "'@SUM(A1)"},
        {"\t=1", "'\t'=1"},
        {"\r=1", "'\r=1"},
        {"salt;=HYPERLINK(\"x\")", "salt;'=HYPERLINK(\"x\")"},
        {"salt,\"=1", "salt,\"'=1"},
        {"salt;\"\"=1", "salt;\"\"'=1"},
        {"'=1", "''=1"},
        {"012345000065", "'012345000065"},
        {"1/2", "'1/2"},
        {"2026-11-25", "'2026-11-25"},
        {"1/2,-3", "'1/2,'-3"},
        {"'90s candy", "'90s candy"},
        {"1 cup", "1 cup"},
        {"Oats, rolled - whole", "Oats, rolled - whole"},
        {"less than 1% salt", "less than 1% salt"},
        {"a=b", "a=b"},
        {"'tis", "'tis"},
        {"", ""},
        {"'", "'"},
        {"\"", "\""},
        {"=", "'="},
        {",", ","},
        {"8%", "8%"},
    };
    for (const auto& c : cases) {
        CAPTURE(std::string(c.text));
        CHECK(made_harmless(c.text) == c.harmless);
        CHECK(as_meant(c.harmless) == c.text);
    }
    CHECK(as_meant("=1") == "=1"); // who types a formula sign keeps it
}

TEST_CASE("harmless: every text comes back, and no cell of it begins a formula")
{
    std::mt19937 random(7);
    const std::string signs = "=+-@'\",;|\t\r\n 019/.:ab";
    for (int i = 0; i < 200'000; ++i) {
        std::string text;
        for (auto length = random() % 9; length > 0; --length)
            text += signs[random() % signs.size()];
        const auto harmless = made_harmless(text);
        if (as_meant(harmless) != text) {
            CAPTURE(text);
            REQUIRE(as_meant(harmless) == text);
        }
        const bool runs = !harmless.empty() && std::string("=+-@\t\r\n").find(harmless.front()) != std::string::npos;
        REQUIRE_FALSE(runs);
    }
}
