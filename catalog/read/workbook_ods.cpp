#include "catalog/read/workbook_ods.h"

#include "catalog/read/cell_value.h"
#include "catalog/read/workbook_row.h"
#include "catalog/read/xml.h"

#include <algorithm>
#include <charconv>
#include <limits>

namespace catalog {
namespace {

using core::Error;

/// "number-columns-repeated" and the like: at least 1.
std::size_t repeated(std::string_view attribute, std::size_t most)
{
    std::size_t count = 1;
    if (std::from_chars(attribute.data(), attribute.data() + attribute.size(), count).ec ==
        std::errc::result_out_of_range)
        return most;
    return std::clamp<std::size_t>(count, 1, most);
}

/// A cell while its parts come.
struct Cell {
    std::string type;  ///< "float", "string", ...
    std::string value; ///< of the attribute that its type has
    std::string text;  ///< what the spreadsheet shows
    bool has_text = false;
    bool formula = false;
    bool error = false;
    bool covered = false; ///< behind a merged cell
    std::size_t times = 1;

    void begin(const XmlAttributes& attributes, bool is_covered)
    {
        type = attributes["office:value-type"];
        for (const auto* name :
             {"office:value", "office:date-value", "office:time-value", "office:boolean-value", "office:string-value"})
            if (const auto found = attributes[name]; !found.empty()) {
                value = found;
                break;
            }
        text.clear();
        if (type.empty())
            value.clear();
        has_text = false;
        formula = !attributes["table:formula"].empty();
        error = attributes["calcext:value-type"] == "error";
        covered = is_covered;
        times = repeated(attributes["table:number-columns-repeated"], last_column);
    }

    [[nodiscard]] std::optional<CellMark> mark() const
    {
        if (error || (formula && type.empty()))
            return CellMark::Broken;
        if (type == "date" || type == "time")
            return CellMark::Day;
        return std::nullopt;
    }

    /// As the spreadsheet shows it.
    [[nodiscard]] std::string shown() const
    {
        if (covered)
            return {};
        if (type == "date")
            return value.substr(0, 10); // "2026-11-25T00:00:00"
        if (type == "boolean")
            return value == "true" ? "TRUE" : "FALSE";
        const auto number =
            type == "float" || type == "percentage" || type == "currency" ? parse_number(value) : std::nullopt;
        if (!number)
            return has_text ? text : value;
        if (type == "percentage")
            return percent_text(*number);
        auto digits = number_text(*number);
        const bool only_zeros_more = text.size() > digits.size() && text.ends_with(digits) &&
                                     text.find_first_not_of('0') == text.size() - digits.size();
        return only_zeros_more && digits.find_first_not_of("0123456789") == std::string::npos ? text : digits;
    }
};

/// Reads all tables of a document, or one of them.
class TableReader final : public XmlHandler {
public:
    /// Calls `take` with the number of the table (from 0) and a row; false: no more rows of this table.
    using Take = std::function<bool(std::size_t table, const CsvRow& row)>;
    TableReader(const Take& take, std::size_t last_table) : take_(take), last_table_(last_table) {}

    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }
    [[nodiscard]] bool enough() const override { return done_; }

    void open(std::string_view name, const XmlAttributes& attributes) override
    {
        ++depth_;
        if (cell_depth_ > 0)
            open_in_cell(name, attributes);
        else if (name == "table:table")
            begin_table(attributes);
        else if (name == "table:table-row")
            begin_row(attributes);
        else if (row_depth_ > 0 && (name == "table:table-cell" || name == "table:covered-table-cell"))
            begin_cell(attributes, name != "table:table-cell");
    }

    void close(std::string_view name) override
    {
        if (depth_ == cell_depth_)
            end_cell();
        else if (depth_ == paragraph_depth_)
            paragraph_depth_ = 0;
        else if (depth_ == row_depth_)
            end_row();
        else if (depth_ == table_depth_ && name == "table:table")
            end_table();
        --depth_;
    }

    void text(std::string_view letters) override
    {
        if (paragraph_depth_ > 0 && cell_.text.size() < longest_cell)
            cell_.text.append(letters.substr(0, longest_cell));
    }

private:
    /// A table in a cell of another is no sheet; what stands in notes and pictures is no paragraph of the cell's own.
    void open_in_cell(std::string_view name, const XmlAttributes& attributes)
    {
        if (depth_ == cell_depth_ + 1 && name == "text:p") {
            if (cell_.has_text)
                cell_.text += '\n';
            cell_.has_text = true;
            paragraph_depth_ = depth_;
        } else if (paragraph_depth_ > 0 && name == "text:s") {
            cell_.text.append(repeated(attributes["text:c"], 100), ' ');
        } else if (paragraph_depth_ > 0 && (name == "text:tab" || name == "text:line-break")) {
            cell_.text += '\n';
        }
    }

