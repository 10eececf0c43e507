#include "kiosk/command/compare.h"

#include "catalog/read/text.h"
#include "core/compare/comparison.h"
#include "core/rules/unit_price.h"
#include "kiosk/command/columns.h"
#include "kiosk/command/json_out.h"
#include "kiosk/desk/settings_file.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "kiosk/session/scanning.h"
#include "ui/words/error_words.h"
#include "ui/words/numbers.h"
#include "ui/words/pair_words.h"
#include "ui/words/price_words.h"
#include "ui/words/rule_words.h"

#include <nlohmann/json.hpp>

#include <initializer_list>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

namespace kiosk {
namespace {

constexpr int done = 0;
constexpr int not_done = 2;

/// Says why nothing came of it.
class Complaints {
public:
    Complaints(const ui::Language& language, std::ostream& err) : language_(language), err_(err) {}
    void say(ui::TextId text, std::initializer_list<ui::Fill> fills) const
    {
        sentence(language_.fill(text, fills) + ".");
    }
    void say(const core::Error& error) const { sentence(ui::sentence(error, language_)); }
    void sentence(const std::string& words) const { err_ << "pairstand compare: " << words << "\n"; }

private:
    const ui::Language& language_;
    std::ostream& err_;
};

void say_two(const std::string& code, const std::vector<core::Product>& both, const Complaints& complaints)
{
    complaints.say(ui::TextId::compare_two, {{"code", code},
                                             {"first", both[0].gtin.digits()},
                                             {"first_name", both[0].name},
                                             {"second", both[1].gtin.digits()},
                                             {"second_name", both[1].name}});
}

/// The product with this code, or nothing and one sentence why.
std::optional<core::Product> product_of(const std::string& code, const catalog::Store& store,
                                        const Complaints& complaints)
{
    using Answer = Scanned::Answer;
    const auto scanned = look_up(Scan{code, core::Symbology::Unknown, Scan::From::Finger, {}},
                                 [&](const core::Gtin& gtin) { return store.find(gtin); });
    const std::string shown = catalog::shown(code).substr(0, 40);
    switch (scanned.answer) {
    case Answer::Found:
        if (scanned.products.size() == 1)
            return scanned.products.front();
        say_two(shown, scanned.products, complaints);
        break;
    case Answer::Unknown:
        complaints.say(ui::TextId::compare_unknown, {{"code", shown}});
        break;
    case Answer::Case:
        complaints.say(ui::TextId::compare_case, {{"code", shown}});
        break;
    case Answer::NoProduct:
        complaints.say(ui::TextId::compare_no_product, {{"code", shown}});
        break;
    case Answer::Unreadable:
        if (const auto gtin = core::Gtin::parse(code); !gtin)
            complaints.say({gtin.error().kind, shown, {}});
        break;
    }
    return std::nullopt;
}

/// The figures of the second column as the label prints them, and whether they are compared: those of the whole package
/// are, on that basis; those of the food as prepared never.
std::string second_column(const core::Product& product, const ui::Language& language)
{
    const auto& second = *product.label.second;
    std::string figures;
    for (const auto& known : core::nutrients()) {
        const core::Line* line = second.column.find(known.nutrient);
        if (!line)
            continue;
        figures += (figures.empty() ? "" : "; ") + ui::nutrient_name(known.nutrient, language);
        if (line->amount)
            figures += " " + ui::amount_words(*line->amount, known.nutrient, language);
        if (line->percent)
            figures += " " + ui::percent_words(line->percent->percent, line->percent->less_than, language);
    }
    if (second.kind == core::SecondColumn::Kind::PerContainer)
        return language.fill(ui::TextId::compare_second_package, {{"figures", figures}});
    return language.fill(ui::TextId::compare_second,
                         {{"kind", language.text(ui::TextId::label_as_prepared)}, {"figures", figures}});
}

void print_side(const ui::SideWords& side, const core::Product& product, const ui::Language& language,
                std::ostream& out)
{
    out << side.place << ": " << side.name;
    if (!side.brand.empty())
        out << " (" << side.brand << ")";
    out << ", " << product.gtin.digits() << "\n  " << side.servings;
    if (!side.net.empty())
        out << "\n  " << side.net;
    if (product.label.second)
        out << "\n  " << second_column(product, language);
    out << "\n";
}

ui::TextId heading_of(const ui::RowWords& row)
{
    if (row.nutrient == core::Nutrient::Calories)
        return ui::TextId::heading_calories;
    if (row.first)
        return ui::TextId::heading_first;
    if (row.aim == core::Aim::Less)
        return ui::TextId::heading_less_of;
    return row.aim == core::Aim::More ? ui::TextId::heading_more_of : ui::TextId::heading_other;
}

void print_rows(const ui::PairWords& words, const ui::Language& language, std::ostream& out)
{
    Columns columns;
    std::optional<ui::TextId> heading;
    for (const auto& row : words.rows) {
        const auto own = heading_of(row);
        if (own != heading && own != ui::TextId::heading_calories)
            columns.line("  " + language.text(own));
        heading = own;
        columns.row(
            {"    " + row.name, row.left.amount, row.left.percent, row.right.amount, row.right.percent, row.finding});
        for (const auto& remark : row.remarks)
            columns.line("      " + remark);
    }
    columns.print(out);
}

void print_section(const ui::Section& section, const std::string& margin, std::ostream& out)
{
    out << margin << section.heading << "\n";
    for (const auto& sentence : section.sentences)
        out << margin << "  " << sentence << "\n";
}

void print_text(const core::Product& left, const core::Product& right, const std::vector<core::Comparison>& all,
                const std::vector<core::RuleSet>& rules, const std::optional<core::PricePair>& prices,
                const ui::Language& language, std::ostream& out)
{
    bool first = true;
    std::vector<ui::Section> sections;
    for (const auto& comparison : all) {
        const auto words = ui::pair_words(comparison, left, right, language);
        if (first) {
            print_side(words.sides[0], left, language, out);
            print_side(words.sides[1], right, language, out);
        }
        first = false;
        out << "\n" << ui::basis_heading(words, comparison.basis) << "\n";
        for (const auto& sentence : words.first)
            out << "  " << sentence << "\n";
        if (!words.guide.empty())
            out << "  " << words.guide << "\n";
        print_rows(words, language, out);
        sections = words.sections;
    }
    for (const auto& section : sections) { // of the packages, whatever the basis: said once
        out << "\n";
        print_section(section, "", out);
    }
    for (const auto& section : ui::rule_sections(left, right, rules, language)) {
        out << "\n";
        print_section(section, "", out);
    }
    if (prices) {
        out << "\n";
        print_section(ui::price_section(*prices, language), "", out);
    }
    out << "\n" << language.text(ui::TextId::guide_line) << "\n" << language.text(ui::TextId::welcome_caution) << "\n";
}

std::vector<core::Comparison> comparisons(const core::Label& left, const core::Label& right,
                                          const CompareArguments& asked, const core::Choices& choices)
{
    if (asked.basis)
        return {core::compare(left, right, *asked.basis, choices, asked.amount)};
    std::vector<core::Comparison> all;
    for (const auto one : core::all_bases) {
        const bool always =
            one == core::Basis::Serving || one == core::Basis::Package || one == core::Basis::SameAmount;
        const bool extra = one == core::Basis::SameMeasure || one == core::Basis::Prepared;
        if (always || (extra && core::comparable_on(one, left, right) == core::Why::Comparable))
            all.push_back(core::compare(left, right, one, choices));
    }
    return all;
}

/// Both prices, where one was given: they are of the whole package, whatever the basis.
std::optional<core::PricePair> prices_of(const core::Product& left, const core::Product& right,
                                         const CompareArguments& asked, const core::PriceChoices& choices)
{
    if (!asked.left_price && !asked.right_price)
        return std::nullopt;
    return core::price_pair(left.label, asked.left_price, right.label, asked.right_price, choices);
}

} // namespace

int compare(const CompareArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto data = data_folder();
    const auto languages = read_language_files(data);
    const auto& language = language_named(asked.language.empty() ? "en" : asked.language, languages);
    const Complaints complaints(language, err);
    const auto settings = read_settings_file(settings_place(asked.settings));
    for (const auto& sentence : settings_trouble(settings, language))
        complaints.sentence(sentence);
    if (!settings.faults.empty())
        return not_done;
    const auto place = catalog_place(asked.catalog, data);
    const auto store = open_catalog(place);
    if (!store) {
        complaints.sentence(catalog_trouble(place, store.error(), language));
        return not_done;
    }
    const auto left = product_of(asked.left, *store, complaints);
    const auto right = left ? product_of(asked.right, *store, complaints) : std::nullopt;
    if (!left || !right)
        return not_done;
    if (left->gtin == right->gtin) {
        complaints.say(ui::TextId::compare_same, {{"name", left->name}});
        return not_done;
    }
    const auto prices = prices_of(*left, *right, asked, settings.settings.prices);
    const auto all = comparisons(left->label, right->label, asked, settings.settings.choices);
    const auto& rules = asked.rules ? *asked.rules : settings.settings.rules;
    if (asked.json)
        out << comparison_json(*left, *right, all, prices, rules).dump(2) << "\n";
    else
        print_text(*left, *right, all, rules, prices, language, out);
    return done;
}

} // namespace kiosk
