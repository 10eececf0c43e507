#include "kiosk/command/audit.h"

#include "kiosk/command/audit_arguments.h"
#include "kiosk/command/json_audit.h"
#include "kiosk/desk/audit_words.h"
#include "kiosk/desk/look_through.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <nlohmann/json.hpp>

#include <ostream>

namespace kiosk {
namespace {

/// Writes down "I looked, the package says so" for one product and one rule.
int approve_one(const AuditArguments& asked, const std::string& today, const ui::Language& language, std::ostream& out,
                std::ostream& err)
{
    const auto approved = approve(asked.source, asked.approve, asked.rule, today);
    const auto words = approved_words(approved, asked.source, asked.approve, asked.rule, language);
    if (approved.what == Approved::What::Done) {
        out << words << '\n';
        return 0;
    }
    err << "pairstand audit: " << words << '\n';
    return 2;
}

} // namespace

int audit(const AuditArguments& asked, const std::string& today, std::ostream& out, std::ostream& err)
{
    const auto languages = read_language_files(data_folder());
    const auto& language = language_named(asked.language, languages);
    if (!asked.approve.empty())
        return approve_one(asked, today, language, out, err);
    const auto source = open_audit_source(asked.source);
    if (!source) {
        err << "pairstand audit: " << ui::sentence(source.error(), language) << '\n';
        return 2;
    }
    for (const auto& fault : source->faults.kept())
        err << ui::sentence(fault, language) << '\n';
    const auto tally = look_through(source->store, static_cast<std::size_t>(asked.samples)).value();
    if (asked.json)
        out << audit_json(tally, language).dump(2) << '\n';
    else
        print(audit_words(tally, language), out);
    return tally.doubted() > 0 || !source->faults.empty() ? 1 : 0;
}

} // namespace kiosk
