// Any bytes as the files of a release: nothing breaks, and what is taken keeps its promises.
#include "catalog/load/release_heads.h"
#include "catalog/read/published_csv.h"
#include "catalog/read/release_code.h"
#include "catalog/read/release_json.h"
#include "catalog/read/release_serving.h"
#include "catalog/read/release_table.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <cstring>

namespace {

void promise(bool holds)
{
    if (!holds)
        std::abort();
}

/// The input in pieces of a size that it chooses itself.
class Input : public catalog::ByteStream {
public:
    Input(std::string_view bytes, std::size_t piece) : bytes_(bytes), piece_(piece) {}
    core::Result<std::size_t> read(char* into, std::size_t size) override
    {
        const auto count = std::min({piece_, size, bytes_.size()});
        std::memcpy(into, bytes_.data(), count);
        bytes_.remove_prefix(count);
        return count;
    }
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }

private:
    std::string_view bytes_;
    std::size_t piece_;
};

void check_product(const catalog::ReleaseTexts& texts, std::span<const catalog::ReleaseRow> rows)
{
    static const auto gtin = core::Gtin::parse("9521234543213").value();
    const auto made = catalog::product_of({gtin, 1, 20'231'026, 0, "release"}, texts, rows);
    promise(made.product.has_value() != made.refusal.has_value());
    if (!made.product)
        return;
    promise(!made.product->name.empty());
    for (const auto* column : {&made.product->label.per_serving})
        for (const auto& [nutrient, line] : column->lines)
            promise(line.amount.has_value() || line.percent.has_value());
}

void check_cell(std::string_view cell)
{
    const auto code = catalog::read_release_code(cell);
    promise(code.gtin.has_value() ==
            (code.kind == catalog::ReleaseCode::Kind::Product || code.kind == catalog::ReleaseCode::Kind::Case));
    if (const auto amount = catalog::read_amount(cell)) {
        promise(amount->decimals >= 0 && amount->decimals <= 9);
        for (const auto& nutrient : catalog::release_nutrients) {
            const auto line = catalog::recover(nutrient, *amount, catalog::Derivation::PerServing,
                                               {28'000'000, core::Panel::Of2016, 0});
            promise(line.amount.has_value() != line.percent.has_value());
        }
    }
    (void)catalog::read_day(cell);
    (void)catalog::read_release_household(cell);
    (void)catalog::read_release_serving(cell, "g", catalog::read_release_net(cell));
}

void check_csv(std::string_view bytes, std::size_t piece)
{
    Input input(bytes, piece);
    auto table = catalog::ReleaseTable::open(input, "branded_food.csv", catalog::branded_columns());
    if (!table)
        return;
    for (;;) {
        const auto row = table->next();
        if (!row || !*row)
            return;
        catalog::ReleaseTexts texts;
        for (std::size_t i = 0; i < texts.size(); ++i)
            texts[i] = table->at(i);
        check_cell(table->at(1));
        const auto joined = catalog::joined_texts(texts);
        promise(catalog::split_texts(joined).size() == texts.size());
        const catalog::ReleaseRow energy{0, catalog::Derivation::PerServing, {357, 0}, catalog::no_percent};
        check_product(texts, std::span(&energy, 1));
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size < 2)
        return 0;
    const std::size_t piece = 1U + data[0];
    const std::string_view bytes(reinterpret_cast<const char*>(data) + 2, size - 2);
    switch (data[1] % 3) {
    case 0:
        check_csv(bytes, piece);
        break;
    case 1: {
        Input input(bytes, piece);
        (void)catalog::read_release_json(
            input, "foods.json", [](const catalog::JsonFood& food) { check_product(food.views(), food.amounts); },
            [](std::uint64_t) { return true; });
        break;
    }
    default:
        check_cell(bytes.substr(0, 200));
    }
    return 0;
}
