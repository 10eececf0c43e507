// Brings a session to a page of the leader desk, for pictures: what a load would write goes into a folder that is
// thrown away.
#pragma once

#include "kiosk/session/session.h"
#include "ui/state.h"

#include <filesystem>
#include <optional>
#include <string>

namespace kiosk {

/// What the desk works with.
struct DeskRoute {
    std::filesystem::path catalog; ///< that is looked through
    std::string files;             ///< the folder of the files; empty: none
    std::string file;              ///< the name of the one to open; empty: the first
};

/// A desk for one picture. What it loads is thrown away with it.
class PictureDesk {
public:
    explicit PictureDesk(DeskRoute route);
    PictureDesk(const PictureDesk&) = delete;
    PictureDesk& operator=(const PictureDesk&) = delete;
    ~PictureDesk();

    /// Touches until the session shows that screen. Returns why it cannot, as one sentence; nothing when it does.
    [[nodiscard]] std::optional<std::string> reach(Session& session, ui::ScreenId screen);

private:
    std::optional<std::string> open_file(Session& session);
    void touch(Session& session, const ui::DeskAction& action);

    DeskRoute route_;
    std::filesystem::path scratch_;
    std::optional<Desk> desk_;
};

} // namespace kiosk
