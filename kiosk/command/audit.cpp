#include "kiosk/command/audit.h"

#include "catalog/load/audit_pass.h"
#include "catalog/read/sheet.h"
#include "catalog/store/store.h"
#include "kiosk/command/audit_arguments.h"
#include "kiosk/command/json_audit.h"
#include "kiosk/desk/audit_words.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>
#include <ostream>
#include <vector>

namespace kiosk {
namespace {

using ui::TextId;

/// A catalog, or a sheet as one that lives in memory.
struct Source {
    catalog::Store store;
    bool faulty = false; ///< a sheet with rows that could not be read
};

core::Result<Source> read_source(const std::string& path, const ui::Language& language, std::ostream& err)
{
    auto store = catalog::Store::open(path, catalog::Store::Mode::ReadOnly);
    if (store)
        return Source{std::move(*store)};
    if (store.error().kind != core::Error::Kind::NoCatalog)
        return tl::make_unexpected(store.error());
    const auto sheet = catalog::read_sheet_file(path);
    if (sheet.products.empty() && !sheet.faults.empty())
        return tl::make_unexpected(sheet.faults.kept().front());
    for (const auto& fault : sheet.faults.kept())
        err << ui::sentence(fault, language) << '\n';
    Source source{catalog::Store(":memory:"), !sheet.faults.empty()};
    source.store.put(sheet.products);
    return source;
}

/// Labels one after the other, then the names that stand twice. Memory grows by 16 bytes a product.
catalog::AuditTally look_through(const catalog::Store& store, std::size_t samples)
{
    catalog::AuditPass pass(samples, store.approvals());
    store.for_each([&](const core::Product& product) {
        pass.look(product);
        return true;
    });
    return pass.finish([&](const core::Gtin& gtin) { return store.find(gtin); });
}

int refused(const std::string& sentence, std::ostream& err)
{
    err << "pairstand audit: " << sentence << ".\n";
    return 2;
}

/// Writes down "I looked, the package says so" for one product and one rule.
int approve(const AuditArguments& asked, const std::string& today, const ui::Language& language, std::ostream& out,
            std::ostream& err)
{
    const auto rule = core::doubt_rule_named(asked.rule);
    if (!rule)
        return refused(language.fill(TextId::audit_no_rule, {{"rule", asked.rule}}), err);
    const auto readable = catalog::Store::open(asked.source, catalog::Store::Mode::ReadOnly);
    if (!readable && readable.error().kind == core::Error::Kind::NoCatalog)
        return refused(language.fill(TextId::audit_no_catalog, {{"source", asked.source}}), err);
    auto store = readable ? catalog::Store::open(asked.source, catalog::Store::Mode::Write)
                          : core::Result<catalog::Store>(tl::make_unexpected(readable.error()));
    if (!store) {
        err << "pairstand audit: " << ui::sentence(store.error(), language) << '\n';
        return 2;
    }
    const auto gtin = core::Gtin::parse(asked.approve);
    const auto product = gtin ? store->find(*gtin) : std::nullopt;
    if (!product)
        return refused(language.fill(TextId::audit_no_product, {{"code", asked.approve}}), err);
    const auto doubts = core::audit(*product);
    if (*rule != core::DoubtRule::DuplicateName && !std::ranges::count(doubts, *rule, &core::Doubt::rule))
        return refused(language.fill(TextId::audit_no_doubt, {{"name", product->name}, {"rule", asked.rule}}), err);
    store->approve(*gtin, asked.rule, core::Date::parse(today).value());
    out << language.fill(TextId::audit_approved, {{"rule", asked.rule}, {"name", product->name}}) << '\n';
    return 0;
}

} // namespace

int audit(const AuditArguments& asked, const std::string& today, std::ostream& out, std::ostream& err)
{
    const auto languages = read_languages(data_folder());
    const auto& language = language_named(asked.language, languages);
    if (!asked.approve.empty())
        return approve(asked, today, language, out, err);
    const auto source = read_source(asked.source, language, err);
    if (!source) {
        err << "pairstand audit: " << ui::sentence(source.error(), language) << '\n';
        return 2;
    }
    const auto tally = look_through(source->store, static_cast<std::size_t>(asked.samples));
    if (asked.json)
        out << audit_json(tally, language).dump(2) << '\n';
    else
        print(audit_words(tally, language), out);
    return tally.doubted() > 0 || source->faulty ? 1 : 0;
}

} // namespace kiosk
