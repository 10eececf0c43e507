#include "catalog/read/sheet_row.h"

#include "catalog/read/gtin_cell.h"
#include "catalog/read/harmless.h"
#include "catalog/read/number_cell.h"
#include "catalog/read/sheet_words.h"
#include "catalog/read/text.h"
#include "core/label/tell_panel.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace catalog {
namespace {

using core::Error;

class RowReader {
public:
    RowReader(const CsvRow& row, const SheetReading& sheet, Faults& faults)
        : row_(row), sheet_(sheet), faults_(faults), faults_before_(faults.count())
    {
    }

    RowRead read()
    {
        if (!has_right_length())
            return {}; // its cells may belong to other columns: what they hold says nothing
        look_ahead();
        for (std::size_t place = 0; place < row_.cells.size(); ++place)
            read_cell(place);
        check_whole();
        RowRead read{gtin_, std::move(gtin_cell_), std::nullopt};
        if (faults_.count() == faults_before_ && gtin_ && entered_on_)
            read.product = core::Product{.gtin = *gtin_,
                                         .name = std::move(name_),
                                         .brand = std::move(brand_),
                                         .aisle = std::move(aisle_),
                                         .note = std::move(note_),
                                         .label = std::move(label_),
                                         .origin = origin(),
                                         .reference_food = reference_food_,
                                         .this_place_only = this_place_only_,
                                         .category = std::move(category_)};
        return read;
    }

private:
    bool has_right_length()
    {
        const auto places = sheet_.header.columns.size();
        const bool only_blanks_behind =
            row_.cell_count == row_.cells.size() &&
            std::all_of(row_.cells.begin() + static_cast<std::ptrdiff_t>(std::min(places, row_.cells.size())),
                        row_.cells.end(), [](const std::string& cell) { return shown(cell).empty(); });
        if (row_.cell_count == places || (row_.cell_count > places && only_blanks_behind))
            return true;
        faults_.add({Error::Kind::BadRow, "cells",
                     core::Place{sheet_.source, row_.number, "", std::to_string(row_.cell_count) + " cells",
                                 std::to_string(places) + " cells, as many as the header has"}});
        return false;
    }

    /// What decides how other cells are read, wherever it stands.
    void look_ahead()
    {
        for (std::size_t place = 0; place < row_.cells.size() && place < sheet_.header.columns.size(); ++place) {
            const auto* const column = sheet_.header.columns[place];
            if (column == nullptr || (column->field != Field::ThisPlaceOnly && column->field != Field::SourceKind))
                continue;
            const auto small = in_small_letters(shown(row_.cells[place]));
            if (column->field == Field::SourceKind)
                exported_ = !small.empty();
            else if (const auto* const word = sheet_word(sheet_yes, small))
                this_place_only_ = word->value;
        }
    }

    /// An export's texts are as long as they are; whoever types one keeps to what a screen can show.
    [[nodiscard]] std::size_t longest(const SheetColumn& column) const
    {
        constexpr std::size_t longest_of_export = 100'000;
        return exported_ ? longest_of_export : column.longest;
    }

    /// Where the entry is from: this row, or what an exported sheet says.
    [[nodiscard]] core::Origin origin() const
    {
        if (source_.empty())
            return {sheet_.file_name, row_.number, *entered_on_, source_kind_};
        return {source_, source_row_, *entered_on_, source_kind_};
    }

    void read_cell(std::size_t place)
    {
        auto cell = tidy(row_.cells[place]);
        if (cell)
            cell = as_meant(*cell);
        const auto* column = place < sheet_.header.columns.size() ? sheet_.header.columns[place] : nullptr;
        if (column == nullptr) {
            if (!cell || !cell->empty())
                nameless(place);
            return;
        }
        if (!cell) {
            fault(Error::Kind::BadEncoding, *column, shown(row_.cells[place]),
                  "letters and signs that can be shown: save the sheet as CSV in UTF-8");
            return;
        }
        if (cell->empty() && !row_.marks.contains(place)) {
            if (column->required)
                fault(Error::Kind::MissingValue, *column, "", column->expected);
            return;
        }
        if (const auto letters = letters_in(*cell); letters > longest(*column)) {
            fault(Error::Kind::TooLarge, *column, *cell,
                  "at most " + std::to_string(longest(*column)) + " letters, not " + std::to_string(letters));
            return;
        }
        serving_said_ = serving_said_ || column->field == Field::Household || column->field == Field::ServingSize;
        if (const auto mark = row_.marks.find(place);
            mark != row_.marks.end() && is_marked_wrong(*column, mark->second))
            return fault(Error::Kind::BadValue, *column, *cell, wrong_mark(mark->second));
        take(*column, *cell);
    }

    /// A spreadsheet makes a day of "1/2" or "May 5", so that what was typed is lost.
    static bool is_marked_wrong(const SheetColumn& column, CellMark mark)
    {
        return mark == CellMark::Broken || column.field != Field::EnteredOn;
    }
    static std::string wrong_mark(CellMark mark)
    {
        return mark == CellMark::Broken
                   ? "a value; the formula in this cell gives none, or its result was not saved with it"
                   : "no day or time; the spreadsheet has made one of what was typed: set the column to Text, then "
                     "enter it again";
    }

