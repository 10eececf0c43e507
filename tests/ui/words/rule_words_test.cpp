// What labels say to published rules, as whole sentences.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/core_words.h"
#include "ui/words/rule_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>

namespace {

using core::RuleSet;

const core::Product& strands()
{
    return test::demo_product("9520141001120"); // bran strands
}

const core::Product& rings()
{
    return test::demo_product("9520141001083"); // oat rings, honey
}

std::string said(RuleSet set, const char* language)
{
    std::string all;
    for (const auto& section : ui::rule_sections(strands(), rings(), std::array{set}, test::language(language))) {
        all += section.heading + "\n";
        for (const auto& sentence : section.sentences)
            all += sentence + "\n";
    }
    return all;
}

bool says(RuleSet set, const std::string& sentence, const char* language = "en")
{
    return ("\n" + said(set, language)).find("\n" + sentence + "\n") != std::string::npos;
}

} // namespace

TEST_CASE("rule words: every set, every rule and every month has words in both languages")
{
    for (const auto* code : {"en", "es"}) {
        const auto& language = test::language(code);
        for (const auto& info : core::rule_sets()) {
            CHECK_FALSE(ui::rule_set_name(info.set, language).empty());
            for (const auto* rule : core::rules_of(info.set)) {
                CAPTURE(rule->key);
                CHECK(ui::cited_rule(*rule, language).find('{') == std::string::npos);
                CHECK(ui::cited_rule(*rule, language).find(ui::core_words(rule->citation, language)) !=
                      std::string::npos);
            }
        }
        for (int month = 1; month <= 12; ++month)
            CHECK_FALSE(ui::day_words({2026, month, 1}, language).empty());
    }
    CHECK(ui::day_words({2025, 10, 1}, test::language("en")) == "October 1, 2025");
    CHECK(ui::day_words({2025, 10, 1}, test::language("es")) == "1 de octubre de 2025");
}

// 21 CFR 101.61(b)(4): at most 140 mg in the reference amount. 101.61(b)(6), 101.56(c) and (g) need another food.
TEST_CASE("rule words: claims, all three answers, and alike ones in one sentence")
{
    CHECK(says(RuleSet::SodiumClaims,
               "Low sodium (21 CFR 101.61(b)(4)). Left: meets the figures. Right: does not meet the figures."));
    CHECK(says(RuleSet::SodiumClaims, "Light in sodium (21 CFR 101.56(c)); Reduced sodium (21 CFR 101.61(b)(6)); "
                                      "Lightly salted (21 CFR 101.56(g)). Left and right: cannot tell from the label: "
                                      "the rule measures it against another food, which no label names."));
    CHECK(says(RuleSet::SodiumClaims, "Figures only, and no verdict on the food. Meeting a claim's figures does not "
                                      "mean that the package bears the claim or may bear it: other conditions hold as "
                                      "well."));
    CHECK(says(RuleSet::SodiumClaims,
               "Bajo en sodio (21 CFR 101.61(b)(4)). Izquierda: cumple las cifras. Derecha: no cumple las cifras.",
               "es"));
    CHECK(says(RuleSet::LeanClaims, "Left and right: none of these rules is about this food."));
}

// 7 CFR 226.20(a)(4)(ii): 6 g of added sugars in a dry ounce since October 1, 2025. For WIC the State's list decides.
TEST_CASE("rule words: programs name their limit and days, and for WIC whose list decides")
{
    CHECK(says(RuleSet::Cacfp,
               "Breakfast cereal, added sugars (7 CFR 226.20(a)(4)(ii), in force since October 1, "
               "2025): added sugars at most 6 g in 1 oz (28 g). Left: meets this limit. Right: does not "
               "meet this limit."));
    CHECK(
        says(RuleSet::WicBefore,
             "Breakfast cereal, total sugars (7 CFR 246.10(e)(12), Table 4, in force until April 19, 2026 or until the "
             "day that your State chose): total sugars at most 21.2 g in 100 g. Left: meets the federal limit printed "
             "here; your State's list decides. Right: does not meet the federal limit printed here; your State's list "
             "decides."));
    CHECK(says(RuleSet::Wic,
               "Breakfast cereal, added sugars (7 CFR 246.10(e)(12), Table 4, as amended by 89 FR 28488, "
               "in force since June 17, 2024). Left and right: cannot tell from the label: this station has "
               "not read the limit in the rule itself and does not use it; your State's list decides."));
    for (const auto set : {RuleSet::Wic, RuleSet::WicBefore})
        for (const auto& answer : core::answers_to(std::array{set}, rings().label, rings().reference_food)) {
            CHECK(ui::answer_words(answer, test::language("en")).find("your State's list decides") !=
                  std::string::npos);
            CHECK(ui::answer_words(answer, test::language("es")).find("decide la lista de su estado") !=
                  std::string::npos);
        }
}

