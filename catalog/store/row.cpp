#include "catalog/store/row.h"

#include "catalog/store/schema.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <array>
#include <charconv>
#include <stdexcept>

namespace catalog {
namespace {

constexpr std::array columns = {
    "gtin",
    "name",
    "brand",
    "aisle",
    "note",
    "panel",
    "audience",
    "household",
    "serving_nano",
    "serving_unit",
    "servings",
    "servings_nano",
    "figures",
    "not_significant",
    "second_kind",
    "second_figures",
    "second_not_significant",
    "ingredients",
    "contains_statement",
    "net_printed",
    "net_nano",
    "net_unit",
    "source",
    "source_row",
    "entered_on",
    "reference_food",
};

/// The columns that a later version of the tables brought, with that version.
struct LaterColumn {
    std::string_view name;
    int since;
};
constexpr LaterColumn later_columns[] = {{"reference_food", 2}};

[[noreturn]] void broken(std::string_view what, std::string_view found)
{
    throw std::runtime_error("catalog: a row holds no " + std::string(what) + ": " + std::string(found));
}

/// A value and its word on the disk; the words outlive every change of the enumeration.
template<class Value>
struct Word {
    Value value;
    std::string_view text;
};

constexpr Word<core::Panel> panels[] = {{core::Panel::Of2016, "2016"}, {core::Panel::Older, "older"}};
constexpr Word<core::Audience> audiences[] = {
    {core::Audience::Adult, "adult"}, {core::Audience::Ages1To3, "ages_1_3"}, {core::Audience::Infant, "infant"}};
using Servings = core::ServingsPerContainer::Kind;
constexpr Word<Servings> servings_kinds[] = {{Servings::NotPrinted, "not_printed"},
                                             {Servings::Number, "number"},
                                             {Servings::About, "about"},
                                             {Servings::Varied, "varied"},
                                             {Servings::Single, "single"}};
using Second = core::SecondColumn::Kind;
constexpr Word<Second> second_kinds[] = {{Second::AsPrepared, "as_prepared"}, {Second::PerContainer, "per_container"}};

template<class Words, class Value>
std::string word_of(const Words& words, Value value)
{
    for (const auto& word : words)
        if (word.value == value)
            return std::string(word.text);
    broken("word for a value", std::to_string(static_cast<int>(value)));
}

template<class Words>
auto value_of(const Words& words, const std::string& text)
{
    for (const auto& word : words)
        if (word.text == text)
            return word.value;
    broken("known word", text);
}

/// Calls `take` with every part of a text between the signs.
template<class Take>
void for_each_part(std::string_view text, char sign, Take take)
{
    while (!text.empty()) {
        const auto end = text.find(sign);
        take(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
}

core::Nutrient nutrient_of(std::string_view key)
{
    const auto nutrient = core::nutrient_by_key(key);
    if (!nutrient)
        broken("known nutrient", key);
    return *nutrient;
}

template<class Number>
Number number_of(std::string_view text)
{
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size())
        broken("number", text);
    return number;
}

bool take_sign(std::string_view& text, char sign)
{
    if (text.empty() || text.front() != sign)
        return false;
    text.remove_prefix(1);
    return true;
}

core::Figure figure_of(std::string_view text)
{
    core::Figure figure;
    figure.less_than = take_sign(text, '<');
    const auto slash = text.find('/');
    if (slash == std::string_view::npos)
        broken("figure", text);
    figure.amount = core::Content::from_nano(number_of<std::int64_t>(text.substr(0, slash)));
    figure.decimals = number_of<int>(text.substr(slash + 1));
    return figure;
}

core::PrintedPercent percent_of(std::string_view text)
{
    core::PrintedPercent percent;
    percent.less_than = take_sign(text, '<');
    percent.percent = number_of<int>(text);
    return percent;
}

std::string keys_text(const std::set<core::Nutrient>& nutrients)
{
    std::string text;
    for (const auto nutrient : nutrients)
        text.append(text.empty() ? "" : ";").append(core::info(nutrient).key);
    return text;
}

void bind_measure(SQLite::Statement& put, int at, const std::optional<core::Measure>& measure)
{
    if (!measure)
        return; // both stay NULL
    const auto* mass = std::get_if<core::Mass>(&*measure);
    put.bind(at, mass ? mass->nano() : std::get<core::Volume>(*measure).nano());
    put.bind(at + 1, mass ? "g" : "mL");
}

std::optional<core::Measure> measure_in(SQLite::Statement& found, int at)
{
    if (found.getColumn(at).isNull())
        return std::nullopt;
    const std::int64_t nano = found.getColumn(at).getInt64();
    const std::string unit = found.getColumn(at + 1).getString();
    if (unit == "g")
        return core::Mass::from_nano(nano);
    if (unit == "mL")
        return core::Volume::from_nano(nano);
    broken("known unit", unit);
}

std::optional<std::string> text_in(SQLite::Statement& found, int at)
{
    if (found.getColumn(at).isNull())
        return std::nullopt;
    return found.getColumn(at).getString();
}

void bind_text(SQLite::Statement& put, int at, const std::optional<std::string>& text)
{
    if (text)
        put.bind(at, *text);
}

core::Column column_in(SQLite::Statement& found, int at)
{
    core::Column column;
    read_figures(found.getColumn(at).getString(), column);
    for_each_part(found.getColumn(at + 1).getString(), ';',
                  [&](std::string_view key) { column.not_significant.insert(nutrient_of(key)); });
    return column;
}

core::Label label_in(SQLite::Statement& found)
{
    core::Label label;
    label.panel = value_of(panels, found.getColumn(5).getString());
    label.audience = value_of(audiences, found.getColumn(6).getString());
    label.serving = {found.getColumn(7).getString(), measure_in(found, 8)};
    label.servings.kind = value_of(servings_kinds, found.getColumn(10).getString());
    label.servings.count = core::Count::from_nano(found.getColumn(11).getInt64());
    label.per_serving = column_in(found, 12);
    if (const auto kind = text_in(found, 14))
        label.second = core::SecondColumn{value_of(second_kinds, *kind), column_in(found, 15)};
    label.ingredients = text_in(found, 17);
    label.contains = text_in(found, 18);
    if (const auto printed = text_in(found, 19))
        label.net_quantity = core::NetQuantity{*printed, measure_in(found, 20)};
    return label;
}

void bind_label(SQLite::Statement& put, const core::Label& label)
{
    put.bind(6, word_of(panels, label.panel));
    put.bind(7, word_of(audiences, label.audience));
    put.bind(8, label.serving.household);
    bind_measure(put, 9, label.serving.metric);
    put.bind(11, word_of(servings_kinds, label.servings.kind));
    put.bind(12, label.servings.count.nano());
    put.bind(13, figures_text(label.per_serving));
    put.bind(14, keys_text(label.per_serving.not_significant));
    if (label.second) {
        put.bind(15, word_of(second_kinds, label.second->kind));
        put.bind(16, figures_text(label.second->column));
        put.bind(17, keys_text(label.second->column.not_significant));
    }
    bind_text(put, 18, label.ingredients);
    bind_text(put, 19, label.contains);
    if (label.net_quantity) {
        put.bind(20, label.net_quantity->printed);
        bind_measure(put, 21, label.net_quantity->metric);
    }
}

bool has_column(int version, std::string_view name)
{
    for (const auto& later : later_columns)
        if (later.name == name)
            return version >= later.since;
    return true;
}

std::string column_names(int version)
{
    std::string names;
    for (const auto* name : columns)
        names.append(names.empty() ? "" : ", ").append(has_column(version, name) ? name : "NULL");
    return names;
}

const core::ReferenceAmount* reference_food_in(SQLite::Statement& found, int at)
{
    const auto key = text_in(found, at);
    if (!key)
        return nullptr;
    const auto* food = core::reference_amount(*key);
    if (!food)
        broken("known reference food", *key);
    return food;
}

} // namespace

std::string put_sql()
{
    std::string places = "?";
    for (std::size_t i = 1; i < columns.size(); ++i)
        places += ", ?";
    return "INSERT OR REPLACE INTO product (" + column_names(newest_version) + ") VALUES (" + places + ")";
}

std::string find_sql(int version)
{
    return "SELECT " + column_names(version) + " FROM product WHERE gtin = ?";
}

void bind(SQLite::Statement& put, const core::Product& product)
{
    put.clearBindings(); // what is not bound below is NULL
    put.bind(1, key_of(product.gtin));
    put.bind(2, product.name);
    put.bind(3, product.brand);
    put.bind(4, product.aisle);
    put.bind(5, product.note);
    bind_label(put, product.label);
    put.bind(23, product.origin.source);
    put.bind(24, static_cast<std::int64_t>(product.origin.row));
    put.bind(25, product.origin.entered_on.text());
    if (product.reference_food)
        put.bind(26, std::string(product.reference_food->key));
}

core::Product product_in(SQLite::Statement& found)
{
    const std::string day = found.getColumn(24).getString();
    const auto entered_on = core::Date::parse(day);
    if (!entered_on)
        broken("day", day);
    return core::Product{
        .gtin = gtin_of(found.getColumn(0).getInt64()),
        .name = found.getColumn(1).getString(),
        .brand = found.getColumn(2).getString(),
        .aisle = found.getColumn(3).getString(),
        .note = found.getColumn(4).getString(),
        .label = label_in(found),
        .origin = {found.getColumn(22).getString(), static_cast<std::size_t>(found.getColumn(23).getInt64()),
                   *entered_on},
        .reference_food = reference_food_in(found, 25),
    };
}

std::int64_t key_of(const core::Gtin& gtin)
{
    return number_of<std::int64_t>(gtin.digits());
}

core::Gtin gtin_of(std::int64_t key)
{
    auto digits = std::to_string(key);
    if (key >= 0 && digits.size() < 14)
        digits.insert(0, 14 - digits.size(), '0');
    auto gtin = core::Gtin::parse(digits);
    if (!gtin)
        broken("product number", digits);
    return *std::move(gtin);
}

std::string figures_text(const core::Column& column)
{
    std::string text;
    for (const auto& [nutrient, line] : column.lines) {
        text.append(text.empty() ? "" : ";").append(core::info(nutrient).key).append("=");
        if (line.amount)
            text.append(line.amount->less_than ? "<" : "")
                .append(std::to_string(line.amount->amount.nano()))
                .append("/")
                .append(std::to_string(line.amount->decimals));
        text += ',';
        if (line.percent)
            text.append(line.percent->less_than ? "<" : "").append(std::to_string(line.percent->percent));
    }
    return text;
}

void read_figures(std::string_view text, core::Column& column)
{
    for_each_part(text, ';', [&](std::string_view part) {
        const auto equals = part.find('=');
        const auto comma = part.find(',');
        if (equals == std::string_view::npos || comma == std::string_view::npos || comma < equals)
            broken("figure", part);
        core::Line line;
        const auto amount = part.substr(equals + 1, comma - equals - 1);
        const auto percent = part.substr(comma + 1);
        if (!amount.empty())
            line.amount = figure_of(amount);
        if (!percent.empty())
            line.percent = percent_of(percent);
        column.lines.insert_or_assign(nutrient_of(part.substr(0, equals)), line);
    });
}

} // namespace catalog