    /// A cell under no name would be lost without a word. (Unknown names are told by the header.)
    void nameless(std::size_t place)
    {
        if (place >= sheet_.header.names.size() || !sheet_.header.names[place].empty())
            return;
        faults_.add({Error::Kind::BadValue, "nameless",
                     core::Place{sheet_.source, row_.number, column_by_place(place), shown(row_.cells[place]),
                                 "no text here, since the header has no name above it"}});
    }

    void take(const SheetColumn& column, const std::string& cell)
    {
        switch (column.field) {
        case Field::Gtin:
            gtin_cell_ = cell;
            return keep(column, cell, this_place_only_ ? read_own_number(cell) : read_gtin(cell), gtin_);
        case Field::Name:
            return keep_text(cell, name_);
        case Field::Brand:
            return keep_text(cell, brand_);
        case Field::Aisle:
            return keep_text(cell, aisle_);
        case Field::Note:
            return keep_text(cell, note_);
        case Field::EnteredOn:
            return keep(column, cell, core::Date::parse(cell), entered_on_);
        case Field::Panel:
            panel_said_ = true;
            return keep_word(column, cell, sheet_panels, label_.panel);
        case Field::Audience:
            return keep_word(column, cell, sheet_audiences, label_.audience);
        case Field::Household:
            return keep_text(cell, label_.serving.household);
        case Field::ServingSize:
            return in_small_letters(cell) == not_printed
                       ? void()
                       : keep_number(column, cell, core::parse_measure, label_.serving.metric);
        case Field::Servings:
            return keep_number(column, cell, core::parse_servings, label_.servings);
        case Field::NetQuantity:
            label_.net_quantity = core::parse_net_quantity(cell);
            return;
        case Field::NotSignificant:
            return take_nutrients(column, cell, label_.per_serving.not_significant);
        case Field::SecondNotSignificant:
            second_figures_ = true;
            return take_nutrients(column, cell, second_.not_significant);
        case Field::WorkedBack:
            return take_nutrients(column, cell, worked_back_);
        case Field::SecondWorkedBack:
            return take_nutrients(column, cell, second_worked_back_);
        case Field::SecondColumn:
            return take_second_kind(column, cell);
        case Field::ThisPlaceOnly:
            return keep_word(column, cell, sheet_yes, this_place_only_);
        case Field::Category:
            return keep_text(cell, category_);
        case Field::SourceKind:
            return keep_word(column, cell, sheet_source_kinds, source_kind_);
        case Field::Source:
            return keep_text(cell, source_);
        case Field::SourceRow:
            return take_source_row(column, cell);
        case Field::Ingredients:
        case Field::Contains:
            return keep_text(in_small_letters(cell) == "none" ? "" : cell,
                             column.field == Field::Contains ? label_.contains : label_.ingredients);
        case Field::ReferenceFood:
            return take_reference_food(column, cell);
        case Field::Amount:
        case Field::Percent:
            return take_figure(column, cell);
        }
    }

    void take_second_kind(const SheetColumn& column, const std::string& cell)
    {
        second_cell_ = cell;
        if (const auto* const word = sheet_word(sheet_empty_seconds, in_small_letters(cell))) {
            second_figures_ = true;
            second_kind_ = word->value;
            return;
        }
        keep_word(column, cell, sheet_seconds, second_kind_);
    }

    void take_source_row(const SheetColumn& column, const std::string& cell)
    {
        const auto* const end = cell.data() + cell.size();
        const auto read = std::from_chars(cell.data(), end, source_row_);
        if (read.ec != std::errc() || read.ptr != end)
            fault(Error::Kind::BadValue, column, cell, column.expected);
        source_row_said_ = true;
    }

    void take_nutrients(const SheetColumn& column, std::string_view cell, std::set<core::Nutrient>& kept)
    {
        while (!cell.empty()) {
            const auto end = cell.find(';');
            const auto key = in_small_letters(shown(cell.substr(0, end)));
            cell.remove_prefix(end == std::string_view::npos ? cell.size() : end + 1);
            if (key.empty())
                continue;
            if (const auto nutrient = core::nutrient_by_key(key)) {
                kept.insert(*nutrient);
                continue;
            }
            const auto nearest = nearest_nutrient(key);
            fault(Error::Kind::BadValue, column, key, nearest.empty() ? column.expected : nearest);
        }
    }

    void take_reference_food(const SheetColumn& column, const std::string& cell)
    {
        reference_food_ = core::reference_amount(in_small_letters(cell));
        if (reference_food_)
            return;
        const auto nearest = nearest_reference_food(cell);
        fault(Error::Kind::BadValue, column, cell, nearest.empty() ? column.expected : nearest);
    }

