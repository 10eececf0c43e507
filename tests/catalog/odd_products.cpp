#include "tests/catalog/odd_products.h"

#include "tests/catalog/products.h"

namespace test {

using core::Nutrient;

std::vector<OddProduct> odd_products()
{
    struct Case {
        const char* why;
        void (*change)(core::Product&);
        bool beyond_labels = false;
    };
    const Case cases[] = {
        {"everything filled in", [](core::Product&) {}},
        {"nothing but what must be",
         [](core::Product& p) {
             p.brand = p.aisle = p.note = "";
             p.label = {};
         }},
        {"no metric amount", [](core::Product& p) { p.label.serving.metric.reset(); }},
        {"no household words", [](core::Product& p) { p.label.serving.household = ""; }},
        {"grams", [](core::Product& p) { p.label.serving.metric = core::Mass::milli(1'500); }},
        {"servings varied", [](core::Product& p) { p.label.servings = core::parse_servings("varied").value(); }},
        {"one serving", [](core::Product& p) { p.label.servings = core::parse_servings("single").value(); }},
        {"3.5 servings, exact", [](core::Product& p) { p.label.servings = core::parse_servings("3.5").value(); }},
        {"a label for infants", [](core::Product& p) { p.label.audience = core::Audience::Infant; }},
        {"a label for adults, of 2016",
         [](core::Product& p) {
             p.label.audience = core::Audience::Adult;
             p.label.panel = core::Panel::Of2016;
         }},
        {"contains: the label prints none", [](core::Product& p) { p.label.contains = ""; }},
        {"contains: not recorded", [](core::Product& p) { p.label.contains.reset(); }},
        {"ingredients not recorded", [](core::Product& p) { p.label.ingredients.reset(); }},
        {"no reference food", [](core::Product& p) { p.reference_food = nullptr; }},
        {"the last reference food", [](core::Product& p) { p.reference_food = &core::reference_amounts().back(); }},
        {"no net quantity", [](core::Product& p) { p.label.net_quantity.reset(); }},
        {"a net quantity without a metric part",
         [](core::Product& p) {
             p.label.net_quantity = core::NetQuantity{"2 dozen", std::nullopt};
         }},
        {"a second column per container",
         [](core::Product& p) { p.label.second->kind = core::SecondColumn::Kind::PerContainer; }},
        {"a second column without a figure", [](core::Product& p) { p.label.second->column = {}; }},
        {"no second column", [](core::Product& p) { p.label.second.reset(); }},
        {"a line with nothing in it", [](core::Product& p) { p.label.per_serving.lines[Nutrient::Zinc] = {}; }},
        {"a figure and a statement for one nutrient",
         [](core::Product& p) { p.label.per_serving.not_significant.insert(Nutrient::Sodium); }},
        {"the smallest amount there is, and the largest",
         [](core::Product& p) {
             p.label.per_serving.lines[Nutrient::Iodine].amount = core::Figure{core::Content::from_nano(1), false, 9};
             p.label.per_serving.lines[Nutrient::Protein].amount =
                 core::Figure{core::Content::from_nano(9'223'372'036'854'775'807), true, 0};
         },
         true},
        {"worked back from an amount per 100",
         [](core::Product& p) { p.label.per_serving.lines[Nutrient::Calcium].worked_back = true; }},
        {"a release's record",
         [](core::Product& p) {
             p.origin.kind = core::Origin::Kind::Release;
             p.category = "Cookies & Biscuits";
         }},
        {"typed at a station", [](core::Product& p) { p.origin.kind = core::Origin::Kind::TypedHere; }},
        {"for this place only",
         [](core::Product& p) {
             p.gtin = core::Gtin::parse("2112345000008").value();
             p.this_place_only = true;
         }},
        {"a long list of ingredients",
         [](core::Product& p) {
             for (int i = 0; i < 300; ++i)
                 *p.label.ingredients += ", enriched flour (wheat flour, niacin, reduced iron)";
         }},
        {"text that means something to a database or a list",
         [](core::Product& p) {
             p.name = "'); DROP TABLE product; -- \"; = / < ,";
             p.label.ingredients = "";
         }},
    };
    std::vector<OddProduct> all;
    for (const auto& c : cases) {
        OddProduct odd{c.why, full_product(), c.beyond_labels};
        c.change(odd.product);
        all.push_back(std::move(odd));
    }
    return all;
}

} // namespace test
