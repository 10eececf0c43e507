#include "tests/support/reference_table.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <optional>
#include <stdexcept>
#include <utility>

namespace test {
namespace {

[[noreturn]] void wrong(const std::string& name, std::size_t row, const std::string& what)
{
    throw std::runtime_error(name + " row " + std::to_string(row) + ": " + what);
}

/// Takes records off the front of a CSV text.
class Reader {
public:
    Reader(std::string_view text, const std::string& name) : rest_(text), name_(name) {}

    /// The next record's cells; nothing at the end of the text.
    std::optional<std::vector<std::string>> record()
    {
        if (rest_.empty())
            return std::nullopt;
        ++row_;
        std::vector<std::string> cells{cell()};
        while (take(","))
            cells.push_back(cell());
        if (!take("\r\n") && !take("\n") && !rest_.empty())
            wrong(name_, row_, "a quote closes before the cell ends");
        return cells;
    }

    [[nodiscard]] std::size_t row() const { return row_; }

private:
    bool take(std::string_view what)
    {
        if (!rest_.starts_with(what))
            return false;
        rest_.remove_prefix(what.size());
        return true;
    }

    std::string cell() { return take("\"") ? quoted() : bare(); }

    std::string bare()
    {
        const auto end = std::min(rest_.find_first_of(",\r\n"), rest_.size());
        std::string text(rest_.substr(0, end));
        rest_.remove_prefix(end);
        if (text.find('"') != std::string::npos)
            wrong(name_, row_, "a quote in a bare cell");
        return text;
    }

    std::string quoted()
    {
        std::string text;
        for (;;) {
            const auto quote = rest_.find('"');
            if (quote == std::string_view::npos)
                wrong(name_, row_, "a quote that never closes");
            text.append(rest_.substr(0, quote));
            rest_.remove_prefix(quote + 1);
            if (!take("\""))
                return text;
            text += '"';
        }
    }

    std::string_view rest_;
    const std::string& name_;
    std::size_t row_ = 0;
};

std::string read_file(const std::string& name)
{
    const std::string path = std::string(PAIRSTAND_SOURCE) + "/tests/data/reference/" + name;
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error(path + ": cannot be read");
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

ReferenceRow::ReferenceRow(std::shared_ptr<const Columns> columns, std::vector<std::string> cells, std::string place)
    : columns_(std::move(columns)), cells_(std::move(cells)), place_(std::move(place))
{
}

const std::string& ReferenceRow::operator[](std::string_view column) const
{
    const auto found = columns_->find(column);
    if (found == columns_->end())
        throw std::runtime_error(place_ + ": no column " + std::string(column));
    return cells_[found->second];
}

std::string ReferenceRow::place() const
{
    return place_ + " (source: " + (*this)["source"] + ")";
}

std::vector<ReferenceRow> parse_reference(std::string_view csv, const std::string& name)
{
    Reader reader(csv, name);
    const auto header = reader.record();
    if (!header)
        wrong(name, 1, "no header");
    auto columns = std::make_shared<ReferenceRow::Columns>();
    for (std::size_t i = 0; i < header->size(); ++i)
        if (!columns->emplace((*header)[i], i).second)
            wrong(name, 1, "column " + (*header)[i] + " stands twice");
    std::vector<ReferenceRow> rows;
    while (auto cells = reader.record()) {
        if (cells->size() != header->size())
            wrong(name, reader.row(), std::to_string(cells->size()) + " cells");
        rows.emplace_back(columns, std::move(*cells), name + " row " + std::to_string(reader.row()));
    }
    if (rows.empty())
        wrong(name, 2, "no rows");
    return rows;
}

std::vector<ReferenceRow> reference_rows(const std::string& name)
{
    auto rows = parse_reference(read_file(name), name);
    for (const auto& row : rows)
        if (row["source"].empty() || row["checked"].empty())
            throw std::runtime_error(row.place() + ": names no source, or not how it was checked");
    return rows;
}

std::vector<ReferenceRow> reference_rows(const std::string& name, std::string_view column, std::string_view value)
{
    auto rows = reference_rows(name);
    std::erase_if(rows, [&](const ReferenceRow& row) { return row[column] != value; });
    if (rows.empty())
        throw std::runtime_error(name + ": no row whose " + std::string(column) + " is " + std::string(value));
    return rows;
}

} // namespace test
