#include "catalog/read/sheet.h"

#include "catalog/read/csv.h"
#include "catalog/read/sheet_row.h"
#include "catalog/read/text.h"
#include "catalog/read/workbook.h"
#include "catalog/read/zip.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <map>
#include <memory>
#include <system_error>

namespace catalog {
namespace {

using core::Error;

Error file_fault(Error::Kind kind, const std::string& source, std::string found, std::string expected)
{
    return {kind, "file", core::Place{source, 0, "", std::move(found), std::move(expected)}};
}

/// Workbooks of before 2007 (.xls), and newer ones with a password, are OLE files.
bool is_older_workbook(std::string_view bytes)
{
    return bytes.starts_with("\xD0\xCF\x11\xE0");
}

/// Which sheet of a workbook is ours; see read_sheet.
std::size_t our_tab(const std::vector<WorkbookSheet>& tabs)
{
    const auto ours = std::find_if(tabs.begin(), tabs.end(), [](const auto& tab) { return names_gtin(tab.first); });
    if (ours != tabs.end())
        return static_cast<std::size_t>(ours - tabs.begin());
    const auto most = std::max_element(tabs.begin(), tabs.end(), [](const auto& a, const auto& b) {
        return known_names(a.first) < known_names(b.first);
    });
    return static_cast<std::size_t>(most - tabs.begin());
}

class SheetReader {
public:
    SheetReader(std::string_view bytes, const std::string& source) : source_(source)
    {
        reading_.source = source;
        reading_.file_name = std::filesystem::path(source).filename().string();
        if (!is_taken(bytes))
            return;
        if (is_zip(bytes))
            read_workbook(bytes);
        else
            read(to_utf8(bytes));
    }

    Sheet take() { return std::move(sheet_); }

private:
    bool is_taken(std::string_view bytes)
    {
        if (bytes.size() > largest_sheet)
            sheet_.faults.add(file_fault(Error::Kind::TooLarge, source_, std::to_string(bytes.size()) + " bytes",
                                         "at most " + std::to_string(largest_sheet)));
        else if (is_older_workbook(bytes))
            sheet_.faults.add(file_fault(Error::Kind::BadEncoding, source_,
                                         "a workbook of an older kind (.xls), or one with a password",
                                         "one saved as .xlsx or .ods without a password, or a CSV file"));
        return sheet_.faults.empty();
    }

    void read(const std::string& utf8)
    {
        if (utf8.find('\0') != std::string::npos) { // also UTF-16 without its mark
            sheet_.faults.add(
                file_fault(Error::Kind::BadEncoding, source_, "bytes that are no text", "a CSV file in UTF-8"));
            return;
        }
        std::string_view text = utf8;
        char separator = take_separator_line(text);
        if (separator == 0)
            separator = find_separator(text);
        reading_.comma_is_decimal = separator != ',';
        for_each_row(text, separator, [this](const CsvRow& row) { take_row(row); });
        finish();
    }

    void read_workbook(std::string_view bytes)
    {
        reading_.comma_is_decimal = true; // a comma in a cell separates nothing
        auto zip = ZipFile::of_bytes(bytes, source_, workbook_limits());
        auto workbook = zip ? Workbook::open(*std::move(zip), source_) : tl::make_unexpected(std::move(zip).error());
        const auto tabs = workbook ? (*workbook)->sheets() : tl::make_unexpected(std::move(workbook).error());
        if (!tabs || tabs->empty()) {
            sheet_.faults.add(tabs ? file_fault(Error::Kind::Empty, source_, "", "a sheet with products")
                                   : tabs.error());
            return;
        }
        const auto ours = our_tab(*tabs);
        keep_names(*tabs, ours);
        const auto read = (*workbook)->for_each_row(ours, [this](const CsvRow& row) {
            take_row(padded(row));
            return true;
        });
        if (!read) {
            sheet_.faults.add(read.error());
            header_is_bad_ = true; // torn in the middle: nobody knows what else is missing
        }
        finish();
    }

    void keep_names(const std::vector<WorkbookSheet>& tabs, std::size_t ours)
    {
        sheet_.tab = shown(tabs[ours].name);
        for (std::size_t i = ours + 1; i < tabs.size(); ++i)
            if (names_gtin(tabs[i].first))
                sheet_.other_tabs.push_back(shown(tabs[i].name));
        if (tabs.size() > 1)
            source_ += ", sheet \"" + sheet_.tab + "\"";
        reading_.source = source_;
    }

    /// A workbook has no empty cells at the end of a row.
    [[nodiscard]] CsvRow padded(CsvRow row) const
    {
        if (header_read_ && row.cells.size() < reading_.header.columns.size()) {
            row.cells.resize(reading_.header.columns.size());
            row.cell_count = row.cells.size();
        }
        return row;
    }

