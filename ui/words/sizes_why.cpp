// Where serving size and servings per container come from, and what stands behind them.
#include "core/compare/why.h"
#include "core/label/sharpen.h"
#include "ui/words/numbers.h"
#include "ui/words/origin_words.h"
#include "ui/words/what_is.h"
#include "ui/words/why_words.h"

namespace ui {

WhyWords sizes_why_words(const core::Product& product, const Language& language)
{
    const core::Label& label = product.label;
    WhyWords words;
    words.title = language.fill(TextId::why_title, {{"name", language.text(TextId::label_serving_size)}});
    words.what = what_is_this(language.text(TextId::what_serving_size), language);
    const auto say = [&words](std::string sentence) { words.lines.push_back({false, std::move(sentence)}); };
    words.lines.push_back({true, product.name});
    say(language.fill(TextId::why_printed, {{"figure", serving_words(label.serving, language)}}));
    if (!label.serving.household.empty() && label.serving.metric)
        say(language.fill(TextId::why_household, {{"measure", label.serving.household}}));
    const core::SharpLabel sharp = core::sharpen(label);
    // Calories stand for any nutrient: these steps have none.
    for (const auto& step : core::sizes_steps({label, sharp}))
        say(step_words(step, core::Nutrient::Calories, label, core::Basis::Serving, language));
    if (label.net_quantity)
        say(language.fill(TextId::why_net, {{"net", label.net_quantity->printed}}));
    if (sharp.sizes.contradict)
        say(language.fill(TextId::contradicts_net, {{"side", product.name}}));
    say(origin_sentence(product, language));
    say(language.text(TextId::why_label_may_be_wrong));
    return words;
}

} // namespace ui
