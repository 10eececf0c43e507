#include "catalog/load/load.h"

#include "catalog/load/undo.h"
#include "catalog/read/sheet.h"
#include "catalog/store/store.h"

#include <map>
#include <optional>
#include <utility>

namespace catalog {
namespace {

using core::Error;

/// The products of all sheets together.
class Batch {
public:
    void add(Sheet sheet, const std::string& source)
    {
        report_.faults.add(sheet.faults);
        report_.refused_rows += sheet.refused_rows;
        if (!sheet.tab.empty())
            report_.tabs.push_back({source, sheet.tab, sheet.other_tabs});
        for (auto& product : sheet.products)
            add(std::move(product), source);
    }

    [[nodiscard]] const std::vector<core::Product>& products() const { return products_; }
    LoadReport& report() { return report_; }

private:
    /// Which of two sheets is right about a product nobody can tell from their order on the command line.
    void add(core::Product product, const std::string& source)
    {
        const auto [first, is_new] = first_.emplace(product.gtin, First{source, product.origin.row});
        if (is_new) {
            products_.push_back(std::move(product));
            return;
        }
        ++report_.refused_rows;
        report_.faults.add({Error::Kind::DoubledValue, "gtin",
                            core::Place{source, product.origin.row, "gtin", product.gtin.digits(),
                                        "each number once; it already stands in " + first->second.source + ", row " +
                                            std::to_string(first->second.row)}});
    }

    struct First {
        std::string source;
        std::size_t row;
    };
    std::vector<core::Product> products_;
    std::map<core::Gtin, First> first_;
    LoadReport report_;
};

auto cannot_write(const std::filesystem::path& into, const std::string& detail)
{
    return core::refuse(Error::Kind::CannotWrite, detail, core::Place{into.string(), 0, {}, {}, {}});
}

/// What the entries that are about to be replaced say differently.
void note_differences(const Store& old, const std::vector<core::Product>& products, LoadReport& report)
{
    for (const auto& product : products) {
        const auto before = old.find(product.gtin);
        if (!before)
            continue;
        auto found = differences(before->label, product.label);
        if (found.empty())
            continue;
        ++report.differing;
        if (report.differences.size() < EntryDifference::most_samples)
            report.differences.push_back({product.gtin, product.name, std::move(found)});
    }
}

/// Writes the catalog as it will be into a new file. Returns how many products were replaced.
core::Result<std::size_t> write_aside(const std::filesystem::path& into, const std::filesystem::path& aside,
                                      const std::vector<core::Product>& products, LoadReport& report)
{
    std::error_code error;
    if (std::filesystem::exists(into, error)) {
        const auto old = Store::open(into, Store::Mode::ReadOnly);
        if (!old)
            return tl::make_unexpected(old.error());
        note_differences(*old, products, report);
        old->copy_to(aside);
    }
    return Store(aside.string()).put(products);
}

bool goes_on(const LoadOptions& options)
{
    return !options.go_on || options.go_on();
}

/// Puts the products in; nothing when the load was ended.
core::Result<std::optional<std::size_t>> replace(const std::filesystem::path& into,
                                                 const std::vector<core::Product>& products, const LoadOptions& options,
                                                 LoadReport& report, Disk& disk)
{
    std::error_code later; // if it cannot be made, writing says why
    std::filesystem::create_directories(folder_of(into), later);
    auto writing = SafeWrite::begin(into, disk);
    if (!writing)
        return tl::make_unexpected(writing.error());
    try {
        const auto replaced = write_aside(into, writing->aside(), products, report);
        if (!replaced)
            return tl::make_unexpected(replaced.error());
        if (!goes_on(options))
            return std::nullopt;
        keep_former(*writing, into, options.keep_former);
        if (const auto done = writing->commit(); !done)
            return tl::make_unexpected(done.error());
        return *replaced;
    } catch (const std::runtime_error& broken) { // the database's word for a full disk, a missing permission, ...
        return cannot_write(into, broken.what());
    }
}

} // namespace

core::Result<LoadReport> load(const std::vector<std::string>& sources, const std::filesystem::path& into,
                              LoadOptions options, Disk& disk)
{
    Batch batch;
    for (const auto& source : sources)
        if (goes_on(options))
            batch.add(read_sheet_file(source), source);
    auto& report = batch.report();
    report.cancelled = !goes_on(options);
    if (report.cancelled)
        return std::move(report);
    const auto& products = batch.products();
    if (products.empty() || (!report.faults.empty() && !options.keep_good_rows)) {
        report.refused_rows += products.size();
        return std::move(report);
    }
    const auto replaced = replace(into, products, options, report, disk);
    if (!replaced)
        return tl::make_unexpected(replaced.error());
    report.cancelled = !replaced->has_value();
    if (report.cancelled)
        return std::move(report);
    report.taken = products.size();
    report.replaced = **replaced;
    return std::move(report);
}

} // namespace catalog
