#include "catalog/write/sheet_export.h"

#include "catalog/read/harmless.h"
#include "catalog/write/sheet_row_text.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <memory>
#include <optional>
#include <system_error>

namespace catalog {
namespace {

using core::Error;

constexpr std::string_view mark = "\xEF\xBB\xBF"; // without it some programs take UTF-8 for something else
constexpr std::string_view line_end = "\r\n";

/// One file under way. Throws std::system_error when the disk refuses.
class SheetFile {
public:
    SheetFile(SafeWrite writing, const std::string& header)
        : writing_(std::move(writing)), file_(std::fopen(writing_.aside().c_str(), "wbe"), &std::fclose)
    {
        if (!file_)
            refuse();
        write(mark);
        line(header);
    }

    void line(std::string_view text)
    {
        write(text);
        write(line_end);
        ++lines_;
    }

    [[nodiscard]] std::size_t rows() const { return lines_ - 1; }
    [[nodiscard]] std::size_t bytes() const { return bytes_; }

    core::Result<void> commit()
    {
        if (std::fclose(file_.release()) != 0)
            refuse();
        return writing_.commit();
    }

private:
    [[noreturn]] static void refuse() { throw std::system_error(errno, std::generic_category()); }

    void write(std::string_view text)
    {
        if (std::fwrite(text.data(), 1, text.size(), file_.get()) != text.size())
            refuse();
        bytes_ += text.size();
    }

    SafeWrite writing_;
    std::unique_ptr<std::FILE, int (*)(std::FILE*)> file_;
    std::size_t lines_ = 0;
    std::size_t bytes_ = 0;
};

/// Calls `take` with every product that goes into the sheets.
template<class Take>
void for_each_product(const Store& store, const ExportOptions& options, Take take)
{
    for (auto product = store.next_after(nullptr); product; product = store.next_after(&product->gtin))
        if (!options.typed_here_only || product->origin.kind == core::Origin::Kind::TypedHere)
            take(*product);
}

/// Writes rows into one sheet after the other.
class Sheets {
public:
    Sheets(std::filesystem::path out, const ExportOptions& options, std::vector<const SheetColumn*> columns, Disk& disk)
        : out_(std::move(out)), options_(options), columns_(std::move(columns)), disk_(disk)
    {
    }

    core::Result<void> add(const core::Product& product)
    {
        const auto row = row_text(product, columns_);
        if (!row) {
            report_.not_carried.add(row.error());
            return {};
        }
        const bool full = file_ && (file_->rows() >= options_.most_rows ||
                                    file_->bytes() + row->size() + line_end.size() > options_.most_bytes);
        if (full)
            if (auto ended = end(); !ended)
                return ended;
        if (!file_)
            if (auto begun = begin(); !begun)
                return begun;
        file_->line(*row);
        ++report_.written;
        return {};
    }

    core::Result<ExportReport> finish()
    {
        if (report_.files.empty())
            if (auto begun = begin(); !begun)
                return tl::make_unexpected(begun.error());
        if (const auto ended = end(); !ended)
            return tl::make_unexpected(ended.error());
        return std::move(report_);
    }

private:
    core::Result<void> begin()
    {
        auto path = out_;
        if (const auto number = report_.files.size() + 1; number > 1)
            path.replace_filename(out_.stem().string() + "-" + std::to_string(number) + out_.extension().string());
        auto writing = SafeWrite::begin(path, disk_);
        if (!writing)
            return tl::make_unexpected(writing.error());
        file_.emplace(*std::move(writing), header_text(columns_));
        report_.files.push_back(path.string());
        return {};
    }

    core::Result<void> end()
    {
        auto done = file_->commit();
        file_.reset();
        return done;
    }

    std::filesystem::path out_;
    const ExportOptions& options_;
    std::vector<const SheetColumn*> columns_;
    Disk& disk_;
    std::optional<SheetFile> file_;
    ExportReport report_;
};

auto cannot_write(const std::filesystem::path& out, const std::system_error& error)
{
    return core::refuse(Error::Kind::CannotWrite, error.code().message(), core::Place{out.string(), 0, "", "", ""});
}

/// Columns that an export needs to lose nothing, or that few labels need: not in the template.
constexpr Field not_in_template[] = {Field::Category,   Field::SecondNotSignificant, Field::WorkedBack,
                                     Field::SourceKind, Field::SecondWorkedBack,     Field::Source,
                                     Field::SourceRow,  Field::SecondColumn};

/// Whether a leader fills this column in by hand.
bool in_template(const SheetColumn& column)
{
    if (column.nutrient)
        return !column.second && core::info(*column.nutrient).on_the_panel;
    return std::find(std::begin(not_in_template), std::end(not_in_template), column.field) == std::end(not_in_template);
}

} // namespace

core::Result<ExportReport> export_sheets(const Store& store, const std::filesystem::path& out,
                                         const ExportOptions& options, Disk& disk)
{
    try {
        UsedColumns used;
        for_each_product(store, options, [&used](const core::Product& product) { used.add(product); });
        Sheets sheets(out, options, used.all(), disk);
        core::Result<void> going_on;
        for_each_product(store, options, [&](const core::Product& product) {
            if (going_on)
                going_on = sheets.add(product);
        });
        return going_on ? sheets.finish() : tl::make_unexpected(going_on.error());
    } catch (const std::system_error& error) {
        return cannot_write(out, error);
    }
}

core::Result<void> write_template(const std::filesystem::path& out, Disk& disk)
{
    std::vector<const SheetColumn*> columns;
    std::string notes;
    std::string example;
    for (const auto& column : sheet_columns()) {
        if (!in_template(column))
            continue;
        const bool first = columns.empty();
        const auto note = column.expected + (column.required ? " (must be filled in)" : "");
        notes += first ? quoted("# " + note) : "," + quoted(made_harmless(note));
        example += first ? quoted("# " + column.example) : "," + quoted(made_harmless(column.example));
        columns.push_back(&column);
    }
    auto writing = SafeWrite::begin(out, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    try {
        SheetFile file(*std::move(writing), header_text(columns));
        file.line(notes);
        file.line(example);
        return file.commit();
    } catch (const std::system_error& error) {
        return cannot_write(out, error);
    }
}

} // namespace catalog
