#include "catalog/store/fold.h"

#include <doctest/doctest.h>

using catalog::fold;

TEST_CASE("folding takes accents and case away")
{
    CHECK(fold("Crème d'Avoine") == "creme davoine");
    CHECK(fold("JALAPEÑO Piñón") == "jalapeno pinon");
    CHECK(fold("pin\u0303on") == "pinon"); // the tilde as a sign of its own
    CHECK(fold("Straße") == "strasse");
    CHECK(fold("Smørrebrød, Æble") == "smorrebrod aeble");
    CHECK(fold("ｆｕｌｌ ｗｉｄｔｈ") == "full width");
    CHECK(fold("½ ﬁg") == "1 2 fig");
    CHECK(fold("Борщ") == "борщ");
}

TEST_CASE("folding leaves words, one blank between two")
{
    CHECK(fold("  Milk,\t2 %  (1/2 gal.) ") == "milk 2 1 2 gal");
    CHECK(fold("Baker\u2019s rye-bread") == "bakers rye bread");
    CHECK(fold("!!! --- ***").empty());
    CHECK(fold("").empty());
}

TEST_CASE("folding takes any bytes")
{
    CHECK(fold("a\xFF\xFE b\xC3") == "a b");
    CHECK(fold(std::string_view("a\0b", 3)) == "a b");
    CHECK(fold(std::string(100, 'x')) == std::string(catalog::longest_word, 'x'));
    const auto cut = fold("ббббббббббббббббббббб и"); // 42 bytes: cut between two letters
    CHECK(cut == "бббббббббббббббб и");
}
