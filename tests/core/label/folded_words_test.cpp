#include "core/label/folded_words.h"

#include <doctest/doctest.h>

#include <string>

namespace {

std::string folded(std::string_view text)
{
    std::string all;
    for (const auto& word : core::folded_words(text))
        all += (all.empty() ? "" : "|") + word.text;
    return all;
}

} // namespace

// No published rule: what is folded is what packages do with the same word (common practice).
TEST_CASE("folded words: letter case, accents, plurals, hyphens and apostrophes make no difference")
{
    struct Case {
        std::string printed, folded;
    };
    const Case cases[] = {
        {"WHOLE-WHEAT Flour", "whole|wheat|flour"},
        {"Anchovies, berries, cookies", "anchovy|berry|cooky"},
        {"cookie brie pie pies", "cooky|brie|pie|pie"},
        {"tomatoes peaches radishes boxes cheeses", "tomato|peach|radish|box|cheese"},
        {"bass hummus couscous molasses oats", "bass|hummus|couscous|molass|oat"},
        {"half & half", "half|and|half"},
        {"and/or, coconut/milk", "and|or|or|coconut|or|milk"},
        {"confectioner's za\u2019atar", "confectioner|zaatar"},
        {"CR\u00c8ME br\u00fbl\u00e9e pi\u00f1\u00f3n \u0153uf \u00d8l", "creme|brulee|pinon|oeuf|ol"},
        {"cre\u0300me", "creme"},
        {"100% wheat, 2%", "100%|wheat|2%"},
        {"milk\u00a0powder\u2013dry\u2022salt", "milk|powder|dry|salt"},
        {"Oats\u00ae rounds\u2122", "oat|round"},
        {"\u725b\u4e73 milk", "\u725b\u4e73|milk"},
        {"", ""},
        {" ,.;()", ""},
        {std::string("milk\xff\xc3 egg"), std::string("milk\xff\xc3|egg")},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        CHECK(folded(c.printed) == c.folded);
    }
}

TEST_CASE("folded words: each knows where it stands in the text")
{
    const std::string text = "  Cr\u00e8me, B\u00e9-chamel's ";
    const auto words = core::folded_words(text);
    REQUIRE(words.size() == 3);
    CHECK(text.substr(words[0].begin, words[0].end - words[0].begin) == "Cr\u00e8me");
    CHECK(text.substr(words[1].begin, words[1].end - words[1].begin) == "B\u00e9");
    CHECK(text.substr(words[2].begin, words[2].end - words[2].begin) == "chamel's");
}
