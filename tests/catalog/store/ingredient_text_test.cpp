#include "catalog/store/ingredient_text.h"

#include <doctest/doctest.h>

#include <stdexcept>

using catalog::IngredientText;

TEST_CASE("ingredient text: what is packed comes back, letter for letter")
{
    IngredientText texts;
    const std::string list = "ENRICHED FLOUR (WHEAT FLOUR, NIACIN, REDUCED IRON), WATER, SUGAR, Cr\xC3\xA8me, SALT.";
    const auto packed = texts.packed(list);
    REQUIRE_FALSE(packed.empty());
    CHECK(packed.size() < list.size() / 2);
    CHECK(texts.unpacked(packed) == list);
}

TEST_CASE("ingredient text: what would not get smaller is left alone")
{
    IngredientText texts;
    CHECK(texts.packed("").empty());
    CHECK(texts.packed("Oats.").empty());
    CHECK(texts.packed(std::string((1U << 20U) + 1, 'a')).empty());
}

TEST_CASE("ingredient text: bytes that were never packed are a broken catalog")
{
    IngredientText texts;
    auto packed = texts.packed("Whole grain oats, sugar, salt, natural flavor, vitamin E");
    CHECK_THROWS_AS((void)texts.unpacked(""), std::runtime_error);
    CHECK_THROWS_AS((void)texts.unpacked("\x02" + packed.substr(1)), std::runtime_error);
    CHECK_THROWS_AS((void)texts.unpacked(packed.substr(0, packed.size() - 1)), std::runtime_error);
    CHECK_THROWS_AS((void)texts.unpacked(std::string("\x01garbage that is no frame")), std::runtime_error);
}

// Catalogs on sticks were packed with these words: a change here would make them unreadable.
TEST_CASE("ingredient text: the dictionary never changes")
{
    std::uint64_t hash = 14'695'981'039'346'656'037U; // FNV-1a
    for (const char letter : catalog::ingredient_dictionary())
        hash = (hash ^ static_cast<unsigned char>(letter)) * 1'099'511'628'211U;
    CHECK(catalog::ingredient_dictionary().size() == 11'555);
    CHECK(hash == 8'437'845'263'291'868'515U);
}