    void begin_table(const XmlAttributes& attributes)
    {
        if (table_depth_ > 0)
            return;
        table_depth_ = depth_;
        ++tables_;
        if (names_.size() < Workbook::most_tabs)
            names_.emplace_back(attributes["table:name"]);
        taking_ = true;
        next_row_ = 1;
    }

    void begin_row(const XmlAttributes& attributes)
    {
        if (table_depth_ == 0 || row_depth_ > 0)
            return;
        row_depth_ = depth_;
        row_.clear();
        next_place_ = 0;
        row_times_ = repeated(attributes["table:number-rows-repeated"], last_row);
    }

    void begin_cell(const XmlAttributes& attributes, bool covered)
    {
        cell_depth_ = depth_;
        cell_.begin(attributes, covered);
    }

    void end_cell()
    {
        const auto text = cell_.shown();
        const auto mark = cell_.covered ? std::nullopt : cell_.mark();
        const auto times = std::min(cell_.times, last_column - std::min(last_column, next_place_));
        if (!text.empty() || mark) {
            for (std::size_t i = 0; i < std::min(times, most_cells); ++i)
                row_.put(next_place_ + i, text, mark);
            if (times > most_cells)
                row_.put(next_place_ + times - 1, text, mark);
        }
        next_place_ += times;
        cell_depth_ = 0;
    }

    void end_row()
    {
        row_depth_ = 0;
        if (row_.filled())
            for (std::size_t i = 0; i < row_times_ && taking_ && next_row_ + i <= last_row; ++i)
                taking_ = take_(tables_ - 1, row_.as(next_row_ + i));
        next_row_ += row_times_;
        done_ = !taking_ && tables_ > last_table_;
    }

    void end_table()
    {
        table_depth_ = 0;
        done_ = tables_ > last_table_;
    }

    const Take& take_;
    std::size_t last_table_;
    std::vector<std::string> names_;
    std::size_t tables_ = 0;
    WorkbookRow row_;
    Cell cell_;
    std::size_t next_row_ = 1;
    std::size_t next_place_ = 0;
    std::size_t row_times_ = 1;
    bool taking_ = false;
    bool done_ = false;
    int depth_ = 0;
    int table_depth_ = 0;
    int row_depth_ = 0;
    int cell_depth_ = 0;
    int paragraph_depth_ = 0;
};

/// Whether any part of the document is locked. Source: OpenDocument 1.3 part 2, section 3.4.
class LockFinder final : public XmlHandler {
public:
    void open(std::string_view name, const XmlAttributes&) override
    {
        locked = locked || name == "manifest:encryption-data";
    }
    void close(std::string_view) override {}
    bool locked = false;
};

class Ods final : public Workbook {
public:
    Ods(ZipFile zip, std::string source) : zip_(std::move(zip)), source_(std::move(source)) {}

    core::Result<std::vector<WorkbookSheet>> sheets() override
    {
        std::vector<CsvRow> first(most_tabs);
        const TableReader::Take take_first = [&](std::size_t table, const CsvRow& row) {
            first[table] = row;
            return false;
        };
        TableReader reader(take_first, most_tabs - 1);
        if (const auto read = read_content(reader); !read)
            return tl::make_unexpected(read.error());
        std::vector<WorkbookSheet> all;
        for (std::size_t i = 0; i < reader.names().size(); ++i)
            all.push_back({reader.names()[i], std::move(first[i])});
        return all;
    }

    core::Result<void> for_each_row(std::size_t sheet, const TakeRow& take) override
    {
        const TableReader::Take take_of_one = [&](std::size_t table, const CsvRow& row) {
            return table == sheet && take(row);
        };
        TableReader reader(take_of_one,
                           std::numeric_limits<std::size_t>::max()); // to the end: only there is the file checked
        return read_content(reader);
    }

    core::Result<bool> locked() const
    {
        LockFinder finder;
        if (const auto* const manifest = zip_.member("META-INF/manifest.xml"))
            if (const auto read = read_member(*manifest, finder); !read)
                return tl::make_unexpected(read.error());
        return finder.locked;
    }

private:
    core::Result<void> read_member(const ZipMember& member, XmlHandler& handler) const
    {
        auto opened = zip_.read(member);
        if (!opened)
            return tl::make_unexpected(opened.error());
        return read_xml(*opened, source_, handler);
    }
    core::Result<void> read_content(XmlHandler& handler) const
    {
        return read_member(*zip_.member("content.xml"), handler);
    }

    ZipFile zip_;
    std::string source_;
};

} // namespace

core::Result<std::unique_ptr<Workbook>> open_ods(ZipFile zip, const std::string& source)
{
    auto ods = std::make_unique<Ods>(std::move(zip), source);
    const auto locked = ods->locked();
    if (!locked)
        return tl::make_unexpected(locked.error());
    if (*locked)
        return core::refuse(Error::Kind::BadEncoding, "locked",
                            core::Place{source, 0, "", "a workbook locked with a password",
                                        "one without: save it again without a password"});
    return ods;
}

} // namespace catalog
