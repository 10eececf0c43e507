#include "catalog/store/doubts.h"

#include "catalog/store/row.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <bit>
#include <stdexcept>
#include <tuple>
#include <utility>
#include <variant>

namespace catalog {
namespace {

/// FNV-1a of 64 bits, by eight bytes of each number, lowest first.
class Print {
public:
    void add(std::int64_t number)
    {
        auto bits = static_cast<std::uint64_t>(number);
        for (int byte = 0; byte < 8; ++byte, bits >>= 8U) {
            hash_ ^= bits & 0xFFU;
            hash_ *= 0x100000001B3U;
        }
    }
    void add(std::string_view text)
    {
        add(static_cast<std::int64_t>(text.size()));
        for (const char letter : text)
            add(static_cast<std::int64_t>(static_cast<unsigned char>(letter)));
    }
    [[nodiscard]] std::uint64_t value() const { return hash_; }

private:
    std::uint64_t hash_ = 0xCBF29CE484222325U;
};

void add(Print& print, const core::Line& line)
{
    print.add(line.amount ? (line.amount->less_than ? 2 : 1) : 0);
    print.add(line.amount ? line.amount->amount.nano() : 0);
    print.add(line.percent ? (line.percent->less_than ? 2 : 1) : 0);
    print.add(line.percent ? line.percent->percent : 0);
}

/// By keys, which stay when nutrients are added to the program.
void add(Print& print, const core::Column& column)
{
    for (const auto& [nutrient, line] : column.lines) {
        print.add(core::info(nutrient).key);
        add(print, line);
    }
    for (const auto nutrient : column.not_significant) {
        print.add("not significant");
        print.add(core::info(nutrient).key);
    }
}

void add(Print& print, const std::optional<core::Measure>& measure)
{
    print.add(measure ? static_cast<std::int64_t>(measure->index()) : -1);
    print.add(measure ? std::visit([](auto amount) { return amount.nano(); }, *measure) : 0);
}

constexpr const char* approval_table = R"(
CREATE TABLE IF NOT EXISTS approval (
    gtin INTEGER NOT NULL,
    rule TEXT NOT NULL,
    approved_on INTEGER NOT NULL,
    label INTEGER NOT NULL,
    PRIMARY KEY (gtin, rule)
) STRICT, WITHOUT ROWID;
)";

auto order_of(const Approval& approval)
{
    return std::tie(approval.gtin, approval.rule);
}

} // namespace

std::uint64_t label_fingerprint(const core::Label& label)
{
    Print print;
    print.add(label.panel == core::Panel::Of2016 ? 0 : 1);
    print.add(static_cast<std::int64_t>(label.audience));
    print.add(label.serving.household);
    add(print, label.serving.metric);
    print.add(static_cast<std::int64_t>(label.servings.kind));
    print.add(label.servings.count.nano());
    add(print, label.per_serving);
    print.add(label.second ? static_cast<std::int64_t>(label.second->kind) : -1);
    if (label.second)
        add(print, label.second->column);
    print.add(label.net_quantity ? std::string_view(label.net_quantity->printed) : std::string_view());
    return print.value();
}

Approvals::Approvals(std::vector<Approval> all) : all_(std::move(all))
{
    std::ranges::sort(all_, {}, order_of);
}

std::optional<core::Date> Approvals::find(const core::Product& product, std::string_view rule) const
{
    if (all_.empty())
        return std::nullopt;
    auto found = std::ranges::lower_bound(all_, product.gtin, {}, &Approval::gtin);
    for (; found != all_.end() && found->gtin == product.gtin; ++found)
        if (found->rule == rule && found->label == label_fingerprint(product.label))
            return found->on;
    return std::nullopt;
}

void make_doubt_tables(SQLite::Database& database)
{
    database.exec(approval_table);
}

void put_approval(SQLite::Database& database, const Approval& approval)
{
    SQLite::Statement put(database, "INSERT OR REPLACE INTO approval VALUES (?, ?, ?, ?)");
    put.bind(1, key_of(approval.gtin));
    put.bind(2, approval.rule);
    put.bind(3, approval.on.number());
    put.bind(4, std::bit_cast<std::int64_t>(approval.label));
    put.exec();
}

void remove_orphaned_approvals(SQLite::Database& database)
{
    make_doubt_tables(database);
    database.exec("DELETE FROM approval WHERE gtin NOT IN (SELECT gtin FROM product)");
}

Approvals read_approvals(SQLite::Database& database)
{
    std::vector<Approval> all;
    if (!database.tableExists("approval")) // a catalog of before there were approvals
        return Approvals{};
    SQLite::Statement rows(database, "SELECT gtin, rule, approved_on, label FROM approval");
    while (rows.executeStep()) {
        const auto on = core::Date::of_number(rows.getColumn(2).getInt64());
        if (!on)
            throw std::runtime_error("an approval has a day that does not exist");
        all.push_back({gtin_of(rows.getColumn(0).getInt64()), rows.getColumn(1).getString(), *on,
                       std::bit_cast<std::uint64_t>(rows.getColumn(3).getInt64())});
    }
    return Approvals(std::move(all));
}

} // namespace catalog
