#include "kiosk/command/reach_desk.h"

#include "kiosk/desk/desk_words.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <stdexcept>
#include <thread>
#include <utility>

namespace kiosk {
namespace {

namespace fs = std::filesystem;
using ui::ScreenId;
using Trouble = std::optional<std::string>;

fs::path new_folder()
{
    std::string name = (fs::temp_directory_path() / "pairstand-picture-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw std::runtime_error(name + ": no folder can be made here for the desk's pictures");
    return name;
}

bool is_of_audit(ScreenId screen)
{
    return screen == ScreenId::DeskAudit || screen == ScreenId::DeskRule || screen == ScreenId::DeskDoubt;
}

} // namespace

PictureDesk::PictureDesk(DeskRoute route) : route_(std::move(route)), scratch_(new_folder()) {}

PictureDesk::~PictureDesk()
{
    desk_.reset();
    std::error_code ignored; // what stays in the folder for passing things is cleared by the system
    fs::remove_all(scratch_, ignored);
}

/// One touch, and what came of it.
void PictureDesk::touch(Session& session, const ui::DeskAction& action)
{
    session.apply({ui::AskDesk{action}});
    while (desk_->busy()) {
        std::this_thread::sleep_for(Milliseconds(1));
        session.follow_desk();
    }
    session.show(session.state().screen);
}

Trouble PictureDesk::open_file(Session& session)
{
    touch(session, ui::LookForFiles{});
    const auto& files = desk_->state().found->files;
    const auto wanted = std::ranges::find_if(
        files, [&](const StickFile& file) { return route_.file.empty() || file.path.filename() == route_.file; });
    if (wanted == files.end())
        return "the desk finds no such file; give a folder with --files FOLDER, and a name with --file NAME";
    touch(session, ui::OpenFile{static_cast<std::size_t>(wanted - files.begin())});
    if (session.state().screen != ScreenId::DeskFile)
        return "the file cannot be opened: " + session.state().desk->lead.front();
    return std::nullopt;
}

Trouble PictureDesk::reach(Session& session, ScreenId screen)
{
    DeskPlaces places;
    places.catalog = is_of_audit(screen) ? route_.catalog : scratch_ / "catalog.db";
    places.data = scratch_;
    places.look_at_sticks = false;
    if (!route_.files.empty())
        places.folders.emplace_back(route_.files);
    desk_.emplace(std::move(places));
    session.open_desk(*desk_);
    touch(session, ui::OpenDesk{});
    if (screen == ScreenId::Desk)
        return std::nullopt;
    if (screen == ScreenId::DeskWork) {
        session.apply({ui::AskDesk{ui::AuditCatalog{}}});
        return std::nullopt;
    }
    if (screen == ScreenId::DeskCamera)
        touch(session, ui::OpenCamera{});
    else if (screen == ScreenId::DeskFiles)
        touch(session, ui::LookForFiles{});
    else if (is_of_audit(screen)) {
        touch(session, ui::AuditCatalog{});
        if (screen != ScreenId::DeskAudit)
            touch(session, ui::OpenRule{0});
        if (screen == ScreenId::DeskDoubt)
            touch(session, ui::OpenDoubt{0});
    } else if (auto trouble = open_file(session))
        return trouble;
    if (screen == ScreenId::DeskKey)
        touch(session, ui::InstallFile{});
    else if (screen == ScreenId::DeskReport)
        touch(session, ui::LoadFile{true});
    if (session.state().screen != screen)
        return "this file or catalog does not lead to that page";
    return std::nullopt;
}

} // namespace kiosk
