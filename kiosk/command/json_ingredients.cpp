// The part of the JSON form that tells what the ingredient list and the "Contains" statement of a label name.
#include "kiosk/command/json_out.h"

#include <nlohmann/json.hpp>

namespace kiosk {

using Json = nlohmann::ordered_json;

const char* json_name(core::FirstGrain::Kind kind)
{
    switch (kind) {
    case core::FirstGrain::Kind::Whole:
        return "whole";
    case core::FirstGrain::Kind::NotWhole:
        return "not_whole";
    case core::FirstGrain::Kind::CountsInPrograms:
        return "counts_in_programs";
    case core::FirstGrain::Kind::Unclear:
        return "unclear";
    case core::FirstGrain::Kind::NoneNamed:
        break;
    }
    return "none_known";
}

const char* json_name(core::SugarRow::Kind kind)
{
    switch (kind) {
    case core::SugarRow::Kind::Sugar:
        return "sugar";
    case core::SugarRow::Kind::Juice:
        return "concentrated_juice";
    case core::SugarRow::Kind::None:
        break;
    }
    return "";
}

const char* json_name(core::Allergen allergen)
{
    switch (allergen) {
    case core::Allergen::Milk:
        return "milk";
    case core::Allergen::Egg:
        return "egg";
    case core::Allergen::Fish:
        return "fish";
    case core::Allergen::Crustaceans:
        return "crustacean_shellfish";
    case core::Allergen::TreeNuts:
        return "tree_nuts";
    case core::Allergen::Peanuts:
        return "peanuts";
    case core::Allergen::Wheat:
        return "wheat";
    case core::Allergen::Soybeans:
        return "soybeans";
    case core::Allergen::Sesame:
        break;
    }
    return "sesame";
}

const char* json_name(core::AllergenPlace place)
{
    switch (place) {
    case core::AllergenPlace::Statement:
        return "statement";
    case core::AllergenPlace::StatementInText:
        return "statement_in_text";
    case core::AllergenPlace::Ingredients:
        return "ingredients";
    case core::AllergenPlace::InDoubt:
        return "in_doubt";
    case core::AllergenPlace::MayContain:
        break;
    }
    return "may_contain";
}

namespace {

core::IngredientList list_of(const core::Product& product)
{
    return product.label.ingredients ? core::take_apart(*product.label.ingredients) : core::IngredientList{};
}

Json grain_json(const core::IngredientList& list)
{
    const auto grain = core::first_grain(list);
    Json json{{"kind", json_name(grain.kind)}};
    if (grain.kind != core::FirstGrain::Kind::NoneNamed) {
        json["words"] = grain.matched;
        json["ingredient"] = grain.ingredient;
        json["published"] = grain.source;
    }
    return json;
}

Json text_or_null(const std::string& text)
{
    return text.empty() ? Json() : Json(text);
}

} // namespace

Json ingredients_json(const core::Product& product)
{
    if (!product.label.ingredients)
        return nullptr;
    const auto list = list_of(product);
    Json json{{"printed", *product.label.ingredients}, {"read_in_part", list.cut}, {"first_grain", grain_json(list)}};
    json["sugars"] = Json::array();
    for (const auto& sugar : core::sugars_in(list))
        json["sugars"].push_back(
            {{"printed", sugar.printed}, {"kind", json_name(sugar.kind)}, {"published", sugar.source}});
    json["partially_hydrogenated"] = core::partially_hydrogenated(list);
    return json;
}

Json allergens_json(const core::Product& product)
{
    const auto reading = core::allergens_of(product.label, list_of(product), product.origin.entered_on);
    Json json{{"statement_recorded", reading.statement_recorded},
              {"statement", reading.statement_recorded ? Json(reading.statement) : Json()},
              {"statement_in_text", text_or_null(reading.statement_in_text)},
              {"may_contain", text_or_null(reading.may_contain)},
              {"ingredients_recorded", reading.ingredients_recorded},
              {"entered_on", product.origin.entered_on.text()},
              {"sesame_need_not_be_named", reading.sesame_need_not_be_named}};
    json["named"] = Json::array();
    for (const auto& naming : reading.named)
        json["named"].push_back({{"allergen", json_name(naming.allergen)},
                                 {"place", json_name(naming.place)},
                                 {"printed", naming.printed}});
    return json;
}

} // namespace kiosk
