#include "catalog/store/row.h"

#include "catalog/store/figures.h"
#include "catalog/store/row_words.h"
#include "catalog/store/schema.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <array>
#include <stdexcept>

namespace catalog {
namespace {

/// The columns in the order in which they are bound and read.
enum At {
    Number,
    Name,
    Brand,
    Aisle,
    Note,
    Panel,
    Audience,
    Household,
    ServingNano,
    ServingUnit,
    Servings,
    ServingsNano,
    Figures,
    NotSignificant,
    SecondKind,
    SecondFigures,
    SecondNotSignificant,
    Ingredients,
    Contains,
    NetPrinted,
    NetNano,
    NetUnit,
    Source,
    SourceRow,
    EnteredOn,
    ReferenceFood,
    OriginKind,
    Category,
    ThisPlaceOnly,
};

struct TableColumn {
    std::string_view name;
    int since = 1; ///< the version of the tables that brought it
};

constexpr std::array table_columns = {
    TableColumn{"gtin"},
    TableColumn{"name"},
    TableColumn{"brand"},
    TableColumn{"aisle"},
    TableColumn{"note"},
    TableColumn{"panel"},
    TableColumn{"audience"},
    TableColumn{"household"},
    TableColumn{"serving_nano"},
    TableColumn{"serving_unit"},
    TableColumn{"servings"},
    TableColumn{"servings_nano"},
    TableColumn{"figures"},
    TableColumn{"not_significant"},
    TableColumn{"second_kind"},
    TableColumn{"second_figures"},
    TableColumn{"second_not_significant"},
    TableColumn{"ingredients"},
    TableColumn{"contains_statement"},
    TableColumn{"net_printed"},
    TableColumn{"net_nano"},
    TableColumn{"net_unit"},
    TableColumn{"source"},
    TableColumn{"source_row"},
    TableColumn{"entered_on"},
    TableColumn{"reference_food", 2},
    TableColumn{"origin_kind", 3},
    TableColumn{"category", 3},
    TableColumn{"this_place_only", 3},
};
static_assert(table_columns.size() == ThisPlaceOnly + 1);

[[noreturn]] void broken(std::string_view what, std::string_view found)
{
    throw std::runtime_error("catalog: a row holds no " + std::string(what) + ": " + std::string(found));
}

std::string_view bytes_of(const SQLite::Column& column)
{
    return {static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())};
}

void bind_bytes(SQLite::Statement& put, At at, const std::string& bytes)
{
    put.bind(at + 1, bytes.data(), static_cast<int>(bytes.size()));
}

void bind_text(SQLite::Statement& put, At at, const std::string& text)
{
    put.bindNoCopy(at + 1, text);
}

void bind_text(SQLite::Statement& put, At at, const std::optional<std::string>& text)
{
    if (text)
        bind_text(put, at, *text);
}

void bind_number(SQLite::Statement& put, At at, std::int64_t number)
{
    put.bind(at + 1, number);
}

std::optional<std::string> text_in(SQLite::Statement& found, At at)
{
    const auto column = found.getColumn(at);
    if (column.isNull())
        return std::nullopt;
    return column.getString();
}

/// One of a few values, written as a number; version 1 and 2 wrote a word.
template<class Words>
auto value_in(SQLite::Statement& found, At at, const Words& words)
{
    const auto column = found.getColumn(at);
    for (const auto& word : words)
        if (column.isText() ? word.text == column.getString() : word.number == column.getInt64())
            return word.value;
    broken("known word", column.getString());
}

template<class Words, class Value>
void bind_value(SQLite::Statement& put, At at, const Words& words, Value value)
{
    for (const auto& word : words)
        if (word.value == value)
            return bind_number(put, at, word.number);
    broken("word for a value", std::to_string(static_cast<int>(value)));
}

enum class MeasureUnit { Gram, Milliliter };
constexpr RowWord<MeasureUnit> measure_units[] = {{MeasureUnit::Gram, "g", 0}, {MeasureUnit::Milliliter, "mL", 1}};

void bind_measure(SQLite::Statement& put, At nano, At unit, const std::optional<core::Measure>& measure)
{
    if (!measure)
        return; // both stay NULL
    const auto* mass = std::get_if<core::Mass>(&*measure);
    bind_number(put, nano, mass ? mass->nano() : std::get<core::Volume>(*measure).nano());
    bind_value(put, unit, measure_units, mass ? MeasureUnit::Gram : MeasureUnit::Milliliter);
}

std::optional<core::Measure> measure_in(SQLite::Statement& found, At nano, At unit)
{
    const auto column = found.getColumn(nano);
    if (column.isNull())
        return std::nullopt;
    if (value_in(found, unit, measure_units) == MeasureUnit::Gram)
        return core::Mass::from_nano(column.getInt64());
    return core::Volume::from_nano(column.getInt64());
}

core::Column column_in(SQLite::Statement& found, At figures, At not_significant)
{
    core::Column column;
    if (const auto lines = found.getColumn(figures); lines.isText())
        read_figures_text(lines.getString(), column);
    else
        read_figures_bytes(bytes_of(lines), column);
    const auto stated = found.getColumn(not_significant);
    column.not_significant =
        stated.isText() ? nutrients_of_text(stated.getString()) : nutrients_of_bytes(bytes_of(stated));
    return column;
}

void bind_ingredients(SQLite::Statement& put, const std::optional<std::string>& text, RowTexts& texts)
{
    if (!text)
        return;
    if (const auto packed = texts.ingredients.packed(*text); !packed.empty())
        bind_bytes(put, Ingredients, packed);
    else
        bind_text(put, Ingredients, *text);
}

std::optional<std::string> ingredients_in(SQLite::Statement& found, RowTexts& texts)
{
    const auto column = found.getColumn(Ingredients);
    if (column.isBlob())
        return texts.ingredients.unpacked(bytes_of(column));
    return text_in(found, Ingredients);
}

core::Label label_in(SQLite::Statement& found, RowTexts& texts)
{
    core::Label label;
    label.panel = value_in(found, Panel, panel_words);
    label.audience = value_in(found, Audience, audience_words);
    label.serving = {found.getColumn(Household).getString(), measure_in(found, ServingNano, ServingUnit)};
    label.servings.kind = value_in(found, Servings, servings_words);
    label.servings.count = core::Count::from_nano(found.getColumn(ServingsNano).getInt64());
    label.per_serving = column_in(found, Figures, NotSignificant);
    if (!found.getColumn(SecondKind).isNull())
        label.second = core::SecondColumn{value_in(found, SecondKind, second_words),
                                          column_in(found, SecondFigures, SecondNotSignificant)};
    label.ingredients = ingredients_in(found, texts);
    label.contains = text_in(found, Contains);
    if (auto printed = text_in(found, NetPrinted))
        label.net_quantity = core::NetQuantity{*std::move(printed), measure_in(found, NetNano, NetUnit)};
    return label;
}

void bind_label(SQLite::Statement& put, const core::Label& label, RowTexts& texts)
{
    bind_value(put, Panel, panel_words, label.panel);
    bind_value(put, Audience, audience_words, label.audience);
    bind_text(put, Household, label.serving.household);
    bind_measure(put, ServingNano, ServingUnit, label.serving.metric);
    bind_value(put, Servings, servings_words, label.servings.kind);
    bind_number(put, ServingsNano, label.servings.count.nano());
    bind_bytes(put, Figures, figures_bytes(label.per_serving));
    bind_bytes(put, NotSignificant, nutrients_bytes(label.per_serving.not_significant));
    if (label.second) {
        bind_value(put, SecondKind, second_words, label.second->kind);
        bind_bytes(put, SecondFigures, figures_bytes(label.second->column));
        bind_bytes(put, SecondNotSignificant, nutrients_bytes(label.second->column.not_significant));
    }
    bind_ingredients(put, label.ingredients, texts);
    bind_text(put, Contains, label.contains);
    if (label.net_quantity) {
        bind_text(put, NetPrinted, label.net_quantity->printed);
        bind_measure(put, NetNano, NetUnit, label.net_quantity->metric);
    }
}

std::string column_names(int version)
{
    std::string names;
    for (const auto& column : table_columns)
        names.append(names.empty() ? "" : ", ").append(version >= column.since ? column.name : "NULL");
    return names;
}

const core::ReferenceAmount* reference_food_in(SQLite::Statement& found)
{
    const auto key = text_in(found, ReferenceFood);
    if (!key)
        return nullptr;
    const auto* food = core::reference_amount(*key);
    if (!food)
        broken("known reference food", *key);
    return food;
}

core::Date date_in(SQLite::Statement& found)
{
    const auto column = found.getColumn(EnteredOn);
    const auto date = column.isText() ? core::Date::parse(column.getString()) : core::Date::of_number(column.getInt());
    if (!date)
        broken("day", column.getString());
    return *date;
}

/// A text of its own in version 1 and 2, the number of a shared one since.
std::string shared_in(SQLite::Statement& found, At at, const SharedTexts& shared)
{
    const auto column = found.getColumn(at);
    if (column.isNull())
        return {};
    return column.isText() ? column.getString() : shared.text_of(column.getInt64());
}

core::Origin origin_in(SQLite::Statement& found, const RowTexts& texts)
{
    const auto kind =
        found.getColumn(OriginKind).isNull() ? core::Origin::Kind::Sheet : value_in(found, OriginKind, origin_words);
    return {shared_in(found, Source, texts.shared), static_cast<std::size_t>(found.getColumn(SourceRow).getInt64()),
            date_in(found), kind};
}

} // namespace

