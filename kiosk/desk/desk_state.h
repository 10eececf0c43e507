// What the leader desk holds: values only, worded by desk_words.h in whatever language is on.
#pragma once

#include "catalog/bundle/install.h"
#include "catalog/load/load.h"
#include "catalog/load/load_release.h"
#include "kiosk/clock.h"
#include "kiosk/desk/look_through.h"
#include "kiosk/desk/preview.h"
#include "kiosk/desk/stick_files.h"
#include "kiosk/desk/worker.h"
#include "ui/state.h"

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace kiosk {

/// What is being done, or was done last.
enum class DeskWork {
    Looking,
    Previewing,
    Loading,
    Auditing,
    Approving,
    Installing,
    UndoingLoad,
    UndoingInstall,
    KeepingPicture
};

/// A sheet was loaded, or nothing of it.
struct SheetTaken {
    catalog::LoadReport report;
    bool keep_good_rows = false;
    bool there = false; ///< whether there is a catalog now
};

/// What the audit found.
struct AuditFound {
    catalog::AuditTally tally;
    bool of_catalog = true; ///< else of the sheet that is open, whose doubts cannot be approved
    std::size_t faults = 0; ///< of a sheet: what could not be read
};

/// A doubt was approved, or not.
struct DoubtAnswered {
    Approved approved;
    core::Gtin gtin;
    core::DoubtRule rule;
};

/// Another catalog is in place again.
struct LoadUndone {
    std::size_t labels = 0; ///< of the catalog that is back
};
/// The maker's fingerprint is another.
struct KeyRefused {};
/// Ended by a touch; nothing was changed.
struct Ended {};
/// A picture of the camera was kept by the leader's touch.
struct PictureKept {
    std::filesystem::path path; ///< empty: the camera gave none
};
/// It could not be done.
struct Refused {
    core::Error error;
    bool stick_gone = false;
};

/// What work brings.
using DeskNews = std::variant<StickFiles, Preview, SheetTaken, catalog::ReleaseLoaded, AuditFound, DoubtAnswered,
                              catalog::Installing, std::optional<catalog::Manifest>, LoadUndone, KeyRefused, Ended,
                              PictureKept, Refused>;

/// All of it.
struct DeskState {
    std::string catalog;                       ///< where loads go
    bool catalog_named = false;                ///< the station was opened with this catalog, and shows no bundle
    std::optional<catalog::Manifest> in_front; ///< the bundle that is shown instead of it
    std::size_t shown = 0;                     ///< how many products the station has
    bool can_audit = false;                    ///< there is a catalog where loads go
    bool can_undo_load = false;
    bool load_undone = false; ///< undoing is taking the undo back
    bool can_undo_install = false;
    bool busy = false;
    DeskWork work = DeskWork::Looking;
    WorkProgress progress;
    Milliseconds since_start{0};
    std::optional<StickFiles> found;
    std::optional<StickFile> file;
    std::size_t file_index = 0;     ///< among `found`
    std::optional<Preview> preview; ///< of `file`
    std::optional<AuditFound> audit;
    std::vector<std::pair<core::Gtin, core::DoubtRule>> approved; ///< since the audit
    std::optional<core::DoubtRule> rule;
    std::optional<core::Gtin> doubt;
    bool camera = false;                                ///< there is one in use
    std::string read;                                   ///< what was read last while its picture was shown
    std::vector<std::filesystem::path> picture_folders; ///< where a picture can be kept
    std::optional<DeskNews> report;                     ///< of the last work that has one
    DeskWork report_of = DeskWork::Looking;
    std::optional<ui::ScreenId> came; ///< the page of what came of the last work: a report, or an audit
};

/// Whether the report tells of something that was changed, so that it can be undone.
[[nodiscard]] bool changed_something(const DeskNews& report);

/// The rules that found something, in their order.
[[nodiscard]] std::vector<core::DoubtRule> rules_of(const AuditFound& audit);

/// The samples of a rule that were not approved since.
[[nodiscard]] std::vector<catalog::DoubtSample> samples_of(const DeskState& state, core::DoubtRule rule);

} // namespace kiosk
