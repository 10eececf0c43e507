#include "catalog/store/bulk_writer.h"
#include "catalog/store/search.h"
#include "catalog/store/search_tables.h"
#include "catalog/store/store.h"
#include "tests/catalog/products.h"
#include "tests/support/release_texts.h"
#include "tests/support/temp_folder.h"

#include <SQLiteCpp/Database.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

using catalog::NameSearch;
using catalog::Store;

namespace {

core::Product named(std::uint64_t number, const std::string& name, const std::string& brand = "",
                    const std::string& category = "", const std::string& aisle = "")
{
    auto product = test::product(number, name);
    product.brand = brand;
    product.category = category;
    product.aisle = aisle;
    return product;
}

void finish(NameSearch& search)
{
    while (!search.step([] { return true; }))
        continue;
}

using Names = std::vector<std::string>;

Names names(NameSearch& search, std::string_view typed, std::size_t wanted = 100)
{
    search.ask(typed);
    search.want(wanted);
    finish(search);
    Names names;
    for (const auto& product : search.found())
        names.push_back(product.name);
    return names;
}

const std::vector<core::Product>& shelf()
{
    static const std::vector<core::Product> products = {
        named(1, "Oat rounds, honey", "Millbrook", "Cereal"),
        named(2, "Honey oat clusters", "Cedar Hollow", "Cereal"),
        named(3, "Crème d\u2019avoine", "Val Doré", "Milk"),
        named(4, "CHOCOLATE COOKIES", "Millbrook", "Cookies & Biscuits"),
        named(5, "Chocolate chip crackers", "Tallgrass", "Crackers & Biscotti"),
        named(6, "Oatmeal", "Tallgrass", "Cereal"),
        named(7, "Rice, long grain", "", "", "Rice and beans"),
        named(8, "Black beans", "", "", "Rice and beans"),
        named(9, "Tea \"AND\" honey (NEAR milk*)", "Millbrook", "Tea Bags"),
        named(10, "Salted chocolate", "Cedar Hollow", "Chocolate"),
    };
    return products;
}

/// The same products twice: all in lists, and all loose.
struct Shelves {
    explicit Shelves(const std::vector<core::Product>& products = shelf())
        : loose(":memory:"), path(folder.file("listed"))
    {
        loose.put(products);
        catalog::BulkWriter writer(path);
        for (const auto& product : products)
            writer.add(product);
        writer.finish();
        listed.emplace(*Store::open(path, Store::Mode::ReadOnly));
    }

    void check(std::string_view typed, const Names& expected, const Names& left_out = {})
    {
        CAPTURE(typed);
        auto in_lists = listed->search();
        auto in_none = loose.search();
        CHECK(names(in_lists, typed) == expected);
        CHECK(names(in_none, typed) == expected);
        CHECK(in_lists.count() == expected.size());
        CHECK(in_none.count() == expected.size());
        CHECK(in_lists.counted());
        CHECK(in_lists.left_out() == left_out);
        CHECK(in_none.left_out() == left_out);
    }

    test::TempFolder folder;
    Store loose;
    std::string path;
    std::optional<Store> listed;
};

} // namespace

