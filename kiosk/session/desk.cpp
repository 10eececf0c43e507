// What the session does with touches at the leader desk, and with what the work there brings.
#include "kiosk/desk/desk_words.h"
#include "kiosk/session/session.h"

namespace kiosk {

using ui::ScreenId;
using ui::TextId;

void Session::open_desk(Desk& desk)
{
    desk_ = &desk;
    state_.desk_open = true;
    refresh();
}

void Session::perform(const ui::AskDesk& asked)
{
    if (!desk_)
        return;
    if (std::holds_alternative<ui::OpenDesk>(asked.what))
        count_for_desk();
    if (const auto page = desk_->ask(asked.what))
        go(*page);
}

bool Session::follow_desk()
{
    if (!desk_)
        return false;
    const auto news = desk_->follow();
    if (news.page) {
        // Whoever scanned a package meanwhile keeps it; the desk keeps what came of its work.
        if (is_desk(state_.screen))
            go(*news.page);
        else
            say(ui::Notice::Tone::Quiet, TextId::desk_done);
    }
    if (news.page || news.progress)
        refresh_desk();
    return news.page || news.progress;
}

void Session::refresh_desk()
{
    state_.desk.reset();
    if (desk_ && is_desk(state_.screen))
        state_.desk = desk_page(desk_->state(), state_.screen, language());
}

/// Counting asks the catalog: only when the desk is opened, and for another catalog.
void Session::count_for_desk()
{
    if (desk_)
        desk_->shows(store_->count());
}

} // namespace kiosk
