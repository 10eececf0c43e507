// pairstand audit: what is wrong or doubtful in the labels of a catalog or a sheet.
#pragma once

#include <iosfwd>
#include <string>

namespace kiosk {

struct AuditArguments; // kiosk/command/audit_arguments.h

/// Prints what the audit found, or writes down what a leader approved on the day `today` ("2026-11-25"). Exit status: 0
/// no doubt, 1 a doubt, 2 a source that cannot be read or nothing to approve, with one sentence on `err`; rows of a
/// sheet that cannot be read are told on `err` and count as doubts.
[[nodiscard]] int audit(const AuditArguments& asked, const std::string& today, std::ostream& out, std::ostream& err);

} // namespace kiosk