TEST_CASE("a search finds words of the name and the brand, in any order, the last one begun")
{
    Shelves shelves;
    shelves.check("honey oat", {"Honey oat clusters", "Oat rounds, honey"});
    shelves.check("oat honey", {"Honey oat clusters", "Oat rounds, honey"});
    shelves.check("millbrook ho", {"Oat rounds, honey", "Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("choc cookies", {"CHOCOLATE COOKIES"}, {"choc"}); // only the last word may be a beginning
    shelves.check("CREME DAVOINE", {"Crème d\u2019avoine"});
    shelves.check("crème  d'avoine,", {"Crème d\u2019avoine"});
    shelves.check("dore", {"Crème d\u2019avoine"});
    shelves.check("zzz", {});
    shelves.check("", {});
    shelves.check(" ,;", {});
}

TEST_CASE("words as they stand come first, then beginnings, then slips, each by name")
{
    Shelves shelves;
    shelves.check("oat", {"Honey oat clusters", "Oat rounds, honey", "Oatmeal"});
    shelves.check("choc", {"Chocolate chip crackers", "CHOCOLATE COOKIES", "Salted chocolate"});
    shelves.check("bl", {"Black beans"});
}

TEST_CASE("slips of spelling are forgiven")
{
    Shelves shelves;
    shelves.check("choclate", {"Chocolate chip crackers", "CHOCOLATE COOKIES", "Salted chocolate"});
    shelves.check("choclate cokies", {"CHOCOLATE COOKIES"});
    shelves.check("choclaet cra", {"Chocolate chip crackers"});
    shelves.check("millbrok oat", {"Oat rounds, honey"});
    shelves.check("haney", {"Honey oat clusters", "Oat rounds, honey", "Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("oaz", {}); // too short for slips
}

TEST_CASE("kinds of food are found too, in Spanish as well")
{
    Shelves shelves;
    shelves.check("cereal", {"Honey oat clusters", "Oat rounds, honey", "Oatmeal"});
    shelves.check("cereal tallgrass", {"Oatmeal"});
    shelves.check("galletas", {"Chocolate chip crackers", "CHOCOLATE COOKIES"});
    shelves.check("galletas choc", {"Chocolate chip crackers", "CHOCOLATE COOKIES"});
    shelves.check("gallet", {"Chocolate chip crackers", "CHOCOLATE COOKIES"});
    shelves.check("galetas", {"Chocolate chip crackers", "CHOCOLATE COOKIES"});
    shelves.check("leche", {"Crème d\u2019avoine"});
    shelves.check("frijoles", {"Black beans", "Rice, long grain"}); // an aisle of a sheet
    shelves.check("té honey", {"Tea \"AND\" honey (NEAR milk*)"});
}

TEST_CASE("a name or a brand comes before a kind of food, as it stands or begun")
{
    Shelves shelves({
        named(1, "Pita chips", "Tallgrass", "Chips, Pretzels & Snacks"),
        named(2, "Pretzelsticks", "Tallgrass", "Chips, Pretzels & Snacks"),
        named(3, "Twists, pretzels", "Tallgrass", "Chips, Pretzels & Snacks"),
        named(4, "Rings, salted", "Pretzels of Valdor", "Crackers"),
        named(5, "Almond thins", "Tallgrass", "", "Cookies & Biscuits"),
        named(6, "Wafers", "Las Galletas de Valdor", "Wafers"),
        named(7, "Knots, salted", "Tallgrass", "Chips, Pretzels & Snacks"),
    });
    shelves.check("pretzels", {"Rings, salted", "Twists, pretzels", "Pretzelsticks", "Knots, salted", "Pita chips"});
    shelves.check("pretz", {"Pretzelsticks", "Rings, salted", "Twists, pretzels", "Knots, salted", "Pita chips"});
    shelves.check("pretzls", {"Knots, salted", "Pita chips", "Pretzelsticks", "Rings, salted", "Twists, pretzels"});
    shelves.check("salted pretzels", {"Rings, salted", "Knots, salted"});
    shelves.check("pretzels salt", {"Rings, salted", "Knots, salted"});
    shelves.check("galletas", {"Wafers", "Almond thins", "Rings, salted"});
}

TEST_CASE("little words of both languages are passed over, the last one too, as long as others remain")
{
    Shelves shelves({
        named(1, "Tomato soup", "Tallgrass", "Canned Soup"),
        named(2, "Caldo de tomate", "Valdor", "Canned Soup"),
        named(3, "Deli rolls", "Valdor", "Breads & Buns"),
        named(4, "Cream of rice", "Tallgrass", "Cereal"),
    });
    shelves.check("sopa de", {"Caldo de tomate", "Tomato soup"});
    shelves.check("sopa de tomate", {"Caldo de tomate", "Tomato soup"});
    shelves.check("la sopa", {"Caldo de tomate", "Tomato soup"});
    shelves.check("the soup with the tomato", {"Tomato soup", "Caldo de tomate"});      // the second with a slip
    shelves.check("de la los las el of the and con caldo tomate", {"Caldo de tomate"}); // they use up no place
    shelves.check("de", {"Caldo de tomate", "Deli rolls"});                             // nothing else: as it stands
    shelves.check("of", {"Cream of rice"});
    shelves.check("of de", {});
}

TEST_CASE("a word that fits no product at all is left out where nothing is found, and told")
{
    Shelves shelves;
    shelves.check("galletas saladas", {"Chocolate chip crackers", "CHOCOLATE COOKIES"}, {"saladas"});
    shelves.check("leche entera de zzz", {"Crème d\u2019avoine"}, {"entera", "zzz"});
    shelves.check("zzz zzz honey xxx oat", {"Honey oat clusters", "Oat rounds, honey"}, {"zzz", "xxx"});
    shelves.check("haney xxx clusters", {"Honey oat clusters"}, {"xxx"}); // a slip fits
    shelves.check("oat zzz", {"Honey oat clusters", "Oat rounds, honey", "Oatmeal"}, {"zzz"});
    shelves.check("zzz xxx", {});           // nothing would be left
    shelves.check("oatmeal chocolate", {}); // each fits something: no question gets looser
    shelves.check("oatmeal chocolat zzz", {}, {"zzz"});
}

TEST_CASE("a word that only an older name of a product had is left out")
{
    Shelves shelves;
    Store store = *Store::open(shelves.path, Store::Mode::Write);
    store.put(named(6, "Groats, plain", "Tallgrass", "Cereal"));
    auto search = store.search();
    CHECK(names(search, "tallgrass oatmeal") == Names{"Chocolate chip crackers", "Groats, plain"});
    CHECK(search.left_out() == Names{"oatmeal"});
    CHECK(names(search, "millbrook groats").empty()); // a loose product has it
    CHECK(search.left_out().empty());
    CHECK(names(search, "groats").size() == 1);
}

TEST_CASE("signs that mean something to a database are signs like others")
{
    Shelves shelves;
    shelves.check("tea AND honey", {"Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("\"tea", {"Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("tea NOT honey", {"Tea \"AND\" honey (NEAR milk*)"}, {"not"});
    shelves.check("near(tea milk)", {"Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("name:tea", {"Tea \"AND\" honey (NEAR milk*)"}, {"name"});
    shelves.check("tea*", {"Tea \"AND\" honey (NEAR milk*)"});
    shelves.check("'; DROP TABLE product; --", {});
    shelves.check("%tea_", {"Tea \"AND\" honey (NEAR milk*)"});
    shelves.check(std::string(100'000, 'a'), {});
    shelves.check(std::string(5'000, '*') + "tea", {}); // of a long text the beginning counts
    shelves.check("tea \xFF\xC3 honey", {"Tea \"AND\" honey (NEAR milk*)"});
    std::string many;
    for (int i = 0; i < 1000; ++i)
        many += "tea ";
    shelves.check(many, {"Tea \"AND\" honey (NEAR milk*)"});
}

TEST_CASE("what is put in over a listed product is found by its new name only, in its place among the others")
{
    Shelves shelves;
    Store store = *Store::open(shelves.path, Store::Mode::Write);
    auto search = store.search();
    CHECK(names(search, "oatmeal") == Names{"Oatmeal"});
    store.put(named(6, "Groats, plain", "Tallgrass", "Cereal"));
    store.put(named(77, "Honey nuts", "Millbrook"));
    CHECK(names(search, "oatmeal").empty());
    CHECK(names(search, "groats") == Names{"Groats, plain"});
    CHECK(names(search, "honey") ==
          Names{"Honey nuts", "Honey oat clusters", "Oat rounds, honey", "Tea \"AND\" honey (NEAR milk*)"});
    CHECK(search.count() == 4);
    CHECK(names(search, "cereal") == Names{"Groats, plain", "Honey oat clusters", "Oat rounds, honey"});
}

TEST_CASE("many loose products are put into lists")
{
    Store store(":memory:");
    const auto many = test::products(static_cast<std::size_t>(catalog::most_loose) + 1, 100'000);
    store.put(many);
    store.put(shelf());
    auto search = store.search();
    CHECK(names(search, "oat honey") == Names{"Honey oat clusters", "Oat rounds, honey"});
    CHECK(names(search, many.back().name).size() > 0);
    CHECK(names(search, "chocolate") == Names{"Chocolate chip crackers", "CHOCOLATE COOKIES", "Salted chocolate"});
}

TEST_CASE("a label of this place only leaves no word behind")
{
    const test::TempFolder folder;
    const auto path = folder.file("shop");
    {
        Store store(path);
        store.put(test::products(static_cast<std::size_t>(catalog::most_loose) + 1, 100'000));
        auto own = named(5, "Xylofruit from the bin");
        own.this_place_only = true;
        store.put(own);
        store.put(test::products(static_cast<std::size_t>(catalog::most_loose) + 1, 200'000)); // now it is in a list
        auto search = store.search();
        REQUIRE(names(search, "xylofruit") == Names{"Xylofruit from the bin"});
        store.remove_this_place_only();
        CHECK(names(search, "xylofruit").empty());
        store.copy_to(folder.file("copy"));
    }
    CHECK(test::bytes_of(folder.file("copy")).find("xylofruit") == std::string::npos);
}

TEST_CASE("answers come in portions, and only as many as are wanted")
{
    Store store(":memory:");
    std::vector<core::Product> many;
    for (std::uint64_t i = 0; i < 3000; ++i)
        many.push_back(named(1000 + i, "Crackers " + std::to_string(1000 + i)));
    store.put(many);
    auto search = store.search();
    search.ask("crack");
    CHECK_FALSE(search.counted());
    int portions = 1;
    for (; !search.step([] { return false; }); ++portions)
        CHECK(search.found().size() <= NameSearch::first_wanted);
    CHECK(portions > 10);
    CHECK(search.found().size() == NameSearch::first_wanted);
    CHECK(search.count() == 3000);
    CHECK(search.found().front().name == "Crackers 1000");
    search.want(2500);
    finish(search);
    CHECK(search.found().size() == 2500);
    CHECK(search.found().back().name == "Crackers 3499");
    search.ask("crackers 3999");
    CHECK(search.found().empty());
    finish(search);
    CHECK(search.found().front().name == "Crackers 3999"); // behind it numbers with one slip
}

TEST_CASE("lists and loose products give the same answers")
{
    const test::TempFolder folder;
    const auto path = folder.file("listed");
    Store loose(":memory:");
    std::vector<core::Product> products;
    for (std::uint64_t i = 0; i < 1500; ++i) {
        test::Dice dice(i);
        products.push_back(named(1000 + i, test::food_name(dice), test::brand_name(dice), test::food_category(dice)));
    }
    loose.put(products);
    catalog::BulkWriter writer(path);
    for (const auto& product : products)
        writer.add(product);
    writer.finish();
    const Store listed = *Store::open(path, Store::Mode::ReadOnly);
    auto first = listed.search();
    auto second = loose.search();
    for (const char* typed : {"c",
                              "ch",
                              "che",
                              "cheese",
                              "chese",
                              "chocolate org",
                              "organic chocolate",
                              "cookies",
                              "galletas or",
                              "oat hony",
                              "vale",
                              "brivael",
                              "milk choc",
                              "o c",
                              "salsa tortila",
                              "chips",
                              "snacks choc",
                              "queso de",
                              "pan integral",
                              "zzz cheese",
                              "galletas saladas"}) {
        CAPTURE(typed);
        const auto one = names(first, typed, 2000);
        CHECK(one == names(second, typed, 2000));
        CHECK(one.size() == first.count());
        CHECK(first.count() == second.count());
        CHECK(first.left_out() == second.left_out());
    }
    CHECK(names(first, "chocolate", 2000).size() > 50);
}

TEST_CASE("torn lists are an error, never a crash or an endless search")
{
    Shelves shelves;
    for (const char* harm : {"UPDATE search_list SET lists = x'FFFFFFFFFFFFFFFFFFFFFF'", "DELETE FROM search_list",
                             "UPDATE search_word SET words = x'FF01'", "UPDATE search_head SET words = 3",
                             "UPDATE search_head SET products = -1", "UPDATE search_head SET products = 2",
                             "UPDATE search_number SET numbers = x'00'", "DELETE FROM search_number",
                             "UPDATE search_list SET lists = x''"}) {
        CAPTURE(harm);
        const auto copy = shelves.folder.file("torn");
        std::filesystem::copy_file(shelves.path, copy, std::filesystem::copy_options::overwrite_existing);
        SQLite::Database(copy, SQLite::OPEN_READWRITE).exec(harm);
        const Store store = *Store::open(copy, Store::Mode::ReadOnly);
        auto search = store.search();
        CHECK_THROWS_AS(names(search, "oat"), std::runtime_error);
    }
}

TEST_CASE("a catalog of version 3 without lists is searched all the same, and gets them when it is written to")
{
    Shelves shelves;
    const auto copy = shelves.folder.file("early");
    std::filesystem::copy_file(shelves.path, copy);
    for (const char* table :
         {"search_head", "search_word", "search_kind", "search_list", "search_number", "search_loose"})
        SQLite::Database(copy, SQLite::OPEN_READWRITE).exec(std::string("DROP TABLE ") + table);
    const Names expected{"Honey oat clusters", "Oat rounds, honey", "Oatmeal"};
    {
        const Store store = *Store::open(copy, Store::Mode::ReadOnly);
        auto search = store.search();
        CHECK(names(search, "oat") == expected);
        CHECK(names(search, "galletas").size() == 2);
    }
    const Store store = *Store::open(copy, Store::Mode::Write);
    CHECK(SQLite::Database(copy).execAndGet("SELECT products FROM search_head").getInt64() == 10);
    auto search = store.search();
    CHECK(names(search, "oat") == expected);
}
