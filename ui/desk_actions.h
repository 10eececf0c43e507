// What a leader can ask for at the desk by touch: one struct each. What they name by number is what the page lists.
#pragma once

#include <cstddef>
#include <variant>

namespace ui {

/// Open the desk itself, or the work that is being done there.
struct OpenDesk {
    bool operator==(const OpenDesk&) const = default;
};
/// Look on the sticks for what can be taken, anew.
struct LookForFiles {
    bool operator==(const LookForFiles&) const = default;
};
/// Look into one of the files that were found.
struct OpenFile {
    std::size_t index;
    bool operator==(const OpenFile&) const = default;
};
/// Load the file that is open, a sheet or a release.
struct LoadFile {
    bool keep_good_rows; ///< of a sheet: the rows without a fault, although others have one
    bool operator==(const LoadFile&) const = default;
};
/// Put the catalog back that was there before the last load; a second time undoes that.
struct UndoLoad {
    bool operator==(const UndoLoad&) const = default;
};
/// Install the bundle that is open; a key that was not accepted yet is compared first.
struct InstallFile {
    bool operator==(const InstallFile&) const = default;
};
/// Whether the fingerprint on the screen is that of the maker.
struct AnswerKey {
    bool same;
    bool operator==(const AnswerKey&) const = default;
};
/// Put what was in place before the bundle there again.
struct UndoInstall {
    bool operator==(const UndoInstall&) const = default;
};
/// Look through the sheet that is open.
struct AuditFile {
    bool operator==(const AuditFile&) const = default;
};
/// Look through the place's own catalog.
struct AuditCatalog {
    bool operator==(const AuditCatalog&) const = default;
};
/// Show what one rule of the audit found.
struct OpenRule {
    std::size_t index;
    bool operator==(const OpenRule&) const = default;
};
/// Show one product that the rule doubts.
struct OpenDoubt {
    std::size_t index;
    bool operator==(const OpenDoubt&) const = default;
};
/// "I looked, the package says so", of the doubt that is shown.
struct ApproveDoubt {
    bool operator==(const ApproveDoubt&) const = default;
};
/// Show the camera's picture large, with what is read.
struct OpenCamera {
    bool operator==(const OpenCamera&) const = default;
};
/// Keep one picture of the camera in one of the folders that are listed.
struct KeepPicture {
    std::size_t index;
    bool operator==(const KeepPicture&) const = default;
};
/// End the work that is being done.
struct CancelWork {
    bool operator==(const CancelWork&) const = default;
};
/// Show what came of the last work.
struct OpenReport {
    bool operator==(const OpenReport&) const = default;
};

using DeskAction =
    std::variant<OpenDesk, LookForFiles, OpenFile, LoadFile, UndoLoad, InstallFile, AnswerKey, UndoInstall, AuditFile,
                 AuditCatalog, OpenRule, OpenDoubt, ApproveDoubt, OpenCamera, KeepPicture, CancelWork, OpenReport>;

/// One of them.
struct AskDesk {
    DeskAction what;
    bool operator==(const AskDesk&) const = default;
};

} // namespace ui
