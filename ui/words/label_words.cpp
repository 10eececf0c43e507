#include "ui/words/label_words.h"

#include "core/compare/comparison.h"
#include "core/label/aims.h"
#include "core/label/sharpen.h"
#include "ui/words/allergen_words.h"
#include "ui/words/contradiction_words.h"
#include "ui/words/ingredient_words.h"
#include "ui/words/numbers.h"
#include "ui/words/origin_words.h"
#include "ui/words/pair_words.h"

namespace ui {
namespace {

using Kind = LabelPiece::Kind;
using Servings = core::ServingsPerContainer::Kind;

class Writer {
public:
    Writer(const core::Product& product, const Language& language, const core::Choices& choices)
        : product_(product), label_(product.label), language_(language), choices_(choices),
          sharp_(core::sharpen(product.label))
    {
        words_.name = product.name;
        words_.brand = product.brand;
    }

    LabelWords write()
    {
        if (product_.this_place_only)
            sentence(language_.text(TextId::label_this_place));
        sizes();
        figures(label_.per_serving, true);
        second_column();
        package_texts();
        return std::move(words_);
    }

private:
    void add(LabelPiece piece) { words_.pieces.push_back(std::move(piece)); }
    void lead(TextId name, std::string amount)
    {
        add({Kind::Lead, language_.text(name), std::move(amount), "", "", std::nullopt});
    }
    void heading(TextId name) { add({Kind::Heading, language_.text(name), "", "", "", std::nullopt}); }
    void sentence(std::string words) { add({Kind::Sentence, std::move(words), "", "", "", std::nullopt}); }

    std::string servings() const
    {
        const std::string n = count_words(label_.servings.count);
        switch (label_.servings.kind) {
        case Servings::Number:
            return n;
        case Servings::About:
            return language_.fill(TextId::servings_about, {{"n", n}});
        case Servings::Varied:
            return language_.text(TextId::servings_varied);
        case Servings::Single:
            return language_.text(TextId::servings_single);
        case Servings::NotPrinted:
            break;
        }
        return language_.text(TextId::servings_not_printed);
    }

    /// What eating it all means. Where the label prints the package's own figures, nobody has to multiply.
    std::string whole_package() const
    {
        if (label_.second && label_.second->kind == core::SecondColumn::Kind::PerContainer)
            return language_.fill(TextId::label_servings_teach_column,
                                  {{"n", servings()}, {"heading", language_.text(TextId::label_per_container)}});
        return language_.fill(TextId::label_servings_teach, {{"n", servings()}});
    }

    void sizes()
    {
        lead(TextId::label_servings, servings());
        words_.pieces.back().sizes = true;
        lead(TextId::label_serving_size, serving_words(label_.serving, language_));
        words_.pieces.back().sizes = true;
        if (label_.net_quantity)
            lead(TextId::label_net_quantity, label_.net_quantity->printed);
        if (label_.servings.count > core::Count::whole(1))
            sentence(whole_package());
        if (const auto* line = label_.per_serving.find(core::Nutrient::Calories); line && line->amount) {
            lead(TextId::n_calories, amount_words(*line->amount, core::Nutrient::Calories, language_));
            words_.pieces.back().nutrient = core::Nutrient::Calories;
            contradiction(label_.per_serving, core::Nutrient::Calories);
        }
        if (sharp_.inconsistent())
            sentence(language_.text(TextId::inconsistent_label));
        if (sharp_.sizes.contradict)
            sentence(language_.fill(TextId::contradicts_net, {{"side", product_.name}}));
        if (label_.audience == core::Audience::Ages1To3)
            sentence(language_.text(TextId::label_audience_1_3));
        if (label_.audience == core::Audience::Infant)
            sentence(language_.text(TextId::label_audience_infant));
        if (label_.panel == core::Panel::Older)
            sentence(language_.text(TextId::label_panel_older));
        sentence(language_.text(label_.audience == core::Audience::Adult ? TextId::label_percent_guide
                                                                         : TextId::label_percent_guide_child));
        sentence(language_.text(TextId::why_hint));
    }

