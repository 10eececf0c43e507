#include "kiosk/command/export.h"

#include "catalog/write/sheet_export.h"
#include "kiosk/command/export_arguments.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <ostream>

namespace kiosk {
namespace {

/// "1 product", "3 products".
std::string products(std::size_t count)
{
    return std::to_string(count) + (count == 1 ? " product" : " products");
}

int refused(const core::Error& error, const ui::Language& language, std::ostream& err)
{
    err << "pairstand export: " << ui::sentence(error, language) << '\n';
    return 2;
}

/// Whether a program for sheets would open a file of this name as a workbook, which CSV is not.
bool is_workbook_name(const std::string& name)
{
    auto ending = std::filesystem::path(name).extension().string();
    std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
    return ending == ".xlsx" || ending == ".xlsm" || ending == ".xls" || ending == ".ods";
}

void tell_files(const catalog::ExportReport& report, std::ostream& out)
{
    out << products(report.written) << " written to ";
    for (std::size_t i = 0; i < report.files.size(); ++i)
        out << (i == 0 ? "" : i + 1 == report.files.size() ? " and " : ", ") << report.files[i];
    out << (report.files.size() > 1 ? "; load them one after the other.\n" : ".\n");
}

void tell_left_out(const catalog::Faults& left_out, std::ostream& err)
{
    for (const auto& error : left_out.kept()) {
        err << error.place.found << " is in no sheet: ";
        if (error.place.column.empty())
            err << "it would not load again as it is.\n";
        else
            err << "the column " << error.place.column << " takes nothing like what it has there.\n";
    }
    if (const auto more = left_out.count() - left_out.kept().size(); more > 0)
        err << "... and " << products(more) << " more.\n";
}

} // namespace

int export_sheets(const ExportArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto data = data_folder();
    const auto languages = read_language_files(data);
    const auto& language = language_named(asked.language, languages);
    if (is_workbook_name(asked.out)) {
        err << "pairstand export: " << language.fill(ui::TextId::export_only_csv, {{"file", asked.out}}) << '\n';
        return 2;
    }
    if (asked.blank) {
        if (const auto written = catalog::write_template(asked.out); !written)
            return refused(written.error(), language, err);
        out << "An empty sheet written to " << asked.out << ".\n";
        return 0;
    }
    const auto place = catalog_place(asked.catalog, data);
    const auto store = open_catalog(place);
    if (!store) {
        err << "pairstand export: " << catalog_trouble(place, store.error(), language) << '\n';
        return 2;
    }
    const auto report = catalog::export_sheets(*store, asked.out, {.typed_here_only = asked.typed_here});
    if (!report)
        return refused(report.error(), language, err);
    tell_left_out(report->not_carried, err);
    tell_files(*report, out);
    return report->not_carried.empty() ? 0 : 1;
}

} // namespace kiosk
