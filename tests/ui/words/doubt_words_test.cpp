// Doubts as whole sentences, in both languages.
#include "core/audit/audit.h"
#include "tests/support/headless.h"
#include "tests/support/label_maker.h"
#include "ui/words/doubt_words.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

using core::Doubt;
using R = core::DoubtRule;
using N = core::Nutrient;

core::Figure figure(N nutrient, const char* text)
{
    return core::parse_figure(nutrient, text).value();
}

struct Row {
    Doubt doubt;
    std::string english;
    std::string spanish;
};

std::vector<Row> rows()
{
    const auto grams = [](std::int64_t whole) { return core::Measure{core::Mass::whole(whole)}; };
    return {
        {{.rule = R::PercentAgainstAmount,
          .nutrient = N::Iron,
          .found = figure(N::Iron, "8"),
          .percent = core::PrintedPercent{4},
          .column = core::SecondColumn::Kind::PerContainer},
         "In the column per container: Iron: 8 mg and 4% cannot both be right. Read this line on the package again.",
         "En la columna de todo el paquete: Hierro: 8 mg y 4% no pueden ser correctos a la vez. Lea otra vez esta "
         "línea en "
         "el paquete."},
        {{.rule = R::PercentAgainstAmount,
          .nutrient = N::Iron,
          .found = figure(N::Iron, "8"),
          .percent = core::PrintedPercent{4},
          .column = core::SecondColumn::Kind::AsPrepared},
         "In the column as prepared: Iron: 8 mg and 4% cannot both be right. Read this line on the package again.",
         "En la columna ya preparado: Hierro: 8 mg y 4% no pueden ser correctos a la vez. Lea otra vez esta línea en "
         "el "
         "paquete."},
        {{.rule = R::SlippedByTen,
          .nutrient = N::Sodium,
          .found = figure(N::Sodium, "1600"),
          .percent = core::PrintedPercent{7},
          .likely = figure(N::Sodium, "160")},
         "Sodium: 1,600 mg does not fit 7%, but 160 mg would. A decimal point may have slipped by one or two places.",
         "Sodio: 1,600 mg no corresponde a 7%; 160 mg sí. Tal vez el punto decimal se corrió uno o dos lugares."},
        {{.rule = R::SlippedByTen,
          .nutrient = N::Calories,
          .found = figure(N::Calories, "25"),
          .likely = figure(N::Calories, "250")},
         "Calories: 25 does not fit fat, carbohydrate and protein, but 250 would. A zero may be missing or too many.",
         "Calorías: 25 no corresponde a las grasas, los carbohidratos y las proteínas; 250 sí. Tal vez falta o sobra "
         "un "
         "cero."},
        {{.rule = R::UnitSwapped,
          .nutrient = N::Sodium,
          .found = figure(N::Sodium, "0.16"),
          .likely = figure(N::Sodium, "160")},
         "Sodium: 0.16 mg looks like another unit; 160 mg would fit. Look whether the package says g, mg, mcg or IU.",
         "Sodio: 0.16 mg parece estar en otra unidad; 160 mg correspondería. Mire si el paquete dice g, mg, mcg o UI."},
        {{.rule = R::Kilojoules,
          .nutrient = N::Calories,
          .found = figure(N::Calories, "960"),
          .likely = figure(N::Calories, "230")},
         "Calories: 960 fits the other figures if it is kilojoules; that is about 230 calories.",
         "Calorías: 960 corresponde a las otras cifras si son kilojulios; son unas 230 calorías."},
        {{.rule = R::PercentAgainstAmount,
          .nutrient = N::Sodium,
          .found = figure(N::Sodium, "400"),
          .percent = core::PrintedPercent{7},
          .right_percent = 17},
         "Sodium: 400 mg and 7% cannot both be right; 400 mg comes to 17%. Read this line on the package again.",
         "Sodio: 400 mg y 7% no pueden ser correctos a la vez; 400 mg da 17%. Lea otra vez esta línea en el "
         "paquete."},
        {{.rule = R::OtherPanel, .panel = core::Panel::Older},
         "The percents fit the Daily Values from before 2016: the package may have the older label.",
         "Los porcentajes corresponden a los valores diarios de antes de 2016: tal vez el paquete tiene la etiqueta "
         "anterior."},
        {{.rule = R::OtherAudience, .panel = core::Panel::Of2016, .audience = core::Audience::Ages1To3},
         "The percents fit the Daily Values for children of 1 to 3: look for whom the label is.",
         "Los porcentajes corresponden a los valores diarios de niños de 1 a 3 años: mire para quién es la etiqueta."},
        {{.rule = R::OffTheGrid, .nutrient = N::TotalFat, .found = figure(N::TotalFat, "8.3")},
         "Total fat: a label does not print 8.3 g, because of how figures are rounded. Read this line on the package "
         "again.",
         "Grasa total: una etiqueta no dice 8.3 g, por la forma de redondear. Lea otra vez esta línea en el paquete."},
        {{.rule = R::PerHundred, .serving = grams(30)},
         "The figures look like those of 100 g, not of the serving of 30 g. Enter those of one serving.",
         "Las cifras parecen ser de 100 g, no de la porción de 30 g. Escriba las de una porción."},
        {{.rule = R::PartOverWhole, .nutrient = N::SaturatedFat, .other = N::TotalFat},
         "Saturated fat is a part of total fat and cannot be more. One of the two lines is wrong.",
         "Grasa saturada es parte de grasa total y no puede ser más. Una de las dos líneas está mal."},
        {{.rule = R::PartsOverWhole,
          .nutrient = N::TotalCarbohydrate,
          .found = figure(N::TotalCarbohydrate, "37"),
          .least = core::Content::whole(39)},
         "Total carbohydrate: its parts together come to at least 39 g, more than 37 g. One of the lines is wrong.",
         "Carbohidrato total: sus partes juntas dan por lo menos 39 g, más que 37 g. Una de las líneas está mal."},
        {{.rule = R::HeavierThanServing, .least = core::Content::milli(46'250), .serving = grams(30)},
         "Fat, carbohydrate and protein together weigh at least 46.2 g, more than a serving of 30 g. Check these lines "
         "and the serving size.",
         "Las grasas, los carbohidratos y las proteínas juntos pesan por lo menos 46.2 g, más que una porción de 30 g. "
         "Revise estas líneas y el tamaño de la porción."},
        {{.rule = R::Calories,
          .nutrient = N::Calories,
          .found = figure(N::Calories, "500"),
          .least = core::Content::whole(200),
          .most = core::Content::whole(240)},
         "Calories: 500 does not fit the other lines; fat, carbohydrate and protein come to 200 to 240. Read these "
         "lines "
         "on the package again.",
         "Calorías: 500 no corresponde a las otras líneas; las grasas, los carbohidratos y las proteínas dan de 200 a "
         "240. Lea otra vez estas líneas en el paquete."},
        {{.rule = R::ServingsAgainstNet,
          .serving = grams(55),
          .reference = grams(4'540),
          .servings = core::Count::whole(8)},
         "Servings per container: 8 of 55 g do not come to 4540 g. Check the three on the package.",
         "Porciones por envase: 8 de 55 g no dan 4540 g. Revise los tres datos en el paquete."},
        {{.rule = R::FarFromReference, .serving = grams(550), .reference = grams(30)},
         "A serving of 550 g is far from 30 g, the published amount for this kind of food. Check the serving size.",
         "Una porción de 550 g está lejos de 30 g, la cantidad publicada para este tipo de alimento. Revise el tamaño "
         "de "
         "la porción."},
        {{.rule = R::AudienceOfFood},
         "This food is for infants or small children, but the label was entered as one for adults. Look for whom the "
         "label is.",
         "Este alimento es para bebés o niños pequeños, pero la etiqueta se escribió como de adultos. Mire para quién "
         "es "
         "la etiqueta."},
        {{.rule = R::DuplicateName},
         "The same name and brand stand under another number, 09520141001083. Keep one, or add to the names what tells "
         "them apart.",
         "El mismo nombre y la misma marca están con otro número, 09520141001083. Deje uno, o agregue a los nombres lo "
         "que los distingue."},
    };
}

} // namespace

TEST_CASE("doubt words: whole sentences")
{
    std::vector<bool> seen(core::doubt_rule_count);
    for (const auto& row : rows()) {
        seen[static_cast<std::size_t>(row.doubt.rule)] = true;
        CHECK(ui::doubt_sentence(row.doubt, test::language("en"), "09520141001083") == row.english);
        CHECK(ui::doubt_sentence(row.doubt, test::language("es"), "09520141001083") == row.spanish);
    }
    for (const auto& rule : core::doubt_rules()) {
        CAPTURE(std::string(rule.name));
        CHECK(seen[static_cast<std::size_t>(rule.rule)]);
    }
}
