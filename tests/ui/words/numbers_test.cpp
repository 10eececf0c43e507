#include "tests/support/headless.h"
#include "ui/words/numbers.h"

#include <doctest/doctest.h>

#include <string>

namespace {

using core::Nutrient;

core::Figure figure(Nutrient nutrient, const std::string& text)
{
    const auto read = core::parse_figure(nutrient, text);
    if (!read)
        FAIL("not a figure: ", text);
    return *read;
}

} // namespace

TEST_CASE("numbers: digits are set in groups of three")
{
    struct Case {
        std::string digits;
        std::string grouped;
    };
    const Case cases[] = {
        {"", ""},
        {"0", "0"},
        {"999", "999"},
        {"1000", "1,000"},
        {"1170", "1,170"},
        {"12345", "12,345"},
        {"999999", "999,999"},
        {"1234567", "1,234,567"},
        {"0.5", "0.5"},
        {"1234.5678", "1,234.5678"},
        {"999.1234", "999.1234"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.digits);
        CHECK(ui::grouped(c.digits) == c.grouped);
    }
}

TEST_CASE("numbers: amounts keep the digits that the label printed, and carry their unit")
{
    struct Case {
        Nutrient nutrient;
        std::string printed;
        std::string english;
        std::string spanish;
    };
    const Case cases[] = {
        {Nutrient::Calories, "140", "140", "140"},
        {Nutrient::Calories, "1420", "1,420", "1,420"},
        {Nutrient::SaturatedFat, "0.5 g", "0.5 g", "0.5 g"},
        {Nutrient::SaturatedFat, "0 g", "0 g", "0 g"},
        {Nutrient::Sodium, "1170 mg", "1,170 mg", "1,170 mg"},
        {Nutrient::Iron, "0.4 mg", "0.4 mg", "0.4 mg"},
        {Nutrient::VitaminD, "2 mcg", "2 mcg", "2 mcg"},
        {Nutrient::DietaryFiber, "less than 1 g", "less than 1 g", "menos de 1 g"},
        {Nutrient::Cholesterol, "less than 5 mg", "less than 5 mg", "menos de 5 mg"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        const auto read = figure(c.nutrient, c.printed);
        CHECK(ui::amount_words(read, c.nutrient, test::language("en")) == c.english);
        CHECK(ui::amount_words(read, c.nutrient, test::language("es")) == c.spanish);
    }
}

TEST_CASE("numbers: percents stand close to their sign, also beyond a thousand")
{
    CHECK(ui::percent_words(8, false, test::language("en")) == "8%");
    CHECK(ui::percent_words(0, false, test::language("es")) == "0%");
    CHECK(ui::percent_words(1'250, false, test::language("en")) == "1,250%");
    CHECK(ui::percent_words(2, true, test::language("en")) == "less than 2%");
    CHECK(ui::percent_words(2, true, test::language("es")) == "menos de 2%");
}

TEST_CASE("numbers: the ends of a range are rounded outwards to tenths")
{
    struct Case {
        std::int64_t nano;
        std::string down;
        std::string up;
    };
    const Case cases[] = {
        {0, "0", "0"},
        {1, "0", "0.1"},
        {99'999'999, "0", "0.1"},
        {100'000'000, "0.1", "0.1"},
        {20'456'000'000, "20.4", "20.5"},
        {20'000'000'000, "20", "20"},
        {20'000'000'001, "20", "20.1"},
        {999'950'000'000, "999.9", "1,000"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.nano);
        CHECK(ui::tenths_down(core::Percent::from_nano(c.nano)) == c.down);
        CHECK(ui::tenths_up(core::Percent::from_nano(c.nano)) == c.up);
    }
}

TEST_CASE("numbers: counts and serving sizes are said as printed")
{
    CHECK(ui::count_words(core::Count::whole(9)) == "9");
    CHECK(ui::count_words(core::parse_servings("2.5").value().count) == "2.5");
    const auto metric = core::parse_measure("39 g").value();
    CHECK(ui::serving_words({"1 cup", metric}, test::language("en")) == "1 cup (39 g)");
    CHECK(ui::serving_words({"", metric}, test::language("en")) == "39 g");
    CHECK(ui::serving_words({"1 cup", std::nullopt}, test::language("en")) == "1 cup");
    CHECK(ui::serving_words({"", std::nullopt}, test::language("en")) == "no size printed");
    CHECK(ui::serving_words({"", std::nullopt}, test::language("es")) == "sin tamaño impreso");
}

// Source of the guide: FDA, Interactive Nutrition Facts Label, percent Daily Value: 5 or less is low, 20 or more high.
TEST_CASE("numbers: a reading is a sentence around its percent, never a bare word")
{
    using core::Reading;
    const auto& english = test::language("en");
    const auto& spanish = test::language("es");
    CHECK(ui::reading_sentence(Reading::Low, "5%", english) == "5%, low (5 or less)");
    CHECK(ui::reading_sentence(Reading::Between, "8%", english) == "8%, between 5 and 20");
    CHECK(ui::reading_sentence(Reading::High, "20%", english) == "20%, high (20 or more)");
    CHECK(ui::reading_sentence(Reading::Low, "5%", spanish) == "5%, bajo (5 o menos)");
    CHECK(ui::reading_sentence(Reading::Between, "8%", spanish) == "8%, entre 5 y 20");
    CHECK(ui::reading_sentence(Reading::High, "20%", spanish) == "20%, alto (20 o más)");
    CHECK(ui::reading_word(Reading::Low, english) == "low");
    CHECK(ui::reading_word(Reading::Between, english) == "between 5 and 20");
    CHECK(ui::reading_word(Reading::High, spanish) == "alto");
}

TEST_CASE("numbers: a name inside a sentence begins small, also with an accent, and the rest stays")
{
    const std::pair<const char*, const char*> cases[] = {
        {"Vitamin D", "vitamin D"},
        {"Ácido pantoténico", "ácido pantoténico"},
        {"Ñ", "ñ"},
        {"×", "×"},
        {"iron", "iron"},
        {"5 things", "5 things"},
        {"", ""},
    };
    for (const auto& [name, inside] : cases) {
        const auto& told_name = name;
        CAPTURE(told_name);
        CHECK(ui::in_sentence(name) == inside);
    }
}