std::string put_sql()
{
    std::string places = "?";
    for (std::size_t i = 1; i < table_columns.size(); ++i)
        places += ", ?";
    return "INSERT OR REPLACE INTO product (" + column_names(newest_version) + ") VALUES (" + places + ")";
}

std::string find_sql(int version)
{
    return "SELECT " + column_names(version) + " FROM product WHERE gtin = ?";
}

std::string next_sql(int version)
{
    return "SELECT " + column_names(version) + " FROM product WHERE gtin > ? ORDER BY gtin LIMIT 1";
}

std::string all_sql(int version, std::string_view table)
{
    return "SELECT " + column_names(version) + " FROM " + std::string(table) + " ORDER BY gtin";
}

void bind(SQLite::Statement& put, const core::Product& product, RowTexts& texts)
{
    put.clearBindings(); // what is not bound below is NULL
    bind_number(put, Number, key_of(product.gtin));
    bind_text(put, Name, product.name);
    bind_text(put, Brand, product.brand);
    bind_text(put, Aisle, product.aisle);
    bind_text(put, Note, product.note);
    bind_label(put, product.label, texts);
    bind_number(put, Source, texts.shared.number_of(product.origin.source));
    bind_number(put, SourceRow, static_cast<std::int64_t>(product.origin.row));
    bind_number(put, EnteredOn, product.origin.entered_on.number());
    if (product.reference_food)
        put.bind(ReferenceFood + 1, std::string(product.reference_food->key));
    bind_value(put, OriginKind, origin_words, product.origin.kind);
    if (!product.category.empty())
        bind_number(put, Category, texts.shared.number_of(product.category));
    bind_number(put, ThisPlaceOnly, product.this_place_only ? 1 : 0);
}

core::Product product_in(SQLite::Statement& found, RowTexts& texts)
{
    return core::Product{
        .gtin = gtin_of(found.getColumn(Number).getInt64()),
        .name = found.getColumn(Name).getString(),
        .brand = found.getColumn(Brand).getString(),
        .aisle = found.getColumn(Aisle).getString(),
        .note = found.getColumn(Note).getString(),
        .label = label_in(found, texts),
        .origin = origin_in(found, texts),
        .reference_food = reference_food_in(found),
        .this_place_only = found.getColumn(ThisPlaceOnly).getInt() != 0,
        .category = shared_in(found, Category, texts.shared),
    };
}

std::int64_t key_of(const core::Gtin& gtin)
{
    std::int64_t key = 0;
    for (const char digit : gtin.digits())
        key = key * 10 + (digit - '0');
    return key;
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

} // namespace catalog
