// Any bytes as the rows of a worksheet and of a table, packed as a program packs them: no crash, and only rows in
// order.
#include "catalog/read/workbook.h"
#include "tests/support/workbook_maker.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

namespace {

void read_all(const std::string& bytes)
{
    auto zip = catalog::ZipFile::of_bytes(bytes, "book", catalog::workbook_limits());
    if (!zip)
        return;
    const auto book = catalog::Workbook::open(*std::move(zip), "book");
    if (!book)
        return;
    const auto sheets = (*book)->sheets();
    for (std::size_t sheet = 0; sheets && sheet < sheets->size(); ++sheet) {
        std::size_t last = 0;
        const auto read = (*book)->for_each_row(sheet, [&last](const catalog::CsvRow& row) {
            if (row.number <= last || row.cells.size() > catalog::most_cells)
                std::abort();
            last = row.number;
            return last < 1'000; // one repeated row is as good as a million
        });
        if (!read && read.error().place.source != "book")
            std::abort();
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string rows(reinterpret_cast<const char*>(data), size);
    read_all(test::xlsx_of({{"S", rows}}, "<si><t>a</t></si>"));
    read_all(test::ods_of({{"S", rows}}));
    read_all(rows);
    return 0;
}
