#include "catalog/read/workbook.h"

#include "catalog/read/workbook_ods.h"
#include "catalog/read/workbook_xlsx.h"

namespace catalog {

ZipLimits workbook_limits()
{
    return {.most_members = 5'000, .largest_total = 512ULL << 20U, .highest_ratio = 200};
}

core::Result<std::unique_ptr<Workbook>> Workbook::open(ZipFile zip, const std::string& source)
{
    if (zip.member("content.xml") != nullptr)
        return open_ods(std::move(zip), source);
    if (zip.member("_rels/.rels") != nullptr)
        return open_xlsx(std::move(zip), source);
    return core::refuse(core::Error::Kind::BadEncoding, "zip",
                        core::Place{source, 0, "", "a packed file that is no workbook",
                                    "a CSV file, or a workbook saved as .xlsx or .ods"});
}

} // namespace catalog
