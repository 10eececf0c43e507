#include "kiosk/command/audit_arguments.h"

#include "kiosk/command/foot.h"

#include <CLI/CLI.hpp>

namespace kiosk {

void add_audit(CLI::App& command, AuditArguments& audit, const std::string& languages)
{
    command.add_option("SOURCE", audit.source, "a catalog, or a sheet that was not loaded yet")->required();
    command.add_flag("--json", audit.json, "for programs: the form is described in docs/audit.md");
    command.add_option("--samples", audit.samples, "how many labels are shown of each rule")
        ->check(CLI::Range(0, 1000))
        ->capture_default_str();
    auto* const approve =
        command.add_option("--approve", audit.approve, "code of a product: you looked, and the package says so");
    auto* const rule = command.add_option("--rule", audit.rule,
                                          "with --approve: the rule that is not told of it again, such as calories");
    approve->needs(rule);
    rule->needs(approve);
    command
        .add_option("--lang", audit.language, "language of the answer" + (languages.empty() ? "" : ": " + languages))
        ->capture_default_str();
    command.footer("docs/audit.md tells what each rule asks. A doubt says where to look at the package again, never "
                   "anything about the food.\n" +
                   std::string(foot));
}

} // namespace kiosk
