#include "kiosk/command/compare.h"

#include "core/compare/comparison.h"
#include "kiosk/command/columns.h"
#include "kiosk/command/json_out.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "kiosk/session/scanning.h"
#include "ui/words/pair_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace kiosk {
namespace {

constexpr int done = 0;
constexpr int not_done = 2;

/// The product with this code, or nothing and one sentence why.
std::optional<core::Product> product_of(const std::string& code, const catalog::Store& store, std::ostream& err)
{
    using Answer = Scanned::Answer;
    const auto scanned = look_up(Scan{code, core::Symbology::Unknown, Scan::From::Finger, {}},
                                 [&](const core::Gtin& gtin) { return store.find(gtin); });
    const std::string shown = code.substr(0, 40);
    switch (scanned.answer) {
    case Answer::Found:
        if (scanned.products.size() == 1)
            return scanned.products.front();
        err << "compare: " << shown << " fits two products (as EAN-8 and as UPC-E): give "
            << scanned.products[0].gtin.digits() << " for " << scanned.products[0].name << " or "
            << scanned.products[1].gtin.digits() << " for " << scanned.products[1].name << ".\n";
        break;
    case Answer::Unknown:
        err << "compare: the catalog has no label for " << shown << ": look it up on the package, or load a sheet "
            << "that has it with pairstand load.\n";
        break;
    case Answer::Case:
        err << "compare: " << shown << " is the number of a case: give the number on the package inside it.\n";
        break;
    case Answer::NoProduct:
        err << "compare: " << shown << " is a number that names no product (a store's own, a coupon or not assigned): "
            << "give the number under the bars of the package.\n";
        break;
    case Answer::Unreadable:
        err << "compare: " << shown << " is no product code: give 8, 12, 13 or 14 digits with their check digit.\n";
        break;
    }
    return std::nullopt;
}

void print_side(const ui::SideWords& side, const core::Product& product, std::ostream& out)
{
    out << side.place << ": " << side.name;
    if (!side.brand.empty())
        out << " (" << side.brand << ")";
    out << ", " << product.gtin.digits() << "\n  " << side.servings;
    if (!side.net.empty())
        out << "\n  " << side.net;
    out << "\n";
}

ui::TextId heading_of(const ui::RowWords& row)
{
    if (row.nutrient == core::Nutrient::Calories)
        return ui::TextId::heading_calories;
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

void print_text(const core::Product& left, const core::Product& right, const std::vector<core::Comparison>& all,
                const ui::Language& language, std::ostream& out)
{
    bool first = true;
    for (const auto& comparison : all) {
        const auto words = ui::pair_words(comparison, left, right, language);
        if (first) {
            print_side(words.sides[0], left, out);
            print_side(words.sides[1], right, out);
        }
        first = false;
        out << "\n" << words.bases[static_cast<std::size_t>(comparison.basis)] << "\n";
        for (const auto& sentence : words.first)
            out << "  " << sentence << "\n";
        print_rows(words, language, out);
    }
    out << "\n" << language.text(ui::TextId::guide_line) << "\n" << language.text(ui::TextId::welcome_caution) << "\n";
}

std::vector<core::Comparison> comparisons(const core::Label& left, const core::Label& right,
                                          std::optional<core::Basis> basis)
{
    std::vector<core::Comparison> all;
    for (const auto one : {core::Basis::Serving, core::Basis::Package, core::Basis::SameAmount})
        if (!basis || *basis == one)
            all.push_back(core::compare(left, right, one));
    return all;
}

} // namespace

int compare(const CompareArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto data = data_folder();
    const auto languages = read_languages(data);
    const std::string code = asked.language.empty() ? "en" : asked.language;
    const auto language =
        std::find_if(languages.begin(), languages.end(), [&](const auto& one) { return one.code() == code; });
    if (language == languages.end()) {
        err << "compare: there is no language file for \"" << code << "\": see --help for those that are there.\n";
        return not_done;
    }
    const auto place = catalog_place(asked.catalog, data);
    const auto store = open_catalog(place);
    if (!store) {
        err << "compare: " << catalog_trouble(place, store.error()) << "\n";
        return not_done;
    }
    const auto left = product_of(asked.left, *store, err);
    const auto right = left ? product_of(asked.right, *store, err) : std::nullopt;
    if (!left || !right)
        return not_done;
    if (left->gtin == right->gtin) {
        err << "compare: both codes are " << left->name << ": give two different products.\n";
        return not_done;
    }
    const auto all = comparisons(left->label, right->label, asked.basis);
    if (asked.json)
        out << comparison_json(*left, *right, all).dump(2) << "\n";
    else
        print_text(*left, *right, all, *language, out);
    return done;
}

} // namespace kiosk