    void figure(const core::Column& column, core::Nutrient nutrient)
    {
        const core::Line* line = column.find(nutrient);
        if (!line)
            return;
        LabelPiece piece{Kind::Figure, nutrient_name(nutrient, language_), "", "", "", std::nullopt};
        if (line->amount)
            piece.amount = amount_words(*line->amount, nutrient, language_);
        if (const auto percent = core::percent_of_column(label_, column, nutrient)) {
            piece.percent = percent_words(percent->percent, percent->less_than, language_);
            piece.percent_value = percent->percent;
            if (percent->reading)
                piece.reading = reading_sentence(*percent->reading, piece.percent, language_);
        }
        if (&column == &label_.per_serving)
            piece.nutrient = nutrient;
        add(std::move(piece));
        contradiction(column, nutrient);
        if (nutrient == core::Nutrient::TransFat && &column == &label_.per_serving)
            if (auto remark = trans_fat_remark(label_, language_))
                sentence(std::move(*remark));
    }

    /// What cannot be right is marked where it stands.
    void contradiction(const core::Column& column, core::Nutrient nutrient)
    {
        const bool own = &column == &label_.per_serving;
        const auto& back = own ? sharp_.serving.of(nutrient) : sharp_.second->of(nutrient);
        const core::Line* line = column.find(nutrient);
        if (!back.contradiction || !line)
            return;
        core::Shown shown;
        shown.printed = *line;
        shown.contradiction = back.contradiction;
        shown.against = back.against;
        sentence(contradiction_sentence(shown, nutrient, nutrient_name(nutrient, language_), language_));
    }

    void group(const core::Column& column, core::Aim aim, TextId title)
    {
        bool titled = false;
        for (const auto& known : core::nutrients()) {
            if (known.nutrient == core::Nutrient::Calories || core::comes_first(known.nutrient, choices_) ||
                core::aim_of(known.nutrient, choices_.aims) != aim || !column.find(known.nutrient))
                continue;
            if (!titled)
                heading(title);
            titled = true;
            figure(column, known.nutrient);
        }
    }

    /// What the leader wants first, in her order.
    void first(const core::Column& column)
    {
        bool titled = false;
        for (const auto nutrient : choices_.first) {
            if (!core::comes_first(nutrient, choices_) || !column.find(nutrient))
                continue;
            if (!titled)
                heading(TextId::heading_first);
            titled = true;
            figure(column, nutrient);
        }
    }

    void figures(const core::Column& column, bool taught_order)
    {
        if (taught_order) {
            first(column);
            group(column, core::Aim::Less, TextId::heading_less_of);
            group(column, core::Aim::More, TextId::heading_more_of);
            group(column, core::Aim::Neither, TextId::heading_other_one);
        } else
            for (const auto& known : core::nutrients())
                figure(column, known.nutrient);
        std::string list;
        for (const core::Nutrient nutrient : column.not_significant)
            list += (list.empty() ? "" : ", ") + in_sentence(nutrient_name(nutrient, language_));
        if (!list.empty())
            sentence(language_.fill(TextId::label_not_significant, {{"list", list}}));
    }

    void second_column()
    {
        if (!label_.second)
            return;
        heading(label_.second->kind == core::SecondColumn::Kind::AsPrepared ? TextId::label_as_prepared
                                                                            : TextId::label_per_container);
        figures(label_.second->column, false);
    }

    void package_texts()
    {
        for (auto& section : package_sections(product_, language_)) {
            add({Kind::Heading, std::move(section.heading), "", "", "", std::nullopt});
            for (auto& words : section.sentences)
                sentence(std::move(words));
        }
        if (!product_.note.empty())
            sentence(product_.note);
        sentence(origin_sentence(product_, language_));
    }

    const core::Product& product_;
    const core::Label& label_;
    const Language& language_;
    const core::Choices& choices_;
    const core::SharpLabel sharp_;
    LabelWords words_;
};

} // namespace

LabelWords label_words(const core::Product& product, const Language& language, const core::Choices& choices)
{
    return Writer(product, language, choices).write();
}

} // namespace ui