    void take_row(const CsvRow& row)
    {
        if (row.bad_quote)
            refuse_quote(row.number);
        else if (!is_empty(row))
            take_filled(row);
    }

    void refuse_quote(std::size_t row)
    {
        sheet_.faults.add({Error::Kind::BadRow, "quote",
                           core::Place{source_, row, "", "a quote (\") that opens or closes no cell",
                                       "quotes around whole cells, and two of them for one inside a cell"}});
        if (header_read_)
            ++sheet_.refused_rows;
        else
            header_is_bad_ = header_is_lost_ = header_read_ = true;
    }

    void take_filled(const CsvRow& row)
    {
        if (!header_read_) {
            reading_.header = read_header(row, source_, sheet_.faults);
            header_read_ = true;
            header_is_bad_ = !sheet_.faults.empty();
        } else if (is_remark(row)) {
            return;
        } else if (++rows_ <= most_rows && !header_is_lost_) {
            take_product(row);
        }
    }

    /// A row whose product number begins with "#": notes and examples of a template.
    [[nodiscard]] bool is_remark(const CsvRow& row) const
    {
        const auto& columns = reading_.header.columns;
        for (std::size_t place = 0; place < std::min(columns.size(), row.cells.size()); ++place)
            if (columns[place] != nullptr && columns[place]->field == Field::Gtin)
                return shown(row.cells[place]).starts_with('#');
        return false;
    }

    void take_product(const CsvRow& row)
    {
        auto read = read_row(row, reading_, sheet_.faults);
        const bool doubled = read.gtin && is_doubled(*read.gtin, row.number, read.gtin_cell);
        if (read.product && !doubled)
            sheet_.products.push_back(*std::move(read.product));
        else
            ++sheet_.refused_rows;
    }

    bool is_doubled(const core::Gtin& gtin, std::size_t row, std::string& cell)
    {
        const auto [first, is_new] = first_rows_.emplace(gtin, row);
        if (!is_new)
            sheet_.faults.add(
                {Error::Kind::DoubledValue, "gtin",
                 core::Place{source_, row, "gtin", std::move(cell),
                             "each number once; it already stands in row " + std::to_string(first->second)}});
        return !is_new;
    }

    void finish()
    {
        if (rows_ > most_rows)
            sheet_.faults.add(file_fault(Error::Kind::TooLarge, source_, std::to_string(rows_) + " rows",
                                         "at most " + std::to_string(most_rows)));
        else if (sheet_.faults.empty() && rows_ == 0)
            sheet_.faults.add(file_fault(Error::Kind::Empty, source_, "",
                                         header_read_ ? "rows with products below the header" : "a header row"));
        // With a column missing or misspelt every label would lack its figures, and nobody would see that it does.
        if (header_is_bad_ || rows_ > most_rows) {
            sheet_.products.clear();
            sheet_.refused_rows = rows_;
        }
    }

    std::string source_; ///< as faults name it
    SheetReading reading_;
    Sheet sheet_;
    std::map<core::Gtin, std::size_t> first_rows_;
    std::size_t rows_ = 0;
    bool header_read_ = false;
    bool header_is_bad_ = false;
    bool header_is_lost_ = false;
};

/// The bytes of a file, one more than the largest sheet at most. Throws std::system_error.
std::string bytes_of(const std::string& path)
{
    const auto refuse = [&path] { throw std::system_error(errno, std::generic_category(), path); };
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rbe"), &std::fclose);
    if (!file)
        refuse();
    std::string bytes;
    char block[65'536];
    while (bytes.size() <= largest_sheet) {
        const auto length = std::fread(block, 1, sizeof block, file.get());
        bytes.append(block, length);
        if (length < sizeof block)
            break;
    }
    if (std::ferror(file.get()) != 0)
        refuse();
    return bytes;
}

} // namespace

Sheet read_sheet(std::string_view bytes, const std::string& source)
{
    return SheetReader(bytes, source).take();
}

Sheet read_sheet_file(const std::string& path)
{
    try {
        return read_sheet(bytes_of(path), path);
    } catch (const std::system_error& error) {
        Sheet sheet;
        const auto kind = error.code() == std::errc::no_such_file_or_directory ? Error::Kind::NoSuchFile
                          : error.code() == std::errc::is_a_directory          ? Error::Kind::IsFolder
                                                                               : Error::Kind::CannotRead;
        sheet.faults.add({kind, error.code().message(), core::Place{path, 0, "", "", ""}});
        return sheet;
    }
}

} // namespace catalog