    void take_figure(const SheetColumn& column, const std::string& cell)
    {
        const auto nutrient = *column.nutrient;
        const auto small = in_small_letters(cell);
        if (small == not_printed)
            return;
        second_figures_ = second_figures_ || column.second;
        auto& line = (column.second ? second_ : label_.per_serving).lines[nutrient];
        const auto parse = [nutrient](std::string_view text) { return core::parse_figure(nutrient, text); };
        if (column.field == Field::Percent)
            keep_number(column, cell, core::parse_percent, line.percent);
        else if (small != no_figure)
            keep_number(column, cell, parse, line.amount);
    }

    /// What only all cells together can show.
    void check_whole()
    {
        const bool metric = sheet_.header.has(Field::ServingSize);
        if (!serving_said_ && (metric || sheet_.header.has(Field::Household))) {
            const auto& column = *sheet_column(metric ? "serving_size" : "serving_household");
            fault(Error::Kind::MissingValue, column, "", column.expected);
        }
        mark_worked_back("worked_back", worked_back_, label_.per_serving);
        mark_worked_back("second_worked_back", second_worked_back_, second_);
        if (source_.empty() == source_row_said_) {
            const auto& half = *sheet_column(source_.empty() ? "source" : "source_row");
            fault(Error::Kind::MissingValue, half, "", half.expected);
        }
        const auto& second = *sheet_column("second_column");
        if (second_figures_ && second_cell_.empty())
            fault(Error::Kind::MissingValue, second, "",
                  second.expected + ", since the row has figures of a second column");
        if (second_kind_ && !second_figures_)
            fault(Error::Kind::BadValue, second, second_cell_,
                  "figures in second_calories or another column of that kind, or nothing here");
        if (second_kind_ && second_figures_)
            label_.second = core::SecondColumn{*second_kind_, std::move(second_)};
        if (!panel_said_)
            label_.panel = core::tell_panel(label_).panel;
    }

    void mark_worked_back(std::string_view name, const std::set<core::Nutrient>& nutrients, core::Column& figures)
    {
        for (const auto nutrient : nutrients) {
            const auto line = figures.lines.find(nutrient);
            if (line != figures.lines.end())
                line->second.worked_back = true;
            else
                fault(Error::Kind::BadValue, *sheet_column(name), std::string(core::info(nutrient).key),
                      sheet_column(name)->expected);
        }
    }

    /// Keeps what was read, or tells what was expected.
    template<class Value, class Kept>
    void keep(const SheetColumn& column, const std::string& cell, core::Result<Value> read, Kept& kept)
    {
        if (read)
            kept = *std::move(read);
        else
            fault(read.error().kind, column, cell,
                  read.error().place.expected.empty() ? column.expected : read.error().place.expected);
    }

    template<class Kept>
    void keep_text(const std::string& cell, Kept& kept)
    {
        kept = cell;
    }

    template<class Words, class Kept>
    void keep_word(const SheetColumn& column, const std::string& cell, const Words& words, Kept& kept)
    {
        if (const auto* const word = sheet_word(words, in_small_letters(cell))) {
            kept = word->value;
            return;
        }
        fault(Error::Kind::BadValue, column, cell, column.expected);
    }

    /// The same for a cell with a number in it.
    template<class Parse, class Kept>
    void keep_number(const SheetColumn& column, const std::string& cell, Parse parse, Kept& kept)
    {
        const auto number = with_decimal_points(cell, sheet_.comma_is_decimal);
        if (!number)
            return fault(number.error().kind, column, cell, number.error().place.expected);
        keep(column, cell, parse(*number), kept);
    }

    void fault(Error::Kind kind, const SheetColumn& column, std::string found, std::string expected)
    {
        faults_.add({kind, "cell",
                     core::Place{sheet_.source, row_.number, column.name, std::move(found), std::move(expected)}});
    }

    const CsvRow& row_;
    const SheetReading& sheet_;
    Faults& faults_;
    std::size_t faults_before_;
    std::optional<core::Gtin> gtin_;
    std::optional<core::Date> entered_on_;
    std::string gtin_cell_;
    std::string second_cell_; ///< of second_column; empty: nothing stands in it
    std::string name_, brand_, aisle_, note_, category_, source_;
    std::size_t source_row_ = 0;
    core::Origin::Kind source_kind_ = core::Origin::Kind::Sheet;
    bool this_place_only_ = false;
    bool exported_ = false;
    bool source_row_said_ = false;
    std::set<core::Nutrient> worked_back_, second_worked_back_;
    core::Label label_;
    const core::ReferenceAmount* reference_food_ = nullptr;
    core::Column second_;
    std::optional<core::SecondColumn::Kind> second_kind_;
    bool panel_said_ = false;
    bool serving_said_ = false;
    bool second_figures_ = false;
};

} // namespace

bool is_empty(const CsvRow& row)
{
    return row.marks.empty() &&
           std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) { return shown(cell).empty(); });
}

RowRead read_row(const CsvRow& row, const SheetReading& sheet, Faults& faults)
{
    return RowReader(row, sheet, faults).read();
}

} // namespace catalog
