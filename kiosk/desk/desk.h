// The leader desk: what a touch there begins, on a thread of its own, and what came of it.
#pragma once

#include "kiosk/camera/frame.h"
#include "kiosk/clock.h"
#include "kiosk/desk/desk_state.h"
#include "ui/desk_actions.h"
#include "ui/state.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace kiosk {

/// Where the desk works.
struct DeskPlaces {
    std::filesystem::path catalog;              ///< where loads go
    bool catalog_named = false;                 ///< the station was opened with this catalog
    std::filesystem::path data;                 ///< the station's data folder, where bundles go
    std::vector<std::filesystem::path> folders; ///< to look for files in, beside the mounted sticks
    bool look_at_sticks = true;
    /// A picture of the camera, taken now; it may wait for one. Empty: no camera is in use.
    std::function<std::optional<Frame>()> take_picture;
    /// Has the camera read anew what already lies before it. Empty: no camera is in use.
    std::function<void()> look_afresh;
    std::function<std::string()> today; ///< "2026-11-26", for what is approved
};

/// The desk of one station. For the screen's thread; one piece of work at a time.
class Desk {
public:
    /// `wake` is called from the work's thread when there is news; it may be empty.
    explicit Desk(DeskPlaces places, std::function<void()> wake = {});

    /// Does what was asked for, or begins it. Returns the page to be shown; nothing: the one that is.
    std::optional<ui::ScreenId> ask(const ui::DeskAction& asked);

    /// What follow found.
    struct News {
        bool progress = false;            ///< the work is further
        std::optional<ui::ScreenId> page; ///< the work is done, and here stands what came of it
    };
    /// Takes what the work has told and brought since.
    News follow();

    /// Something was read while the camera's picture is shown.
    void has_read(std::string code) { state_.read = std::move(code); }

    /// Looks at the places anew: what is in place, what can be undone.
    void look_around();
    /// Notes how many products the station shows.
    void shows(std::size_t products) { state_.shown = products; }

    [[nodiscard]] const DeskState& state() const { return state_; }
    [[nodiscard]] bool busy() const { return worker_.busy(); }

private:
    using Page = std::optional<ui::ScreenId>;
    Page perform(const ui::OpenDesk&);
    Page perform(const ui::LookForFiles&);
    Page perform(const ui::OpenFile&);
    Page perform(const ui::LoadFile&);
    Page perform(const ui::UndoLoad&);
    Page perform(const ui::InstallFile&);
    Page perform(const ui::AnswerKey&);
    Page perform(const ui::UndoInstall&);
    Page perform(const ui::AuditFile&);
    Page perform(const ui::AuditCatalog&);
    Page perform(const ui::OpenRule&);
    Page perform(const ui::OpenDoubt&);
    Page perform(const ui::ApproveDoubt&);
    Page perform(const ui::OpenCamera&);
    Page perform(const ui::KeepPicture&);
    Page perform(const ui::CancelWork&);
    Page perform(const ui::OpenReport&);
    Page begin(DeskWork what, std::function<DeskNews(WorkLine&)> work);
    Page begin_audit(const std::string& path, bool of_catalog);
    Page begin_install(const std::string& accept);
    ui::ScreenId arrived(DeskNews news);

    DeskPlaces places_;
    DeskState state_;
    TimePoint started_{};
    Worker<DeskNews> worker_; ///< last: its thread ends before what it looks at
};

} // namespace kiosk
