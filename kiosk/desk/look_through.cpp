#include "kiosk/desk/look_through.h"

#include "catalog/load/audit_pass.h"
#include "catalog/read/sheet.h"
#include "ui/words/error_words.h"

#include <algorithm>
#include <utility>

namespace kiosk {

using catalog::Store;
using core::Error;
using ui::TextId;

core::Result<AuditSource> open_audit_source(const std::string& path)
{
    auto store = Store::open(path, Store::Mode::ReadOnly);
    if (store)
        return AuditSource{std::move(*store), {}};
    if (store.error().kind != Error::Kind::NoCatalog)
        return tl::make_unexpected(store.error());
    auto sheet = catalog::read_sheet_file(path);
    if (sheet.products.empty() && !sheet.faults.empty())
        return tl::make_unexpected(sheet.faults.kept().front());
    AuditSource source{Store(":memory:"), std::move(sheet.faults)};
    source.store.put(sheet.products);
    return source;
}

std::optional<catalog::AuditTally> look_through(const Store& store, std::size_t samples,
                                                const std::function<bool(std::uint64_t)>& go_on)
{
    constexpr std::uint64_t between = 500; // some milliseconds of looking
    catalog::AuditPass pass(samples, store.approvals());
    std::uint64_t looked = 0;
    bool ended = false;
    store.for_each([&](const core::Product& product) {
        pass.look(product);
        ended = ++looked % between == 0 && go_on && !go_on(looked);
        return !ended;
    });
    if (ended)
        return std::nullopt;
    return pass.finish([&](const core::Gtin& gtin) { return store.find(gtin); });
}

Approved approve(const std::string& catalog, const std::string& code, const std::string& rule, const std::string& day)
{
    const auto known = core::doubt_rule_named(rule);
    if (!known)
        return {Approved::What::NoRule, {}, {}};
    // Opened for reading first: a sheet is not to be made into a catalog.
    if (const auto readable = Store::open(catalog, Store::Mode::ReadOnly); !readable) {
        if (readable.error().kind == Error::Kind::NoCatalog)
            return {Approved::What::NoCatalog, {}, {}};
        return {Approved::What::Refused, {}, readable.error()};
    }
    auto store = Store::open(catalog, Store::Mode::Write);
    if (!store)
        return {Approved::What::Refused, {}, store.error()};
    const auto gtin = core::Gtin::parse(code);
    const auto product = gtin ? store->find(*gtin) : std::nullopt;
    if (!product)
        return {Approved::What::NoProduct, {}, {}};
    const auto doubts = core::audit(*product);
    if (*known != core::DoubtRule::DuplicateName && !std::ranges::count(doubts, *known, &core::Doubt::rule))
        return {Approved::What::NoDoubt, product->name, {}};
    store->approve(*gtin, rule, core::Date::parse(day).value());
    return {Approved::What::Done, product->name, {}};
}

std::string approved_words(const Approved& approved, const std::string& catalog, const std::string& code,
                           const std::string& rule, const ui::Language& language)
{
    switch (approved.what) {
    case Approved::What::NoRule:
        return language.fill(TextId::audit_no_rule, {{"rule", rule}}) + ".";
    case Approved::What::NoCatalog:
        return language.fill(TextId::audit_no_catalog, {{"source", catalog}}) + ".";
    case Approved::What::NoProduct:
        return language.fill(TextId::audit_no_product, {{"code", code}}) + ".";
    case Approved::What::NoDoubt:
        return language.fill(TextId::audit_no_doubt, {{"name", approved.name}, {"rule", rule}}) + ".";
    case Approved::What::Refused:
        return ui::sentence(*approved.error, language);
    case Approved::What::Done:
        break;
    }
    return language.fill(TextId::audit_approved, {{"rule", rule}, {"name", approved.name}});
}

} // namespace kiosk
