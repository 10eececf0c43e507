// Any bytes as a sheet, text or workbook: what is taken is tidy and survives the store, what is told can be shown.
#include "catalog/read/sheet.h"
#include "catalog/read/text.h"
#include "catalog/store/figures.h"
#include "catalog/store/row.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <set>

namespace {

/// An input that breaks a promise is a crash, so that the fuzzer keeps it.
void promise(bool holds)
{
    if (!holds)
        std::abort();
}

void check_text(const std::string& text)
{
    promise(catalog::tidy(text) == text);
}

void check_column(const core::Column& column)
{
    core::Column again;
    catalog::read_figures_bytes(catalog::figures_bytes(column), again);
    promise(again.lines == column.lines);
}

void check(const core::Product& product)
{
    for (const auto* text : {&product.name, &product.brand, &product.aisle, &product.note})
        check_text(*text);
    promise(!product.name.empty());
    const auto& label = product.label;
    check_column(label.per_serving);
    if (label.second) {
        check_column(label.second->column);
    }
    promise(catalog::gtin_of(catalog::key_of(product.gtin)) == product.gtin);
}

void check(const core::Error& error)
{
    const auto can_be_shown = [](char c) { return static_cast<unsigned char>(c) >= 0x20; };
    for (const auto* text : {&error.place.column, &error.place.found, &error.place.expected})
        promise(std::all_of(text->begin(), text->end(), can_be_shown));
    promise(error.place.found.size() < 100);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const auto sheet = catalog::read_sheet(bytes, "folder/sheet.csv");
    std::set<core::Gtin> numbers;
    for (const auto& product : sheet.products) {
        check(product);
        promise(numbers.insert(product.gtin).second);
        check_text(product.origin.source); // the sheet's own name, or what an exported row says
        promise(!product.origin.source.empty());
    }
    for (const auto& error : sheet.faults.kept())
        check(error);
    promise(!sheet.faults.empty() || (sheet.refused_rows == 0 && !sheet.products.empty()));
    return 0;
}
