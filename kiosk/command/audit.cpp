#include "kiosk/command/audit.h"

#include "catalog/load/audit_tally.h"
#include "catalog/load/duplicates.h"
#include "catalog/read/sheet.h"
#include "catalog/store/store.h"
#include "kiosk/command/audit_arguments.h"
#include "kiosk/command/json_audit.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/words/doubt_words.h"
#include "ui/words/error_words.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <ostream>

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
    catalog::AuditTally tally(samples);
    catalog::Duplicates names;
    std::optional<core::Gtin> last;
    while (const auto product = store.next_after(last ? &*last : nullptr)) {
        const auto doubts = core::audit(*product);
        tally.add(*product, doubts);
        names.add(*product, !doubts.empty());
        last = product->gtin;
    }
    names.each_group([&](const catalog::SameName& group) {
        for (const auto& one : group) {
            const auto& other = &one == &group.front() ? group[1] : group.front();
            const auto& seen = tally.of(core::DoubtRule::DuplicateName);
            catalog::DoubtSample sample{one.gtin, "", "", "", 0, {core::DoubtRule::DuplicateName}, {other.gtin}};
            if (seen.samples.size() < samples)
                if (const auto product = store.find(one.gtin)) {
                    sample.name = product->name;
                    sample.brand = product->brand;
                    sample.source = product->origin.source;
                    sample.row = product->origin.row;
                }
            tally.add(std::move(sample), !one.doubted);
        }
    });
    return tally;
}

void tell(const catalog::AuditTally& tally, const ui::Language& language, std::ostream& out)
{
    const std::string labels = std::to_string(tally.labels());
    if (tally.doubted() == 0) {
        out << language.fill(TextId::audit_none, {{"n", labels}}) << '\n';
        return;
    }
    out << language.fill(TextId::audit_some, {{"n", labels}, {"doubted", std::to_string(tally.doubted())}}) << '\n';
    for (const auto& rule : core::doubt_rules()) {
        const auto& found = tally.of(rule.rule);
        if (found.count == 0)
            continue;
        out << language.fill(TextId::audit_rule, {{"rule", rule.name},
                                                  {"n", std::to_string(found.count)},
                                                  {"severity", ui::severity_words(rule.severity, language)},
                                                  {"source", rule.citation}})
            << '\n';
        for (const auto& sample : found.samples)
            out << "  " << sample.gtin.digits() << ' ' << sample.name << ": " << sample_sentence(sample, language)
                << '\n';
        if (found.count > found.samples.size())
            out << "  "
                << language.fill(TextId::audit_more, {{"n", std::to_string(found.count - found.samples.size())}})
                << '\n';
    }
}

} // namespace

int audit(const AuditArguments& asked, std::ostream& out, std::ostream& err)
{
    const auto languages = read_languages(data_folder());
    const auto& language = language_named(asked.language, languages);
    const auto source = read_source(asked.source, language, err);
    if (!source) {
        err << "pairstand audit: " << ui::sentence(source.error(), language) << '\n';
        return 2;
    }
    const auto tally = look_through(source->store, static_cast<std::size_t>(asked.samples));
    if (asked.json)
        out << audit_json(tally, language).dump(2) << '\n';
    else
        tell(tally, language, out);
    return tally.doubted() > 0 || source->faulty ? 1 : 0;
}

} // namespace kiosk