TEST_CASE("rule words: an entry without a reference food says so once")
{
    auto bare = rings();
    bare.reference_food = nullptr;
    const auto sections = ui::rule_sections(bare, bare, std::array{RuleSet::SodiumClaims}, test::language("en"));
    REQUIRE(sections.size() == 1);
    REQUIRE(sections[0].sentences.size() == 2);
    CHECK(sections[0].sentences[1] == "Left and right: cannot tell from the label: its entry names no reference food.");
}

namespace {

void set_sodium(core::Product& product, const char* amount)
{
    using core::Nutrient;
    product.label.per_serving.lines[Nutrient::Sodium] = {core::parse_figure(Nutrient::Sodium, amount).value(),
                                                         std::nullopt};
}

} // namespace

// Answers of real labels, each made from the honey oat rings (37 g a serving, 40 g the reference amount).
TEST_CASE("rule words: why a label cannot tell, for what is or is not printed on it")
{
    struct Case {
        std::string why;
        void (*change)(core::Product&);
        std::string_view rule;
        std::string english, spanish;
    };
    using N = core::Nutrient;
    const Case cases[] = {
        // 127.5 to 132.5 mg in 37 g (36.5 to 37.5 g) are 136 to 145.2 mg in 40 g; the limit is 140 mg
        {"straddles", [](core::Product& p) { set_sodium(p, "130"); }, "low_sodium",
         "cannot tell from the label: what the rounded figures can stand for lies on both sides of the limit",
         "no se sabe por la etiqueta: lo que las cifras redondeadas pueden ser queda a los dos lados del límite"},
        {"not printed", [](core::Product& p) { p.label.per_serving.lines.erase(N::Sodium); }, "low_sodium",
         "cannot tell from the label: sodium is not printed", "no se sabe por la etiqueta: no está escrito: sodio"},
        {"off the rule", [](core::Product& p) { set_sodium(p, "143"); }, "low_sodium",
         "cannot tell from the label: the label contradicts itself or the rule of rounding in sodium",
         "no se sabe por la etiqueta: la etiqueta se contradice, o contradice la regla de redondeo, en sodio"},
        {"no grams", [](core::Product& p) { p.label.serving.metric.reset(); }, "low_sodium",
         "cannot tell from the label: its serving size has no grams or milliliters",
         "no se sabe por la etiqueta: su tamaño de porción no tiene gramos ni mililitros"},
        {"millilitres", [](core::Product& p) { p.label.serving.metric = core::Volume::whole(240); }, "low_sodium",
         "cannot tell from the label: its serving is measured in one way and the rule's amount in another, such as "
         "grams and cups",
         "no se sabe por la etiqueta: su porción se mide de una manera y la cantidad de la regla de otra, como gramos "
         "y tazas"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        auto product = rings();
        c.change(product);
        int seen = 0;
        for (const auto& answer :
             core::answers_to(std::array{RuleSet::SodiumClaims}, product.label, product.reference_food))
            if (answer.rule->key == c.rule) {
                ++seen;
                CHECK(ui::answer_words(answer, test::language("en")) == c.english);
                CHECK(ui::answer_words(answer, test::language("es")) == c.spanish);
            }
        CHECK(seen == 1);
    }
}

TEST_CASE("rule words: why a label cannot tell, for what the rule asks")
{
    using Reason = core::Reason;
    const std::pair<Reason, std::string> cases[] = {
        {Reason::OunceDecides, "28 g an ounce and the exact ounce lead to different answers"},
        {Reason::NoReferenceAmount, "its entry names no reference food"},
        {Reason::ReferenceAmountInWords, "the law gives the reference amount of this food in words, without a number"},
        {Reason::MayBeMainDish,
         "it may be a meal or a main dish, for which other limits hold, and no label tells that"},
        {Reason::NeedsReferenceFood, "the rule measures it against another food, which no label names"},
        {Reason::NeedsPackageWords, "the rule also asks how the food was made and what else the package says"},
        {Reason::LimitNotConfirmed, "this station has not read the limit in the rule itself and does not use it"},
    };
    const auto* rule = core::rule_by_key("low_sodium");
    REQUIRE(rule);
    for (const auto& [reason, words] : cases)
        CHECK(ui::answer_words({rule, core::Verdict::CannotTell, reason, std::nullopt}, test::language("en")) ==
              "cannot tell from the label: " + words);
    core::Answer by_print{core::rules_of(RuleSet::Cacfp).front(), core::Verdict::Meets, Reason::Figures, std::nullopt};
    CHECK(ui::answer_words(by_print, test::language("en")) == "meets this limit");
    by_print.true_content_agrees = false;
    CHECK(ui::answer_words(by_print, test::language("en")) ==
          "meets this limit (by the printed figures; the true amounts behind them may say otherwise)");
}

TEST_CASE("rule words: nothing is said where nothing is switched on")
{
    CHECK(ui::rule_sections(strands(), rings(), {}, test::language("en")).empty());
    auto label = ui::label_words(rings(), test::language("en"));
    const auto before = label;
    ui::add_rules(rings(), {}, test::language("en"), label);
    CHECK(label == before);
}

namespace {

/// What the honey oat rings say to one rule, with its arithmetic: 37 g a serving, reference amount 40 g.
std::string arithmetic(RuleSet set, std::string_view key, const char* code = "en")
{
    std::string all;
    for (const auto& answer : core::answers_to(std::array{set}, rings().label, rings().reference_food))
        if (answer.rule->key == key)
            for (const auto& sentence : ui::arithmetic_sentences(answer, rings(), test::language(code)))
                all += sentence + "\n";
    return all;
}

} // namespace

// 21 CFR 101.62(c)(1): below 0.5 g in the reference amount; 0 g is printed below 0.5 g (101.9(c)(2)(i)), and 37 g may
// be 36.5 g (101.9(b)(7)(ii)): 0.5 x 40 / 36.5 = 0.5479.
TEST_CASE("rule words: the arithmetic of a claim reaches as far as the rounded figures")
{
    CHECK(arithmetic(RuleSet::SaturatedFatClaims, "saturated_fat_free") ==
          "The limit in doubt: saturated fat below 0.5 g in the reference amount, 40 g.\n"
          "Saturated fat: 0 g is printed for one serving of 37 g.\n"
          "One serving can truly hold less than 0.5 g.\n"
          "In 40 g: 0 g × 40 g ÷ 37 g = 0 g.\n"
          "By all that the rounded figures can stand for, 40 g can hold less than 0.548 g.\n");
    CHECK(arithmetic(RuleSet::SaturatedFatClaims, "saturated_fat_free", "es")
              .starts_with("El límite en duda: grasa saturada por debajo de 0.5 g en la cantidad de referencia, 40 g.\n"
                           "Grasa saturada: la etiqueta dice 0 g en una porción de 37 g.\n"));
}

// 7 CFR 226.20(a)(4)(ii): the printed figures, added sugars x 28 g / serving size.
TEST_CASE("rule words: the arithmetic of a program is that of the printed figures")
{
    const auto words = arithmetic(RuleSet::Cacfp, "cacfp_cereal_added_sugars");
    CAPTURE(words);
    CHECK(words.starts_with("The limit that decides: added sugars at most 6 g in 1 oz (28 g).\n"));
    CHECK(words.find("This rule is held against the figures as they are printed.\n") != std::string::npos);
    CHECK(words.find(" × 28 g ÷ 37 g = ") != std::string::npos);
    CHECK(arithmetic(RuleSet::Wic, "wic_cereal_added_sugars").empty()); // a limit that was not read tells no figure
}
