#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/look/fonts.h"

#include <doctest/doctest.h>
#include <imgui_internal.h>

#include <cmath>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace {

std::vector<std::pair<std::string, std::pair<const ImFont*, float>>> fonts_of(const ui::Look& look)
{
    const auto& f = look.fonts;
    const auto& s = look.sizes;
    return {{"note", {f.note, s.note}},
            {"bar", {f.bar, s.bar}},
            {"text", {f.text, s.text}},
            {"strong", {f.strong, s.text}},
            {"name", {f.name, s.name}},
            {"figure", {f.figure, s.figure}},
            {"headline", {f.headline, s.headline}}};
}

void add_letters(const std::string& text, std::set<unsigned>& letters)
{
    const char* at = text.data();
    const char* end = at + text.size();
    while (at < end) {
        unsigned letter = 0;
        at += ImTextCharFromUtf8(&letter, at, end);
        if (letter > ' ')
            letters.insert(letter);
    }
}

std::string missing_in(const ImFont& font, const std::set<unsigned>& letters)
{
    std::string missing;
    for (const unsigned letter : letters)
        if (!font.FindGlyphNoFallback(static_cast<ImWchar>(letter)))
            missing += "U+" + std::to_string(letter) + " ";
    return missing;
}

} // namespace

// 0.714 em: sCapHeight 714 of 1000 in the OS/2 table of NotoSans-Regular.ttf and NotoSans-Bold.ttf.
// Light hinting fits the height of x to whole pixels, rounding up from 24/64 px on, and with it the capitals, which are
// 1.33 times as high (FreeType, docs of FT_LOAD_TARGET_LIGHT and its latin autofitter): at most 0.83 px. A drawn H is
// whole pixels high: half a pixel more. Sizes are asked for in whole pixels of 1.362 em: a quarter of one.
TEST_CASE("fonts: a capital H is as high as its em says at every text size, but for hinting and whole pixels")
{
    for (const int percent : ui::text_percents) {
        const test::Headless screen({1280, 800}, percent);
        for (const auto& [name, font] : fonts_of(screen.look())) {
            CAPTURE(percent);
            const auto& told_name = name;
            CAPTURE(told_name);
            const auto* letter = font.first->FindGlyphNoFallback('H');
            REQUIRE(letter != nullptr);
            CHECK(std::abs(letter->Y1 - letter->Y0 - 0.714F * font.second) <= 1.6F);
        }
    }
}

TEST_CASE("fonts: the figures of a font are equally wide, so that columns stand still")
{
    const test::Headless screen;
    for (const auto& [name, font] : fonts_of(screen.look())) {
        const auto& told_name = name;
        CAPTURE(told_name);
        for (char digit = '1'; digit <= '9'; ++digit)
            CHECK(font.first->FindGlyphNoFallback(static_cast<ImWchar>(digit))->AdvanceX ==
                  font.first->FindGlyphNoFallback('0')->AdvanceX);
    }
}

TEST_CASE("fonts: every letter of every text in every language has a glyph in every font")
{
    std::set<unsigned> letters;
    for (const auto& language : kiosk::read_language_files(kiosk::data_folder()).languages)
        for (std::size_t i = 0; i < ui::text_names().size(); ++i)
            add_letters(language.text(static_cast<ui::TextId>(i)), letters);
    CHECK(letters.contains(0xF1));   // n with a tilde: Spanish was read
    CHECK(letters.contains(0x1EC7)); // e with circumflex and dot below: the draft of Vietnamese was read
    CHECK(letters.contains(0xD7));   // the sign of multiplication
    const test::Headless screen;
    for (const auto& [name, font] : fonts_of(screen.look())) {
        const auto& told_name = name;
        CAPTURE(told_name);
        CHECK(missing_in(*font.first, letters) == "");
    }
}

TEST_CASE("fonts: every letter of the demo catalog has a glyph in every font")
{
    std::set<unsigned> letters;
    for (const auto& product : test::demo_products()) {
        for (const auto* text : {&product.name, &product.brand, &product.aisle, &product.note, &product.origin.source,
                                 &product.label.serving.household})
            add_letters(*text, letters);
        for (const auto& text : {product.label.ingredients, product.label.contains})
            add_letters(text.value_or(""), letters);
        if (product.label.net_quantity)
            add_letters(product.label.net_quantity->printed, letters);
    }
    CHECK(letters.size() > 50);
    const test::Headless screen;
    for (const auto& [name, font] : fonts_of(screen.look())) {
        const auto& told_name = name;
        CAPTURE(told_name);
        CHECK(missing_in(*font.first, letters) == "");
    }
}

TEST_CASE("fonts: letters of one size are made once, and the texture fits every graphics card of the last ten years")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}})
        for (const int percent : ui::text_percents) {
            CAPTURE(percent);
            const test::Headless screen(size, percent);
            const auto& fonts = screen.look().fonts;
            const auto& sizes = screen.look().sizes;
            CHECK((fonts.bar == fonts.note) == (sizes.bar == sizes.note));
            CHECK((fonts.name == fonts.strong) == (sizes.name == sizes.text));
            CHECK(fonts.strong != fonts.text);
            const auto& atlas = *ImGui::GetIO().Fonts;
            CHECK(atlas.TexWidth <= 8192); // common practice: what a small computer's graphics take
            CHECK(atlas.TexHeight <= 8192);
        }
}

TEST_CASE("fonts: the languages that shoppers may bring have their letters, in product names too")
{
    std::set<unsigned> letters;
    // From memory: letters beyond English of Spanish, Vietnamese, Polish, Romanian, Turkish, Yoruba, Russian, Ukrainian
    // and Greek.
    add_letters("ñüáéíóú¿¡ ăâđêôơưấềữỹ ąćęłńóśźż ăâîșț ğışçö ẹọṣ жщъыьэюя ґєії άέήίόύώς", letters);
    const test::Headless screen;
    for (const auto* font : {screen.look().fonts.text, screen.look().fonts.strong, screen.look().fonts.name,
                             screen.look().fonts.note, screen.look().fonts.bar})
        CHECK(missing_in(*font, letters) == "");
}

TEST_CASE("fonts: a letter that no font has is found missing, so the checks above can fail")
{
    const test::Headless screen;
    CHECK(missing_in(*screen.look().fonts.text, {0x4E2D}) == "U+20013 ");
}

TEST_CASE("fonts: a file that is no font is refused")
{
    const test::Headless screen; // its context
    ImFontAtlas atlas;
    CHECK_THROWS_AS(static_cast<void>(ui::build_fonts(atlas, {}, ui::sizes_for(1280, 800, 100))), std::runtime_error);
}
