#include "catalog/read/sheet_header.h"

#include "catalog/read/text.h"

#include <algorithm>
#include <map>

namespace catalog {
namespace {

using core::Error;

std::string column_name(std::string_view cell)
{
    return in_small_letters(shown(cell));
}

class HeaderReader {
public:
    HeaderReader(const CsvRow& row, const std::string& source, Faults& faults)
        : row_(row), source_(source), faults_(faults)
    {
    }

    SheetHeader read()
    {
        for (const auto& cell : row_.cells)
            take(column_name(cell));
        if (row_.cell_count > row_.cells.size())
            fault(Error::Kind::TooLarge, "", std::to_string(row_.cell_count) + " columns",
                  "at most " + std::to_string(most_cells));
        miss_columns();
        return std::move(header_);
    }

private:
    void take(const std::string& name)
    {
        const auto* column = name.empty() ? nullptr : sheet_column(name);
        if (!name.empty() && column == nullptr)
            unknown(name);
        if (column != nullptr) {
            const auto [first, is_new] = first_places_.emplace(column, header_.columns.size());
            if (!is_new)
                fault(Error::Kind::DoubledValue, name, name,
                      "each column once; this one is already column " + column_by_place(first->second));
        }
        header_.columns.push_back(column);
        header_.names.push_back(name);
    }

    void unknown(const std::string& name)
    {
        const auto nearest = nearest_column(name);
        fault(Error::Kind::UnknownColumn, name, name, nearest.empty() ? "" : nearest);
    }

    void miss_columns()
    {
        for (const auto& column : sheet_columns())
            if (column.required && !first_places_.contains(&column))
                fault(Error::Kind::MissingColumn, column.name, "", column.expected);
        if (!header_.has(Field::Household) && !header_.has(Field::ServingSize))
            fault(Error::Kind::MissingColumn, "serving_size", "",
                  sheet_column("serving_size")->expected + " (or a column serving_household)");
    }

    void fault(Error::Kind kind, std::string column, std::string found, std::string expected)
    {
        faults_.add({kind, "header",
                     core::Place{source_, row_.number, std::move(column), std::move(found), std::move(expected)}});
    }

    const CsvRow& row_;
    const std::string& source_;
    Faults& faults_;
    SheetHeader header_;
    std::map<const SheetColumn*, std::size_t> first_places_;
};

} // namespace

bool SheetHeader::has(Field field) const
{
    return std::any_of(columns.begin(), columns.end(),
                       [field](const auto* column) { return column != nullptr && column->field == field; });
}

std::size_t known_names(const CsvRow& row)
{
    return static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
        return sheet_column(column_name(cell)) != nullptr;
    }));
}

bool names_gtin(const CsvRow& row)
{
    return std::any_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
        const auto* const column = sheet_column(column_name(cell));
        return column != nullptr && column->field == Field::Gtin;
    });
}

char find_separator(std::string_view text)
{
    char best = ',';
    std::size_t most = 0;
    for (const char separator : {',', ';', '\t'}) {
        const auto known = known_names(first_row(text, separator));
        if (known > most) {
            most = known;
            best = separator;
        }
    }
    return best;
}

SheetHeader read_header(const CsvRow& row, const std::string& source, Faults& faults)
{
    return HeaderReader(row, source, faults).read();
}

std::string column_by_place(std::size_t place)
{
    std::string letters;
    for (std::size_t rest = place + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    return "number " + std::to_string(place + 1) + " (" + letters + ")";
}

} // namespace catalog
