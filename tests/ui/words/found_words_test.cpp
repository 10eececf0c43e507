#include "tests/support/headless.h"
#include "tests/support/label_maker.h"
#include "ui/words/found_words.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

/// An invented food whose label prints what the test says.
core::Product food(const std::string& brand, const std::string& net, const std::string& serving)
{
    auto product = test::make_product("952000000001", "Oat rounds", test::make_label(serving, "9", {}));
    product.brand = brand;
    if (!net.empty())
        product.label.net_quantity = core::parse_net_quantity(net);
    return product;
}

std::string counted(std::size_t products, bool all, const std::string& code)
{
    return ui::found_words({products, all, 60}, test::language(code));
}

} // namespace

TEST_CASE("found words: brand and net quantity tell alike ones apart, the serving where there is none")
{
    struct Case {
        std::string why;
        core::Product product;
        std::string english;
        std::string spanish;
    };
    const Case cases[] = {
        {"both", food("Millbrook", "12 oz (340 g)", "39 g"), "Millbrook · 12 oz (340 g)", "Millbrook · 12 oz (340 g)"},
        {"no brand", food("", "12 oz (340 g)", "39 g"), "12 oz (340 g)", "12 oz (340 g)"},
        {"no net quantity", food("Millbrook", "", "39 g"), "Millbrook · serving 39 g", "Millbrook · porción 39 g"},
        {"neither", food("", "", "39 g"), "serving 39 g", "porción 39 g"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(ui::found_detail(c.product, test::language("en")) == c.english);
        CHECK(ui::found_detail(c.product, test::language("es")) == c.spanish);
    }
    core::Product bare = food("", "", "39 g");
    bare.label.serving = {};
    CHECK(ui::found_detail(bare, test::language("en")).empty());
}

TEST_CASE("found words: a label of this place only says so first")
{
    auto product = food("Millbrook", "5 lb", "39 g");
    product.this_place_only = true;
    CHECK(ui::found_detail(product, test::language("en")) == "For this place only\nMillbrook · 5 lb");
    CHECK(ui::found_detail(product, test::language("es")) == "Solo para este lugar\nMillbrook · 5 lb");
}

TEST_CASE("found words: how many there are, as far as is known, and what to do where there is none")
{
    struct Case {
        std::string why;
        std::size_t products;
        bool all;
        std::string english;
        std::string spanish;
    };
    const Case cases[] = {
        {"nothing yet", 0, false, "Looking...", "Buscando..."},
        {"none", 0, true, "No product has these words. Take letters away, or scan the package.",
         "No hay productos con estas palabras. Quite letras o escanee el paquete."},
        {"some so far", 12, false, "12 products or more", "12 productos o más"},
        {"one", 1, true, "1 product", "1 producto"},
        {"all are shown", 60, true, "60 products", "60 productos"},
        {"more than are shown", 3214, true, "The first 60 of 3,214 products", "Los primeros 60 de 3,214 productos"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(counted(c.products, c.all, "en") == c.english);
        CHECK(counted(c.products, c.all, "es") == c.spanish);
    }
}

TEST_CASE("found words: typed words that no product has are told before the count, where anything is found")
{
    const auto told = [](std::size_t products, const std::vector<std::string>& left_out, const std::string& code) {
        return ui::found_words({products, true, 60, left_out}, test::language(code));
    };
    CHECK(told(1, {"FRITAS"}, "en") == "No product here has the word “FRITAS”. These have the rest.\n1 product");
    CHECK(told(12, {"FRITAS"}, "es") ==
          "Ningún producto de aquí tiene la palabra “FRITAS”. Estos tienen el resto.\n12 productos");
    CHECK(told(12, {"FRITAS", "SOYA"}, "en") ==
          "No product here has any of the words “FRITAS”, “SOYA”. These have the rest.\n12 products");
    CHECK(
        told(12, {"FRITAS", "SOYA"}, "es") ==
        "Ningún producto de aquí tiene ninguna de las palabras “FRITAS”, “SOYA”. Estos tienen el resto.\n12 productos");
    CHECK(told(1, {"WWWWWWWWWÑWWWWWWWW"}, "en").find("“WWWWWWWWW...”") != std::string::npos); // fits on any screen
    CHECK(told(0, {"FRITAS"}, "en") == told(0, {}, "en"));                                    // nothing has the rest
}
